package frieze.artwork.dxf;

import frieze.curve.Cubic;
import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A NURBS curve.
 *
 * <p><i>Approximation:</i> none up to degree 3 without weights: each span is a cubic. Others are
 * halved until a cubic with the same ends and tangents is within a tolerance.
 *
 * <p><i>Source:</i> Piegl and Tiller, The NURBS Book, algorithms A2.2, A2.3, A4.1, from memory.
 */
final class DxfSpline {
  private static final int HIGHEST_DEGREE = 25;
  private static final int DEEPEST_SPLIT = 12;

  private final int degree;
  private final double[] knots;
  private final double[][] poles;
  private final boolean exact;

  private DxfSpline(int degree, double[] knots, double[][] poles, boolean exact) {
    this.degree = degree;
    this.knots = knots;
    this.poles = poles;
    this.exact = exact;
  }

  /** What is wrong with the numbers of a spline. */
  static final class BrokenSpline extends Exception {
    private static final long serialVersionUID = 1L;

    BrokenSpline(String message) {
      super(message, null, false, false);
    }
  }

  /**
   * Makes a spline.
   *
   * @param weights one for each control point, or none
   * @throws BrokenSpline if there are not as many knots as points and degree ask for, if they
   *     decrease, or if a weight is not positive
   */
  static DxfSpline of(int degree, double[] knots, List<Point> control, double[] weights)
      throws BrokenSpline {
    if (degree < 1 || degree > HIGHEST_DEGREE || control.size() <= degree) {
      throw new BrokenSpline(control.size() + " control points for degree " + degree);
    }
    if (knots.length != control.size() + degree + 1) {
      throw new BrokenSpline(knots.length + " knots for " + control.size() + " control points");
    }
    for (int i = 1; i < knots.length; i++) {
      if (knots[i] < knots[i - 1]) {
        throw new BrokenSpline("knots that decrease");
      }
    }
    if (!(knots[knots.length - 1 - degree] > knots[degree])) {
      throw new BrokenSpline("knots that don't increase");
    }
    if (weights.length != 0 && weights.length != control.size()) {
      throw new BrokenSpline(weights.length + " weights for " + control.size() + " control points");
    }
    boolean same = true;
    double[][] poles = new double[control.size()][];
    for (int i = 0; i < poles.length; i++) {
      double w = weights.length == 0 ? 1 : weights[i];
      if (!(w > 0)) {
        throw new BrokenSpline("a weight that is not positive");
      }
      same &= weights.length == 0 || w == weights[0];
      poles[i] = new double[] {w * control.get(i).x(), w * control.get(i).y(), w};
    }
    return new DxfSpline(degree, knots, poles, same && degree <= 3);
  }

  /** The curve as cubics, each within the tolerance, joined exactly. */
  List<Segment> cubics(double toleranceMm) {
    List<Segment> cubics = new ArrayList<>();
    Point at = null;
    for (int k = degree; k < knots.length - 1 - degree; k++) {
      if (knots[k + 1] > knots[k]) {
        Span span = new Span(k);
        Point from = at == null ? span.at(knots[k]) : at;
        at = span.at(knots[k + 1]);
        add(span, new double[] {knots[k], knots[k + 1]}, from, toleranceMm, 0, cubics);
        at = cubics.isEmpty() ? at : cubics.get(cubics.size() - 1).end();
      }
    }
    return cubics;
  }

  private void add(
      Span span, double[] range, Point from, double tol, int depth, List<Segment> into) {
    double h = range[1] - range[0];
    Point to = span.at(range[1]);
    Point c1 = from.plus(span.derivative(range[0]).times(h / 3));
    Point c2 = to.minus(span.derivative(range[1]).times(h / 3));
    Cubic cubic = new Cubic(from, c1, c2, to);
    if (exact || depth >= DEEPEST_SPLIT || span.isNear(cubic, range, tol)) {
      if (!(from.equals(c1) && from.equals(c2) && from.equals(to))) {
        into.add(cubic);
      }
      return;
    }
    double middle = range[0] + h / 2;
    add(span, new double[] {range[0], middle}, from, tol, depth + 1, into);
    Point joint = into.isEmpty() ? from : into.get(into.size() - 1).end();
    add(span, new double[] {middle, range[1]}, joint, tol, depth + 1, into);
  }

  /** The polynomial piece between two knots. */
  private final class Span {
    private final int k;

    Span(int k) {
      this.k = k;
    }

    Point at(double u) {
      double[] p = deBoor(u);
      return new Point(p[0] / p[2], p[1] / p[2]);
    }

    /** The derivative by the parameter. */
    Point derivative(double u) {
      double[] p = deBoor(u);
      double x = p[0] / p[2];
      double y = p[1] / p[2];
      return new Point((p[3] - p[5] * x) / p[2], (p[4] - p[5] * y) / p[2]);
    }

    /** Homogeneous coordinates and, behind them, their derivatives. */
    private double[] deBoor(double u) {
      int p = degree;
      double[][] d = new double[p + 1][];
      for (int j = 0; j <= p; j++) {
        d[j] = poles[k - p + j].clone();
      }
      double[] last = new double[3];
      for (int r = 1; r <= p; r++) {
        if (r == p) {
          double span = knots[k + 1] - knots[k];
          for (int c = 0; c < 3; c++) {
            last[c] = p * (d[p][c] - d[p - 1][c]) / span;
          }
        }
        for (int j = p; j >= r; j--) {
          int i = k - p + j;
          double t = (u - knots[i]) / (knots[i + p - r + 1] - knots[i]);
          for (int c = 0; c < 3; c++) {
            d[j][c] = (1 - t) * d[j - 1][c] + t * d[j][c];
          }
        }
      }
      return new double[] {d[p][0], d[p][1], d[p][2], last[0], last[1], last[2]};
    }

    boolean isNear(Cubic cubic, double[] range, double tol) {
      for (int i = 1; i < 8; i++) {
        double t = i / 8.0;
        if (cubic.at(t).distance(at(range[0] + t * (range[1] - range[0]))) > tol) {
          return false;
        }
      }
      return true;
    }
  }
}
