package frieze.region;

import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.index.intervalrtree.SortedPackedIntervalRTree;

/**
 * How often many rings together go round points.
 *
 * <p><i>Cost:</i> O(n log n) to make; a point costs O(log n) and the edges that are as high as it.
 */
final class Windings {
  private final SortedPackedIntervalRTree edges = new SortedPackedIntervalRTree();

  private record Edge(Coordinate from, Coordinate to) {
    /** What the edge adds when it crosses the ray from a point to the right. */
    int crossing(Coordinate p) {
      if (from.y <= p.y) {
        return to.y > p.y && Orientation.index(from, to, p) > 0 ? 1 : 0;
      }
      return to.y <= p.y && Orientation.index(from, to, p) < 0 ? -1 : 0;
    }
  }

  private static final class Sum {
    private int turns;
  }

  /** Rings with their first coordinate repeated at the end. */
  Windings(List<Coordinate[]> rings) {
    for (Coordinate[] ring : rings) {
      for (int i = 1; i < ring.length; i++) {
        Edge edge = new Edge(ring[i - 1], ring[i]);
        edges.insert(Math.min(edge.from.y, edge.to.y), Math.max(edge.from.y, edge.to.y), edge);
      }
    }
  }

  /** The number of turns of all rings round a point, counter-clockwise counted positive. */
  int around(Coordinate p) {
    Sum sum = new Sum();
    edges.query(p.y, p.y, edge -> sum.turns += ((Edge) edge).crossing(p));
    return sum.turns;
  }
}
