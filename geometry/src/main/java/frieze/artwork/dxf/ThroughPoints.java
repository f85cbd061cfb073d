package frieze.artwork.dxf;

import frieze.curve.Cubic;
import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A smooth curve through given points, for splines of which a file gives no more.
 *
 * <p>The file does not say which curve it is; this is the cubic spline with continuous curvature
 * over the lengths of chords, straight at its ends ("natural"), or periodic if it is closed.
 */
final class ThroughPoints {
  private ThroughPoints() {}

  static List<Segment> curve(List<Point> given, boolean closed) {
    List<Point> p = new ArrayList<>();
    for (Point point : given) {
      if (p.isEmpty() || !p.get(p.size() - 1).equals(point)) {
        p.add(point);
      }
    }
    boolean around = p.size() > 2 && (closed || p.get(0).equals(p.get(p.size() - 1)));
    if (around && !p.get(0).equals(p.get(p.size() - 1))) {
      p.add(p.get(0));
    }
    List<Segment> segments = new ArrayList<>();
    if (p.size() < 2) {
      return segments;
    }
    int n = p.size();
    double[] h = new double[n - 1];
    for (int i = 0; i < n - 1; i++) {
      h[i] = p.get(i).distance(p.get(i + 1));
    }
    double[] dx = derivatives(p.stream().mapToDouble(Point::x).toArray(), h, around);
    double[] dy = derivatives(p.stream().mapToDouble(Point::y).toArray(), h, around);
    for (int i = 0; i < n - 1; i++) {
      Point a = p.get(i);
      Point b = p.get(i + 1);
      Point c1 = a.plus(new Point(dx[i], dy[i]).times(h[i] / 3));
      Point c2 = b.minus(new Point(dx[i + 1], dy[i + 1]).times(h[i] / 3));
      segments.add(new Cubic(a, c1, c2, b));
    }
    return segments;
  }

  /**
   * Solves for the derivatives at the points by relaxation: the system is diagonally dominant, so
   * that each sweep at least halves the error.
   */
  private static double[] derivatives(double[] v, double[] h, boolean around) {
    int n = v.length;
    double[] d = new double[n];
    for (int sweep = 0; sweep < 80; sweep++) {
      for (int i = 1; i < n - 1; i++) {
        d[i] = inner(v, h, d, new int[] {i - 1, i, i + 1, i - 1, i});
      }
      if (around) {
        d[0] = inner(v, h, d, new int[] {n - 2, 0, 1, n - 2, 0});
        d[n - 1] = d[0];
      } else {
        d[0] = (3 * (v[1] - v[0]) / h[0] - d[1]) / 2;
        d[n - 1] = (3 * (v[n - 1] - v[n - 2]) / h[n - 2] - d[n - 2]) / 2;
      }
    }
    return d;
  }

  /** The derivative at a point with continuous curvature, from its neighbours' derivatives. */
  private static double inner(double[] v, double[] h, double[] d, int[] at) {
    double before = h[at[3]];
    double after = h[at[4]];
    double slopeBefore = (v[at[1]] - v[at[0]]) / before;
    double slopeAfter = (v[at[2]] - v[at[1]]) / after;
    double right = 3 * (after * slopeBefore + before * slopeAfter);
    return (right - after * d[at[0]] - before * d[at[2]]) / (2 * (before + after));
  }
}
