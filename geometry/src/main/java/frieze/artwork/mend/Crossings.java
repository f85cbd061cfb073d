package frieze.artwork.mend;

import frieze.curve.Bounds;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds where closed polylines cross themselves or each other, also at a vertex, and where they run
 * along each other.
 *
 * <p>Outlines that only touch do not cross. Neighbours of one outline that run back along each
 * other, and outlines that enclose nothing, are not looked at for running along. Cost: O(n log n)
 * for edges that are short against the drawing.
 *
 * @param places where outlines cross
 * @param shared the middles of edges that lie on others
 */
record Crossings(List<Point> places, List<Point> shared) {
  /** Comparing more pairs of edges takes too long. */
  private static final long MOST_PAIRS = 20_000_000;

  /**
   * @param before where the edge comes from before its start
   * @param flat whether its outline encloses nothing
   */
  private record Edge(Point before, Point a, Point b, boolean flat, Bounds bounds) {}

  /** What is found; empty if there are too many edges on top of each other to tell. */
  static Optional<Crossings> of(List<List<Point>> rings) {
    List<Edge> edges = new ArrayList<>();
    for (List<Point> ring : rings) {
      add(ring, edges);
    }
    edges.sort(Comparator.comparingDouble(e -> e.bounds().minX()));
    Crossings found = new Crossings(new ArrayList<>(), new ArrayList<>());
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
          found.look(e, f);
        }
      }
    }
    return Optional.of(found);
  }

  private static void add(List<Point> ring, List<Edge> edges) {
    List<Point> points = new ArrayList<>();
    for (Point p : ring) {
      if (points.isEmpty() || !points.get(points.size() - 1).equals(p)) {
        points.add(p);
      }
    }
    while (points.size() > 1 && points.get(points.size() - 1).equals(points.get(0))) {
      points.remove(points.size() - 1);
    }
    int n = points.size();
    boolean flat = Areas.area(points) == 0;
    for (int i = 0; i < n; i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % n);
      if (!a.equals(b)) {
        Bounds bounds = Bounds.EMPTY.with(a).with(b);
        edges.add(new Edge(points.get((i + n - 1) % n), a, b, flat, bounds));
      }
    }
  }

  boolean isEmpty() {
    return places.isEmpty() && shared.isEmpty();
  }

  private void look(Edge e, Edge f) {
    double a = side(e, f.a());
    double b = side(e, f.b());
    double c = side(f, e.a());
    double d = side(f, e.b());
    if (apart(a, b) && apart(c, d)) {
      places.add(e.a().towards(e.b(), c / (c - d)));
    } else if (a == 0 && b == 0) {
      along(e, f);
    } else {
      atVertex(e, f, a, c);
    }
  }

  /** Each vertex is looked at where an edge starts; at the start of both, once. */
  private void atVertex(Edge e, Edge f, double a, double c) {
    if (c == 0 && e.a().equals(f.a())) {
      crossed(e.a(), e.before(), e.b(), f.before(), f.b());
    } else if (c == 0 && within(f, e.a())) {
      crossed(e.a(), e.before(), e.b(), f.a(), f.b());
    } else if (a == 0 && within(e, f.a())) {
      crossed(f.a(), f.before(), f.b(), e.a(), e.b());
    }
  }

  private static boolean within(Edge e, Point on) {
    return on.minus(e.a()).dot(on.minus(e.b())) < 0;
  }

  /** Two ways through one point cross if each has one end on each side of the other. */
  private void crossed(Point at, Point from, Point to, Point otherFrom, Point otherTo) {
    Point in = from.minus(at);
    Point out = to.minus(at);
    int one = turn(in, out, otherFrom.minus(at));
    int two = turn(in, out, otherTo.minus(at));
    if (one * two < 0) {
      places.add(at);
    }
  }

  /** 1 if a direction lies within the turn to the left from one to another, 0 on either, or -1. */
  private static int turn(Point in, Point out, Point direction) {
    double whole = angle(in, out);
    double part = angle(in, direction);
    return part == 0 || part == whole ? 0 : part < whole ? 1 : -1;
  }

  private static double angle(Point from, Point to) {
    double angle = StrictMath.atan2(from.cross(to), from.dot(to));
    return angle < 0 ? angle + 2 * Math.PI : angle;
  }

  private void along(Edge e, Edge f) {
    boolean neighbours = f.before().equals(e.a()) || e.before().equals(f.a());
    Point way = e.b().minus(e.a());
    double from = way.dot(f.a().minus(e.a()));
    double to = way.dot(f.b().minus(e.a()));
    double low = Math.max(0, Math.min(from, to));
    double high = Math.min(way.dot(way), Math.max(from, to));
    if (high > low && !e.flat() && !f.flat() && !neighbours) {
      shared.add(e.a().plus(way.times((low + high) / 2 / way.dot(way))));
    }
  }

  private static boolean apart(double one, double other) {
    return (one > 0 && other < 0) || (one < 0 && other > 0);
  }

  private static double side(Edge e, Point p) {
    return e.b().minus(e.a()).cross(p.minus(e.a()));
  }
}
