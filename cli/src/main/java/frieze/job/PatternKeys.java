package frieze.job;

import frieze.job.ChoiceType.Word;
import frieze.layout.FriezeGroup;
import java.util.List;
import java.util.stream.Stream;

/** The keys of a job that tell where drawings go on a panel. */
final class PatternKeys {
  private static final int MOST = 10_000;

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

  /** One drawing on a panel. */
  static final class Design {
    static final Key<String> PLACE =
        Key.required("place", Types.TEXT, "the name of a drawing under `artwork`");
    static final Key<Values> ALONG =
        Key.required("along", new SectionType(Along.SECTION), "how it is repeated");
    static final Section SECTION =
        new Section(
            "design",
            "A drawing and where it goes on the panel.",
            List.of(PLACE, ALONG, Key.later("vary", "it will make each motif a little different")));

    private Design() {}
  }
}
