package frieze.trace;

/**
 * A corner between two straight sides as a blur shows it: the line of half ink turns round before
 * the corner's tip.
 *
 * <p>All lengths are in standard deviations of the blur, from the place where the sides would meet,
 * along the middle between them.
 *
 * <p><i>Source:</i> the convolution of a wedge with a Gaussian, whose integral across the wedge is
 * an error function; along it by the midpoint rule.
 */
final class Wedge {
  private static final int STEPS = 120;
  private static final double REACH = 6;
  private static final int HALVINGS = 40;
  private static final double FARTHEST = 40;

  private final double tangent;

  /**
   * @param halfAngleRad between a side and the middle
   */
  Wedge(double halfAngleRad) {
    this.tangent = StrictMath.tan(halfAngleRad);
  }

  double tangent() {
    return tangent;
  }

  /** The ink at a distance from where the sides meet, if the tip is cut off square. */
  double ink(double at, double cut) {
    double from = Math.max(cut, at - REACH);
    double to = at + REACH;
    double step = (to - from) / STEPS;
    double sum = 0;
    for (int i = 0; i < STEPS; i++) {
      double x = from + (i + 0.5) * step;
      double across = erf(x * tangent / Math.sqrt(2));
      sum += StrictMath.exp(-(x - at) * (x - at) / 2) * across;
    }
    return sum * step / Math.sqrt(2 * Math.PI);
  }

  /** Within 1.5e-7. Source: Abramowitz and Stegun, 7.1.26, from memory. */
  private static double erf(double x) {
    double t = 1 / (1 + 0.3275911 * Math.abs(x));
    double sum =
        t
            * (0.254829592
                + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
    return Math.signum(x) * (1 - sum * StrictMath.exp(-x * x));
  }

  /** Where the line of half ink turns round in front of a sharp tip. */
  double sharpSeenAt() {
    double low = 0;
    double high = FARTHEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean outside = ink(middle, 0) < 0.5;
      low = outside ? middle : low;
      high = outside ? high : middle;
    }
    return low;
  }

  /** How much of the tip must have been cut off square for the line to turn round there. */
  double cutFor(double seenAt) {
    double low = 0;
    double high = seenAt;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean tooLittle = ink(seenAt, middle) > 0.5;
      low = tooLittle ? middle : low;
      high = tooLittle ? high : middle;
    }
    return low;
  }
}
