package frieze.layout;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * The least convex outline around a motif, counter-clockwise.
 *
 * <p><em>Approximation:</em> that of flattening, 20 µm: enough to keep motifs apart.
 */
public final class Hull {
  private static final double FLATTEN_MM = 0.02;

  private final List<Point> points;

  private Hull(List<Point> points) {
    this.points = List.copyOf(points);
  }

  /** The hull of a drawing, without the width of its lines. */
  public static Hull of(Artwork artwork) {
    List<Point> all = new ArrayList<>();
    for (Piece piece : artwork.pieces()) {
      for (Path path : piece.paths()) {
        all.addAll(Flattener.flatten(path, FLATTEN_MM));
      }
    }
    return of(all);
  }

  /**
   * The hull of some points.
   *
   * <p><em>Source:</em> A. M. Andrew's monotone chain, 1979 (from memory).
   */
  public static Hull of(List<Point> all) {
    if (all.isEmpty()) {
      throw new IllegalArgumentException("a hull needs at least one point");
    }
    List<Point> sorted =
        all.stream()
            .distinct()
            .sorted(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y))
            .toList();
    if (sorted.size() < 3) {
      return new Hull(sorted);
    }
    List<Point> reversed = new ArrayList<>(sorted);
    Collections.reverse(reversed);
    List<Point> chain = half(sorted);
    chain.addAll(half(reversed));
    return new Hull(chain);
  }

  /** One half of the outline, without its last point. */
  private static List<Point> half(List<Point> sorted) {
    List<Point> chain = new ArrayList<>();
    for (Point p : sorted) {
      while (chain.size() > 1 && !turnsLeft(chain, p)) {
        chain.remove(chain.size() - 1);
      }
      chain.add(p);
    }
    chain.remove(chain.size() - 1);
    return chain;
  }

  private static boolean turnsLeft(List<Point> chain, Point p) {
    Point a = chain.get(chain.size() - 2);
    Point b = chain.get(chain.size() - 1);
    return b.minus(a).cross(p.minus(b)) > 0;
  }

  /** Its corners, counter-clockwise. */
  public List<Point> points() {
    return points;
  }

  /** The hull under a map. */
  public Hull transformed(Affine map) {
    List<Point> moved = new ArrayList<>(points.stream().map(map::apply).toList());
    if (map.isMirroring()) {
      Collections.reverse(moved);
    }
    return new Hull(moved);
  }

  public Bounds bounds() {
    Bounds bounds = Bounds.EMPTY;
    for (Point p : points) {
      bounds = bounds.with(p);
    }
    return bounds;
  }

  /** The distance to another hull; 0 where they overlap. */
  public double distance(Hull other) {
    if (overlaps(other) && other.overlaps(this)) {
      return 0;
    }
    return Math.min(toSides(other), other.toSides(this));
  }

  /** Whether no side of this hull parts it from another. */
  private boolean overlaps(Hull other) {
    if (points.size() < 3) {
      return other.points.size() >= 3 && !isLinePartingFrom(other);
    }
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point side = points.get((i + 1) % points.size()).minus(a);
      if (other.points.stream().allMatch(p -> side.cross(p.minus(a)) < 0)) {
        return false;
      }
    }
    return true;
  }

  /** Whether all of another hull lies on one side of this one, a mere line. */
  private boolean isLinePartingFrom(Hull other) {
    Point a = points.get(0);
    Point along = points.get(points.size() - 1).minus(a);
    return other.points.stream().allMatch(p -> along.cross(p.minus(a)) < 0)
        || other.points.stream().allMatch(p -> along.cross(p.minus(a)) > 0);
  }

  /** Whether some of a segment lies deeper inside than a length. */
  boolean isCutBy(Point from, Point to, double depthMm) {
    if (points.size() < 3) {
      return false;
    }
    double enters = 0;
    double leaves = 1;
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point side = points.get((i + 1) % points.size()).minus(a);
      double first = side.cross(from.minus(a)) / side.norm() - depthMm;
      double last = side.cross(to.minus(a)) / side.norm() - depthMm;
      if (first < 0 && last < 0) {
        return false;
      }
      if (first < 0) {
        enters = Math.max(enters, first / (first - last));
      } else if (last < 0) {
        leaves = Math.min(leaves, first / (first - last));
      }
    }
    return enters < leaves;
  }

  /** The least distance from a corner of this hull to a side of another. */
  private double toSides(Hull other) {
    double least = Double.POSITIVE_INFINITY;
    int n = other.points.size();
    for (Point p : points) {
      for (int i = 0; i < n; i++) {
        Line side = new Line(other.points.get(i), other.points.get((i + 1) % n));
        least = Math.min(least, side.distance(p));
      }
    }
    return least;
  }
}
