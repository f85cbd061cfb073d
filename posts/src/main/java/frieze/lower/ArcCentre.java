package frieze.lower;

import java.util.Optional;

/**
 * Chooses the centre of an arc whose ends lie on the grid already.
 *
 * <p>A controller takes the radius from the start and checks it against the end; ends rounded first
 * and a centre rounded by itself can disagree by nearly three last digits, more than is allowed. So
 * the sixteen grid points around the exact centre are tried, and the one is taken that keeps the
 * arc nearest to the one asked for among those on which the radii agree.
 *
 * <p><i>Guarantees:</i> the radii at start and end differ by at most nine tenths of {@link
 * #agreementMm}; the sweep that a controller will work out is the one asked for.
 *
 * <p><i>Approximation:</i> the arc departs from the exact one by at most {@link #MOST_OFF_TICKS}
 * last digits.
 *
 * <p><i>Source:</i> NISTIR 6556, 3.5.3.2: 0.002 mm or 0.0002 inch.
 *
 * @param u the centre along the plane's first axis, in last digits
 * @param v the centre along the second
 */
record ArcCentre(long u, long v) {
  private static final double TIGHT_MM = 0.002;
  private static final double TIGHT_INCH_MM = 0.0002 * 25.4;
  private static final double MARGIN = 0.9;
  private static final double SAME_POINT = 0.01;

  /** An arc that would depart further than this, in last digits, is not drawn as an arc. */
  static final double MOST_OFF_TICKS = 2;

  /** How far, in last digits at the rim, rounding may turn either end of an arc. */
  private static final double END_SHIFT_TICKS = 4;

  /** The most by which two radii may differ. */
  static double agreementMm(boolean inches) {
    return inches ? TIGHT_INCH_MM : TIGHT_MM;
  }

  /**
   * An arc in the plane, in last digits, with its exact centre and sweep.
   *
   * @param sweepRad signed; beyond a full turn is not allowed
   */
  record Wanted(
      long startU,
      long startV,
      long endU,
      long endV,
      double centreU,
      double centreV,
      double radius,
      double sweepRad) {
    /**
     * Whether the ends lie so near each other that a controller with some tolerance may see one
     * point, and draw a full circle.
     */
    boolean closed(Grid grid) {
      double apart = distance((double) (startU - endU), (double) (startV - endV));
      return apart * grid.tickMm() <= agreementMm(grid.inches()) * (1 + SAME_POINT);
    }
  }

  /** The best centre; empty when no grid point will do, because the arc is too small. */
  static Optional<ArcCentre> choose(Wanted arc, Grid grid) {
    double limit = MARGIN * agreementMm(grid.inches()) / grid.tickMm();
    long baseU = (long) Math.floor(arc.centreU()) - 1;
    long baseV = (long) Math.floor(arc.centreV()) - 1;
    double best = MOST_OFF_TICKS;
    long bestU = 0;
    long bestV = 0;
    for (long u = baseU; u < baseU + 4; u++) {
      for (long v = baseV; v < baseV + 4; v++) {
        double cost = cost(arc, u, v, limit);
        if (cost < best) {
          best = cost;
          bestU = u;
          bestV = v;
        }
      }
    }
    boolean found = best < MOST_OFF_TICKS && readsAsWanted(arc, bestU, bestV);
    return found ? Optional.of(new ArcCentre(bestU, bestV)) : Optional.empty();
  }

  /** A bound on how far the arc about a centre departs from the wanted one. */
  private static double cost(Wanted arc, long u, long v, double limit) {
    double start = distance((double) (arc.startU() - u), (double) (arc.startV() - v));
    double end = distance((double) (arc.endU() - u), (double) (arc.endV() - v));
    if (Math.abs(start - end) > limit) {
      return Double.POSITIVE_INFINITY;
    }
    double shift = distance(u - arc.centreU(), v - arc.centreV());
    return shift + Math.max(Math.abs(start - arc.radius()), Math.abs(end - arc.radius()));
  }

  private static double distance(double u, double v) {
    return Math.sqrt(u * u + v * v);
  }

  private static boolean readsAsWanted(Wanted arc, long u, long v) {
    double from = StrictMath.atan2((double) (arc.startV() - v), (double) (arc.startU() - u));
    double to = StrictMath.atan2((double) (arc.endV() - v), (double) (arc.endU() - u));
    double sweep = arc.sweepRad() > 0 ? to - from : from - to;
    if (sweep <= 0) {
      sweep += 2 * Math.PI;
    }
    return Math.abs(sweep - Math.abs(arc.sweepRad())) * arc.radius() <= END_SHIFT_TICKS;
  }
}
