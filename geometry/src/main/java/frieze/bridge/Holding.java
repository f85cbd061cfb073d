package frieze.bridge;

import frieze.curve.Point;
import frieze.region.Region;
import java.util.List;

/**
 * How firmly bridges hold an island.
 *
 * <p>The push is square to the sheet. A bridge of width w and thickness t starts to yield when it
 * is bent by {@code yield * w t^2 / 6} (its section modulus). Twisting is borne a little worse: by
 * {@value #TWIST} of that, for a bridge twice as wide as thick (shear yield 0.577 of yield, torsion
 * modulus 0.246 w t^2: handbook values, known by memory); all arms are counted so. A push at a
 * place with arm a from a bridge's far end is carried by that bridge up to {@code 0.85 yield w t^2
 * / 6 / a}; several bridges carry the sum, since each is in balance alone (lower bound theorem of
 * plasticity).
 */
final class Holding {
  static final double TWIST = 0.85;

  /** An island that reaches further from its only bridge than this many widths would swing. */
  static final double HINGE_WIDTHS = 3;

  private static final double STEP_MM = 1;

  private Holding() {}

  /** The push that the bridges stand at the worst place of the island's edge, in newtons. */
  static double loadN(Region island, List<Bridge> bridges, BridgeRules rules) {
    double worst = Double.POSITIVE_INFINITY;
    for (Point at : Islands.edge(island, STEP_MM)) {
      double sum = 0;
      for (Bridge bridge : bridges) {
        double modulus = bridge.widthMm() * rules.thicknessMm() * rules.thicknessMm() / 6;
        double arm = Math.max(at.distance(bridge.atHold()), bridge.lengthMm());
        sum += TWIST * rules.yieldMpa() * modulus / arm;
      }
      worst = Math.min(worst, sum);
    }
    return worst;
  }

  /** Whether an island could swing about its only bridge. */
  static boolean hinges(Region island, Bridge only) {
    double reach = 0;
    for (Point at : Islands.edge(island, STEP_MM)) {
      reach = Math.max(reach, at.distance(only.atIsland()));
    }
    return reach > HINGE_WIDTHS * only.widthMm();
  }
}
