package frieze.job;

import frieze.keys.Key;
import frieze.keys.ListType;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.SectionType;
import frieze.keys.Types;
import frieze.keys.UnitKind;
import frieze.keys.Values;
import java.util.List;

/** The keys of holes. */
final class BoreKeys {
  private BoreKeys() {}

  /** A cone for a screw's head. */
  static final class Countersink {
    static final Key<Double> DIAMETER =
        Key.required("diameter", Types.length(Range.POSITIVE), "the diameter of the screw's head");
    static final Key<Double> ANGLE =
        Key.required(
            "angle",
            Types.quantity(UnitKind.ANGLE, Range.TOOL_ANGLE),
            "the full angle of the head: 90 deg for most metric screws, 82 deg for most in inches");
    static final Key<String> TOOL =
        Key.required("tool", Types.TEXT, "a V-bit of that angle, at least as wide as the head")
            .alsoCalled("bit");
    static final Section SECTION =
        new Section(
            "countersink",
            "A cone in which the head of a screw lies flush.",
            List.of(DIAMETER, ANGLE, TOOL));

    private Countersink() {}
  }

  /** A hole drawn out. */
  static final class Slot {
    static final Key<Double> LENGTH =
        Key.required("length", Types.length(Range.POSITIVE), "from end to end");
    static final Key<Double> DIRECTION =
        Key.withDefault(
            "direction",
            Types.quantity(UnitKind.ANGLE, Range.ANY),
            "0 deg",
            "From the panel's length, counter-clockwise; 90 deg runs across the panel.");
    static final Section SECTION =
        new Section(
            "slot",
            "Holes drawn out to slots, so that wood may move below its screws.",
            List.of(LENGTH, DIRECTION));

    private Slot() {}
  }

  static final Key<List<Values>> AT =
      Key.required(
          "at",
          ListType.of(new SectionType(JobKeys.Place.SECTION)),
          "the centres, from the panel's lower left corner");
  static final Key<Double> DIAMETER =
      Key.optional(
          "diameter",
          Types.length(Range.POSITIVE),
          "the tool's diameter",
          "The diameter of the holes, or the width of slots.");
  static final Key<Double> DEPTH =
      Key.optional(
          "depth",
          Types.length(Range.DEPTH),
          "through the stock",
          "The depth below the stock's top.");
  static final Key<Values> COUNTERSINK =
      Key.optional(
          "countersink",
          new SectionType(Countersink.SECTION),
          "none",
          "A cone for the head of a screw at each hole.");
  static final Key<Values> SLOT =
      Key.optional(
          "slot", new SectionType(Slot.SECTION), "round holes", "Slots instead of round holes.");
  static final Section SECTION =
      new Section(
          "bore",
          "Holes, round or drawn out to slots.",
          List.of(JobKeys.Operation.TOOL, AT, DIAMETER, DEPTH, COUNTERSINK, SLOT));
}
