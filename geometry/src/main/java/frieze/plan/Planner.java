package frieze.plan;

import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Fit;
import frieze.design.Work;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.shop.Setup;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Turns a design into cuts.
 *
 * <p>The order: recesses, then grooves, then holes, the cutout last, when nothing else is left to
 * do to the part; among recesses the larger tool first. Within that, work of one tool stays
 * together, and the tool takes the nearest piece next.
 */
public final class Planner {
  private Planner() {}

  /**
   * Plans all work.
   *
   * @throws frieze.diagnostic.BadInputException with every error of the work list
   */
  public static Plan plan(Design design, Setup setup, Tolerances tolerances) {
    Diagnostics found = new Diagnostics();
    new WorkCheck(design, setup, tolerances, found).check();
    SourceSpan where = design.work().isEmpty() ? SourceSpan.NONE : design.work().get(0).where();
    Fit.check(design, tolerances.flattenMm(), where, found);
    found.throwIfErrors();
    WorkPlanner planner = new WorkPlanner(design, setup, tolerances, found);
    List<Batch> batches = new ArrayList<>();
    for (Work work : design.work()) {
      batches.addAll(work.accept(planner));
    }
    found.throwIfErrors();
    List<Cut> cuts = new ArrayList<>();
    batches.stream()
        .sorted(
            Comparator.comparing(Batch::stage)
                .thenComparing(b -> -b.tool().diameterMm())
                .thenComparing(b -> b.tool().number()))
        .forEach(batch -> cuts.addAll(batch.ordered()));
    if (cuts.isEmpty()) {
      found.error(
          PlanCode.NOTHING_TO_CUT, SourceSpan.NONE, "nothing is left to cut on the panel", "");
      found.throwIfErrors();
    }
    return new Plan(cuts, planner.leftovers(), found.sorted(), planner.geometryCalls());
  }

  /** When a kind of work is done. */
  enum Stage {
    RECESS,
    GROOVE,
    BORE,
    CUTOUT
  }

  /**
   * The cuts that one tool makes for one line of the work list.
   *
   * @param blocks cuts that stay together and in order; the blocks may change places
   */
  record Batch(Tool tool, Stage stage, List<List<Cut>> blocks) {
    /** The cuts, each block followed by the nearest one that is left. */
    List<Cut> ordered() {
      List<List<Cut>> left = new ArrayList<>(blocks);
      List<Cut> cuts = new ArrayList<>();
      while (!left.isEmpty()) {
        int next = 0;
        for (int i = 1; !cuts.isEmpty() && i < left.size(); i++) {
          if (distance(cuts, left.get(i)) < distance(cuts, left.get(next))) {
            next = i;
          }
        }
        cuts.addAll(left.remove(next));
      }
      return cuts;
    }

    private static double distance(List<Cut> done, List<Cut> next) {
      return done.get(done.size() - 1).end().xy().distance(next.get(0).start().xy());
    }
  }
}
