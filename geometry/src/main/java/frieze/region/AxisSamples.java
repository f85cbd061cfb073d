package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;

/** The boundary of one connected region, cut into short edges, ring after ring. */
final class AxisSamples {
  /**
   * Neighbours within a nanometre are one vertex but for rounding, as where a union joins shapes
   * that coincide. The triangles between them would have no height, and cut the axis in two.
   */
  private static final double SAME_MM = 1e-6;

  private static final int FEWEST = 3;

  final double[] x;
  final double[] y;

  /** The neighbours of each sample along its ring, the area on the left. */
  final int[] next;

  final int[] previous;

  private AxisSamples(int n) {
    x = new double[n];
    y = new double[n];
    next = new int[n];
    previous = new int[n];
  }

  /** Cuts each edge into equal parts no longer than the spacing. */
  static AxisSamples of(Region part, double spacingMm) {
    List<List<Point>> rings = part.rings().stream().map(ring -> apart(ring.points())).toList();
    int n = 0;
    for (List<Point> points : rings) {
      for (int i = 0; i < points.size(); i++) {
        n += parts(points, i, spacingMm);
      }
    }
    AxisSamples samples = new AxisSamples(n);
    int at = 0;
    for (List<Point> points : rings) {
      at = samples.add(points, spacingMm, at);
    }
    return samples;
  }

  /** The vertices of a ring without those that are the one before again; all of a tiny ring. */
  private static List<Point> apart(List<Point> ring) {
    List<Point> kept = new ArrayList<>();
    for (Point p : ring) {
      if (kept.isEmpty() || p.distance(kept.get(kept.size() - 1)) > SAME_MM) {
        kept.add(p);
      }
    }
    while (kept.size() > 1 && kept.get(kept.size() - 1).distance(kept.get(0)) <= SAME_MM) {
      kept.remove(kept.size() - 1);
    }
    return kept.size() < FEWEST ? ring : kept;
  }

  private static int parts(List<Point> p, int i, double spacingMm) {
    double length = p.get(i).distance(p.get((i + 1) % p.size()));
    return Math.max(1, (int) Math.ceil(length / spacingMm));
  }

  private int add(List<Point> points, double spacingMm, int from) {
    int at = from;
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % points.size());
      int parts = parts(points, i, spacingMm);
      for (int k = 0; k < parts; k++) {
        Point p = a.towards(b, (double) k / parts);
        x[at] = p.x();
        y[at] = p.y();
        next[at] = at + 1;
        previous[at] = at - 1;
        at++;
      }
    }
    next[at - 1] = from;
    previous[from] = at - 1;
    return at;
  }

  int size() {
    return x.length;
  }

  boolean joined(int i, int j) {
    return next[i] == j || next[j] == i;
  }

  /** The change of direction at a sample; positive where the region bulges. */
  double turn(int i) {
    double ax = x[i] - x[previous[i]];
    double ay = y[i] - y[previous[i]];
    double bx = x[next[i]] - x[i];
    double by = y[next[i]] - y[i];
    return StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }

  /**
   * Walks downhill along the boundary from a sample; returns the foot, as x, y, at a sample or not.
   */
  Foot footFrom(int sample, double px, double py) {
    Foot best = onEdge(sample, px, py);
    Foot other = onEdge(previous[sample], px, py);
    int step = other.squared() < best.squared() ? -1 : 1;
    best = step < 0 ? other : best;
    int edge = step < 0 ? previous[sample] : sample;
    for (int k = 0; k < size(); k++) {
      edge = step < 0 ? previous[edge] : next[edge];
      Foot further = onEdge(edge, px, py);
      if (further.squared() >= best.squared()) {
        return best;
      }
      best = further;
    }
    return best;
  }

  private Foot onEdge(int i, double px, double py) {
    double dx = x[next[i]] - x[i];
    double dy = y[next[i]] - y[i];
    double t = ((px - x[i]) * dx + (py - y[i]) * dy) / (dx * dx + dy * dy);
    double clamped = Math.max(0, Math.min(1, t));
    double fx = x[i] + clamped * dx;
    double fy = y[i] + clamped * dy;
    double squared = (px - fx) * (px - fx) + (py - fy) * (py - fy);
    return new Foot(fx, fy, squared);
  }

  /** The nearest point of a stretch of boundary. */
  record Foot(double x, double y, double squared) {}
}
