package frieze.plan;

import frieze.curve.Point;
import java.util.List;

/** Distances to a polygon, the slow and plain way. */
final class BruteForce {
  private BruteForce() {}

  static double distance(List<Point> ring, Point p) {
    return distance(ring, ring.size(), p);
  }

  static double distanceToOpen(List<Point> line, Point p) {
    return distance(line, line.size() - 1, p);
  }

  private static double distance(List<Point> ring, int edges, Point p) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < edges; i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      Point along = b.minus(a);
      double t = Math.max(0, Math.min(1, p.minus(a).dot(along) / along.dot(along)));
      best = Math.min(best, p.distance(a.towards(b, t)));
    }
    return best;
  }

  static boolean inside(List<Point> ring, Point p) {
    boolean inside = false;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < a.x() + (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y())) {
        inside = !inside;
      }
    }
    return inside;
  }
}
