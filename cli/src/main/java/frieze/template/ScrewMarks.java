package frieze.template;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.screw.Screws;
import frieze.screw.SteelHole;
import frieze.sheet.Measures;
import frieze.template.PaperTemplate.Mark;
import frieze.template.PaperTemplate.Pen;
import frieze.template.PaperTemplate.Words;
import java.util.ArrayList;
import java.util.List;

/** Draws screws at full size: the hole in the steel, and within it the pilot in the wood. */
public final class ScrewMarks {
  private static final double BEYOND_MM = 5;
  private static final double WORDS_GAP_MM = 1.2;

  private final Screws screws;
  private final List<SteelHole> steel;
  private final Measures measures;

  public ScrewMarks(Screws screws, List<SteelHole> steel, Measures measures) {
    this.screws = screws;
    this.steel = steel;
    this.measures = measures;
  }

  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (SteelHole hole : steel) {
      marks.add(new Mark(hole.edge(), Pen.WIDE));
      marks.add(new Mark(Path.circle(hole.screw(), screws.pilot().diameterMm() / 2), Pen.NARROW));
      double reach = hole.lengthMm() / 2 + BEYOND_MM;
      Point p = hole.screw();
      marks.add(
          new Mark(TemplateMaker.line(p.x() - reach, p.y(), p.x() + reach, p.y()), Pen.CENTRE));
      marks.add(
          new Mark(TemplateMaker.line(p.x(), p.y() - reach, p.x(), p.y() + reach), Pen.CENTRE));
    }
    return marks;
  }

  List<Words> words(double lettersMm) {
    List<Words> words = new ArrayList<>();
    for (int i = 0; i < steel.size(); i++) {
      double aside = steel.get(i).lengthMm() / 2 + WORDS_GAP_MM;
      Point at = steel.get(i).screw().plus(new Point(aside, WORDS_GAP_MM));
      words.add(new Words(at, lettersMm, "S" + (i + 1)));
    }
    return words;
  }

  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    for (int i = 0; i < steel.size(); i++) {
      notes.add(note(i));
    }
    if (steel.stream().anyMatch(SteelHole::isSlot)) {
      notes.add(
          "Slots hold the screw from the driest to the wettest while "
              + held()
              + " stays: washers, and screws that still let the panel slide. Screwed tight it can't"
              + " move, and splits.");
    }
    return notes;
  }

  private String held() {
    return screws.steel().held().isPresent()
        ? "S" + (screws.steel().held().getAsInt() + 1)
        : "the panel's middle";
  }

  private String note(int index) {
    SteelHole hole = steel.get(index);
    StringBuilder text = new StringBuilder("S" + (index + 1) + ": ");
    text.append(measures.both(hole.screw().x()))
        .append(" from the left, ")
        .append(measures.both(hole.screw().y()))
        .append(" from below; in the steel, wide line, a ");
    if (hole.isSlot()) {
      double degrees = Math.toDegrees(hole.wettest().minus(hole.driest()).angleRad());
      text.append("slot ")
          .append(measures.both(hole.widthMm()))
          .append(" wide and ")
          .append(measures.both(hole.lengthMm()))
          .append(" long at ")
          .append(Measures.decimals((degrees + 180) % 180, 1))
          .append("\u00b0 to the panel's length, since the screw travels ")
          .append(measures.about(hole.travelMm()));
    } else {
      text.append("round hole ").append(measures.both(hole.widthMm())).append(" wide");
    }
    return text.append("; in the wood a pilot ")
        .append(measures.both(screws.pilot().diameterMm()))
        .append(" wide, ")
        .append(measures.both(screws.pilot().depthMm()))
        .append(" deep from the ")
        .append(screws.pilot().fromBack() ? "back." : "front.")
        .toString();
  }
}
