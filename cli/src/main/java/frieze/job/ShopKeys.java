package frieze.job;

import frieze.keys.ChoiceType;
import frieze.keys.ChoiceType.Word;
import frieze.keys.Key;
import frieze.keys.ListType;
import frieze.keys.Located;
import frieze.keys.NamedType;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.SectionType;
import frieze.keys.Type;
import frieze.keys.Types;
import frieze.keys.UnitKind;
import frieze.keys.Values;
import frieze.shop.Material;
import java.util.List;
import java.util.Map;

/** The table of all keys of a shop file. */
final class ShopKeys {
  private ShopKeys() {}

  /** Three lengths, feeds or accelerations, one for each axis. */
  static final class Axes {
    static final Key<Double> X = of("x", UnitKind.LENGTH);
    static final Key<Double> Y = of("y", UnitKind.LENGTH);
    static final Key<Double> Z = of("z", UnitKind.LENGTH);
    static final Key<Double> FEED_X = of("x", UnitKind.FEED);
    static final Key<Double> FEED_Y = of("y", UnitKind.FEED);
    static final Key<Double> FEED_Z = of("z", UnitKind.FEED);
    static final Key<Double> ACCELERATION_X = of("x", UnitKind.ACCELERATION);
    static final Key<Double> ACCELERATION_Y = of("y", UnitKind.ACCELERATION);
    static final Key<Double> ACCELERATION_Z = of("z", UnitKind.ACCELERATION);
    static final Section TRAVEL =
        new Section("travel", "How far each axis goes.", List.of(X, Y, Z));
    static final Section FEEDS =
        new Section("feeds", "A speed for each axis.", List.of(FEED_X, FEED_Y, FEED_Z));
    static final Section ACCELERATIONS =
        new Section(
            "accelerations",
            "How fast each axis gains and loses speed.",
            List.of(ACCELERATION_X, ACCELERATION_Y, ACCELERATION_Z));

    private Axes() {}

    private static Key<Double> of(String axis, UnitKind kind) {
      return Key.required(
          axis, Types.quantity(kind, Range.POSITIVE), kind.label() + " of this axis");
    }
  }

  /** The spindle. */
  static final class Spindle {
    static final Key<Boolean> BY_HAND =
        Key.withDefault(
            "by hand",
            Types.YES_NO,
            "no",
            "Whether the operator switches it and sets its speed. The programs then stop with a"
                + " message before the first plunge of each tool.");
    static final Key<Double> LOWEST = Key.required("lowest", speed(), "its lowest speed");
    static final Key<Double> HIGHEST = Key.required("highest", speed(), "its highest speed");
    static final Key<List<Double>> DIAL =
        Key.optional(
            "dial",
            ListType.of(speed()),
            "no dial",
            "The speeds at the numbers 1, 2, 3 ... of its dial.");
    static final Key<Double> SPIN_UP =
        Key.withDefault(
            "spin up",
            Types.quantity(UnitKind.TIME, Range.NOT_NEGATIVE),
            "3 s",
            "The time from off to full speed.");
    static final Section SECTION =
        new Section("spindle", "The spindle.", List.of(BY_HAND, LOWEST, HIGHEST, DIAL, SPIN_UP));

    private Spindle() {}

    private static Type<Double> speed() {
      return Types.quantity(UnitKind.SPEED, Range.POSITIVE);
    }
  }

  /** A machine. */
  static final class Machines {
    static final Key<String> POST =
        Key.required("post", Types.TEXT, "how its programs are written; see `frieze posts`");
    static final Key<Boolean> WRITES =
        Key.withDefault(
            "program units", JobKeys.INCHES, "mm", "The units that its programs are written in.");
    static final Key<Values> TRAVEL =
        Key.required("travel", new SectionType(Axes.TRAVEL), "how far its axes go");
    static final Key<Values> RAPID =
        Key.required("rapid", new SectionType(Axes.FEEDS), "its speeds in rapid moves");
    static final Key<Values> TOP_FEED =
        Key.required("top feed", new SectionType(Axes.FEEDS), "its fastest cutting speeds");
    static final Key<Values> ACCELERATION =
        Key.required("acceleration", new SectionType(Axes.ACCELERATIONS), "how fast it speeds up");
    static final Key<Values> SPINDLE =
        Key.optional(
            "spindle",
            new SectionType(ShopKeys.Spindle.SECTION),
            "no spindle: a plasma table",
            "Its spindle.");
    static final Key<Boolean> CHANGER =
        Key.withDefault("tool changer", Types.YES_NO, "no", "Whether it changes tools by itself.");
    static final Key<Double> TOUCH_TRAVEL =
        Key.withDefault(
            "touch travel",
            Types.length(Range.NOT_NEGATIVE),
            "0 mm",
            "How far a torch that feels for the sheet goes on down, after its tip has touched,"
                + " until the switch trips. Lower it by hand until a sheet of paper below it is"
                + " held, read Z, go on until the switch trips, and read Z again.");
    static final Section SECTION =
        new Section(
            "machine",
            "A machine with its controller. Take the figures from its manual, or measure them.",
            List.of(
                POST,
                WRITES,
                TRAVEL,
                RAPID,
                TOP_FEED,
                ACCELERATION,
                SPINDLE,
                CHANGER,
                TOUCH_TRAVEL));

    private Machines() {}
  }

  /** The outlines of cutters. */
  enum Shape {
    FLAT,
    BALL,
    VEE,
    TAPERED,
    DRILL,
    ROUND_OVER
  }

  /** A tool. */
  static final class Tools {
    static final Key<Integer> NUMBER =
        Key.optional("number", Types.count(1, 999), "the next that is free", "Its T number.");
    static final Key<Shape> SHAPE =
        Key.required(
            "shape",
            new ChoiceType<>(
                List.of(
                    Word.of(Shape.FLAT, "flat"),
                    Word.of(Shape.BALL, "ball", "round"),
                    Word.of(Shape.VEE, "vee", "v"),
                    Word.of(Shape.TAPERED, "tapered"),
                    Word.of(Shape.DRILL, "drill"),
                    Word.of(Shape.ROUND_OVER, "round over", "roundover"))),
            "the outline of its end");
    static final Key<Double> DIAMETER =
        Key.required("diameter", Types.length(Range.POSITIVE), "its largest cutting diameter");
    static final Key<Double> ANGLE =
        Key.optional(
            "angle",
            Types.quantity(UnitKind.ANGLE, Range.TOOL_ANGLE),
            "118 deg for a drill; a vee bit needs it or a test cut, a tapered bit needs it",
            "The full angle between its sides.");
    static final Key<Double> TIP =
        Key.optional(
            "tip",
            Types.length(Range.NOT_NEGATIVE),
            "0 for a vee bit; a tapered bit needs it; what two radii leave of a round over bit",
            "The diameter at its tip: a flat on a vee or round over bit, a ball on a tapered bit.");
    static final Key<Double> RADIUS =
        Key.optional(
            "radius",
            Types.length(Range.POSITIVE),
            "a round over bit needs it; the others have none",
            "The radius of the quarter round that a round over bit leaves on an edge. A bit that"
                + " runs on a bearing is not for a machine: it has nothing to run on.");
    static final Key<List<Values>> TEST_CUT =
        Key.optional(
            "test cut",
            new ListType<>(new SectionType(TestGrooveKeys.SECTION), 2, 20, false),
            "angle and tip as they are written",
            "The grooves of a test cut, from which the real angle and tip of a vee bit come; they"
                + " win over the written angle, which may be left out. `frieze new --kind bit-test`"
                + " starts such a cut.");
    static final Key<Integer> FLUTES =
        Key.withDefault("flutes", Types.count(1, 12), "2", "The number of its cutting edges.");
    static final Key<Double> FLUTE_LENGTH =
        Key.required("flute length", Types.length(Range.POSITIVE), "how deep it can cut");
    static final Key<Double> REACH =
        Key.optional(
            "reach",
            Types.length(Range.POSITIVE),
            "its flute length",
            "How far it sticks out of the collet.");
    static final Key<Boolean> PLUNGES =
        Key.optional(
            "plunges",
            Types.YES_NO,
            "yes for vee bits and drills, no for the others",
            "Whether it may go straight down into the material.");
    static final Key<Double> PASS_DEPTH =
        Key.optional(
            "pass depth",
            Types.length(Range.LIMIT),
            "by the material; half of the diameter in hardwood",
            "The most that it takes in one pass.");
    static final Key<Double> ENGAGEMENT =
        Key.optional(
            "engagement",
            Types.quantity(UnitKind.ANGLE, Range.RIM_ANGLE),
            "180 deg up to one diameter deep, 90 deg below; common practice",
            "The most of its rim that may stand in material at its full feed; 180 deg is a slot."
                + " Where there is more it is slowed.");
    static final Key<Double> CHIP_LOAD =
        Key.optional(
            "chip load",
            Types.length(Range.POSITIVE),
            "from the material's table",
            "The advance for each flute and turn that you found good.");
    static final Key<Double> TOP_SPEED =
        Key.required(
            "top speed",
            Types.quantity(UnitKind.SPEED, Range.LIMIT),
            "the speed that is marked on it, or less");
    static final Key<Double> TOP_FEED =
        Key.required(
            "top feed", Types.quantity(UnitKind.FEED, Range.LIMIT), "never faster than this");
    static final Key<Double> TOP_PLUNGE =
        Key.required(
            "top plunge",
            Types.quantity(UnitKind.FEED, Range.LIMIT),
            "never faster than this straight down");
    static final Section SECTION =
        new Section(
            "tool",
            "A cutter as it is held in the spindle.",
            List.of(
                NUMBER,
                SHAPE,
                DIAMETER,
                ANGLE,
                TIP,
                RADIUS,
                TEST_CUT,
                FLUTES,
                FLUTE_LENGTH,
                REACH,
                PLUNGES,
                PASS_DEPTH,
                ENGAGEMENT,
                CHIP_LOAD,
                TOP_SPEED,
                TOP_FEED,
                TOP_PLUNGE));

    private Tools() {}
  }

  /** A material. */
  static final class Materials {
    static final Key<Material.Kind> KIND =
        Key.required(
            "kind",
            new ChoiceType<>(
                List.of(
                    Word.of(Material.Kind.SOFTWOOD, "softwood"),
                    Word.of(Material.Kind.HARDWOOD, "hardwood"),
                    Word.of(Material.Kind.SHEET, "sheet"),
                    Word.of(Material.Kind.STEEL, "steel"))),
            "how it behaves under a cutter; `sheet` is MDF and plywood");
    static final Key<Boolean> ZINC =
        Key.withDefault(
            "zinc",
            Types.YES_NO,
            "no",
            "Whether it is coated with zinc. Its fume makes people ill: the sheet then says so"
                + " first of all.");
    static final Section SECTION = new Section("material", "A material.", List.of(KIND, ZINC));

    private Materials() {}
  }

  /** One line of a cut chart. */
  static final class ChartRow {
    static final Key<Double> THICKNESS =
        Key.required("thickness", Types.length(Range.POSITIVE), "the thickness of the sheet");
    static final Key<Double> KERF =
        Key.required("kerf", Types.length(Range.POSITIVE), "how wide the cut is");
    static final Key<Double> FEED =
        Key.required(
            "feed", Types.quantity(UnitKind.FEED, Range.POSITIVE), "how fast the torch cuts");
    static final Key<Double> PIERCE_HEIGHT =
        Key.required(
            "pierce height",
            Types.length(Range.POSITIVE),
            "how far above the sheet the arc is lit");
    static final Key<Double> CUT_HEIGHT =
        Key.required(
            "cut height", Types.length(Range.POSITIVE), "how far above the sheet the torch cuts");
    static final Key<Double> PIERCE_DELAY =
        Key.required(
            "pierce delay",
            Types.quantity(UnitKind.TIME, Range.POSITIVE),
            "from lighting the arc to moving off");
    static final Key<Double> SMALLEST_HOLE =
        Key.required(
            "smallest hole",
            Types.length(Range.POSITIVE),
            "the smallest diameter that comes out as a hole");
    static final Section SECTION =
        new Section(
            "chart row",
            "What the torch does at one thickness. Between two thicknesses Frieze goes straight"
                + " from row to row; beyond the first and the last it guesses nothing.",
            List.of(THICKNESS, KERF, FEED, PIERCE_HEIGHT, CUT_HEIGHT, PIERCE_DELAY, SMALLEST_HOLE));

    private ChartRow() {}
  }

  /** A cut chart. */
  static final class Charts {
    static final Key<String> MATERIAL =
        Key.required("material", Types.TEXT, "the metal that it is for");
    static final Key<Integer> CURRENT =
        Key.required("current", Types.count(1, 1000), "the current in amperes");
    static final Key<String> NOZZLE =
        Key.required("nozzle", Types.TEXT, "the nozzle, as its maker calls it");
    static final Key<Double> AFTER_FLOW =
        Key.withDefault(
            "after flow",
            Types.quantity(UnitKind.TIME, Range.NOT_NEGATIVE),
            "0.5 s",
            "How long the torch stays where it went out, while the air still flows.");
    static final Key<List<Values>> ROWS =
        Key.required(
            "rows", ListType.of(new SectionType(ChartRow.SECTION)), "one row for each thickness");
    static final Section SECTION =
        new Section(
            "cut chart",
            "What a torch does to one metal with one current and one nozzle. Copy it from the"
                + " manual of the power supply; the built-in ones are values to start from.",
            List.of(MATERIAL, CURRENT, NOZZLE, AFTER_FLOW, ROWS));

    private Charts() {}
  }

  /** The file itself. */
  static final class Root {
    static final Key<Boolean> UNITS =
        Key.withDefault(
            "units", JobKeys.INCHES, "mm", "What a bare number means: inches or millimetres.");
    static final Key<Map<String, Located<Values>>> MACHINES =
        Key.optional(
            "machines",
            new NamedType<>("a machine", new SectionType(ShopKeys.Machines.SECTION)),
            "only the built-in ones",
            "Your machines. One with the name of a built-in one replaces it.");
    static final Key<Map<String, Located<Values>>> TOOLS =
        Key.optional(
            "tools",
            new NamedType<>("a tool", new SectionType(ShopKeys.Tools.SECTION)),
            "only the built-in ones",
            "Your tools. One with the name of a built-in one replaces it.");
    static final Key<Map<String, Located<Values>>> MATERIALS =
        Key.optional(
            "materials",
            new NamedType<>("a material", new SectionType(ShopKeys.Materials.SECTION)),
            "only the built-in ones",
            "Your materials. One with the name of a built-in one replaces it.");
    static final Key<Map<String, Located<Values>>> CHARTS =
        Key.optional(
            "cut charts",
            new NamedType<>("a cut chart", new SectionType(ShopKeys.Charts.SECTION)),
            "only the built-in ones",
            "The cut charts of your torch. One with the name of a built-in one replaces it.");
    static final Section SECTION =
        new Section(
            "shop file",
            "The top level of the file: what your shop has. Everything in it is optional.",
            List.of(UNITS, MACHINES, TOOLS, MATERIALS, CHARTS));

    private Root() {}
  }
}
