package frieze.post;

import frieze.lower.Capabilities;
import frieze.rs274.ReadingRules.Paths;
import java.util.List;
import java.util.Map;

/**
 * How one kind of controller wants its programs: what it understands, and its own lines.
 *
 * @param id the name that a job gives
 * @param summary which controllers it suits, in one plain sentence
 * @param paths how its machines move between the points that they are told
 * @param lines for each moment the lines to write, with placeholders in braces
 */
record Dialect(
    String id,
    String summary,
    Capabilities capabilities,
    Paths paths,
    Map<Moment, List<String>> lines) {
  Dialect {
    lines = Map.copyOf(lines);
  }

  List<String> lines(Moment moment) {
    return lines.getOrDefault(moment, List.of());
  }
}
