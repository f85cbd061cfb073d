package frieze.plan;

import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Fit;
import frieze.design.Work;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.plan.bore.BoreLayout;
import frieze.plan.cut.Batch;
import frieze.plan.cut.Cut;
import frieze.plan.cut.PlanCode;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns a design into cuts.
 *
 * <p>{@link BatchOrder} tells in which order they are made.
 */
public final class Planner {
  private Planner() {}

  /**
   * Plans all work.
   *
   * @throws frieze.diagnostic.BadInputException with every error of the work list
   */
  public static Plan plan(Design asked, Setup setup, Tolerances tolerances) {
    Design design = AsCut.of(SlowDrills.replaced(asked, setup), setup.allowance());
    Diagnostics found = new Diagnostics();
    new WorkCheck(design, setup, tolerances, found).check();
    SourceSpan where = design.work().isEmpty() ? SourceSpan.NONE : design.work().get(0).where();
    Fit.check(design, tolerances.flattenMm(), where, found);
    found.throwIfErrors();
    WorkPlanner planner = new WorkPlanner(design, setup, tolerances, found);
    List<List<Batch>> lines = new ArrayList<>();
    for (Work work : BoreLayout.inOrder(design.work())) {
      lines.add(work.accept(planner));
    }
    found.throwIfErrors();
    List<Cut> cuts = BatchOrder.cuts(lines, BatchOrder.Home.of(setup));
    if (cuts.isEmpty()) {
      found.error(
          PlanCode.NOTHING_TO_CUT, SourceSpan.NONE, "nothing is left to cut on the panel", "");
      found.throwIfErrors();
    }
    return new Plan(
        cuts, planner.leftovers(), found.sorted(), planner.geometryCalls(), planner.rims());
  }
}
