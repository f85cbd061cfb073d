package frieze.trace;

import frieze.curve.Point;

/**
 * Reads from the ink along the middle of a narrow tip where its sides would meet, and how much of
 * it was cut off.
 *
 * <p>The line of half ink turns round long before a narrow tip ends, so that in a noisy picture it
 * does not tell a blunt one from a sharp one. The ink beyond it does: it is fitted by least squares
 * to what {@link Wedge} gives, with two unknowns.
 *
 * <p><i>Guarantees:</i> none if the sides bend; then the fit leaves more than the noise.
 */
final class TipProfile {
  private static final double STEP_PX = 0.5;

  /** How far beyond the sharp tip, and beyond the place where it is seen, in blurs. */
  private static final double BEYOND = 3;

  private static final int STEPS = 12;
  private static final double SMALL = 1e-3;

  /** Neighbours in a blurred picture are not independent: so many count as one. */
  private static final double ALIKE = 3;

  /** The fit is good if it leaves no more than this many times the noise, and some rounding. */
  private static final double MOST_LEFT = 2;

  private static final double ROUNDING = 0.01;

  private final GreyImage soft;
  private final double sigma;
  private final double noise;

  /**
   * @param soft the share of ink, blurred
   * @param sigmaPx the blur of its edges
   * @param noise of its values
   */
  TipProfile(GreyImage soft, double sigmaPx, double noise) {
    this.soft = soft;
    this.sigma = sigmaPx;
    this.noise = noise;
  }

  /**
   * What was found; lengths in blurs, measured inwards.
   *
   * @param apex where the sides meet, from where they were thought to
   * @param shape of the tip: the square of what is cut off, or the tangent of half its angle
   * @param deviation of the shape, by the noise
   * @param left over: the ink that the tip does not explain, as a root of mean squares
   */
  record Fit(double apex, double shape, double deviation, double left) {}

  /** The ink at a distance from the apex, for a shape of a tip. */
  private interface Model {
    double ink(double at, double shape);
  }

  /** The ink along the middle of a tip, from outside inwards. */
  private static final class Row {
    private final double[] at;
    private final double[] ink;

    Row(double[] at, double[] ink) {
      this.at = at;
      this.ink = ink;
    }

    int length() {
      return at.length;
    }
  }

  /**
   * Fits a tip that was cut off square by what can't be seen: its shape is the square of the cut,
   * to which the ink changes in proportion.
   *
   * @param met where its sides were found to meet
   * @param outward along its middle, of length 1
   * @param slackPx the standard deviation of {@code met} along the middle
   */
  Fit blunt(Point met, Point outward, Wedge wedge, double slackPx) {
    Model model = (at, area) -> wedge.ink(at, Math.sqrt(area));
    return fit(row(met, outward, wedge), model, 0.25, slackPx / sigma);
  }

  /** Fits a sharp tip whose angle is not known well: its shape is the tangent of half of it. */
  Fit sharp(Point met, Point outward, Wedge wedge, double slackPx) {
    Model model = (at, tangent) -> new Wedge(StrictMath.atan(tangent)).ink(at, 0);
    return fit(row(met, outward, wedge), model, wedge.tangent(), slackPx / sigma);
  }

  /** Whether the ink is what such a tip leaves, but for noise. */
  boolean isGood(Fit fit) {
    return fit.left() <= MOST_LEFT * noise + ROUNDING;
  }

  private Row row(Point met, Point outward, Wedge wedge) {
    int n = (int) Math.ceil((wedge.sharpSeenAt() + 2 * BEYOND) * sigma / STEP_PX);
    double[] at = new double[n];
    double[] ink = new double[n];
    for (int i = 0; i < n; i++) {
      at[i] = -BEYOND + i * STEP_PX / sigma;
      ink[i] = value(met.minus(outward.times(at[i] * sigma)));
    }
    boolean paperInInk = ink[n - 1] < 0.5;
    for (int i = 0; paperInInk && i < n; i++) {
      ink[i] = 1 - ink[i];
    }
    return new Row(at, ink);
  }

  /** Gauss and Newton's steps, with the apex held near where the sides meet. */
  private Fit fit(Row row, Model model, double start, double slack) {
    double weight = 1 / (noise * noise * ALIKE);
    double hold = 1 / (slack * slack);
    double apex = 0;
    double shape = start;
    double deviation = Double.POSITIVE_INFINITY;
    for (int step = 0; step < STEPS; step++) {
      double[] s = sums(row, model, apex, shape);
      double aa = hold + weight * s[0];
      double ab = weight * s[1];
      double bb = weight * s[2];
      double det = aa * bb - ab * ab;
      if (!(det > 0)) {
        return new Fit(0, 0, 1, Double.POSITIVE_INFINITY);
      }
      double a = weight * s[3] - hold * apex;
      double b = weight * s[4];
      double most = 1 + shape;
      apex += Math.max(-1, Math.min(1, (bb * a - ab * b) / det));
      shape = Math.max(0, shape + Math.max(-most, Math.min(most, (aa * b - ab * a) / det)));
      deviation = Math.sqrt(aa / det);
    }
    double left = Math.sqrt(sums(row, model, apex, shape)[5] / row.length());
    return new Fit(apex, shape, deviation, left);
  }

  /** Products of the derivatives by apex and shape, of each with what is left, and its square. */
  private static double[] sums(Row row, Model model, double apex, double shape) {
    double[] sums = new double[6];
    for (int i = 0; i < row.length(); i++) {
      double at = row.at[i] - apex;
      double ink = model.ink(at, shape);
      double byApex = (model.ink(at - SMALL, shape) - ink) / SMALL;
      double byShape = (model.ink(at, shape + SMALL) - ink) / SMALL;
      double left = row.ink[i] - ink;
      sums[0] += byApex * byApex;
      sums[1] += byApex * byShape;
      sums[2] += byShape * byShape;
      sums[3] += byApex * left;
      sums[4] += byShape * left;
      sums[5] += left * left;
    }
    return sums;
  }

  /** Between the pixels by cubics. Source: Catmull and Rom, 1974. */
  private double value(Point p) {
    double x = p.x() - 0.5;
    double y = soft.height() - p.y() - 0.5;
    int x0 = (int) Math.floor(x);
    int y0 = (int) Math.floor(y);
    double sum = 0;
    for (int k = -1; k <= 2; k++) {
      double row = 0;
      for (int i = -1; i <= 2; i++) {
        row += weight(x - x0 - i) * soft.at(x0 + i, y0 + k, 0);
      }
      sum += weight(y - y0 - k) * row;
    }
    return sum;
  }

  private static double weight(double t) {
    double a = Math.abs(t);
    return a <= 1 ? 1 + a * a * (1.5 * a - 2.5) : 2 - a * (4 - a * (2.5 - 0.5 * a));
  }
}
