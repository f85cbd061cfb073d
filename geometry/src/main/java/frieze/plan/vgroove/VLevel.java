package frieze.plan.vgroove;

import frieze.plan.cut.DepthPasses;
import java.util.ArrayList;
import java.util.List;

/**
 * How deep one pass of a V-bit goes where a depth is asked for.
 *
 * @param mostMm no deeper than this
 * @param leaveMm how much stays for the last pass
 */
public record VLevel(double mostMm, double leaveMm) {
  /** What a V-bit may take in one pass in hardwood and in softer stuff: common practice. */
  private static final double HARD_MM = 3;

  private static final double SOFT_MM = 6;

  /** Nothing is cut. */
  static final VLevel NOTHING = new VLevel(0, 0);

  private static final VLevel ALL = new VLevel(Double.POSITIVE_INFINITY, 0);

  /** The most that a V-bit takes in one pass. */
  static double limitMm(double toolLimitMm, boolean hard) {
    return Math.min(toolLimitMm, hard ? HARD_MM : SOFT_MM);
  }

  /**
   * The passes for a depth: one if the limit allows it; else equal ones that leave a little, which
   * the last pass takes everywhere.
   */
  public static List<VLevel> of(double deepestMm, double limitMm, double leaveMm) {
    List<VLevel> levels = new ArrayList<>();
    if (deepestMm > limitMm) {
      double rough = deepestMm - leaveMm;
      for (double depth : DepthPasses.depths(rough, limitMm)) {
        levels.add(new VLevel(depth, leaveMm));
      }
    }
    levels.add(ALL);
    return levels;
  }

  public double depthMm(double askedMm) {
    return Math.min(mostMm, Math.max(0, askedMm - leaveMm));
  }
}
