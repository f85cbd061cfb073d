package frieze.shop;

import java.util.List;

/**
 * What the widths of test grooves tell of a V-bit.
 *
 * <p>A groove of depth d is {@code tip + 2 d tan(angle / 2)} wide, a straight line over the depth:
 * two grooves give angle and tip, more give the line with the least squares. A tip is never less
 * than nothing: where the line would say so, it is laid through the point, and the deviation shows
 * what does not fit.
 *
 * @param angleRad the full included angle
 * @param tipMm the diameter of the flat at the tip; 0 for a point
 * @param worst the groove that lies farthest from the line
 * @param worstMm by how much it was measured wider than the line says; below 0 if narrower
 */
public record BitTest(double angleRad, double tipMm, Groove worst, double worstMm) {
  /**
   * A straight test groove, measured.
   *
   * @param depthMm below the surface
   * @param widthMm at the surface
   */
  public record Groove(double depthMm, double widthMm) {
    public Groove {
      requirePositive("depthMm", depthMm);
      requirePositive("widthMm", widthMm);
    }
  }

  /**
   * Fits angle and tip to grooves.
   *
   * @param grooves of at least two different depths; wider on the whole where they are deeper
   * @throws IllegalArgumentException if they are not so
   */
  public static BitTest of(List<Groove> grooves) {
    double slope = slope(grooves);
    double depth = grooves.stream().mapToDouble(Groove::depthMm).average().orElseThrow();
    double width = grooves.stream().mapToDouble(Groove::widthMm).average().orElseThrow();
    double tip = width - slope * depth;
    if (tip < 0) {
      tip = 0;
      slope = sum(grooves, 0, 0) / squares(grooves, 0);
    }
    Groove worst = grooves.get(0);
    for (Groove groove : grooves) {
      boolean worse =
          Math.abs(deviation(groove, slope, tip)) > Math.abs(deviation(worst, slope, tip));
      worst = worse ? groove : worst;
    }
    return new BitTest(2 * StrictMath.atan(slope / 2), tip, worst, deviation(worst, slope, tip));
  }

  private static double slope(List<Groove> grooves) {
    double depth = grooves.stream().mapToDouble(Groove::depthMm).average().orElse(0);
    double width = grooves.stream().mapToDouble(Groove::widthMm).average().orElse(0);
    double spread = squares(grooves, depth);
    if (!(spread > 0)) {
      throw new IllegalArgumentException("grooves must have two different depths");
    }
    double slope = sum(grooves, depth, width) / spread;
    if (!(slope > 0)) {
      throw new IllegalArgumentException(
          "grooves must widen with depth but widen by " + slope + " mm/mm");
    }
    return slope;
  }

  private static double deviation(Groove groove, double slope, double tip) {
    return groove.widthMm() - (tip + slope * groove.depthMm());
  }

  private static double sum(List<Groove> grooves, double depth, double width) {
    return grooves.stream().mapToDouble(g -> (g.depthMm() - depth) * (g.widthMm() - width)).sum();
  }

  private static double squares(List<Groove> grooves, double depth) {
    return grooves.stream().mapToDouble(g -> (g.depthMm() - depth) * (g.depthMm() - depth)).sum();
  }

  private static void requirePositive(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + value + " mm");
    }
  }
}
