package frieze.job;

import frieze.keys.Key;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.Types;
import frieze.keys.UnitKind;
import java.util.List;

/** The keys of a job that tell how much motifs differ. */
final class VaryKeys {
  private static final Range SIZES = new Range(0, true, 0.5, "0 to 50%");
  private static final Range BENDS = new Range(0, true, Math.PI / 2, "0 to 90 deg");
  static final Key<Double> TURN =
      Key.withDefault(
          "turn",
          Types.quantity(UnitKind.ANGLE, PatternKeys.TURNS),
          "0 deg",
          "The most by which a motif is turned, either way.");
  static final Key<Double> SIZE =
      Key.withDefault(
          "size",
          Types.quantity(UnitKind.SHARE, SIZES),
          "0%",
          "The most by which it is made larger or smaller.");
  static final Key<Double> PLACE =
      Key.withDefault(
          "place",
          Types.length(Range.NOT_NEGATIVE),
          "0 mm",
          "The most by which it is moved, along X and along Y.");
  static final Key<Double> BEND =
      Key.withDefault(
          "bend",
          Types.quantity(UnitKind.ANGLE, BENDS),
          "0 deg",
          "The most by which it is bent along its upright axis, from the lower end to the upper"
              + " one.");
  static final Key<Double> SPACE =
      Key.optional(
          "space",
          Types.length(Range.NOT_NEGATIVE),
          "half of what it is without differences",
          "The least distance between two motifs, taken between their convex hulls.");
  static final Section SECTION =
      new Section(
          "vary",
          "Small differences between the motifs, as if each had been drawn by hand. They follow"
              + " from the job's `seed`.",
          List.of(TURN, SIZE, PLACE, BEND, SPACE));

  private VaryKeys() {}
}
