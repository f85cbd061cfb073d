package frieze.job;

import frieze.design.TorchWay;
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

/** The part of the table of keys that tells how a torch cuts a panel. */
final class TorchKeys {
  private TorchKeys() {}

  /** Copies side by side. */
  static final class Rows {
    static final Key<Integer> ALONG =
        Key.withDefault("along", Types.count(1, 100), "1", "How many along X.");
    static final Key<Integer> ACROSS =
        Key.withDefault("across", Types.count(1, 100), "1", "How many along Y.");
    static final Key<Double> GAP =
        Key.withDefault(
            "gap", Types.length(Range.POSITIVE), "15 mm", "What is left between neighbours.");
    static final Section SECTION =
        new Section(
            "rows",
            "Copies of the panel side by side on one sheet; the first lies at `position`.",
            List.of(ALONG, ACROSS, GAP));

    private Rows() {}
  }

  /** Bridges to islands. */
  static final class Ties {
    static final Key<Boolean> TIE =
        Key.withDefault(
            "tie", Types.YES_NO, "yes", "Whether islands are tied; if not, an island is an error.");
    static final Key<Double> WIDTH =
        Key.optional(
            "width",
            Types.length(Range.POSITIVE),
            "twice the thickness, at least 5 mm",
            "The width of a bridge. More where people lean on the panel.");
    static final Key<Double> LOAD =
        Key.withDefault(
            "load",
            Types.quantity(UnitKind.FORCE, Range.NOT_NEGATIVE),
            "40 N",
            "The push, square to the sheet, that each island must stand at its worst place before"
                + " its bridges start to bend for good. More bridges are set for it, up to three.");
    static final Section SECTION =
        new Section(
            "bridges",
            "Strips of metal that tie islands inside openings to the panel: as short as they can"
                + " be, or along a vein: a line of the drawing that is not filled.",
            List.of(TIE, WIDTH, LOAD));

    private Ties() {}
  }

  /** Micro-joints. */
  static final class Joints {
    static final Key<Double> BELOW =
        Key.withDefault(
            "below",
            Types.length(Range.POSITIVE),
            "80 mm",
            "Pieces whose longer side is up to this are kept: slugs of openings, and the panel"
                + " itself if it is that small. Small holes, whose slugs drop, are cut free.");
    static final Key<Integer> COUNT =
        Key.withDefault("count", Types.count(1, 8), "2", "How many for each piece.");
    static final Key<Double> WIDTH =
        Key.withDefault(
            "width",
            Types.length(Range.POSITIVE),
            "0.8 mm",
            "How wide the metal of each is after the cut; try it on scrap.");
    static final Section SECTION =
        new Section(
            "micro-joints",
            "Stubs of metal left across the kerf, so that small loose pieces do not tip up under"
                + " the torch; they are broken or sawn, and filed, afterwards. Each begins a cut of"
                + " its own: one more pierce.",
            List.of(BELOW, COUNT, WIDTH));

    private Joints() {}
  }

  static final Key<String> CHART =
      Key.required("chart", Types.TEXT, "a cut chart of the shop; `frieze shop` lists them");
  static final Key<Double> KERF =
      Key.optional(
          "kerf",
          Types.length(Range.POSITIVE),
          "the chart's",
          "How wide the cut is, as measured on a coupon of this sheet.");
  static final Key<List<String>> ON =
      Key.optional(
          "on",
          ListType.oneOrMore(Types.TEXT),
          "the outline alone",
          "The drawings whose areas are openings.");
  static final Key<Boolean> OUTLINE =
      Key.withDefault(
          "outline", Types.YES_NO, "yes", "Whether the panel is cut out of the sheet, too.");
  static final Key<Double> LEAD =
      Key.optional(
          "lead",
          Types.length(Range.POSITIVE),
          "3 mm, 1.25 times the thickness or 1.5 kerfs, whichever is most; common practice",
          "The least length of a lead-in. It is longer where the pierce must be farther away.");
  static final Key<Boolean> ARCS =
      Key.withDefault(
          "lead shape",
          new ChoiceType<>(List.of(Word.of(true, "arc"), Word.of(false, "straight"))),
          "arc",
          "The shape of leads that is tried first; where it finds no room, the other.");
  static final Key<Boolean> RIGHT =
      Key.withDefault(
          "squarer edge",
          new ChoiceType<>(List.of(Word.of(true, "right"), Word.of(false, "left"))),
          "right",
          "On which side of travel your torch leaves the squarer edge; the part is kept there."
              + " With `right`, outlines are cut clockwise and holes counter-clockwise.");
  static final Key<TorchWay.SmallHole> SMALL_HOLES =
      Key.withDefault(
          "small holes",
          new ChoiceType<>(
              List.of(
                  Word.of(TorchWay.SmallHole.PIERCE, "pierce"),
                  Word.of(TorchWay.SmallHole.MARK, "mark"),
                  Word.of(TorchWay.SmallHole.LEAVE, "leave"))),
          "pierce",
          "What becomes of holes that are too small to cut: pierced in the middle, marked by a"
              + " short arc, or left out. Each is reported.");
  static final Key<Values> ROWS =
      Key.withDefault("rows", new SectionType(Rows.SECTION), "{}", "Copies side by side.");

  static final Key<Values> BRIDGES =
      Key.withDefault(
          "bridges", new SectionType(Ties.SECTION), "{}", "How islands are tied to the panel.");
  static final Key<Values> JOINTS =
      Key.optional(
          "micro-joints",
          new SectionType(Joints.SECTION),
          "no micro-joints",
          "Keeps small loose pieces where they were cut.");
  static final Key<Double> LEAST_WEB =
      Key.optional(
          "least web",
          Types.length(Range.POSITIVE),
          "the thickness of the sheet",
          "Webs of metal thinner than this are told: heat may warp or burn them.");
  static final Key<Boolean> STRICT =
      Key.withDefault(
          "strict",
          Types.YES_NO,
          "no",
          "Whether slots narrower than the kerf, thin webs and lost points are errors instead of"
              + " warnings.");

  static final Section SECTION =
      new Section(
          "torchcut",
          "The panel and its openings cut out of sheet metal by a torch: the only operation of its"
              + " panel.",
          List.of(
              CHART,
              KERF,
              ON,
              JobKeys.Operation.PICK,
              OUTLINE,
              LEAD,
              ARCS,
              RIGHT,
              SMALL_HOLES,
              ROWS,
              BRIDGES,
              JOINTS,
              LEAST_WEB,
              STRICT));
}
