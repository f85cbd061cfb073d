package frieze.plan.cut;

import frieze.curve.Tolerances;
import frieze.diagnostic.Amounts;
import frieze.region.Offset;
import frieze.region.Region;
import java.util.List;

/** The radius of the largest disc in a region, by halving. */
public final class Inradius {
  private static final int STEPS = 12;

  /** Messages tell widths to a hundredth: two that differ by less would read alike or odd. */
  private static final double TOLD_APART_MM = 0.01;

  private Inradius() {}

  public static double of(Region area, double tooMuch) {
    double low = 0;
    double high = tooMuch;
    for (int i = 0; i < STEPS; i++) {
      double middle = (low + high) / 2;
      List<Region> parts = Offset.offset(area, -middle, Tolerances.DEFAULT.offsetMm()).parts();
      if (parts.isEmpty()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  /** Says how wide a place is, after the width of a tool that does not fit into it. */
  public static String beside(double widestMm, double toolMm) {
    return toolMm - widestMm < TOLD_APART_MM ? "no wider" : Amounts.length(widestMm);
  }
}
