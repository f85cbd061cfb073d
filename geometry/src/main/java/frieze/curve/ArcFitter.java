package frieze.curve;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Replaces polylines by few lines and arcs.
 *
 * <p>The ends of pieces are vertices of the source, or the joint of two arcs between vertices.
 *
 * <p><i>Guarantees</i>
 *
 * <ul>
 *   <li>The result and the polyline lie within the tolerance of each other, everywhere, in order.
 *   <li>Corners of the source stay where they are, exactly.
 *   <li>Elsewhere the pieces meet within 0.2 degrees, unless no tangent piece fits.
 *   <li>The points of a circle come back as a circle of two half turns.
 * </ul>
 *
 * <p><i>Source:</i> Drysdale, Rote, Sturm, Approximation of an open polygonal curve with a minimum
 * number of circular arcs and biarcs, Computational Geometry 41 (2008) 31-47.
 */
public final class ArcFitter {
  /** How many starts of a smooth closed loop are compared. */
  private static final int STARTS = 64;

  /** Fewer points are a polygon, not a circle. */
  private static final int MIN_ON_CIRCLE = 8;

  private ArcFitter() {}

  /**
   * Fits lines and arcs to a polyline.
   *
   * @param points at least two; for a closed polyline without the first one repeated
   * @param toleranceMm the most by which polyline and result depart from each other
   */
  public static Path fit(List<Point> points, boolean closed, double toleranceMm) {
    if (!(toleranceMm > 0)) {
      throw new IllegalArgumentException("toleranceMm must be > 0 but was " + toleranceMm + " mm");
    }
    List<Point> distinct = withoutRepeats(points, closed);
    if (distinct.size() < 2) {
      throw new IllegalArgumentException("a polyline needs 2 different points");
    }
    if (distinct.size() == 2) {
      return Path.polyline(distinct, closed);
    }
    if (closed) {
      Path circle = wholeCircle(distinct, toleranceMm);
      if (circle != null) {
        return circle;
      }
    }
    FitSource source = Directions.of(distinct, closed, toleranceMm);
    return new Path(closed ? closed(source, toleranceMm) : open(source, toleranceMm), closed);
  }

  private static List<Point> withoutRepeats(List<Point> points, boolean closed) {
    List<Point> distinct = new ArrayList<>(points.size());
    for (Point p : points) {
      if (distinct.isEmpty() || !distinct.get(distinct.size() - 1).equals(p)) {
        distinct.add(p);
      }
    }
    int last = distinct.size() - 1;
    if (closed && last > 0 && distinct.get(0).equals(distinct.get(last))) {
      distinct.remove(last);
    }
    return distinct;
  }

  private static List<Segment> open(FitSource source, double tol) {
    int n = source.size();
    return new PieceSearch(source, n - 1, n, tol).cover(0, n - 1);
  }

  private static List<Segment> closed(FitSource source, double tol) {
    int n = source.size();
    for (int i = 0; i < n; i++) {
      if (source.corner[i]) {
        return open(source.cyclic(i, n + 1), tol);
      }
    }
    PieceSearch search = new PieceSearch(source.cyclic(0, 2 * n), n, n - 1, tol);
    int[] span = search.narrowest();
    int step = Math.max(1, (span[1] - span[0] + STARTS - 1) / STARTS);
    int best = span[0];
    int least = Integer.MAX_VALUE;
    for (int v = span[0]; v <= span[1]; v += step) {
      int count = search.count(v % n, v % n + n);
      if (count < least) {
        least = count;
        best = v % n;
      }
    }
    return search.cover(best, best + n);
  }

  /** Two half turns, if all points lie on one circle and go round it once. */
  private static @Nullable Path wholeCircle(List<Point> points, double tol) {
    int n = points.size();
    Point a = points.get(0);
    Point b = points.get(n / 3);
    Point c = points.get(2 * n / 3);
    Point centre = circumcentre(a, b, c);
    if (n < MIN_ON_CIRCLE || centre == null) {
      return null;
    }
    double r = centre.distance(a);
    double turned = 0;
    for (int i = 0; i < n; i++) {
      Point p = points.get(i).minus(centre);
      Point q = points.get((i + 1) % n).minus(centre);
      double step = Directions.angle(p, q);
      boolean near = Math.abs(p.norm() - r) <= tol && r * (1 - Math.cos(step / 2)) <= tol;
      if (!near || step * turned < 0) {
        return null;
      }
      turned += step;
    }
    if (Math.abs(Math.abs(turned) - 2 * Math.PI) > 1) {
      return null;
    }
    double half = Math.copySign(Math.PI, turned);
    Point opposite = centre.plus(centre.minus(a));
    return new Path(
        List.of(new Arc(a, opposite, centre, half), new Arc(opposite, a, centre, half)), true);
  }

  private static @Nullable Point circumcentre(Point a, Point b, Point c) {
    Point ab = b.minus(a);
    Point ac = c.minus(a);
    double d = 2 * ab.cross(ac);
    if (d == 0) {
      return null;
    }
    double bb = ab.dot(ab);
    double cc = ac.dot(ac);
    return a.plus(new Point((ac.y() * bb - ab.y() * cc) / d, (ab.x() * cc - ac.x() * bb) / d));
  }
}
