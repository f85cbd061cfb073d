package frieze.steps;

import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.motion.Box;
import frieze.plan.cut.Cut;
import frieze.shop.KeepOut;
import frieze.shop.Setup;
import java.util.List;

/**
 * Finds places for the pins in the strips of waste before and behind the panel: as far from each
 * other along X as the travel allows, so that they hold the angle well, and clear of clamps.
 */
final class PinPlaces {
  /** What stays around a hole, between it and the cuts or the edge of the stock. */
  private static final double WEB_MM = 3;

  private static final double TRY_MM = 1;

  private final List<Cut> cuts;
  private final Setup setup;
  private final Pins.Wanted wanted;

  PinPlaces(List<Cut> cuts, Setup setup, Pins.Wanted wanted) {
    this.cuts = cuts;
    this.setup = setup;
    this.wanted = wanted;
  }

  /**
   * Places the pins.
   *
   * @param windowFromMm where the travel of the first step begins along the stock
   * @param windowMm how far it goes
   * @throws BadInputException if a strip of waste is too narrow, or full of clamps
   */
  Pins in(double windowFromMm, double windowMm, double shiftMm, int count) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Cut cut : cuts) {
      for (Cut.Move move : cut.moves()) {
        Box box = move.path().box();
        low = Math.min(low, box.minY() - cut.tool().radiusMm());
        high = Math.max(high, box.maxY() + cut.tool().radiusMm());
      }
    }
    double width = setup.stock().widthMm();
    double front = low + setup.panelYMm();
    double back = high + setup.panelYMm();
    checkStrip("in front of", front);
    checkStrip("behind", width - back);
    double half = wanted.diameterMm() / 2 + WEB_MM;
    double left = Math.max(windowFromMm + half, half);
    double right =
        Math.min(
            windowFromMm + windowMm - half,
            setup.stock().lengthMm() - half - (count - 2) * shiftMm);
    Point right0 = clear(right, -TRY_MM, front / 2, shiftMm, count, left + shiftMm);
    Point left0 = clear(left + shiftMm, TRY_MM, (back + width) / 2, shiftMm, count, right);
    return new Pins(wanted, right0, left0, shiftMm);
  }

  private void checkStrip(String where, double stripMm) {
    double needed = wanted.diameterMm() + 2 * WEB_MM;
    if (stripMm < needed) {
      throw bad(
          "the waste "
              + where
              + " the panel's cuts is "
              + Amounts.length(Math.max(0, stripMm))
              + " wide; a pin of "
              + Amounts.length(wanted.diameterMm())
              + " needs "
              + Amounts.length(needed),
          "use a wider stock, thinner pins, or give the panel another position");
    }
  }

  /** The first place along X where no hole of the pin, in any step, meets a clamp. */
  private Point clear(double x, double dx, double y, double shiftMm, int count, double lastMm) {
    for (double at = x; (lastMm - at) * dx >= 0; at += dx) {
      if (isClear(at, y, shiftMm, count)) {
        return new Point(at, y);
      }
    }
    throw bad(
        "every place for a pin at Y" + Amounts.length(y) + " of the stock meets a clamp",
        "put the clamps elsewhere: the pins stand in the waste in front of the panel and behind"
            + " it");
  }

  private boolean isClear(double x, double y, double shiftMm, int count) {
    double half = wanted.diameterMm() / 2 + WEB_MM + wanted.tool().diameterMm();
    for (int k = -1; k < count - 1; k++) {
      double at = x + k * shiftMm;
      for (KeepOut clamp : setup.keepOuts()) {
        if (at + half > clamp.minXMm()
            && at - half < clamp.maxXMm()
            && y + half > clamp.minYMm()
            && y - half < clamp.maxYMm()) {
          return false;
        }
      }
    }
    return true;
  }

  private BadInputException bad(String message, String hint) {
    return new BadInputException(
        Diagnostic.error(StepCode.NO_ROOM_FOR_PINS, wanted.where(), message, hint));
  }
}
