package frieze.plan;

import frieze.curve.Affine;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Selection;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.plan.cut.Inradius;
import frieze.plan.cut.PlanCode;
import frieze.plan.vgroove.VCutter;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.shop.Setup;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.Optional;

/** Checks one V-groove of the work list before anything is planned. */
final class VGrooveCheck {
  /** Passes closer than this take hours and show nothing; common sense, no source. */
  private static final double LEAST_STEPOVER_MM = 0.02;

  private final Design design;
  private final Setup setup;
  private final Tolerances tolerances;
  private final Diagnostics found;

  VGrooveCheck(Design design, Setup setup, Tolerances tolerances, Diagnostics found) {
    this.design = design;
    this.setup = setup;
    this.tolerances = tolerances;
    this.found = found;
  }

  void check(Work.VGroove work) {
    if (!(work.tool().shape() instanceof ToolShape.Vee vee)) {
      unsuited(work, work.tool(), "a V-groove needs a V-bit");
      return;
    }
    for (Tool tool : work.floorTools()) {
      if (!(tool.shape() instanceof ToolShape.Flat)) {
        unsuited(work, tool, "a floor needs a flat bit");
      }
    }
    double deepest = work.deepestMm().orElse(work.floorMm());
    if (!(deepest > 0) || !Double.isFinite(deepest)) {
      found.error(
          PlanCode.BAD_DEPTH,
          work.where(),
          "the deepest of vgroove is " + deepest + " mm but must be above 0",
          "depths are counted downward from the stock's top");
      return;
    }
    checkDepth(work);
    checkRidges(work, vee);
    checkArea(work, vee);
  }

  private void checkDepth(Work.VGroove work) {
    if (work.deepestMm().isEmpty()) {
      return; // the depth follows from the shape and is checked when that is known
    }
    double deepest = work.deepestMm().getAsDouble();
    double beyond = deepest - work.bitReachMm();
    if (beyond > tolerances.totalMm()) {
      found.error(
          PlanCode.TOOL_TOO_SHORT,
          work.where(),
          "vgroove goes "
              + Amounts.length(deepest)
              + " deep, "
              + Amounts.length(beyond)
              + " more than tool "
              + work.tool().name()
              + " can cut",
          "use a wider bit, or make it less deep");
    }
    if (deepest >= setup.stock().thinnestMm()) {
      found.error(
          PlanCode.DEPTH_BEYOND_STOCK,
          work.where(),
          "vgroove goes "
              + Amounts.length(deepest)
              + " deep but the stock is "
              + Amounts.length(setup.stock().thinnestMm())
              + " thick at its thinnest",
          "make it less deep by more than " + Amounts.length(deepest - setup.stock().thinnestMm()));
    }
  }

  private void checkRidges(Work.VGroove work, ToolShape.Vee vee) {
    double stepover = VCutter.of(work.tool(), work.floorMm(), 0).stepoverMm(work.ridgeMm());
    if (!(stepover >= LEAST_STEPOVER_MM)) {
      found.error(
          PlanCode.RIDGES_TOO_FINE,
          work.where(),
          "ridges of "
              + Amounts.length(work.ridgeMm())
              + " need passes "
              + Amounts.length(stepover)
              + " apart with a tip of "
              + Amounts.length(vee.tipMm()),
          "allow higher ridges, and scrape the floor");
    }
  }

  private void checkArea(Work.VGroove work, ToolShape.Vee vee) {
    Region area =
        design.motifs().stream()
            .filter(m -> m.name().equals(work.on().motif()))
            .findFirst()
            .map(m -> Selection.area(m, work.on(), Affine.IDENTITY, tolerances.flattenMm()))
            .orElse(Region.EMPTY);
    if (area.isEmpty()) {
      Optional<String> pick = work.on().pick();
      found.error(
          PlanCode.NOTHING_TO_CUT,
          work.where(),
          "vgroove finds no filled areas"
              + pick.map(p -> " named or classed " + p).orElse("")
              + " in "
              + work.on().motif(),
          "");
    } else if (vee.tipMm() > 0
        && Offset.offset(area, -vee.tipMm() / 2, tolerances.offsetMm()).isEmpty()) {
      found.error(
          PlanCode.TOOL_TOO_WIDE,
          work.where(),
          "the tip of "
              + work.tool().name()
              + " is "
              + Amounts.length(vee.tipMm())
              + " wide but the widest place of "
              + work.on().motif()
              + ", which lies about "
              + Amounts.place(area.bounds().centre().x(), area.bounds().centre().y())
              + " of the drawing, is "
              + Inradius.beside(2 * Inradius.of(area, vee.tipMm() / 2), vee.tipMm()),
          "use a bit with a finer tip, or a larger motif");
    }
  }

  private void unsuited(Work work, Tool tool, String why) {
    found.error(
        PlanCode.TOOL_UNSUITED,
        work.where(),
        "tool " + tool.name() + " does not suit " + work.operation() + ": " + why,
        "");
  }
}
