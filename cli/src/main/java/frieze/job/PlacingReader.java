package frieze.job;

import frieze.diagnostic.Diagnostics;
import frieze.layout.Arrangement;
import frieze.layout.Variation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads where drawings go on a panel. */
final class PlacingReader {
  private final List<String> drawn;
  private final int seed;
  private final Diagnostics found;

  /**
   * Prepares to read.
   *
   * @param drawn the names of the job's drawings
   * @param seed of the job
   */
  PlacingReader(List<String> drawn, int seed, Diagnostics found) {
    this.drawn = List.copyOf(drawn);
    this.seed = seed;
    this.found = found;
  }

  List<String> drawn() {
    return drawn;
  }

  List<Job.Placing> read(String panelName, Values panel) {
    List<Job.Placing> placings = new ArrayList<>();
    for (Values v : panel.find(JobKeys.Panel.DESIGN).orElse(List.of())) {
      String name = v.get(PatternKeys.Design.PLACE);
      if (!drawn.contains(name)) {
        found.error(
            JobCode.NO_SUCH_ARTWORK,
            v.where(PatternKeys.Design.PLACE),
            "no drawing named \"" + name + "\" in this job",
            Suggestion.hint(name, drawn));
      }
      Values along = v.get(PatternKeys.Design.ALONG);
      placings.add(
          new Job.Placing(
              name,
              new Arrangement(
                  along.get(PatternKeys.Along.GROUP),
                  along.get(PatternKeys.Along.COUNT),
                  along.get(PatternKeys.Along.INSET),
                  optional(along, PatternKeys.Along.RISE)),
              v.find(PatternKeys.Design.VARY).map(PlacingReader::variation),
              seedOf(panelName, placings.size()),
              along.where()));
    }
    return placings;
  }

  /** Each panel and each drawing on it differs in its own way. */
  private long seedOf(String panel, int item) {
    return (seed * 31L + panel.hashCode()) * 31L + item;
  }

  private static Variation variation(Values v) {
    return new Variation(
        v.get(PatternKeys.Vary.TURN),
        v.get(PatternKeys.Vary.SIZE),
        v.get(PatternKeys.Vary.PLACE),
        optional(v, PatternKeys.Vary.SPACE));
  }

  private static OptionalDouble optional(Values v, Key<Double> key) {
    Optional<Double> value = v.find(key);
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
