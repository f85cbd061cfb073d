package frieze.sheet;

import frieze.shop.Setup;
import frieze.shop.Zero;
import frieze.steps.Pins;
import frieze.steps.Seam;
import frieze.steps.Steps;
import java.util.ArrayList;
import java.util.List;

/** Says what an operator does between the steps of a long panel. */
final class StepItems {
  /** How much a pin may be thinner than its hole, before anybody minds. */
  private static final double PLAY_MM = 0.1;

  private final StepPart part;
  private final Setup setup;
  private final Measures measures;

  StepItems(StepPart part, Setup setup, Measures measures) {
    this.part = part;
    this.setup = setup;
    this.measures = measures;
  }

  /** The items of this clamping, to be ticked off. */
  List<String> items() {
    return part.boring() ? boring() : part.step() == 0 ? first() : pushed();
  }

  private List<String> boring() {
    Pins pins = part.steps().pins();
    List<String> items = new ArrayList<>();
    items.add(
        "This program bores holes of "
            + measures.one(pins.wanted().diameterMm())
            + " for the pins, "
            + measures.one(pins.wanted().depthMm())
            + " into the spoilboard: fix that so that it can't move until the last step is done.");
    if (part.step() > 0) {
      items.add(
          "The stock stays where it is from step " + (part.step() + 1) + ", or goes there now.");
      items.addAll(push());
    }
    return items;
  }

  private List<String> first() {
    return List.of(
        "The stock lies as it did when the holes were bored. It is longer than the machine: hold up"
            + " its right end at the height of the bed.");
  }

  private List<String> pushed() {
    List<String> items = new ArrayList<>(push());
    items.add(seam());
    return items;
  }

  private List<String> push() {
    Steps steps = part.steps();
    Pins pins = steps.pins();
    return List.of(
        "Take off the clamps, clean the bed, and push the stock to the left by "
            + measures.both(steps.shiftMm())
            + " onto the pins: they stand in the spoilboard's holes and in the holes of the waste"
            + " that are drawn as PIN. It is "
            + measures.both(part.pushedMm())
            + " in all. Hold up both ends at the height of the bed.",
        "The pins are "
            + measures.one(pins.apartMm())
            + " apart: with "
            + measures.about(PLAY_MM)
            + " of play in their holes the far end of this step may be off by "
            + measures.about(off())
            + ".",
        "X0 Y0 stays where it was in step 1; do not set it again. If it is lost: the front pin"
            + " stands at X "
            + measures.one(onProgramX(pins))
            + ", Y "
            + measures.one(onProgramY(pins))
            + ". Z0 "
            + (setup.zero().z() == Zero.AlongZ.TOP
                ? "is set again on top of the stock, after every change of tool."
                : "stays on the bed."));
  }

  private double onProgramX(Pins pins) {
    return setup.stockFromProgram().inverse().apply(pins.standing(part.step()).get(0)).x();
  }

  private double onProgramY(Pins pins) {
    return setup.stockFromProgram().inverse().apply(pins.standing(part.step()).get(0)).y();
  }

  /** By the rule of three: play over the distance of the pins, times that of the farthest cut. */
  private double off() {
    Steps steps = part.steps();
    double far = steps.toMm(part.step(), setup.stock().lengthMm());
    double near = steps.pins().standing(part.step()).get(1).x();
    return PLAY_MM * Math.max(1, (far - near) / steps.pins().apartMm());
  }

  private String seam() {
    Seam seam = part.steps().seams().get(part.step() - 1);
    String crossed =
        seam.crossed().isEmpty()
            ? "no work goes across it"
            : "across it go " + String.join(", ", seam.crossed());
    return "The seam with the step before lies at "
        + measures.both(seam.xMm())
        + " from the stock's left edge; "
        + crossed
        + ". Both steps cut "
        + measures.one(Steps.OVERLAP_MM)
        + " beyond each other there.";
  }
}
