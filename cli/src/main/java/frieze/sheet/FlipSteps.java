package frieze.sheet;

import frieze.curve.Point;
import frieze.shop.Flip;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;

/** Says how a board is turned over, and what it is laid on again. */
final class FlipSteps {
  private final Setup setup;
  private final Flip flip;
  private final Measures measures;

  FlipSteps(Setup setup, Flip flip, Measures measures) {
    this.setup = setup;
    this.flip = flip;
    this.measures = measures;
  }

  /** Which face is up. */
  String faceUp() {
    return flip.backUp() ? "BACK UP: the good face lies on the bed" : "good face up";
  }

  void write(Markup out) {
    out.element("h2", "Turning over");
    out.open("figure").raw(new FlipView(setup, flip).svg()).close();
    out.open("ol", "class", "tick");
    items().forEach(item -> out.element("li", item));
    out.close().line();
  }

  List<String> items() {
    List<String> items = new ArrayList<>();
    items.add(
        flip.backUp()
            ? "Pencil a K on corner K, on both faces. The back is made first."
            : "The back has been made: its sheet comes before this one. If it has not, stop here.");
    String how =
        flip.endToEnd()
            ? "end to end: the right end goes to the left, the front edge stays in front"
            : "front to back: the front edge goes to the back, the left end stays at the left";
    items.add(
        (flip.backUp() ? "When all programs of this sheet have run, turn" : "Turn")
            + " the board over "
            + how
            + ".");
    if (flip.pins().isPresent()) {
      pins(flip.pins().get(), items);
    } else {
      items.add(
          "X0 and Y0 are set at the same end and the same edge of the board on both sides, those that"
              + " meet in corner K: then its true length and width do not matter. Both must be straight"
              + " and square to each other; how the board lies after the turn is NOT CHECKED.");
    }
    return items;
  }

  private void pins(Flip.Pins pins, List<String> items) {
    StringBuilder places = new StringBuilder();
    for (Point p : pins.at()) {
      Point at = setup.stockFromProgram().inverse().affine().apply(p);
      places
          .append(places.length() == 0 ? "X" : " and X")
          .append(measures.number(at.x()))
          .append(" Y")
          .append(measures.number(at.y()));
    }
    if (flip.backUp()) {
      items.add(
          "These programs bore holes for two pins of "
              + measures.both(pins.diameterMm())
              + " at "
              + places
              + ", through the board and "
              + measures.one(pins.depthMm())
              + " into the spoilboard. Drive the pins in before the board is turned; the spoilboard must"
              + " not move from then on.");
    } else {
      items.add(
          "Lay it over the two pins of "
              + measures.both(pins.diameterMm())
              + ", which stand at "
              + places
              + " of this sheet's zero. Check X0 and Y0 against a pin: the spindle must come down on"
              + " its middle.");
    }
  }
}
