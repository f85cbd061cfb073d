package frieze.job;

import frieze.keys.ChoiceType;
import frieze.keys.ChoiceType.Word;
import frieze.keys.Key;
import frieze.keys.ListType;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.SectionType;
import frieze.keys.Type;
import frieze.keys.Types;
import frieze.keys.UnitKind;
import frieze.keys.Values;
import frieze.opening.Bead;
import frieze.opening.Lug;
import frieze.wood.Sawn;
import frieze.wood.Species;
import java.util.List;

/** The keys of a job that tell what a panel goes into and how it sits there. */
final class FitKeys {
  private static final Type<Double> POSITIVE = Types.length(Range.POSITIVE);
  private static final Type<Double> NOT_NEGATIVE = Types.length(Range.NOT_NEGATIVE);

  private FitKeys() {}

  /** The finished panel. */
  static final class Size {
    static final Key<Double> WIDTH =
        Key.required("width", POSITIVE, "the length along the band (X)");
    static final Key<Double> HEIGHT =
        Key.required("height", POSITIVE, "the length across the band (Y)");
    static final Key<Double> CORNER =
        Key.withDefault(
            "corner", NOT_NEGATIVE, "0 mm", "The radius of its corners; 0 for square corners.");
    static final Key<Double> ARCHED_TOP =
        Key.withDefault(
            "arched top",
            NOT_NEGATIVE,
            "0 mm",
            "How much higher the middle of the upper edge is than its ends, on an arc; `height` is"
                + " to the middle.");
    static final Key<Double> ARCHED_BOTTOM =
        Key.withDefault(
            "arched bottom",
            NOT_NEGATIVE,
            "0 mm",
            "How much higher the middle of the lower edge is than its ends, on an arc, as under an"
                + " apron; `height` is from the ends.");
    static final Section SECTION =
        new Section(
            "size",
            "The finished size of the panel, when there is no opening to fit. With a `gap` in"
                + " `fit`, and for an arched panel also with `species`, it is the size of the"
                + " opening, and the panel is smaller.",
            List.of(WIDTH, HEIGHT, CORNER, ARCHED_TOP, ARCHED_BOTTOM));

    private Size() {}
  }

  /** A table of openings. */
  static final class Table {
    static final Key<String> FILE =
        Key.required(
            "file",
            Types.TEXT,
            "comma-separated values; the first row names the columns: `panel` and keys of"
                + " `opening`, also `like` and `mirror`; semicolons part the values of a list");
    static final Key<String> LIKE =
        Key.required("like", Types.TEXT, "the panel that the others are like, but for the opening");
    static final Section SECTION =
        new Section("table", "A table of openings: each row gives one panel.", List.of(FILE, LIKE));

    private Table() {}
  }

  /** A height between the corners. */
  static final class Station {
    static final Key<Double> AT =
        Key.required("at", POSITIVE, "how far from the lower left corner");
    static final Key<Double> HEIGHT =
        Key.required("height", POSITIVE, "the height there, square to the bottom rail");
    static final Section SECTION =
        new Section("height", "A height of the opening between its corners.", List.of(AT, HEIGHT));

    private Station() {}
  }

  /** Something welded into the opening. */
  static final class Welded {
    static final Key<String> NAME =
        Key.required("name", Types.TEXT, "what the papers call it, such as `lug 1`");
    static final Key<Lug.Side> SIDE =
        Key.required(
            "side",
            new ChoiceType<>(
                List.of(
                    Word.of(Lug.Side.BOTTOM, "bottom"),
                    Word.of(Lug.Side.RIGHT, "right"),
                    Word.of(Lug.Side.TOP, "top"),
                    Word.of(Lug.Side.LEFT, "left"))),
            "the side that it stands on, from the front");
    static final Key<Double> FROM =
        Key.required(
            "from",
            NOT_NEGATIVE,
            "how far its near edge is from the left corner of that side, or from the lower one");
    static final Key<Double> WIDTH = Key.required("width", POSITIVE, "its size along the side");
    static final Key<Double> DEPTH =
        Key.required("depth", POSITIVE, "how far it reaches into the opening");
    static final Key<Double> CLEARANCE =
        Key.optional(
            "clearance",
            NOT_NEGATIVE,
            "what `play` and the wood need, at least the gap of its side",
            "What is left around it, as cut.");
    static final Section SECTION =
        new Section(
            "lug",
            "Something welded into the opening that the panel goes around, with a notch.",
            List.of(NAME, SIDE, FROM, WIDTH, DEPTH, CLEARANCE));

    private Welded() {}
  }

  /** The hole in the frame. */
  static final class Opening {
    static final Key<List<Double>> WIDTH =
        Key.required(
            "width",
            new ListType<>(POSITIVE, 2, 2, true),
            "the length along the band (X); or two, at the bottom and at the top");
    static final Key<List<Double>> HEIGHT =
        Key.required(
            "height",
            new ListType<>(POSITIVE, 2, 2, true),
            "the length across the band (Y); or two, at the left and at the right");
    static final Key<Double> CORNER =
        Key.withDefault(
            "corner",
            NOT_NEGATIVE,
            "0 mm",
            "The size of the weld in its corners: a radius, or the leg of a bevel; 0 for sharp"
                + " corners.");
    static final Key<Bead.Shape> WELD =
        Key.withDefault(
            "weld",
            new ChoiceType<>(
                List.of(
                    Word.of(Bead.Shape.ROUND, "round"), Word.of(Bead.Shape.BEVELLED, "bevelled"))),
            "round",
            "The shape of the weld in the corners, from the front.");
    static final Key<List<Double>> DIAGONALS =
        Key.optional(
            "diagonals",
            ListType.exactly(2, POSITIVE),
            "the opening is taken for a rectangle",
            "From the lower left corner to the upper right, then the other one. They tell how far"
                + " it is out of square, and the panel follows.");
    static final Key<Boolean> INTO_WELD =
        Key.withDefault(
            "into weld",
            Types.YES_NO,
            "no",
            "Whether the diagonals were taken into round welds, where a tape stops short.");
    static final Key<Double> MARKS =
        Key.withDefault(
            "marks",
            NOT_NEGATIVE,
            "0 mm",
            "How far from the corners the marks on the bottom and the top rail are between which"
                + " the diagonals were taken; 0 for the corners themselves.");
    static final Key<List<Values>> HEIGHTS =
        Key.optional(
            "heights",
            new ListType<>(new SectionType(Station.SECTION), 3, 100, false),
            "the rails are taken for straight",
            "The height in three or more places; they tell how much welded rails bow.");
    static final Key<List<Values>> LUGS =
        Key.optional(
            "lugs",
            new ListType<>(new SectionType(Welded.SECTION), 1, 100, false),
            "nothing is welded in",
            "Lugs for screws, ends of bars and the like; the panel gets a notch for each.");
    static final Key<Double> TAPE =
        Key.withDefault(
            "tape",
            POSITIVE,
            "0.5 mm",
            "How far one measurement is to be trusted. Measurements that contradict each other by"
                + " more than three times this are an error.");
    static final Section SECTION =
        new Section(
            "opening",
            "The opening in the frame, as measured from the front. The panel is smaller by the gap"
                + " of `fit`.",
            List.of(WIDTH, HEIGHT, CORNER, WELD, DIAGONALS, INTO_WELD, MARKS, HEIGHTS, LUGS, TAPE));

    private Opening() {}
  }

  /** The air of a season. */
  static final class Air {
    static final Key<Integer> CELSIUS =
        Key.optional("celsius", Types.count(0, 60), "", "The temperature in degrees Celsius.");
    static final Key<Integer> FAHRENHEIT =
        Key.optional(
            "fahrenheit", Types.count(32, 140), "", "The temperature in degrees Fahrenheit.");
    static final Key<Double> HUMIDITY =
        Key.required(
            "humidity", Types.quantity(UnitKind.SHARE, Range.SHARE), "the relative humidity");
    static final Section SECTION =
        new Section(
            "air",
            "The air that wood lies in for weeks; its moisture follows from equation 4-5 of the"
                + " Wood Handbook. Give `celsius` or `fahrenheit`.",
            List.of(CELSIUS, FAHRENHEIT, HUMIDITY));

    private Air() {}
  }

  /** The seasons. */
  static final class Moisture {
    private static final Type<Double> PART = Types.quantity(UnitKind.SHARE, Range.NOT_NEGATIVE);

    static final Key<Double> NOW =
        Key.required("now", PART, "what a meter says when the panel is cut, such as `8%`");
    static final Key<Double> LOWEST =
        Key.optional("lowest", PART, "from `dry season`", "In use, in the driest season.");
    static final Key<Double> HIGHEST =
        Key.optional("highest", PART, "from `damp season`", "In use, in the dampest season.");
    static final Key<Values> DRY =
        Key.optional(
            "dry season",
            new SectionType(Air.SECTION),
            "",
            "The air of the driest season, instead of `lowest`.");
    static final Key<Values> DAMP =
        Key.optional(
            "damp season",
            new SectionType(Air.SECTION),
            "",
            "The air of the dampest season, instead of `highest`.");
    static final Section SECTION =
        new Section(
            "moisture",
            "Moisture contents of the wood, in per cent of its dry weight.",
            List.of(NOW, LOWEST, HIGHEST, DRY, DAMP));

    private Moisture() {}
  }

  /** What is taken off after cutting. */
  static final class Allowance {
    static final Key<Double> FACE =
        Key.withDefault(
            "face",
            NOT_NEGATIVE,
            "0 mm",
            "What comes off the face. Depths count from the finished face, so that everything is"
                + " cut this much deeper, and grooves are wider where they are cut.");
    static final Key<Double> WALLS =
        Key.withDefault(
            "walls",
            NOT_NEGATIVE,
            "0 mm",
            "What comes off the walls of recesses and openings and off the panel's edge; they are"
                + " left this much proud.");
    static final Section SECTION =
        new Section(
            "allowance",
            "What charring, brushing or sanding takes off after cutting. All sizes and depths of"
                + " the job are those of the finished panel.",
            List.of(FACE, WALLS));

    private Allowance() {}
  }

  /** How tight the panel sits. */
  static final class Fit {
    static final Key<List<Double>> GAP =
        Key.optional(
            "gap",
            new ListType<>(NOT_NEGATIVE, 4, 4, true),
            "what `play` and the wood need, where `species` is given; else 0",
            "The gap between panel and opening to cut with, on each side; or four: bottom, right,"
                + " top, left (not where the opening is drawn).");
    static final Key<Double> PLAY =
        Key.withDefault(
            "play",
            NOT_NEGATIVE,
            "0.5 mm",
            "What must be left on each side at the wettest, where no `gap` is given.");
    static final Key<Species> SPECIES =
        Key.optional(
            "species",
            new ChoiceType<>(
                Species.all().stream().map(s -> new Word<>(s, List.of(s.name()))).toList()),
            "the panel does not move",
            "The wood, as the Wood Handbook names it.");
    static final Key<Sawn> CUT =
        Key.withDefault(
            "cut",
            new ChoiceType<>(
                List.of(Word.of(Sawn.FLAT, "flat sawn"), Word.of(Sawn.QUARTER, "quarter sawn"))),
            "flat sawn",
            "How the board was sawn from the log.");
    static final Key<Boolean> UPRIGHT =
        Key.withDefault(
            "grain",
            new ChoiceType<>(List.of(Word.of(false, "lengthwise"), Word.of(true, "upright"))),
            "lengthwise",
            "The direction of the grain on the panel.");
    static final Key<Values> MOISTURE =
        Key.withDefault(
            "moisture",
            new SectionType(Moisture.SECTION),
            "{now: 8%, lowest: 6%, highest: 10%}",
            "How moist the wood is now, and in use.");
    static final Key<Double> COATING =
        Key.withDefault(
            "coating", NOT_NEGATIVE, "0 mm", "The paint that still comes on each steel surface.");
    static final Key<Double> SANDED =
        Key.withDefault(
            "sanded",
            NOT_NEGATIVE,
            "0 mm",
            "What sanding or charring takes off each edge after cutting.");
    static final Section SECTION =
        new Section(
            "fit",
            "How the panel fits its opening.",
            List.of(GAP, PLAY, SPECIES, CUT, UPRIGHT, MOISTURE, COATING, SANDED));

    private Fit() {}
  }
}
