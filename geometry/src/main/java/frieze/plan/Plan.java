package frieze.plan;

import frieze.diagnostic.Diagnostic;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Leftover;
import frieze.plan.cut.RimUse;
import java.util.List;
import java.util.stream.Stream;

/**
 * All cuts of a panel, in the order of cutting.
 *
 * @param leftovers what was asked for and is not cut, because no tool reaches it
 * @param notes what could not be done, and what should be known
 * @param geometryCalls how many times offsets and the like were worked out; a motif placed often
 *     counts once
 * @param rims how far the tools are engaged, for each recess
 */
public record Plan(
    List<Cut> cuts,
    List<Leftover> leftovers,
    List<Diagnostic> notes,
    int geometryCalls,
    List<RimUse> rims) {
  public Plan {
    cuts = List.copyOf(cuts);
    leftovers = List.copyOf(leftovers);
    notes = List.copyOf(notes);
    rims = List.copyOf(rims);
  }

  /** A plan of which nothing is known about engagement. */
  public Plan(List<Cut> cuts, List<Leftover> leftovers, List<Diagnostic> notes, int geometryCalls) {
    this(cuts, leftovers, notes, geometryCalls, List.of());
  }

  /** The same with what was noted before it was planned. */
  public Plan after(List<Diagnostic> earlier) {
    return new Plan(
        cuts,
        leftovers,
        Stream.concat(earlier.stream(), notes.stream()).toList(),
        geometryCalls,
        rims);
  }
}
