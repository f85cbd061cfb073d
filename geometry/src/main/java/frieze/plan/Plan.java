package frieze.plan;

import frieze.diagnostic.Diagnostic;
import java.util.List;
import java.util.stream.Stream;

/**
 * All cuts of a panel, in the order of cutting.
 *
 * @param leftovers what was asked for and is not cut, because no tool reaches it
 * @param notes what could not be done, and what should be known
 * @param geometryCalls how many times offsets and the like were worked out; a motif placed often
 *     counts once
 */
public record Plan(
    List<Cut> cuts, List<Leftover> leftovers, List<Diagnostic> notes, int geometryCalls) {
  public Plan {
    cuts = List.copyOf(cuts);
    leftovers = List.copyOf(leftovers);
    notes = List.copyOf(notes);
  }

  /** The same with what was noted before it was planned. */
  public Plan after(List<Diagnostic> earlier) {
    return new Plan(
        cuts, leftovers, Stream.concat(earlier.stream(), notes.stream()).toList(), geometryCalls);
  }
}
