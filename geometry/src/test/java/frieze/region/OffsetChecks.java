package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;

/** Distances by trying every edge, for checking what uses an index. */
final class OffsetChecks {
  private OffsetChecks() {}

  /** All edges of a region, four numbers each. */
  static double[] edges(Region region) {
    List<Double> numbers = new ArrayList<>();
    for (Ring ring : region.rings()) {
      List<Point> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Point b = p.get((i + 1) % p.size());
        numbers.addAll(List.of(p.get(i).x(), p.get(i).y(), b.x(), b.y()));
      }
    }
    return numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }

  static double distance(Point p, double[] edges) {
    double best = Double.POSITIVE_INFINITY;
    for (int e = 0; e < edges.length; e += 4) {
      double dx = edges[e + 2] - edges[e];
      double dy = edges[e + 3] - edges[e + 1];
      double px = p.x() - edges[e];
      double py = p.y() - edges[e + 1];
      double t = Math.max(0, Math.min(1, (px * dx + py * dy) / (dx * dx + dy * dy)));
      double qx = px - t * dx;
      double qy = py - t * dy;
      best = Math.min(best, qx * qx + qy * qy);
    }
    return Math.sqrt(best);
  }

  /** The most by which a vertex or the middle of an edge misses a distance. */
  static double worstMiss(List<Point> ring, double[] edges, double distance) {
    double worst = 0;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point middle = a.towards(ring.get((i + 1) % ring.size()), 0.5);
      worst = Math.max(worst, Math.abs(distance(a, edges) - distance));
      worst = Math.max(worst, Math.abs(distance(middle, edges) - distance));
    }
    return worst;
  }
}
