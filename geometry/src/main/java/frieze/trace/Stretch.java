package frieze.trace;

import frieze.curve.Point;
import java.util.List;

/**
 * A parabola x(u), y(u) fitted by least squares to a stretch of evenly spaced points.
 *
 * <p>u counts points from the one that the fit was asked for.
 */
final class Stretch {
  private final double[] x;
  private final double[] y;
  private final double rms;

  private Stretch(double[] x, double[] y, double rms) {
    this.x = x;
    this.y = y;
    this.rms = rms;
  }

  /** By how much the points leave it across its direction, as a root of mean squares. */
  double rms() {
    return rms;
  }

  /**
   * Fits points {@code from .. to} of a closed row.
   *
   * @param centre the index where u = 0
   * @param degree 1 or 2
   */
  static Stretch fit(List<Point> points, int centre, int from, int to, int degree) {
    int n = points.size();
    double mid = (from + to) / 2.0 - centre;
    double s0 = 0;
    double s2 = 0;
    double s4 = 0;
    double[] mx = new double[3];
    double[] my = new double[3];
    for (int i = from; i <= to; i++) {
      Point p = points.get(Math.floorMod(i, n));
      double v = i - centre - mid;
      double vv = v * v;
      s0++;
      s2 += vv;
      s4 += vv * vv;
      mx[0] += p.x();
      mx[1] += p.x() * v;
      mx[2] += p.x() * vv;
      my[0] += p.y();
      my[1] += p.y() * v;
      my[2] += p.y() * vv;
    }
    double[] sums = {s0, s2, s4};
    double[] x = solved(mx, sums, mid, degree);
    double[] y = solved(my, sums, mid, degree);
    Stretch fitted = new Stretch(x, y, 0);
    double squares = 0;
    for (int i = from; i <= to; i++) {
      Point off = points.get(Math.floorMod(i, n)).minus(fitted.at(i - centre));
      Point along = fitted.direction(i - centre);
      double across = off.cross(along);
      squares += across * across;
    }
    return new Stretch(x, y, Math.sqrt(squares / s0));
  }

  /** Coefficients in u from moments in v = u - mid, whose odd sums are 0. */
  private static double[] solved(double[] m, double[] s, double mid, int degree) {
    double det = s[0] * s[2] - s[1] * s[1];
    boolean parabola = degree > 1 && det > 0;
    double c2 = parabola ? (s[0] * m[2] - s[1] * m[0]) / det : 0;
    double c0 = (m[0] - c2 * s[1]) / s[0];
    double c1 = s[1] > 0 ? m[1] / s[1] : 0;
    return new double[] {c0 - c1 * mid + c2 * mid * mid, c1 - 2 * c2 * mid, c2};
  }

  Point at(double u) {
    return new Point(x[0] + u * (x[1] + u * x[2]), y[0] + u * (y[1] + u * y[2]));
  }

  /** Whether it is a line. */
  boolean isStraight() {
    return x[2] == 0 && y[2] == 0;
  }

  Point velocity(double u) {
    return new Point(x[1] + 2 * u * x[2], y[1] + 2 * u * y[2]);
  }

  Point direction(double u) {
    Point v = velocity(u);
    double norm = v.norm();
    return norm > 0 ? v.times(1 / norm) : new Point(1, 0);
  }

  /** The curvature at u, positive to the left, by pixel. */
  double curvature(double u) {
    Point v = velocity(u);
    double speed = v.norm();
    return speed > 0 ? v.cross(new Point(2 * x[2], 2 * y[2])) / (speed * speed * speed) : 0;
  }
}
