package frieze.job;

import frieze.job.ChoiceType.Word;
import frieze.layout.FriezeGroup;
import java.util.List;
import java.util.stream.Stream;

/** The keys of a job that tell where drawings go on a panel. */
final class PatternKeys {
  private static final int MOST = 10_000;
  private static final Range TURNS = new Range(0, true, Math.PI, "0 to 180 deg");
  private static final Range SIZES = new Range(0, true, 0.5, "0 to 50%");

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
        Key.required("count", Types.count(1, MOST), "the number of motifs, spread evenly");
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
            "along", "A motif repeated along the band.", List.of(GROUP, COUNT, INSET, RISE));

    private Along() {}
  }

  /** Small differences. */
  static final class Vary {
    static final Key<Double> TURN =
        Key.withDefault(
            "turn",
            Types.quantity(UnitKind.ANGLE, TURNS),
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
    static final Key<Double> SPACE =
        Key.optional(
            "space",
            Types.length(Range.NOT_NEGATIVE),
            "half of what it is without differences",
            "The least distance between two motifs, taken between their convex hulls.");
    static final Section SECTION =
        new Section(
            "vary",
            "Small differences between the motifs, as if each had been drawn by hand. They follow from"
                + " the job's `seed`.",
            List.of(TURN, SIZE, PLACE, SPACE));

    private Vary() {}
  }

  /** One drawing on a panel. */
  static final class Design {
    static final Key<String> PLACE =
        Key.required("place", Types.TEXT, "the name of a drawing under `artwork`");
    static final Key<Values> ALONG =
        Key.required("along", new SectionType(Along.SECTION), "how it is repeated");
    static final Key<Values> VARY =
        Key.optional(
            "vary",
            new SectionType(Vary.SECTION),
            "all motifs are alike",
            "How much the motifs differ.");
    static final Section SECTION =
        new Section(
            "design", "A drawing and where it goes on the panel.", List.of(PLACE, ALONG, VARY));

    private Design() {}
  }
}
