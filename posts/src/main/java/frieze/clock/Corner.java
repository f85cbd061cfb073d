package frieze.clock;

/**
 * How fast a corner between two moves can be passed.
 *
 * <p>A circle that touches both legs and passes the corner at the allowed deviation has the radius
 * R = d sin(h) / (1 - sin(h)), where h is half the angle between the legs; at an acceleration a it
 * is passed at sqrt(a R).
 *
 * <p>On a finely faceted curve each corner is nearly straight and that rule allows any speed, so
 * the circle through three neighbouring points limits it as well.
 */
final class Corner {
  private Corner() {}

  /**
   * The speed for a deviation.
   *
   * @param cosTurn the cosine of the angle between the two directions of travel: 1 straight on, -1
   *     back
   * @param deviationMm how far the tool may pass from the corner
   */
  static double speedMmPerS(double cosTurn, double deviationMm, double accelerationMmPerS2) {
    double sinHalf = Math.sqrt(Math.max(0, (1 + cosTurn) / 2));
    if (sinHalf >= 1) {
      return Double.POSITIVE_INFINITY;
    }
    double radius = deviationMm * sinHalf / (1 - sinHalf);
    return Math.sqrt(accelerationMmPerS2 * radius);
  }

  /** The speed on the circle through the ends of two legs of a facetted curve. */
  static double facetSpeedMmPerS(
      double cosTurn, double legMm, double nextLegMm, double accelerationMmPerS2) {
    double sinTurn = Math.sqrt(Math.max(0, 1 - cosTurn * cosTurn));
    if (sinTurn == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double chord2 = legMm * legMm + nextLegMm * nextLegMm + 2 * legMm * nextLegMm * cosTurn;
    double radius = Math.sqrt(Math.max(0, chord2)) / (2 * sinTurn);
    return Math.sqrt(accelerationMmPerS2 * radius);
  }
}
