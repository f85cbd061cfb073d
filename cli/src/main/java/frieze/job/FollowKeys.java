package frieze.job;

import frieze.keys.ChoiceType;
import frieze.keys.ChoiceType.Word;
import frieze.keys.Key;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.Types;
import java.util.List;

/** The keys of a job for motifs along a curved line. */
final class FollowKeys {
  /** What a row runs midway between. */
  enum Sides {
    EDGES,
    LINES
  }

  static final Key<String> DRAWING =
      Key.optional(
          "drawing",
          Types.TEXT,
          "an arc, by `arch`",
          "The name of a drawing whose longest line is followed. The middle of the drawing lies"
              + " on the panel's. Give `drawing`, `arch` or `between`; with `between: lines` also"
              + " the drawing.");
  static final Key<String> PICK =
      Key.optional(
          "pick",
          Types.TEXT,
          "all of the drawing",
          "Only the pieces of that drawing with this id, class or colour, or in this group or"
              + " layer.");
  static final Key<Double> ARCH =
      Key.optional(
          "arch",
          Types.length(Range.ANY),
          "the line of a `drawing`",
          "An arc from border to border, its middle this much higher than its ends; below 0 for"
              + " lower.");
  static final Key<Sides> BETWEEN =
      Key.optional(
          "between",
          new ChoiceType<>(List.of(Word.of(Sides.EDGES, "edges"), Word.of(Sides.LINES, "lines"))),
          "an arc, by `arch`, or a `drawing`",
          "The line midway between the panel's lower and upper edge; or between the two longest"
              + " lines of the `drawing`.");
  static final Key<Boolean> SWELL =
      Key.withDefault(
          "swell",
          Types.YES_NO,
          "no",
          "With `between`, whether each motif is as large as the band is high at its place, less"
              + " the inset, and as drawn where it is highest.");
  static final Key<Integer> COUNT =
      Key.optional(
          "count",
          Types.count(1, PatternKeys.MOST),
          "as the `pitch` gives",
          "The number of motifs.");
  static final Key<Double> PITCH =
      Key.optional(
          "pitch",
          Types.length(Range.POSITIVE),
          "what makes `count` motifs fill the line",
          "From one motif to the next, measured along the line.");
  static final Key<Boolean> STRETCH =
      Key.withDefault(
          "stretch",
          Types.YES_NO,
          "no",
          "Whether the pitch is changed until a whole number fills the line. On a closed line it"
              + " always is.");
  static final Key<Double> RISE =
      Key.optional(
          "rise",
          Types.length(Range.ANY),
          "on the line, or half of the motif's height where the group mirrors below",
          "How far the middle of the motif lies to the left of the line, as it runs.");
  static final Section SECTION =
      new Section(
          "follow",
          "A motif repeated along a curved line, each turned as the line runs.",
          List.of(
              DRAWING,
              PICK,
              ARCH,
              BETWEEN,
              SWELL,
              PatternKeys.Along.GROUP,
              COUNT,
              PITCH,
              STRETCH,
              PatternKeys.Along.INSET,
              RISE));

  private FollowKeys() {}
}
