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
import frieze.layout.Border.Meeting;
import frieze.layout.FriezeGroup;
import frieze.layout.WallpaperGroup;
import java.util.List;
import java.util.stream.Stream;

/** The keys of a job that tell where drawings go on a panel. */
final class PatternKeys {
  static final int MOST = 10_000;
  private static final int MOST_CELLS = 200;
  private static final int MOST_THROWN = 500;
  static final Range TURNS = new Range(0, true, Math.PI, "0 to 180 deg");

  private PatternKeys() {}

  /** Motifs along the band. */
  static final class Along {
    static final Key<FriezeGroup> GROUP =
        Key.withDefault(
            "group",
            new ChoiceType<>(
                Stream.of(FriezeGroup.values()).map(g -> new Word<>(g, g.names())).toList()),
            FriezeGroup.P1.symbol(),
            "How the motif is repeated: the symbol of a frieze group, or plain words.");
    static final Key<Integer> COUNT =
        Key.optional(
            "count",
            Types.count(1, MOST),
            "as many as fit at the `pitch`",
            "The number of motifs, spread evenly.");
    static final Key<Double> PITCH =
        Key.optional(
            "pitch",
            Types.length(Range.POSITIVE),
            "what makes `count` motifs fill the band",
            "From the middle of one motif to that of the next; the row is centred. Give `count`,"
                + " `pitch`, or both.");
    static final Key<Double> INSET =
        Key.withDefault(
            "inset",
            Types.length(Range.NOT_NEGATIVE),
            "0 mm",
            "What stays free of motifs along all borders of the panel.");
    static final Key<Double> RISE =
        Key.optional(
            "rise",
            Types.length(Range.ANY),
            "on the centre line, or in the middle of each half where the group mirrors below",
            "How far the middle of the motif lies above the band's centre line.");
    static final Section SECTION =
        new Section(
            "along", "A motif repeated along the band.", List.of(GROUP, COUNT, PITCH, INSET, RISE));

    private Along() {}
  }

  /** Motifs around the panel. */
  static final class Border {
    static final Key<List<Integer>> COUNT =
        Key.optional(
            "count",
            ListType.exactly(2, Types.count(0, MOST)),
            "as the `pitch` gives",
            "How many stand between the corners along X, and how many along Y.");
    static final Key<Double> PITCH =
        Key.optional(
            "pitch",
            Types.length(Range.POSITIVE),
            "what makes `count` motifs fill the sides",
            "About how far it is from one motif to the next: on each side it is changed until a"
                + " whole number fills it, an even one unless they are `running`.");
    static final Key<Meeting> SIDES =
        Key.withDefault(
            "sides",
            new ChoiceType<>(
                List.of(
                    Word.of(Meeting.MIRRORED, "mirrored"),
                    Word.of(Meeting.ALTERNATE, "alternate"),
                    Word.of(Meeting.RUNNING, "running"))),
            "mirrored",
            "Which motifs are mirrored: those of the second half of each side, every other one, or"
                + " none, so that they run around the panel one way.");
    static final Key<Boolean> TOP =
        Key.withDefault(
            "top",
            new ChoiceType<>(List.of(Word.of(false, "out"), Word.of(true, "in"))),
            "out",
            "Where the top of each motif points.");
    static final Key<String> CORNER =
        Key.optional(
            "corner",
            Types.TEXT,
            "empty corners",
            "The name of a drawing for the corners: as drawn in the lower left one, mirrored in the"
                + " others, or turned if the sides are `running`.");
    static final Key<Double> CORNER_SIZE =
        Key.optional(
            "corner size",
            Types.length(Range.NOT_NEGATIVE),
            "the size of the corner's drawing, or the height of the motif",
            "The side of the squares at the corners, where no motif of the sides lies.");
    static final Section SECTION =
        new Section(
            "border",
            "A motif repeated around the panel, a whole number on each side, the corners alike.",
            List.of(COUNT, PITCH, SIDES, TOP, CORNER, CORNER_SIZE, Along.INSET));

    private Border() {}
  }

  /** Motifs over the whole panel. */
  static final class Over {
    static final Key<WallpaperGroup> GROUP =
        Key.withDefault(
            "group",
            new ChoiceType<>(
                Stream.of(WallpaperGroup.values()).map(g -> new Word<>(g, g.names())).toList()),
            WallpaperGroup.P1.symbol(),
            "How the motif is repeated: the symbol of a wallpaper group, or plain words.");
    static final Key<Integer> COLUMNS =
        Key.required("columns", Types.count(1, MOST_CELLS), "how many cells fill the width");
    static final Key<Integer> ROWS =
        Key.optional(
            "rows",
            Types.count(1, MOST_CELLS),
            "as many as make the cells most nearly square",
            "How many cells fill the height. Not for groups with quarter, third or sixth turns: the"
                + " width decides there.");
    static final Key<Double> INSET = Along.INSET;
    static final Key<List<Double>> AT =
        Key.optional(
            "at",
            ListType.exactly(2, Types.quantity(UnitKind.SHARE, Range.NOT_NEGATIVE)),
            "where the motifs stand farthest apart",
            "Where the middle of the drawing lies in its cell, as shares of the cell's sides.");
    static final Key<Double> TURN =
        Key.withDefault(
            "turn",
            Types.quantity(UnitKind.ANGLE, Range.ANY),
            "0 deg",
            "How far the drawing is turned before it is repeated, counter-clockwise.");
    static final Section SECTION =
        new Section(
            "over",
            "A motif repeated over the whole panel. Motifs that would not lie whole inside are left"
                + " out.",
            List.of(GROUP, COLUMNS, ROWS, INSET, AT, TURN));

    private Over() {}
  }

  /** Motifs in a ring. */
  static final class Ring {
    static final Key<Integer> COUNT =
        Key.required("count", Types.count(1, MOST), "the number of motifs, evenly spaced");
    static final Key<Double> RADIUS =
        Key.required(
            "radius",
            Types.length(Range.NOT_NEGATIVE),
            "from the middle of the ring to the middle of each motif");
    static final Key<Double> X =
        Key.optional(
            "x",
            Types.length(Range.ANY),
            "the panel's middle",
            "The middle of the ring, from the panel's left edge.");
    static final Key<Double> Y =
        Key.optional(
            "y",
            Types.length(Range.ANY),
            "the panel's middle",
            "The middle of the ring, from the panel's lower edge.");
    static final Key<Double> START =
        Key.withDefault(
            "start",
            Types.quantity(UnitKind.ANGLE, Range.ANY),
            "90 deg",
            "Where the first motif stands, counter-clockwise from the right.");
    static final Key<Boolean> MIRROR =
        Key.withDefault(
            "mirror", Types.YES_NO, "no", "Whether every other motif is a mirror image.");
    static final Section SECTION =
        new Section(
            "ring",
            "Motifs in a ring, the top of each away from the middle.",
            List.of(COUNT, RADIUS, X, Y, START, MIRROR));

    private Ring() {}
  }

  /** Motifs thrown over the panel. */
  static final class Scatter {
    static final Key<Integer> COUNT =
        Key.required("count", Types.count(1, MOST_THROWN), "the number of motifs");
    static final Key<Double> SPACE =
        Key.withDefault(
            "space",
            Types.length(Range.NOT_NEGATIVE),
            "0 mm",
            "The least distance between two motifs, taken between their convex hulls.");
    static final Key<Double> TURN =
        Key.withDefault(
            "turn",
            Types.quantity(UnitKind.ANGLE, TURNS),
            "180 deg",
            "The most by which each is turned, either way; 180 deg for any way.");
    static final Section SECTION =
        new Section(
            "scatter",
            "Motifs thrown over the panel, as the job's `seed` decides.",
            List.of(COUNT, SPACE, Along.INSET, TURN));

    private Scatter() {}
  }

  /** What motifs keep clear of. */
  static final class Avoid {
    static final Key<Double> SPACE =
        Key.withDefault(
            "space",
            Types.length(Range.NOT_NEGATIVE),
            "3 mm",
            "The least distance to holes and to what is kept free, taken from the convex hull.");
    static final Key<Double> SHIFT =
        Key.withDefault(
            "shift",
            Types.length(Range.NOT_NEGATIVE),
            "0 mm",
            "The most by which a motif in the way is shifted; 0 to leave it out instead.");
    static final Section SECTION =
        new Section(
            "avoid",
            "Keeps motifs clear of the holes of `bore` and of what is under `keep free`: motifs in"
                + " the way are shifted, or left out.",
            List.of(SPACE, SHIFT));

    private Avoid() {}
  }

  /** A part of the panel without motifs. */
  static final class KeepFree {
    static final Key<String> NAME =
        Key.withDefault("name", Types.TEXT, "kept free", "What is there, such as a hinge.");
    static final Key<Double> X =
        Key.required("x", Types.length(Range.ANY), "its left edge, from the panel's left edge");
    static final Key<Double> Y =
        Key.required("y", Types.length(Range.ANY), "its lower edge, from the panel's lower edge");
    static final Key<Double> WIDTH =
        Key.required("width", Types.length(Range.POSITIVE), "its size along X");
    static final Key<Double> HEIGHT =
        Key.required("height", Types.length(Range.POSITIVE), "its size along Y");
    static final Section SECTION =
        new Section(
            "kept free",
            "A rectangle of the panel that motifs with `avoid` keep clear of.",
            List.of(NAME, X, Y, WIDTH, HEIGHT));

    private KeepFree() {}
  }

  /** One drawing on a panel. */
  static final class Design {
    static final Key<List<String>> PLACE =
        Key.required(
            "place",
            ListType.oneOrMore(Types.TEXT),
            "the name of a drawing under `artwork`; several take turns");
    static final Key<Values> ALONG = way(Along.SECTION);
    static final Key<Values> FOLLOW = way(FollowKeys.SECTION);
    static final Key<Values> BORDER = way(Border.SECTION);
    static final Key<Values> OVER = way(Over.SECTION);
    static final Key<Values> RING = way(Ring.SECTION);
    static final Key<Values> SCATTER = way(Scatter.SECTION);
    static final Key<Double> CLIP =
        Key.optional(
            "clip",
            Types.length(Range.NOT_NEGATIVE),
            "only whole motifs are placed",
            "Motifs that reach over the border are cut there, this far from the panel's outline."
                + " For `along`, `follow`, `over` and `ring`.");
    static final Key<Values> VARY =
        Key.optional(
            "vary",
            new SectionType(VaryKeys.SECTION),
            "all motifs are alike",
            "How much the motifs differ.");
    static final Key<Values> AVOID =
        Key.optional(
            "avoid",
            new SectionType(Avoid.SECTION),
            "motifs may lie over holes",
            "What the motifs keep clear of.");
    static final Section SECTION =
        new Section(
            "design",
            "A drawing and where it goes on the panel. Give one of `along`, `follow`,"
                + " `border`, `over`, `ring`, `scatter`.",
            List.of(PLACE, ALONG, FOLLOW, BORDER, OVER, RING, SCATTER, CLIP, VARY, AVOID));

    private Design() {}

    private static Key<Values> way(Section section) {
      return Key.optional(section.name(), new SectionType(section), "", section.doc());
    }
  }
}
