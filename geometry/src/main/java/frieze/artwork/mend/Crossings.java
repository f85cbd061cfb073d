package frieze.artwork.mend;

import frieze.curve.Bounds;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds where closed polylines cross themselves or each other.
 *
 * <p>Edges that only touch, or run along each other, do not cross. Cost: O(n log n) for edges that
 * are short against the drawing.
 */
final class Crossings {
  /** Comparing more pairs of edges takes too long. */
  private static final long MOST_PAIRS = 20_000_000;

  private record Edge(Point a, Point b, Bounds bounds) {}

  private Crossings() {}

  /** The places; empty if there are too many edges on top of each other to tell. */
  static Optional<List<Point>> of(List<List<Point>> rings) {
    List<Edge> edges = new ArrayList<>();
    for (List<Point> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Point a = ring.get(i);
        Point b = ring.get((i + 1) % ring.size());
        edges.add(new Edge(a, b, Bounds.EMPTY.with(a).with(b)));
      }
    }
    edges.sort(Comparator.comparingDouble(e -> e.bounds().minX()));
    List<Point> places = new ArrayList<>();
    long pairs = 0;
    for (int i = 0; i < edges.size(); i++) {
      Edge e = edges.get(i);
      for (int k = i + 1; k < edges.size(); k++) {
        Edge f = edges.get(k);
        if (f.bounds().minX() > e.bounds().maxX()) {
          break;
        }
        pairs++;
        if (pairs > MOST_PAIRS) {
          return Optional.empty();
        }
        if (f.bounds().minY() <= e.bounds().maxY() && f.bounds().maxY() >= e.bounds().minY()) {
          crossing(e, f).ifPresent(places::add);
        }
      }
    }
    return Optional.of(places);
  }

  private static Optional<Point> crossing(Edge e, Edge f) {
    double c = side(f, e.a());
    double d = side(f, e.b());
    if (!apart(side(e, f.a()), side(e, f.b())) || !apart(c, d)) {
      return Optional.empty();
    }
    return Optional.of(e.a().towards(e.b(), c / (c - d)));
  }

  private static boolean apart(double one, double other) {
    return (one > 0 && other < 0) || (one < 0 && other > 0);
  }

  private static double side(Edge e, Point p) {
    return e.b().minus(e.a()).cross(p.minus(e.a()));
  }
}
