package frieze.bridge;

import frieze.curve.Point;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Counts the pieces that an area hangs together in, without the polygon library.
 *
 * <p>The area is sliced at the heights of all its vertices; within a slice it is a row of
 * trapezoids, found by crossing all edges (even-odd). Trapezoids of neighbouring slices belong
 * together where they share more than {@link #CONTACT_MM} of the line between them.
 *
 * <p><i>Guarantees:</i> exact but for heights, which are rounded to a nanometre; a contact in a
 * single point does not hold pieces together.
 *
 * <p><i>Cost:</i> the number of vertices times the edges that one level line crosses.
 */
public final class Pieces {
  /** A shorter contact is rounding. */
  static final double CONTACT_MM = 1e-6;

  /** Heights are rounded to this step, so that no slice is so thin that rounding orders it. */
  private static final double LEVEL_MM = 1e-6;

  private record Edge(double lowX, double lowY, double highX, double highY) {
    double xAt(double y) {
      return lowX + (highX - lowX) * (y - lowY) / (highY - lowY);
    }
  }

  private record Span(double fromX, double toX, int id) {}

  private final List<Integer> parents = new ArrayList<>();

  private Pieces() {}

  /** Counts the pieces; 0 for no area. */
  public static int count(Region region) {
    return new Pieces().sweep(edges(region));
  }

  private static List<Edge> edges(Region region) {
    List<Edge> edges = new ArrayList<>();
    for (Ring ring : region.rings()) {
      List<Point> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Point a = p.get(i);
        Point b = p.get((i + 1) % p.size());
        double ay = level(a);
        double by = level(b);
        if (ay < by) {
          edges.add(new Edge(a.x(), ay, b.x(), by));
        } else if (by < ay) {
          edges.add(new Edge(b.x(), by, a.x(), ay));
        }
      }
    }
    edges.sort(Comparator.comparingDouble(Edge::lowY));
    return edges;
  }

  private static double level(Point p) {
    return Math.rint(p.y() / LEVEL_MM) * LEVEL_MM;
  }

  private int sweep(List<Edge> edges) {
    double[] levels =
        edges.stream()
            .flatMapToDouble(e -> Arrays.stream(new double[] {e.lowY(), e.highY()}))
            .sorted()
            .distinct()
            .toArray();
    List<Edge> active = new ArrayList<>();
    List<Span> below = List.of();
    int next = 0;
    for (int k = 0; k + 1 < levels.length; k++) {
      double low = levels[k];
      double high = levels[k + 1];
      active.removeIf(e -> e.highY() <= low);
      while (next < edges.size() && edges.get(next).lowY() <= low) {
        active.add(edges.get(next++));
      }
      double middle = (low + high) / 2;
      active.sort(Comparator.comparingDouble(e -> e.xAt(middle)));
      int first = parents.size();
      join(below, spans(active, low, first));
      below = spans(active, high, first);
    }
    int count = 0;
    for (int i = 0; i < parents.size(); i++) {
      count += root(i) == i ? 1 : 0;
    }
    return count;
  }

  private List<Span> spans(List<Edge> active, double y, int first) {
    List<Span> spans = new ArrayList<>();
    for (int i = 0; i + 1 < active.size(); i += 2) {
      int id = first + i / 2;
      if (id == parents.size()) {
        parents.add(id);
      }
      spans.add(new Span(active.get(i).xAt(y), active.get(i + 1).xAt(y), id));
    }
    return spans;
  }

  private void join(List<Span> below, List<Span> above) {
    for (Span a : below) {
      for (Span b : above) {
        if (Math.min(a.toX(), b.toX()) - Math.max(a.fromX(), b.fromX()) > CONTACT_MM) {
          parents.set(root(a.id()), root(b.id()));
        }
      }
    }
  }

  private int root(int id) {
    int at = id;
    while (parents.get(at) != at) {
      parents.set(at, parents.get(parents.get(at)));
      at = parents.get(at);
    }
    return at;
  }
}
