package frieze.torch;

import frieze.design.Design;
import frieze.design.TorchWay;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Setup;

/** Checks sheet, machine and rows before anything is planned. */
final class SheetCheck {
  private static final double ROUNDING_MM = 1e-6;

  private final Design design;
  private final Setup setup;
  private final Work.TorchCut work;
  private final Diagnostics found;

  SheetCheck(Design design, Setup setup, Work.TorchCut work, Diagnostics found) {
    this.design = design;
    this.setup = setup;
    this.work = work;
    this.found = found;
  }

  void check() {
    Material material = setup.stock().material();
    if (material.kind() != Material.Kind.STEEL) {
      found.error(
          TorchCode.NOT_STEEL,
          work.where(),
          material.name() + " can't be cut with a torch",
          "wood is cut with a router");
    }
    if (material.zincCoated()) {
      found.warning(
          TorchCode.ZINC,
          work.where(),
          material.name() + " is coated with zinc: its fume makes people ill (metal fume fever)",
          "extract the fume at the table, wear a respirator made for metal fume, follow local"
              + " codes; or use bare sheet");
    }
    checkRows();
    checkFits();
    Machine machine = setup.machine();
    double top = Math.min(machine.x().maxFeedMmPerMin(), machine.y().maxFeedMmPerMin());
    if (work.torch().row().feedMmPerMin() > top) {
      found.warning(
          TorchCode.SLOW_MACHINE,
          work.where(),
          machine.name()
              + " cuts at "
              + Math.round(top)
              + " mm/min at most, the chart asks for "
              + Math.round(work.torch().row().feedMmPerMin()),
          "a lower current, or a smaller nozzle, suits a slower machine");
    }
  }

  private void checkRows() {
    TorchWay.Rows rows = work.way().rows();
    double least = 2 * work.torch().goodPierceMm();
    if (rows.along() * rows.across() > 1 && rows.gapMm() < least) {
      found.error(
          TorchCode.ROWS_TOO_CLOSE,
          work.where(),
          "copies "
              + Amounts.length(rows.gapMm())
              + " apart leave no room for a pierce between them",
          "leave " + Amounts.length(least) + " or more");
    }
  }

  private void checkFits() {
    TorchWay.Rows rows = work.way().rows();
    double kerf = work.way().outline() ? work.torch().kerfMm() : 0;
    double length =
        rows.along() * design.panel().lengthMm() + (rows.along() - 1) * rows.gapMm() + kerf;
    double width =
        rows.across() * design.panel().heightMm() + (rows.across() - 1) * rows.gapMm() + kerf;
    fits("X", setup.panelXMm() + length, kerf - setup.panelXMm(), setup.stock().lengthMm());
    fits("Y", setup.panelYMm() + width, kerf - setup.panelYMm(), setup.stock().widthMm());
  }

  private void fits(String axis, double highMm, double belowMm, double sheetMm) {
    double beyond = Math.max(highMm - sheetMm, belowMm);
    if (beyond > ROUNDING_MM) {
      found.error(
          TorchCode.OFF_SHEET,
          work.where(),
          "the cuts reach " + Amounts.length(beyond) + " beyond the sheet along " + axis,
          "use a larger sheet, fewer copies, or another position");
    }
  }
}
