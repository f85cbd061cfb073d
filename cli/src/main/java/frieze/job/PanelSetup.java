package frieze.job;

import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.keys.JobCode;
import frieze.layout.Panel;
import frieze.shop.Machine;
import frieze.shop.Setup;
import frieze.shop.Stock;

/** Puts a panel on its stock and the stock on the machine. */
public final class PanelSetup {
  /** A panel on a sawn blank, and in the middle of a board as wide as itself, just fits. */
  private static final double EQUAL_MM = 1e-6;

  private PanelSetup() {}

  /**
   * Makes the setup. A panel lies in the middle of its stock unless the job says where; on a blank
   * its corner is the stock's.
   *
   * @throws BadInputException if the panel does not lie on the stock
   */
  public static Setup of(Machine machine, Job.PanelJob asked, Panel panel) {
    Stock stock = asked.stock();
    Point at = corner(asked, panel);
    double proud = stock.blank() ? 0 : asked.allowance().wallsMm();
    checkOnStock("X", at.x() - proud, panel.lengthMm() + 2 * proud, stock.lengthMm(), asked);
    checkOnStock("Y", at.y() - proud, panel.heightMm() + 2 * proud, stock.widthMm(), asked);
    return new Setup(
        machine,
        stock,
        asked.zero(),
        at.x(),
        at.y(),
        asked.clearanceMm(),
        asked.spoilboardMm(),
        asked.keepOuts(),
        asked.tools(),
        asked.allowance());
  }

  /** Where the lower left corner of a panel lies on its stock. */
  static Point corner(Job.PanelJob asked, Panel panel) {
    Stock stock = asked.stock();
    Point usual =
        stock.blank()
            ? new Point(0, 0)
            : new Point(
                (stock.lengthMm() - panel.lengthMm()) / 2,
                (stock.widthMm() - panel.heightMm()) / 2);
    return asked.position().orElse(usual);
  }

  private static void checkOnStock(
      String axis, double atMm, double sizeMm, double stockMm, Job.PanelJob asked) {
    double before = -atMm;
    double beyond = atMm + sizeMm - stockMm;
    if (Math.max(before, beyond) > EQUAL_MM) {
      throw new BadInputException(
          Diagnostic.error(
              JobCode.PANEL_TOO_LARGE,
              asked.whereSize(),
              "the panel \""
                  + asked.name()
                  + "\" reaches "
                  + Amounts.length(Math.max(before, beyond))
                  + " beyond the stock along "
                  + axis,
              "change its position, or use a larger stock"));
    }
  }
}
