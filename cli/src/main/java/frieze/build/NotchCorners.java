package frieze.build;

import frieze.design.Corners;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.opening.Notch;
import frieze.opening.OpeningCode;
import frieze.opening.Sitting;
import java.util.List;

/**
 * Checks that lugs, which have sharp corners, go into their notches, in which a round bit leaves
 * its radius.
 */
public final class NotchCorners {
  /** A bit's radius keeps clear of a sharp corner that is this share of it from both walls. */
  private static final double CLEAR_SHARE = 1 - Math.sqrt(0.5);

  private static final double ROUNDING_MM = 1e-6;

  private NotchCorners() {}

  static void check(Sitting sitting, List<Work> work, Diagnostics found) {
    for (Work each : work) {
      if (each instanceof Work.Cutout cutout
          && cutout.way().on().isEmpty()
          && cutout.way().corners() == Corners.ROUND) {
        sitting.notches().forEach(notch -> check(notch, cutout, found));
      }
    }
  }

  private static void check(Notch notch, Work.Cutout cutout, Diagnostics found) {
    double radius = cutout.tool().radiusMm();
    double intoMm = intoLugMm(radius, notch.leastMm());
    if (intoMm > ROUNDING_MM) {
      found.error(
          OpeningCode.NOTCH_STAYS_ROUND,
          cutout.where(),
          "tool "
              + cutout.tool().name()
              + " leaves its radius in the corners of the notch for the lug \""
              + notch.lug().name()
              + "\", "
              + Amounts.length(intoMm)
              + " into the lug's own corners",
          "say `corners: ear` for the cutout, or give the lug a clearance of "
              + Amounts.length(notch.clearanceMm() + CLEAR_SHARE * radius - notch.leastMm()));
    }
  }

  /** How far the round corner of a notch reaches into the sharp one of a lug. */
  public static double intoLugMm(double radiusMm, double gapMm) {
    double toCentre = Math.max(0, radiusMm - gapMm);
    return Math.hypot(toCentre, toCentre) - radiusMm;
  }
}
