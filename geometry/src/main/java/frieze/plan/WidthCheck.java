package frieze.plan;

import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Selection;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.plan.cut.PlanCode;
import frieze.plan.recess.ClearedAreas;
import frieze.shop.ToolShape;
import java.util.Collections;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/** Checks a groove that is as wide as its lines are drawn. */
final class WidthCheck {
  /** Far below what can be seen. */
  private static final double SAME_MM = 0.001;

  private final Design design;
  private final Work.Groove work;
  private final Diagnostics found;

  WidthCheck(Design design, Work.Groove work, Diagnostics found) {
    this.design = design;
    this.work = work;
    this.found = found;
  }

  void check(Motif motif) {
    if (work.tool().shape() instanceof ToolShape.Flat) {
      found.error(
          PlanCode.TOOL_UNSUITED,
          work.where(),
          "tool "
              + work.tool().name()
              + " does not suit a groove by width: a flat bit cuts one width at any depth",
          "use a V-bit or a round-nosed bit");
      return;
    }
    List<Double> widths = List.copyOf(Selection.widthsMm(motif, work.on()).values());
    if (widths.stream().noneMatch(w -> w > 0)) {
      found.error(
          PlanCode.NOTHING_TO_CUT,
          work.where(),
          "groove by width finds no lines with a width in " + motif.name(),
          "give the drawing's lines a stroke width, or leave out \"by width\"");
      return;
    }
    DoubleSummaryStatistics scales =
        design.placementsOf(motif.name()).stream()
            .mapToDouble(p -> p.map().affine().scale())
            .summaryStatistics();
    tooWide(motif, widths, scales.getMax());
    tooThin(motif, widths, scales.getMin());
    thinInPlaces(motif, scales.getMin());
  }

  private void thinInPlaces(Motif motif, double scale) {
    long partly =
        Selection.varyingMm(motif, work.on(), scale).values().stream()
            .filter(w -> work.depthMm(Collections.min(w)) <= 0)
            .filter(w -> work.depthMm(Collections.max(w)) > 0)
            .count();
    if (partly > 0) {
      found.warning(
          PlanCode.THINNER_THAN_TIP,
          work.where(),
          (partly == 1 ? "a line in " : partly + " lines in ")
              + motif.name()
              + (partly == 1 ? " is" : " are")
              + " in places no wider than the tip of "
              + work.tool().name()
              + ", which cuts nothing there",
          "a bit with a finer tip reaches farther into them");
    }
  }

  private void tooWide(Motif motif, List<Double> widths, double scale) {
    double most = 2 * ClearedAreas.radiusBelow(work.tool(), work.depthMm());
    long wider = widths.stream().filter(w -> w * scale > most + SAME_MM).count();
    if (wider > 0) {
      double widest = scale * widths.stream().mapToDouble(w -> w).max().orElseThrow();
      found.warning(
          PlanCode.LINE_TOO_WIDE,
          work.where(),
          wider
              + " of "
              + widths.size()
              + " lines in "
              + motif.name()
              + " are drawn up to "
              + Amounts.length(widest)
              + " wide, but "
              + work.tool().name()
              + " cuts "
              + Amounts.length(most)
              + " at most when "
              + Amounts.length(work.depthMm())
              + " deep",
          "allow it to go deeper, or use a bit with a wider angle; areas are for vgroove");
    }
  }

  private void tooThin(Motif motif, List<Double> widths, double scale) {
    long thinner = widths.stream().filter(w -> !(work.depthMm(w * scale) > 0)).count();
    if (thinner > 0) {
      found.warning(
          PlanCode.THINNER_THAN_TIP,
          work.where(),
          thinner
              + " of "
              + widths.size()
              + " lines in "
              + motif.name()
              + " are no wider than the tip of "
              + work.tool().name()
              + " and are left out",
          "draw them wider, or give them a depth in an item of their own");
    }
  }
}
