package frieze.job;

import frieze.design.PanelSide;
import frieze.keys.ChoiceType;
import frieze.keys.ChoiceType.Word;
import frieze.keys.Key;
import frieze.keys.ListType;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.Types;
import java.util.List;

/** The keys of a panel's edge: a chamfer, or rounded over. */
final class EdgeKeys {
  private static final int MOST_SIDES = 4;

  private EdgeKeys() {}

  static final Key<List<PanelSide>> SIDES =
      Key.optional(
          "sides",
          new ListType<>(
              new ChoiceType<>(
                  List.of(
                      Word.of(PanelSide.TOP, "top"),
                      Word.of(PanelSide.BOTTOM, "bottom"),
                      Word.of(PanelSide.LEFT, "left"),
                      Word.of(PanelSide.RIGHT, "right"))),
              1,
              MOST_SIDES,
              true),
          "all round",
          "The sides whose edge is worked; the bit runs off straight at their ends. A notch belongs"
              + " to the side that it is cut into.");
  static final Key<Double> WIDTH =
      Key.required("width", Types.length(Range.POSITIVE), "how wide it is, measured on the face");
  static final Key<Double> DOWN =
      Key.optional(
          "down",
          Types.length(Range.POSITIVE),
          "as the bit's angle gives: the `width` for a bit of 90 deg",
          "How far it goes down the edge. A bit that does not make this of the `width` is"
              + " refused.");
  static final Key<Double> BELOW =
      Key.withDefault(
          "below",
          Types.length(Range.NOT_NEGATIVE),
          "0.5 mm",
          "How far the point of the bit runs below the chamfer, beside the panel: a point stands"
              + " still in the middle and tears.");
  static final Key<Double> RADIUS =
      Key.optional(
          "radius",
          Types.length(Range.POSITIVE),
          "the bit's",
          "The radius of the round. A bit of another radius is refused.");
  static final Section CHAMFER =
      new Section(
          "chamfer",
          "The corner between the face and the edge taken off by a V-bit, before the panel is cut"
              + " free.",
          List.of(JobKeys.Operation.TOOL, WIDTH, DOWN, SIDES, BELOW, JobKeys.Operation.CUT));
  static final Section ROUNDOVER =
      new Section(
          "roundover",
          "The corner between the face and the edge rounded by a round over bit, before the panel"
              + " is cut free.",
          List.of(JobKeys.Operation.TOOL, RADIUS, SIDES, JobKeys.Operation.CUT));
}
