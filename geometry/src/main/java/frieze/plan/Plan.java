package frieze.plan;

import frieze.diagnostic.Diagnostic;
import java.util.List;

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
}
