package frieze.job;

import frieze.design.Corners;
import frieze.design.Fade;
import frieze.design.Work;
import frieze.keys.ChoiceType;
import frieze.keys.ChoiceType.Word;
import frieze.keys.Key;
import frieze.keys.ListType;
import frieze.keys.Located;
import frieze.keys.NamedType;
import frieze.keys.OneOfType;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.SectionType;
import frieze.keys.ThicknessType;
import frieze.keys.Type;
import frieze.keys.Types;
import frieze.keys.UnitKind;
import frieze.keys.Values;
import frieze.shop.Skew;
import frieze.shop.Zero;
import java.util.List;
import java.util.Map;

/**
 * The table of all keys of a job file.
 *
 * <p>It drives the reading, the hints, the JSON schema and the reference page. Depths and widths
 * are below, readers of the values in {@link JobReader}.
 */
final class JobKeys {
  static final Type<Boolean> INCHES =
      new ChoiceType<>(List.of(Word.of(true, "in", "inch"), Word.of(false, "mm")));

  private static final Type<Work.Milling> MILLING =
      new ChoiceType<>(
          List.of(
              Word.of(Work.Milling.CONVENTIONAL, "conventional"),
              Word.of(Work.Milling.CLIMB, "climb")));

  private static final Type<Fade.Ends> FADE_ENDS =
      new ChoiceType<>(
          List.of(
              Word.of(Fade.Ends.END, "end"),
              Word.of(Fade.Ends.START, "start"),
              Word.of(Fade.Ends.BOTH, "both")));

  private JobKeys() {}

  /** A drawing and its size. */
  static final class Drawing {
    static final Key<String> FILE =
        Key.required(
            "file",
            Types.TEXT,
            "the drawing, an SVG or DXF file, or a picture to trace (PNG, JPEG, BMP, GIF, TIFF);"
                + " its name is taken from the job's folder");
    static final Key<Double> HEIGHT =
        Key.optional(
            "height",
            Types.length(Range.POSITIVE),
            "as drawn",
            "The height to scale the drawing to. Give `height` or `width`, not both.");
    static final Key<Double> WIDTH =
        Key.optional(
            "width",
            Types.length(Range.POSITIVE),
            "as drawn",
            "The width to scale the drawing to. Give `height` or `width`, not both.");
    static final Key<Double> UNIT =
        Key.optional(
            "unit",
            Types.length(Range.POSITIVE),
            "as the file says",
            "What one unit of the drawing measures, for a file that does not say it or says it"
                + " wrong: `1 mm`, `1 in`, `1/90 in`.");
    static final Key<String> PICK =
        Key.optional(
            "pick",
            Types.TEXT,
            "all pieces",
            "Only the pieces with this id, class or colour, or in this group or layer. The size is"
                + " theirs.");
    static final Key<Double> GAP =
        Key.withDefault(
            "gap",
            Types.length(Range.NOT_NEGATIVE),
            "0.05 mm",
            "Ends of the lines of a DXF that are nearer than this, at the size they are cut, are"
                + " joined. Areas that are thinner than this are left out.");
    static final Key<Double> SMALLEST =
        Key.withDefault(
            "smallest",
            Types.length(Range.NOT_NEGATIVE),
            "0 mm",
            "What is smaller than this in both directions, at the size it is cut, is left out.");
    static final Key<Boolean> LINES =
        Key.withDefault(
            "lines",
            new ChoiceType<>(List.of(Word.of(false, "centre"), Word.of(true, "outline"))),
            "centre",
            "What a drawn line is: its `centre`, for a tool to follow, or an area with the"
                + " `outline` that its width, ends, corners and dashes give it. Lines without a"
                + " width stay lines.");
    static final Key<String> FONT =
        Key.optional(
            "font",
            Types.TEXT,
            "the fonts that come with Frieze",
            "A font file, TrueType or OpenType, for all text in an SVG drawing; its name is taken"
                + " from the job's folder. See that its licence lets you cut with it.");
    static final Key<Values> TRACE =
        Key.optional(
            "trace",
            new SectionType(TraceKeys.SECTION),
            "dark ink on light paper",
            "How the outlines of a picture are found.");
    static final Section SECTION =
        new Section(
            "drawing",
            "A drawing that can be placed on panels, under a name of your choice. Its size is that"
                + " of its outlines, without the width of lines.",
            List.of(FILE, HEIGHT, WIDTH, UNIT, PICK, LINES, GAP, SMALLEST, FONT, TRACE));

    private Drawing() {}
  }

  /** The board. */
  static final class Board {
    static final Key<String> MATERIAL =
        Key.required(
            "material", Types.TEXT, "what it is made of; `frieze shop` lists what is known");
    static final Key<Double> LENGTH =
        Key.required("length", Types.length(Range.POSITIVE), "its length along X");
    static final Key<Double> WIDTH =
        Key.required("width", Types.length(Range.POSITIVE), "its width along Y");
    static final Key<List<Double>> THICKNESS =
        Key.required(
            "thickness",
            new ThicknessType(),
            "its thickness as measured with a caliper, in one place or in several; for sheet metal"
                + " the gauge with its metal will do, and readings beside it win");
    static final Key<Boolean> BLANK =
        Key.withDefault(
            "blank",
            Types.YES_NO,
            "no",
            "Whether it is sawn to the panel's finished size already. Then there is no `cutout`,"
                + " and zero is set on the finished edges.");
    static final Section SECTION =
        new Section(
            "stock",
            "The piece of material that lies on the machine.",
            List.of(MATERIAL, LENGTH, WIDTH, THICKNESS, BLANK));

    private Board() {}
  }

  /** Where the operator sets zero. */
  static final class ZeroAt {
    static final Key<Zero.AlongX> X =
        Key.withDefault(
            "x",
            new ChoiceType<>(
                List.of(
                    Word.of(Zero.AlongX.LEFT, "left"),
                    Word.of(Zero.AlongX.CENTRE, "centre", "center"),
                    Word.of(Zero.AlongX.RIGHT, "right"))),
            "left",
            "The place along the length of the stock.");
    static final Key<Zero.AlongY> Y =
        Key.withDefault(
            "y",
            new ChoiceType<>(
                List.of(
                    Word.of(Zero.AlongY.FRONT, "front"),
                    Word.of(Zero.AlongY.CENTRE, "centre", "center"),
                    Word.of(Zero.AlongY.BACK, "back"))),
            "front",
            "The place across the stock; the front is where Y is least.");
    static final Key<Zero.AlongZ> Z =
        Key.withDefault(
            "z",
            new ChoiceType<>(
                List.of(Word.of(Zero.AlongZ.TOP, "top"), Word.of(Zero.AlongZ.BED, "bed"))),
            "top",
            "On the stock's top, or on the bed that it lies on.");
    static final Section SECTION =
        new Section("zero", "Where the operator sets zero on the stock.", List.of(X, Y, Z));

    private ZeroAt() {}
  }

  /** How the stock lies, found by touching it. */
  static final class Touched {
    /** A place as the machine shows it. */
    static final class Spot {
      static final Key<Double> X =
          Key.required("x", Types.length(Range.ANY), "X as the machine shows it there");
      static final Key<Double> Y =
          Key.required("y", Types.length(Range.ANY), "Y as the machine shows it there");
      static final Section SECTION =
          new Section("spot", "A place on an edge of the stock.", List.of(X, Y));

      private Spot() {}
    }

    static final Key<Skew.Edge> EDGE =
        Key.withDefault(
            "edge",
            new ChoiceType<>(
                List.of(
                    Word.of(Skew.Edge.FRONT, "front"),
                    Word.of(Skew.Edge.BACK, "back"),
                    Word.of(Skew.Edge.LEFT, "left"),
                    Word.of(Skew.Edge.RIGHT, "right"))),
            "front",
            "The edge that was touched.");
    static final Key<List<Values>> AT =
        Key.required(
            "at",
            ListType.exactly(2, new SectionType(Spot.SECTION)),
            "two places on it, as far apart as it goes, both touched from the same side");
    static final Section SECTION =
        new Section(
            "touched",
            "How the stock lies if it is not square to the machine: the angle is found from two"
                + " places on one edge, and the programs are written turned, about zero at the"
                + " corner itself.",
            List.of(EDGE, AT));

    private Touched() {}
  }

  /** A place on the stock or on the panel. */
  static final class Place {
    static final Key<Double> X =
        Key.required("x", Types.length(Range.ANY), "the distance from the left edge");
    static final Key<Double> Y =
        Key.required("y", Types.length(Range.ANY), "the distance from the front edge");
    static final Section SECTION =
        new Section("point", "A point, measured from the lower left corner.", List.of(X, Y));

    private Place() {}
  }

  /** A clamp. */
  static final class Clamp {
    static final Key<String> NAME = Key.required("name", Types.TEXT, "what it is, as on the sheet");
    static final Key<Double> X =
        Key.required("x", Types.length(Range.ANY), "its left edge, from the stock's left edge");
    static final Key<Double> Y =
        Key.required("y", Types.length(Range.ANY), "its front edge, from the stock's front edge");
    static final Key<Double> WIDTH =
        Key.required("width", Types.length(Range.POSITIVE), "its size along X");
    static final Key<Double> DEPTH =
        Key.required("depth", Types.length(Range.POSITIVE), "its size along Y");
    static final Key<Double> ABOVE =
        Key.required(
            "above", Types.length(Range.NOT_NEGATIVE), "how far it stands above the stock's top");
    static final Section SECTION =
        new Section(
            "clamp",
            "A box on the machine that nothing may touch: a clamp, a screw.",
            List.of(NAME, X, Y, WIDTH, DEPTH, ABOVE));

    private Clamp() {}
  }

  /** What the operations have in common, and the operations. */
  static final class Operation {
    static final Key<String> ON =
        Key.required("on", Types.TEXT, "the name of a drawing that is placed on this panel");
    static final Key<String> PICK =
        Key.optional(
            "pick",
            Types.TEXT,
            "all pieces that suit the operation",
            "Only the pieces of the drawing with this id, class or colour, or in this group or"
                + " layer.");
    static final Key<String> TOOL =
        Key.required("tool", Types.TEXT, "a tool of the shop; `frieze shop` lists them")
            .alsoCalled("bit");
    static final Key<Double> DEPTH =
        Key.required("depth", Types.length(Range.DEPTH), "the depth below the stock's top");
    static final Key<Double> STEPOVER =
        Key.withDefault(
            "stepover",
            Types.quantity(UnitKind.SHARE, Range.SHARE),
            "40%",
            "The distance between neighbouring passes, as a share of the tool's diameter.");
    static final Key<Work.Milling> CUT =
        Key.withDefault(
            "milling", MILLING, "conventional", "The sense of travel along the material.");
    static final Key<Fade.Ends> FADES =
        Key.optional(
            "fades",
            FADE_ENDS,
            "the same depth all along",
            "At which end of each line the groove runs out.");
    static final Key<Double> FADES_TO =
        Key.optional(
            "fades to",
            Types.length(Range.NOT_NEGATIVE),
            "0",
            "The depth at an end where it runs out.");
    static final Key<Double> FADE_OVER =
        Key.optional(
            "fade over",
            Types.length(Range.POSITIVE),
            "the whole line, or half of it towards each end",
            "The length over which the depth changes.");
    static final Key<Boolean> BY_WIDTH =
        Key.withDefault(
            "by width",
            Types.YES_NO,
            "no",
            "Whether each line is as deep as makes its groove as wide as the line is drawn, and"
                + " `depth` the most that is allowed. For V-bits and round noses.");
    static final Section GROOVE =
        new Section(
            "groove",
            "The tool's axis follows the lines of a drawing, or its outlines where it has no"
                + " lines.",
            List.of(ON, PICK, TOOL, DEPTH, BY_WIDTH, FADES, FADES_TO, FADE_OVER));
    static final Key<Boolean> CLEAR =
        Key.withDefault(
            "clear",
            new ChoiceType<>(List.of(Word.of(false, "rings"), Word.of(true, "along grain"))),
            "rings",
            "How the tool goes: in `rings`, which are offsets of the border, or to and fro `along"
                + " grain`, which is the panel's length, and then around the border.");
    static final Key<Double> LEAVE =
        Key.withDefault(
            "leave",
            Types.length(Range.NOT_NEGATIVE),
            "0 mm",
            "What is left on the wall and taken last, in one lap; 0 cuts to size at once.");
    static final Section RECESS =
        new Section(
            "recess",
            "The areas of a drawing, cut down to a floor.",
            List.of(ON, PICK, TOOL, DEPTH, STEPOVER, CLEAR, LEAVE, CUT));

    static final Key<Double> DEEPEST =
        Key.optional(
            "deepest",
            Types.length(Range.DEPTH),
            "as deep as the bit can",
            "Where the area is wider than the bit carves at this depth, it gets a flat floor.");
    static final Key<String> FLOOR_TOOL =
        Key.optional(
            "floor tool",
            Types.TEXT,
            "the largest flat bit of the shop that reaches most of the floor",
            "The flat bit that clears the floor before the V-bit comes.");
    static final Key<Double> RIDGES =
        Key.withDefault(
            "ridges",
            Types.length(Range.POSITIVE),
            "0.1 mm",
            "How high the ridges may be on the part of a floor that only the V-bit reaches.");
    static final Key<Double> LAST_PASS =
        Key.withDefault(
            "last pass",
            Types.length(Range.NOT_NEGATIVE),
            "0.2 mm",
            "What the last pass takes, where the depth needs several.");
    static final Section VGROOVE =
        new Section(
            "vgroove",
            "The areas of a drawing, carved with a V-bit as deep as they are wide: the walls meet"
                + " the outline.",
            List.of(ON, PICK, TOOL, DEEPEST, FLOOR_TOOL, RIDGES, LAST_PASS, CUT));

    private Operation() {}
  }

  /** Bridges that hold a part. */
  static final class Hold {
    static final Key<Integer> TABS =
        Key.withDefault("tabs", Types.count(1, 100), "4", "How many bridges, spread evenly.");
    static final Key<Double> WIDTH =
        Key.optional(
            "width",
            Types.length(Range.POSITIVE),
            "the tool's diameter, 6 mm at least; twice that on edges along the grain",
            "The length of each along the outline.");
    static final Key<Double> THICKNESS =
        Key.withDefault(
            "thickness",
            Types.length(Range.POSITIVE),
            "3 mm",
            "What stays above the stock's bottom.");
    static final Key<Boolean> ENDS =
        Key.withDefault(
            "ends",
            new ChoiceType<>(List.of(Word.of(false, "upright"), Word.of(true, "ramped"))),
            "upright",
            "Whether the ends of the bridges stand upright or slope at 30 degrees.");
    static final Key<Double> SKIN =
        Key.optional(
            "skin",
            Types.length(Range.POSITIVE),
            "bridges",
            "Instead of bridges, what stays at the bottom all along the cut.");
    static final Section SECTION =
        new Section(
            "hold",
            "Bridges left in the cut, or a skin below it, so that the panel does not come loose.",
            List.of(TABS, WIDTH, THICKNESS, ENDS, SKIN));

    private Hold() {}
  }

  /** The panel cut free. */
  static final class Cutout {
    static final Key<Values> HOLD =
        Key.optional(
            "hold",
            new SectionType(Hold.SECTION),
            "no bridges: the panel must be held in another way",
            "Bridges that hold the panel.");
    static final Key<String> ON =
        Key.optional(
            "on",
            Types.TEXT,
            "the panel's outline",
            "The name of a drawing whose areas are cut out of the panel.");
    static final Key<Work.Side> SIDE =
        Key.optional(
            "side",
            new ChoiceType<>(
                List.of(
                    Word.of(Work.Side.OUTSIDE, "outside"),
                    Word.of(Work.Side.INSIDE, "inside"),
                    Word.of(Work.Side.ON_LINE, "on the line"))),
            "outside the panel's outline, inside a drawing's",
            "On which side of the outline the tool runs.");
    static final Key<Double> LEAVE =
        Key.withDefault(
            "leave",
            Types.length(Range.NOT_NEGATIVE),
            "0 mm",
            "What is left on the wall and taken last, in one lap; 0 cuts to size at once.");
    static final Key<Integer> STEPS =
        Key.withDefault(
            "steps",
            Types.count(1, 10),
            "1",
            "In how many laps that is taken, each a little nearer to the size.");
    static final Key<Corners> CORNERS =
        Key.withDefault(
            "corners",
            new ChoiceType<>(
                List.of(
                    Word.of(Corners.ROUND, "round"),
                    Word.of(Corners.EAR, "ear"),
                    Word.of(Corners.ALONG_SIDE, "along side"))),
            "round",
            "What becomes of inside corners: `round` as the tool leaves them, or relieved so that a"
                + " square part seats, by an `ear` into the corner or by going on `along side`.");
    static final Section SECTION =
        new Section(
            "cutout",
            "The panel's outline cut through, or openings in the panel.",
            List.of(
                Operation.TOOL,
                ON,
                Operation.PICK,
                SIDE,
                CORNERS,
                LEAVE,
                STEPS,
                HOLD,
                Operation.CUT));

    private Cutout() {}
  }

  /** One line of the work list. */
  static final class WorkItem {
    static final Key<Values> GROOVE = item(Operation.GROOVE);
    static final Key<Values> VGROOVE = item(Operation.VGROOVE);
    static final Key<Values> RECESS = item(Operation.RECESS);
    static final Key<Values> CUTOUT = item(Cutout.SECTION);
    static final Key<Values> BORE = item(BoreKeys.SECTION);
    static final Key<Values> CHAMFER = item(EdgeKeys.CHAMFER);
    static final Key<Values> ROUNDOVER = item(EdgeKeys.ROUNDOVER);
    static final Key<Values> TORCHCUT = item(TorchKeys.SECTION);
    static final Section SECTION =
        new Section(
            "work",
            "One operation. They are listed in any order; Frieze cuts the panel free last.",
            List.of(GROOVE, VGROOVE, RECESS, CUTOUT, BORE, CHAMFER, ROUNDOVER, TORCHCUT));

    private WorkItem() {}

    private static Key<Values> item(Section section) {
      return Key.optional(section.name(), new SectionType(section), "", section.doc());
    }
  }

  /** A panel. */
  static final class Panel {
    static final Key<String> LIKE =
        Key.optional(
            "like",
            Types.TEXT,
            "",
            "The name of another panel. Each key that this panel does not have is taken from that"
                + " one.");
    static final Key<Values> OPENING =
        Key.optional(
            "opening",
            new SectionType(FitKeys.Opening.SECTION),
            "",
            "The opening that the panel goes into. Give `opening`, `size` or `outline`.");
    static final Key<Values> SIZE =
        Key.optional(
            "size",
            new SectionType(FitKeys.Size.SECTION),
            "",
            "The panel's finished size. Give `opening`, `size` or `outline`.");
    static final Key<Values> OUTLINE =
        Key.optional(
            "outline",
            new SectionType(Drawing.SECTION),
            "",
            "A drawing of the panel's finished edge: one closed outline and nothing else, in SVG,"
                + " DXF, or a picture to trace. With a `gap` or `species` in `fit` it is the"
                + " opening that is drawn, and the panel is smaller. `pick` takes it out of a"
                + " larger drawing. Give `opening`, `size` or `outline`.");
    static final Key<Values> FIT =
        Key.withDefault(
            "fit", new SectionType(FitKeys.Fit.SECTION), "{}", "How the panel fits its opening.");
    static final Key<Values> STOCK =
        Key.required(
            "stock", new SectionType(Board.SECTION), "the piece of material it is cut from");
    static final Key<Values> ALLOWANCE =
        Key.withDefault(
            "allowance",
            new SectionType(FitKeys.Allowance.SECTION),
            "{}",
            "What is taken off the panel after it is cut.");
    static final Key<Values> ZERO =
        Key.withDefault(
            "zero", new SectionType(ZeroAt.SECTION), "{}", "Where the operator sets zero.");
    static final Key<Values> TOUCHED =
        Key.optional(
            Touched.SECTION.name(),
            new SectionType(Touched.SECTION),
            "the stock lies square to the machine",
            Touched.SECTION.doc());
    static final Key<Values> POSITION =
        Key.optional(
            "position",
            new SectionType(Place.SECTION),
            "in the middle of the stock",
            "Where the panel's lower left corner lies on the stock.");
    static final Key<Double> CLEARANCE =
        Key.withDefault(
            "clearance",
            Types.length(Range.CLEARANCE),
            "5 mm",
            "The height above the stock's top at which the tool travels.");
    static final Key<Double> SPOILBOARD =
        Key.withDefault(
            "spoilboard",
            Types.length(Range.NOT_NEGATIVE),
            "0.5 mm",
            "How far below the stock a through cut may go, into the board that it lies on.");
    static final Key<Values> STEPS =
        Key.optional(
            "steps",
            new SectionType(StepKeys.SECTION),
            "the panel is carved in one clamping, and may not be longer than the machine travels",
            StepKeys.SECTION.doc());
    static final Key<List<Values>> CLAMPS =
        Key.optional(
            "clamps",
            ListType.of(new SectionType(Clamp.SECTION)),
            "the clamps are not checked, and the sheet says so",
            "What the tool must not touch.");
    static final Key<Map<String, Located<Values>>> BORDER_LINES =
        Key.optional(
            LineKeys.SECTION.name(),
            new NamedType<>("border lines", new SectionType(LineKeys.SECTION)),
            "no border lines",
            LineKeys.SECTION.doc());
    static final Key<List<Values>> KEEP_FREE =
        Key.optional(
            "keep free",
            ListType.of(new SectionType(PatternKeys.KeepFree.SECTION)),
            "nothing but holes is avoided",
            "What drawings with `avoid` keep clear of, beside holes: hinges, lettering.");
    static final Key<Values> SCREWS =
        Key.optional(
            ScrewKeys.SECTION.name(),
            new SectionType(ScrewKeys.SECTION),
            "no screws",
            ScrewKeys.SECTION.doc());
    static final Key<Values> BACK =
        Key.optional(
            BackKeys.SECTION.name(),
            new SectionType(BackKeys.SECTION),
            "nothing is cut on the back, but for pilots of `screws` that come from there",
            BackKeys.SECTION.doc());
    static final Key<Boolean> MIRROR =
        Key.withDefault(
            "mirror",
            Types.YES_NO,
            "no",
            "Whether drawings, holes and what is kept free are mirrored left for right: the other"
                + " one of a pair. The opening stays as it was measured.");
    static final Key<List<Values>> DESIGN =
        Key.optional(
            "design",
            ListType.of(new SectionType(PatternKeys.Design.SECTION)),
            "no drawing",
            "The drawings on it.");
    static final Key<List<Values>> WORK =
        Key.required("work", ListType.of(new OneOfType(WorkItem.SECTION)), "what is cut");
    static final Section SECTION =
        new Section(
            "panel",
            "One panel, with a name of your choice. It gives one or more programs.",
            List.of(
                LIKE,
                OPENING,
                SIZE,
                OUTLINE,
                FIT,
                STOCK,
                ALLOWANCE,
                ZERO,
                TOUCHED,
                POSITION,
                CLEARANCE,
                SPOILBOARD,
                STEPS,
                CLAMPS,
                KEEP_FREE,
                SCREWS,
                BACK,
                MIRROR,
                DESIGN,
                BORDER_LINES,
                WORK));

    private Panel() {}
  }

  /** The file itself. */
  static final class Root {
    static final Key<String> JOB = Key.required("job", Types.TEXT, "a short name for the job");
    static final Key<Boolean> UNITS =
        Key.withDefault("units", INCHES, "mm", "What a bare number means: inches or millimetres.");
    static final Key<String> SHOP =
        Key.optional(
            "shop",
            Types.TEXT,
            "`shop.yaml` in the job's folder, if there is one",
            "The shop file with your machines, tools and materials.");
    static final Key<String> MACHINE =
        Key.withDefault(
            "machine",
            Types.TEXT,
            "benchtop router",
            "The machine, from the shop file or one of the built-in generic ones.");
    static final Key<String> POST =
        Key.optional(
            "post",
            Types.TEXT,
            "the machine's",
            "How the programs are written; `frieze posts` lists the ways.");
    static final Key<Map<String, Located<Values>>> ARTWORK =
        Key.optional(
            "artwork",
            new NamedType<>("a drawing", new SectionType(Drawing.SECTION)),
            "no drawings",
            "The drawings.");
    static final Key<Map<String, Located<Values>>> PANELS =
        Key.required(
            "panels",
            new NamedType<>("a panel", new SectionType(Panel.SECTION)),
            "what is to be made");
    static final Key<Values> TABLE =
        Key.optional(
            "table",
            new SectionType(FitKeys.Table.SECTION),
            "only the panels that are written out",
            "More panels, from a table of openings.");
    static final Key<Integer> SEED =
        Key.withDefault(
            "seed",
            Types.count(0, 999_999_999),
            "1",
            "Chooses the small differences of `vary`: another number gives others, the same number"
                + " the same.");
    static final Section SECTION =
        new Section(
            "job file",
            "The top level of the file.",
            List.of(JOB, UNITS, SHOP, MACHINE, POST, ARTWORK, PANELS, TABLE, SEED));

    private Root() {}
  }
}
