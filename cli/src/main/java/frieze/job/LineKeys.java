package frieze.job;

import frieze.keys.Key;
import frieze.keys.ListType;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.Types;
import java.util.List;

/** The keys of lines that run round a panel. */
final class LineKeys {
  private static final int MOST = 12;

  private LineKeys() {}

  static final Key<List<Double>> INSET =
      Key.required(
          "inset",
          new ListType<>(Types.length(Range.POSITIVE), 1, MOST, true),
          "how far inside the panel's finished edge the middle of the line runs; a list for several"
              + " lines");
  static final Key<Double> WIDTH =
      Key.withDefault(
          "width",
          Types.length(Range.NOT_NEGATIVE),
          "0 mm",
          "How wide the lines are drawn: for a groove `by width`, and needed for `vgroove` and"
              + " `recess`. 0 leaves the width to the tool.");
  static final Key<Double> CORNER =
      Key.withDefault(
          "corner",
          Types.length(Range.NOT_NEGATIVE),
          "0 mm",
          "The least radius of their outward corners; 0 leaves them as the panel's own make them."
              + " Around the corners of notches the lines are always round.");
  static final Section SECTION =
      new Section(
          "border lines",
          "Lines that run round the panel inside its edge, under a name of your choice, for `on` of"
              + " the work list. `pick: 1` there is the first of several.",
          List.of(INSET, WIDTH, CORNER));
}
