package frieze.plan.cut;

import frieze.shop.Material;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;

/** Divides a depth into equal passes. */
public final class DepthPasses {
  /** A pass may be deeper than the limit by this part of it before one more is made. */
  private static final double SLACK = 1e-6;

  private DepthPasses() {}

  /**
   * The most that a tool may take in one pass: its own limit and the material's, which is half the
   * diameter in hardwood and the diameter in softer stuff. Source: common practice.
   */
  public static double limitMm(Tool tool, Material material) {
    double part = material.kind() == Material.Kind.HARDWOOD ? 0.5 : 1;
    return Math.min(tool.passDepthMm().orElse(Double.MAX_VALUE), part * tool.diameterMm());
  }

  /** The depth after each pass, the last one exactly the whole. */
  public static List<Double> depths(double depthMm, double limitMm) {
    if (!(depthMm > 0) || !(limitMm > 0)) {
      throw new IllegalArgumentException(
          "depthMm and limitMm must be > 0 but were " + depthMm + ", " + limitMm + " mm");
    }
    int passes = Math.max(1, (int) Math.ceil(depthMm / limitMm - SLACK));
    List<Double> depths = new ArrayList<>();
    for (int i = 1; i <= passes; i++) {
      depths.add(i == passes ? depthMm : depthMm * i / passes);
    }
    return depths;
  }
}
