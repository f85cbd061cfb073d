package frieze.plan;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Selection;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.plan.cut.Inradius;
import frieze.plan.cut.PlanCode;
import frieze.plan.groove.FadingGroove;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Optional;

/** Checks the work list before anything is planned. */
final class WorkCheck implements Work.Visitor<Boolean> {
  /** A floor thinner than this is worth a warning. */
  private static final double THIN_FLOOR_MM = 1.5;

  /** A stepover below this part of the diameter is a slip of the pen. */
  private static final double LEAST_STEPOVER_PART = 0.04;

  /** A strip of waste thinner than this may break off while it is cut. */
  private static final double THIN_STRIP_MM = 4;

  /** The thickness over the least width of a strip that stands: common practice. */
  private static final double SLENDERNESS = 8;

  private final Design design;
  private final Setup setup;
  private final Tolerances tolerances;
  private final Diagnostics found;

  WorkCheck(Design design, Setup setup, Tolerances tolerances, Diagnostics found) {
    this.design = design;
    this.setup = setup;
    this.tolerances = tolerances;
    this.found = found;
  }

  /** Checks everything; the errors are among the diagnostics afterwards. */
  void check() {
    SourceSpan where = design.work().isEmpty() ? SourceSpan.NONE : design.work().get(0).where();
    if (setup.stock().material().kind() == Material.Kind.STEEL) {
      found.error(
          PlanCode.MATERIAL_UNSUITED,
          where,
          setup.stock().material().name() + " can't be cut with a router",
          "steel panels are cut with a torch");
    }
    checkPanel(where);
    for (Work work : design.work()) {
      boolean unused = work.accept(this);
    }
  }

  private void checkPanel(SourceSpan where) {
    double length = design.panel().lengthMm();
    double height = design.panel().heightMm();
    double proud = setup.stock().blank() ? 0 : setup.allowance().wallsMm();
    double beyond =
        proud
            + Math.max(
                Math.max(-setup.panelXMm(), -setup.panelYMm()),
                Math.max(
                    setup.panelXMm() + length - setup.stock().lengthMm(),
                    setup.panelYMm() + height - setup.stock().widthMm()));
    if (beyond > tolerances.totalMm()) {
      found.error(
          PlanCode.PANEL_BEYOND_STOCK,
          where,
          "the panel reaches " + Amounts.length(beyond) + " beyond the stock",
          "use a larger stock, or place the panel elsewhere on it");
    }
    double tooLong =
        Math.max(length - setup.machine().travelXMm(), height - setup.machine().travelYMm());
    if (tooLong > 0) {
      found.error(
          PlanCode.MACHINE_TOO_SMALL,
          where,
          "the panel is "
              + Amounts.length(tooLong)
              + " larger than the travel of "
              + setup.machine().name(),
          "use a machine with more travel");
    }
  }

  @Override
  public Boolean groove(Work.Groove groove) {
    checkBlind(groove, groove.depthMm());
    if (groove.tool().shape() instanceof ToolShape.Drill) {
      unsuited(groove, "a drill can't cut sideways");
    }
    List<Path> lines =
        motif(groove.on()).map(m -> Selection.lines(m, groove.on())).orElse(List.of());
    if (lines.isEmpty()) {
      nothing(groove, groove.on(), "lines");
    }
    if (groove.byWidth() && !lines.isEmpty()) {
      motif(groove.on()).ifPresent(new WidthCheck(design, groove, found)::check);
    }
    groove.fade().ifPresent(fade -> FadingGroove.check(groove, fade, lines, found));
    return true;
  }

  @Override
  public Boolean vgroove(Work.VGroove vgroove) {
    new VGrooveCheck(design, setup, tolerances, found).check(vgroove);
    return true;
  }

  @Override
  public Boolean recess(Work.Recess recess) {
    checkBlind(recess, recess.depthMm());
    if (!(recess.tool().shape() instanceof ToolShape.Flat
        || recess.tool().shape() instanceof ToolShape.Ball)) {
      unsuited(recess, "a recess needs a straight or a round-nosed bit");
    }
    double most = recess.tool().diameterMm();
    double least = LEAST_STEPOVER_PART * most;
    if (!(recess.stepoverMm() >= least && recess.stepoverMm() <= most)) {
      found.error(
          PlanCode.BAD_STEPOVER,
          recess.where(),
          "the stepover is "
              + Amounts.length(recess.stepoverMm())
              + " but must be between "
              + Amounts.length(least)
              + " and the tool's diameter, "
              + Amounts.length(most),
          "0.4 to 0.5 of the diameter is usual");
    }
    checkArea(recess);
    return true;
  }

  private void checkArea(Work.Recess recess) {
    Region area =
        motif(recess.on())
            .map(m -> Selection.area(m, recess.on(), Affine.IDENTITY, tolerances.flattenMm()))
            .orElse(Region.EMPTY);
    if (area.isEmpty()) {
      nothing(recess, recess.on(), "filled areas");
      return;
    }
    checkRoom(recess, recess.on().motif(), area);
  }

  /** Whether a tool fits into an area at all. */
  private void checkRoom(Work work, String motif, Region area) {
    double radius = work.tool().radiusMm() + setup.allowance().wallsMm();
    if (!Offset.offset(area, -radius, tolerances.offsetMm()).isEmpty()) {
      return;
    }
    double widest = 2 * Inradius.of(area, radius);
    found.error(
        PlanCode.TOOL_TOO_WIDE,
        work.where(),
        "tool "
            + work.tool().name()
            + " is "
            + Amounts.length(work.tool().diameterMm())
            + " wide but the widest place of "
            + motif
            + " is "
            + Inradius.beside(widest - 2 * setup.allowance().wallsMm(), work.tool().diameterMm()),
        "use a smaller tool, or a larger motif");
  }

  /** An opening narrower than the tool can't be cut; the others can. */
  private void checkOpenings(Work.Cutout cutout, Work.Target on, Region area) {
    double radius = cutout.tool().radiusMm() + setup.allowance().wallsMm();
    List<Region> narrow =
        area.parts().stream()
            .filter(p -> Offset.offset(p, -radius, tolerances.offsetMm()).isEmpty())
            .toList();
    if (narrow.size() == area.parts().size()) {
      checkRoom(cutout, on.motif(), area);
    } else if (!narrow.isEmpty()) {
      Point middle = narrow.get(0).bounds().centre();
      found.warning(
          PlanCode.NOT_ALL_REACHED,
          cutout.where(),
          narrow.size()
              + " of the "
              + area.parts().size()
              + " areas of "
              + on.motif()
              + " are narrower than tool "
              + cutout.tool().name()
              + ", which is "
              + Amounts.length(cutout.tool().diameterMm())
              + " wide, and are not cut; the first is at "
              + Amounts.place(middle.x(), middle.y())
              + " of the drawing",
          "use a smaller tool");
    }
  }

  @Override
  public Boolean cutout(Work.Cutout cutout) {
    double depth = setup.stock().thickestMm() + setup.spoilboardMm();
    if (cutout.way().on().isPresent()) {
      Work.Target on = cutout.way().on().get();
      Region area =
          motif(on)
              .map(m -> Selection.area(m, on, Affine.IDENTITY, tolerances.flattenMm()))
              .orElse(Region.EMPTY);
      if (area.isEmpty()) {
        nothing(cutout, on, "filled areas");
      } else if (cutout.way().side() == Work.Side.INSIDE) {
        checkOpenings(cutout, on, area);
      }
    } else if (setup.stock().blank()) {
      found.warning(
          PlanCode.BLANK_NOT_CUT_OUT,
          cutout.where(),
          "the stock is a sawn blank: the cutout is left out",
          "");
      return true;
    }
    checkTool(cutout, depth);
    if (!(cutout.tool().shape() instanceof ToolShape.Flat)) {
      unsuited(cutout, "a cutout needs a straight bit");
    }
    checkWaste(cutout);
    double skin = cutout.way().skinMm();
    if (skin >= setup.stock().thinnestMm()) {
      found.error(
          PlanCode.SKIN_TOO_THICK,
          cutout.where(),
          "a skin of "
              + Amounts.length(skin)
              + " leaves nothing to cut of a stock "
              + Amounts.length(setup.stock().thinnestMm())
              + " thick",
          "make it thinner than the stock; 0.3 to 0.8 mm is common practice");
    }
    if (cutout.tabs().isEmpty() && skin == 0 && cutout.way().leaveMm() > 0) {
      found.error(
          PlanCode.FINISH_UNHELD,
          cutout.where(),
          "the finishing pass would cut a part that nothing holds any more",
          "ask for tabs or a skin, or leave nothing on the wall");
    } else if (cutout.tabs().isEmpty() && skin == 0) {
      found.warning(
          PlanCode.NO_TABS,
          cutout.where(),
          "no tabs hold the panel: it comes loose while the bit is still in the cut",
          "ask for tabs, or hold the panel by screws or double-sided tape");
    }
    return true;
  }

  private void checkWaste(Work.Cutout cutout) {
    double slot = cutout.tool().diameterMm() + setup.allowance().wallsMm();
    double right = setup.stock().lengthMm() - setup.panelXMm() - design.panel().lengthMm();
    double back = setup.stock().widthMm() - setup.panelYMm() - design.panel().heightMm();
    double[] strips = {setup.panelXMm(), right, setup.panelYMm(), back};
    double thinnest = Double.POSITIVE_INFINITY;
    for (double strip : strips) {
      // With no more than the slot's width there is no strip.
      thinnest = strip > slot ? Math.min(thinnest, strip - slot) : thinnest;
    }
    if (thinnest < Math.max(THIN_STRIP_MM, setup.stock().thickestMm() / SLENDERNESS)) {
      found.warning(
          PlanCode.WASTE_TOO_THIN,
          cutout.where(),
          "only " + Amounts.length(thinnest) + " of the stock stay beside the cutout",
          "use a larger stock, or hold the strip down");
    }
  }

  @Override
  public Boolean bore(Work.Bore bore) {
    new BoreCheck(design, setup, this, found).check(bore);
    return true;
  }

  @Override
  public Boolean edge(Work.Edge edge) {
    new EdgeCheck(design, setup, tolerances, found).check(edge, this);
    return true;
  }

  @Override
  public Boolean torchCut(Work.TorchCut torchCut) {
    found.error(
        PlanCode.MATERIAL_UNSUITED,
        torchCut.where(),
        "torchcut can't be done with a spindle",
        "use a plasma table, in a job of its own");
    return false;
  }

  private Optional<Motif> motif(Work.Target target) {
    return design.motifs().stream().filter(m -> m.name().equals(target.motif())).findFirst();
  }

  void checkBlind(Work work, double depthMm) {
    checkTool(work, depthMm);
    double left = setup.stock().thinnestMm() - depthMm;
    if (left <= 0) {
      found.error(
          PlanCode.DEPTH_BEYOND_STOCK,
          work.where(),
          work.operation()
              + " goes "
              + deep(work, depthMm)
              + " but the stock is "
              + Amounts.length(setup.stock().thinnestMm())
              + " thick at its thinnest",
          "make it less deep by more than " + Amounts.length(-left));
    } else if (left < THIN_FLOOR_MM) {
      found.warning(
          PlanCode.THIN_FLOOR,
          work.where(),
          work.operation() + " leaves only " + Amounts.length(left) + " of wood below it",
          "");
    }
  }

  void checkTool(Work work, double depthMm) {
    if (!(depthMm > 0) || !Double.isFinite(depthMm)) {
      found.error(
          PlanCode.BAD_DEPTH,
          work.where(),
          "the depth of " + work.operation() + " is " + depthMm + " mm but must be above 0",
          "depths are counted downward from the stock's top");
      return;
    }
    Tool tool = work.tool();
    if (!(tool.passDepthMm().orElse(1) > 0)) {
      found.error(
          PlanCode.BAD_TOOL_LIMIT,
          work.where(),
          "tool " + tool.name() + " may take " + tool.passDepthMm().orElse(0) + " mm in a pass",
          "write the most that it may take, or leave it to the material");
    }
    double canMm = Math.min(tool.fluteLengthMm(), tool.reachMm());
    if (depthMm > canMm + tolerances.totalMm()) {
      found.error(
          PlanCode.TOOL_TOO_SHORT,
          work.where(),
          work.operation()
              + " goes "
              + deep(work, depthMm)
              + ", "
              + Amounts.length(depthMm - canMm)
              + " more than tool "
              + tool.name()
              + " can cut",
          "use a longer tool");
    }
  }

  private String deep(Work work, double depthMm) {
    boolean more = setup.allowance().faceMm() > 0 && !(work instanceof Work.Cutout);
    return Amounts.length(depthMm)
        + " deep"
        + (more ? " below the stock's top, with what finishing takes off the face" : "");
  }

  void unsuited(Work work, String why) {
    found.error(
        PlanCode.TOOL_UNSUITED,
        work.where(),
        "tool " + work.tool().name() + " does not suit " + work.operation() + ": " + why,
        "");
  }

  private void nothing(Work work, Work.Target target, String what) {
    String picked = target.pick().map(p -> " named or classed " + p).orElse("");
    found.error(
        PlanCode.NOTHING_TO_CUT,
        work.where(),
        work.operation() + " finds no " + what + picked + " in " + target.motif(),
        "");
  }
}
