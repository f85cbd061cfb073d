package frieze.gouge;

import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/** Straight pieces of outlines or lines, and distances from them. */
final class Edges {
  /** Numbers for each edge: its ends. */
  private static final int EACH = 4;

  private final double[] ends;

  /** Whether an area changes to the other side at each edge. */
  private final boolean enclose;

  /** Worked out when first asked for; always the same, whichever thread comes first. */
  private @Nullable Bounds bounds;

  private Edges(double[] ends, boolean enclose) {
    this.ends = ends;
    this.enclose = enclose;
  }

  /** The boundary of a region; the area lies on the left of each edge. */
  static Edges of(Region region) {
    List<Point> pairs = new ArrayList<>();
    for (Ring ring : region.rings()) {
      List<Point> points = ring.points();
      for (int i = 0; i < points.size(); i++) {
        pairs.add(points.get(i));
        pairs.add(points.get((i + 1) % points.size()));
      }
    }
    return ofPairs(pairs, true);
  }

  /**
   * Lines, curves flattened.
   *
   * @param flattenMm the most by which an edge departs from its curve
   */
  static Edges of(List<Path> paths, double flattenMm) {
    List<Point> pairs = new ArrayList<>();
    for (Path path : paths) {
      List<Point> points = Flattener.flatten(path, flattenMm);
      int count = path.closed() ? points.size() : points.size() - 1;
      for (int i = 0; i < count; i++) {
        pairs.add(points.get(i));
        pairs.add(points.get((i + 1) % points.size()));
      }
    }
    return ofPairs(pairs, false);
  }

  /** Lines between pairs of points. */
  static Edges between(List<Point> pairs) {
    return ofPairs(pairs, false);
  }

  private static Edges ofPairs(List<Point> pairs, boolean enclose) {
    double[] ends = new double[2 * pairs.size()];
    for (int i = 0; i < pairs.size(); i++) {
      ends[2 * i] = pairs.get(i).x();
      ends[2 * i + 1] = pairs.get(i).y();
    }
    return new Edges(ends, enclose);
  }

  int count() {
    return ends.length / EACH;
  }

  Point start(int edge) {
    return new Point(ends[EACH * edge], ends[EACH * edge + 1]);
  }

  Point end(int edge) {
    return new Point(ends[EACH * edge + 2], ends[EACH * edge + 3]);
  }

  double length(int edge) {
    return start(edge).distance(end(edge));
  }

  double totalLength() {
    double sum = 0;
    for (int i = 0; i < count(); i++) {
      sum += length(i);
    }
    return sum;
  }

  Bounds bounds() {
    Bounds known = bounds;
    if (known == null) {
      known = Bounds.EMPTY;
      for (int i = 0; i < count(); i++) {
        known = known.with(start(i)).with(end(i));
      }
      bounds = known;
    }
    return known;
  }

  /** The edges of which some point may lie within a distance of a rectangle. */
  Edges near(Bounds rectangle, double distanceMm) {
    Bounds grown = rectangle.grown(distanceMm);
    return only(
        i ->
            Math.max(ends[i], ends[i + 2]) >= grown.minX()
                && Math.min(ends[i], ends[i + 2]) <= grown.maxX()
                && Math.max(ends[i + 1], ends[i + 3]) >= grown.minY()
                && Math.min(ends[i + 1], ends[i + 3]) <= grown.maxY());
  }

  /** The edges that reach into a band of levels. */
  Edges between(double minY, double maxY) {
    return only(
        i ->
            Math.max(ends[i + 1], ends[i + 3]) >= minY
                && Math.min(ends[i + 1], ends[i + 3]) <= maxY);
  }

  /** Keeps edges, each asked about by the index of its first number. */
  private Edges only(IntPredicate wanted) {
    double[] kept = new double[ends.length];
    int n = 0;
    for (int i = 0; i < ends.length; i += EACH) {
      if (wanted.test(i)) {
        System.arraycopy(ends, i, kept, n, EACH);
        n += EACH;
      }
    }
    return new Edges(Arrays.copyOf(kept, n), enclose);
  }

  /** The edges that are nearest to some point of a rectangle, and perhaps some more. */
  Edges nearestOf(Bounds rectangle) {
    Point centre = rectangle.centre();
    double reach = 2 * centre.distance(new Point(rectangle.minX(), rectangle.minY()));
    double most = distance(centre.x(), centre.y()) + reach;
    return only(i -> squaredDistance(i, centre.x(), centre.y()) <= most * most);
  }

  /** The distance from the nearest edge, by trying them all; positive infinity without edges. */
  double distance(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ends.length; i += EACH) {
      least = Math.min(least, squaredDistance(i, x, y));
    }
    return Math.sqrt(least);
  }

  /**
   * The nearest point of all edges, by trying them all.
   *
   * @throws IllegalArgumentException if there are none
   */
  Point nearest(Point place) {
    if (count() == 0) {
      throw new IllegalArgumentException("no edges");
    }
    int nearest = 0;
    for (int i = EACH; i < ends.length; i += EACH) {
      if (squaredDistance(i, place.x(), place.y())
          < squaredDistance(nearest, place.x(), place.y())) {
        nearest = i;
      }
    }
    double t = along(nearest, place.x(), place.y());
    return start(nearest / EACH).towards(end(nearest / EACH), t);
  }

  private double squaredDistance(int i, double x, double y) {
    double t = along(i, x, y);
    double dx = x - ends[i] - t * (ends[i + 2] - ends[i]);
    double dy = y - ends[i + 1] - t * (ends[i + 3] - ends[i + 1]);
    return dx * dx + dy * dy;
  }

  /** Where on an edge the point nearest to a place lies: 0 for its start, 1 for its end. */
  private double along(int i, double x, double y) {
    double ex = ends[i + 2] - ends[i];
    double ey = ends[i + 3] - ends[i + 1];
    double square = ex * ex + ey * ey;
    double t = (x - ends[i]) * ex + (y - ends[i + 1]) * ey;
    return square > 0 ? Math.max(0, Math.min(1, t / square)) : 0;
  }

  /** Whether an edge crosses the level {@code y}; of its ends only the lower one counts. */
  boolean crosses(int edge, double y) {
    return ends[EACH * edge + 1] <= y != ends[EACH * edge + 3] <= y;
  }

  double crossingX(int edge, double y) {
    int i = EACH * edge;
    return ends[i] + (y - ends[i + 1]) / (ends[i + 3] - ends[i + 1]) * (ends[i + 2] - ends[i]);
  }

  /**
   * Where the level {@code y} enters or leaves the area that the edges enclose, from left to right;
   * nowhere if they are lines.
   */
  double[] crossings(double y) {
    double[] found = new double[enclose ? count() : 0];
    int n = 0;
    for (int e = 0; e < found.length; e++) {
      if (crosses(e, y)) {
        found[n++] = crossingX(e, y);
      }
    }
    double[] crossings = Arrays.copyOf(found, n);
    Arrays.sort(crossings);
    return crossings;
  }

  double lowY(int edge) {
    return Math.min(ends[EACH * edge + 1], ends[EACH * edge + 3]);
  }

  double highY(int edge) {
    return Math.max(ends[EACH * edge + 1], ends[EACH * edge + 3]);
  }
}
