package frieze.bridge;

import frieze.curve.Point;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The parts of a material: the one that holds the others, and the islands. */
record Islands(List<Region> parts) {
  /** Splits a material; the part with the largest bounds comes first: the panel. */
  static Islands of(Region material) {
    List<Region> parts = new ArrayList<>(material.parts());
    parts.sort(
        Comparator.comparingDouble((Region r) -> -r.bounds().width() * r.bounds().height())
            .thenComparingDouble(r -> r.bounds().minX())
            .thenComparingDouble(r -> r.bounds().minY()));
    return new Islands(List.copyOf(parts));
  }

  /** Points along the outer edge of a part, no further apart than a step. */
  static List<Point> edge(Region part, double stepMm) {
    List<Point> points = new ArrayList<>();
    for (Ring ring : part.rings()) {
      if (!ring.hole()) {
        List<Point> p = ring.points();
        for (int i = 0; i < p.size(); i++) {
          Point a = p.get(i);
          Point b = p.get((i + 1) % p.size());
          int steps = Math.max(1, (int) Math.ceil(a.distance(b) / stepMm));
          for (int k = 0; k < steps; k++) {
            points.add(a.towards(b, (double) k / steps));
          }
        }
      }
    }
    return points;
  }

  /** The centre of gravity of a part's outer edge. */
  static Point middle(Region part) {
    double x = 0;
    double y = 0;
    double length = 0;
    List<Point> edge = edge(part, 1);
    for (int i = 0; i < edge.size(); i++) {
      Point a = edge.get(i);
      Point b = edge.get((i + 1) % edge.size());
      double step = a.distance(b);
      x += step * (a.x() + b.x()) / 2;
      y += step * (a.y() + b.y()) / 2;
      length += step;
    }
    return new Point(x / length, y / length);
  }
}
