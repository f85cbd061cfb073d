package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * Distances from points to the boundary of a region.
 *
 * <p>The edges are sorted into a tree of boxes once; a question looks into the nearest boxes first.
 *
 * <p><i>Guarantees:</i> the distance is that to the nearest point of any edge, to rounding.
 *
 * <p><i>Cost:</i> O(n log n) once, then O(log n) a question, usually. Safe for use by several
 * threads.
 */
public final class BoundaryDistance {
  private static final int LEAF = 4;

  private final Region region;
  private volatile Region.@Nullable Locator locator;

  /** Edges in tree order, four numbers each. */
  private final double[] edges;

  /** Boxes of the tree, four numbers each; the children of k are 2k+1 and 2k+2. */
  private final double[] boxes;

  private final int count;
  private final int leaves;

  private BoundaryDistance(Region region) {
    this.region = region;
    List<double[]> list = new ArrayList<>();
    for (Coordinate[] ring : region.lines()) {
      for (int i = 1; i < ring.length; i++) {
        list.add(new double[] {ring[i - 1].x, ring[i - 1].y, ring[i].x, ring[i].y});
      }
    }
    this.count = list.size();
    int wanted = 1;
    while (wanted * LEAF < count) {
      wanted *= 2;
    }
    this.leaves = wanted;
    this.edges = new double[4 * count];
    this.boxes = new double[4 * (2 * leaves - 1)];
    build(0, list.toArray(double[][]::new), 0, count);
  }

  /**
   * Prepares a region for questions.
   *
   * @throws IllegalArgumentException if the region is empty: nothing is near to nothing
   */
  public static BoundaryDistance of(Region region) {
    if (region.isEmpty()) {
      throw new IllegalArgumentException("an empty region has no boundary");
    }
    return new BoundaryDistance(region);
  }

  private void build(int node, double[][] sorted, int from, int to) {
    double minX = Double.POSITIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (int i = from; i < to; i++) {
      double[] e = sorted[i];
      minX = Math.min(minX, Math.min(e[0], e[2]));
      minY = Math.min(minY, Math.min(e[1], e[3]));
      maxX = Math.max(maxX, Math.max(e[0], e[2]));
      maxY = Math.max(maxY, Math.max(e[1], e[3]));
    }
    boxes[4 * node] = minX;
    boxes[4 * node + 1] = minY;
    boxes[4 * node + 2] = maxX;
    boxes[4 * node + 3] = maxY;
    if (node >= leaves - 1) {
      for (int i = from; i < to; i++) {
        System.arraycopy(sorted[i], 0, edges, 4 * i, 4);
      }
      return;
    }
    int middle = splitOf(from, to);
    halve(sorted, from, to, maxX - minX >= maxY - minY ? 0 : 1);
    build(2 * node + 1, sorted, from, middle);
    build(2 * node + 2, sorted, middle, to);
  }

  /** Brings the lower half of some edges to the front, by their middles; Hoare's selection. */
  private static void halve(double[][] e, int from, int to, int axis) {
    int wanted = splitOf(from, to);
    int low = from;
    int high = to - 1;
    while (low < high) {
      double[] pivot = e[(low + high) >>> 1];
      double key = pivot[axis] + pivot[axis + 2];
      int i = low;
      int k = high;
      while (i <= k) {
        while (e[i][axis] + e[i][axis + 2] < key) {
          i++;
        }
        while (e[k][axis] + e[k][axis + 2] > key) {
          k--;
        }
        if (i <= k) {
          double[] swapped = e[i];
          e[i++] = e[k];
          e[k--] = swapped;
        }
      }
      low = wanted > k ? Math.max(low, Math.min(i, wanted)) : low;
      high = wanted < i ? Math.min(high, Math.max(k, wanted)) : high;
    }
  }

  private static int splitOf(int from, int to) {
    return (from + to) >>> 1;
  }

  /** The region that the distances are measured to. */
  public Region region() {
    return region;
  }

  /** The distance to the boundary, never negative. */
  public double distance(Point p) {
    return nearest(p).distanceMm();
  }

  /** The distance to the boundary, negative outside the region. */
  public double signed(Point p) {
    double d = distance(p);
    return contains(p) ? d : -d;
  }

  /** Whether a point lies inside the region or on its boundary. */
  public boolean contains(Point p) {
    Region.Locator made = locator;
    if (made == null) {
      made = region.locator();
      locator = made;
    }
    return made.contains(p);
  }

  /** The nearest point of the boundary. */
  public Nearest nearest(Point p) {
    Search search = new Search(p.x(), p.y());
    search.visit(0, 0, count);
    return new Nearest(Math.sqrt(search.best), new Point(search.footX, search.footY));
  }

  /** The nearest boundary point of some point, and how far it is. */
  public record Nearest(double distanceMm, Point foot) {}

  /** The nearest boundary point, in plain numbers. */
  Foot foot(double x, double y) {
    Search search = new Search(x, y);
    search.visit(0, 0, count);
    return new Foot(Math.sqrt(search.best), search.footX, search.footY);
  }

  /** The place of an edge in the tree that is nearer to a point than some distance; -1 if none. */
  int nearerThan(double limitMm, double x, double y) {
    Search search = new Search(x, y);
    search.best = limitMm * limitMm;
    search.visit(0, 0, count);
    return search.edge;
  }

  /** Whether one edge, by its place in the tree, is nearer to a point than some distance. */
  boolean isNearerThan(int edge, double limitMm, double x, double y) {
    Search search = new Search(x, y);
    search.best = limitMm * limitMm;
    search.tryEdge(4 * edge);
    return search.edge >= 0;
  }

  record Foot(double distance, double x, double y) {}

  /** One descent into the tree. */
  private final class Search {
    private final double x;
    private final double y;
    private double best = Double.POSITIVE_INFINITY;
    private double footX;
    private double footY;
    private int edge = -1;

    Search(double x, double y) {
      this.x = x;
      this.y = y;
    }

    void visit(int node, int from, int to) {
      if (node >= leaves - 1) {
        for (int i = from; i < to; i++) {
          tryEdge(4 * i);
        }
        return;
      }
      int middle = splitOf(from, to);
      int left = 2 * node + 1;
      double toLeft = squaredTo(left);
      double toRight = squaredTo(left + 1);
      if (toLeft <= toRight) {
        visitIfNear(left, toLeft, from, middle);
        visitIfNear(left + 1, toRight, middle, to);
      } else {
        visitIfNear(left + 1, toRight, middle, to);
        visitIfNear(left, toLeft, from, middle);
      }
    }

    private void visitIfNear(int node, double squared, int from, int to) {
      if (squared < best) {
        visit(node, from, to);
      }
    }

    private double squaredTo(int node) {
      double dx = Math.max(0, Math.max(boxes[4 * node] - x, x - boxes[4 * node + 2]));
      double dy = Math.max(0, Math.max(boxes[4 * node + 1] - y, y - boxes[4 * node + 3]));
      return dx * dx + dy * dy;
    }

    private void tryEdge(int e) {
      double ax = edges[e];
      double ay = edges[e + 1];
      double dx = edges[e + 2] - ax;
      double dy = edges[e + 3] - ay;
      double t = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
      double clamped = t >= 1 ? 1 : t > 0 ? t : 0;
      double fx = ax + clamped * dx;
      double fy = ay + clamped * dy;
      double squared = (x - fx) * (x - fx) + (y - fy) * (y - fy);
      if (squared < best) {
        best = squared;
        footX = fx;
        footY = fy;
        edge = e / 4;
      }
    }
  }
}
