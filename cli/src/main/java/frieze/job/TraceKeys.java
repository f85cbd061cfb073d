package frieze.job;

import frieze.keys.ChoiceType;
import frieze.keys.ChoiceType.Word;
import frieze.keys.Key;
import frieze.keys.ListType;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.SectionType;
import frieze.keys.Types;
import frieze.keys.UnitKind;
import frieze.keys.Values;
import java.util.List;

/** The keys of a job that tell how a picture is traced. */
final class TraceKeys {
  private TraceKeys() {}

  /** A photographed rectangle of known size. */
  static final class Sheet {
    static final Key<List<List<Double>>> CORNERS =
        Key.required(
            "corners",
            ListType.exactly(4, ListType.exactly(2, Types.number(Range.ANY))),
            "its corners in the picture: upper left, upper right, lower right, lower left; each"
                + " as pixels from the left and from the top");
    static final Key<Double> WIDTH =
        Key.required("width", Types.length(Range.POSITIVE), "its real width");
    static final Key<Double> HEIGHT =
        Key.required("height", Types.length(Range.POSITIVE), "its real height");
    static final Section SECTION =
        new Section(
            "sheet",
            "A rectangle of known size in the picture, such as the sheet of paper. A photo taken"
                + " at an angle is squared up by it.",
            List.of(CORNERS, WIDTH, HEIGHT));

    private Sheet() {}
  }

  static final Key<Boolean> FIGURE =
      Key.withDefault(
          "figure",
          new ChoiceType<>(List.of(Word.of(false, "dark"), Word.of(true, "light"))),
          "dark",
          "Whether the figure is darker or lighter than the ground.");
  static final Key<Double> THRESHOLD =
      Key.withDefault(
          "threshold",
          Types.quantity(UnitKind.SHARE, Range.MIDDLE),
          "50%",
          "Where the outline lies between the ground (0%) and the figure (100%). Uneven light is"
              + " evened out before.");
  static final Key<Double> SMALLEST =
      Key.withDefault(
          "smallest",
          Types.length(Range.NOT_NEGATIVE),
          "0.5 mm",
          "What is smaller than this in both directions is a speck or a pinhole, and left out.");
  static final Key<Double> TOLERANCE =
      Key.optional(
          "tolerance",
          Types.length(Range.POSITIVE),
          "0.1 pixels of a clean picture, up to 0.3 of a noisy one",
          "How far the lines and arcs may leave the outline that was found.");
  static final Key<Double> DPI =
      Key.optional(
          "dpi",
          Types.number(Range.POSITIVE),
          "from `height`, `width` or `sheet`",
          "The dots to the inch of a scan, which give its real size.");
  static final Key<Values> SHEET =
      Key.optional(
          "sheet",
          new SectionType(Sheet.SECTION),
          "the picture was taken straight from above",
          "A rectangle of known size in the picture; with `height` or `width` beside it, it only"
              + " squares the picture up.");
  static final Key<Double> BEND =
      Key.withDefault(
          "lens bend",
          Types.quantity(UnitKind.SHARE, Range.BEND),
          "0%",
          "By how much the lens moves the corners of the picture outwards (or inwards, below 0).");
  static final Key<Double> LINES =
      Key.optional(
          "lines up to",
          Types.length(Range.POSITIVE),
          "outlines only",
          "Strokes of a pen no wider than this become lines along their middle, for `groove`.");
  static final Section SECTION =
      new Section(
          "trace",
          "How the outlines of a picture are found.",
          List.of(FIGURE, THRESHOLD, SMALLEST, TOLERANCE, DPI, SHEET, BEND, LINES));
}
