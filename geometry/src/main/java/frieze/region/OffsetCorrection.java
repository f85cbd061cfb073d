package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;

/**
 * Brings an offset to the nominal distance where it misses.
 *
 * <p>The buffer leaves out the round join where a source turns by less than 0.05 radians, which
 * puts the result up to {@code distance / 800} too near. Vertices that miss are moved away from or
 * towards their nearest source point; edges whose middle misses are split there.
 */
final class OffsetCorrection {
  /** The part of the tolerance beyond which a vertex is moved or an edge split. */
  private static final double SHARE = 0.75;

  /** An offset of which the points became so many times more has places as thin as nothing. */
  private static final int MANY_TIMES = 10;

  /** Feet seen under a smaller angle count as one. */
  private static final double LEAST_SIN = 0.01;

  /** A correction of more than this many tolerances is not first order. */
  private static final double FARTHEST = 100;

  private static final int MOST_MOVES = 12;
  private static final int DEEPEST_SPLIT = 12;

  private final BoundaryDistance source;
  private final double nominalMm;
  private final double limitMm;
  private boolean changed;

  OffsetCorrection(BoundaryDistance source, double nominalMm, double toleranceMm) {
    this.source = source;
    this.nominalMm = nominalMm;
    this.limitMm = toleranceMm * SHARE;
  }

  /**
   * The offset with its vertices and edges in place. Where a part is as thin as nothing, because
   * the distance is half of a width of the source, its two sides can't be put in place apart, and
   * edges are split again and again. Such places vanish then; if that does not help, the offset
   * stays as it was.
   */
  Geometry correct(Geometry raw) {
    Geometry result = placed(raw);
    if (!changed || result.isValid()) {
      return result;
    }
    int many = MANY_TIMES * raw.getNumPoints();
    if (result.getNumPoints() < many) {
      return GeometryFixer.fix(result);
    }
    double tolerance = limitMm / SHARE;
    Geometry open = raw.buffer(-tolerance).buffer(tolerance);
    Geometry again = placed(open);
    if (again.isValid()) {
      return again;
    }
    return again.getNumPoints() < many ? GeometryFixer.fix(again) : open;
  }

  private Geometry placed(Geometry raw) {
    List<Polygon> polygons = new ArrayList<>();
    for (int i = 0; i < raw.getNumGeometries(); i++) {
      if (raw.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        polygons.add(polygon(polygon));
      }
    }
    return Region.factory().createMultiPolygon(polygons.toArray(Polygon[]::new));
  }

  private Polygon polygon(Polygon polygon) {
    LinearRing shell = ring(polygon.getExteriorRing());
    if (isFalse(shell)) {
      return Region.factory().createPolygon();
    }
    List<LinearRing> holes = new ArrayList<>();
    for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
      LinearRing hole = ring(polygon.getInteriorRingN(h));
      if (!isFalse(hole)) {
        holes.add(hole);
      }
    }
    return Region.factory().createPolygon(shell, holes.toArray(LinearRing[]::new));
  }

  /**
   * Whether a ring that was put in place is still nearer to the source than the tolerance allows,
   * all along: the buffer leaves such slivers where fronts meet and nothing should be left.
   */
  private boolean isFalse(LinearRing ring) {
    // All of a strip as thin as this lies within the tolerance of where nothing is left.
    if (Area.ofRing(ring.getCoordinateSequence()) <= limitMm / SHARE * ring.getLength()) {
      return true;
    }
    for (Coordinate c : ring.getCoordinates()) {
      if (source.distance(new Point(c.x, c.y)) > nominalMm - limitMm / SHARE) {
        return false;
      }
    }
    return true;
  }

  private LinearRing ring(LinearRing ring) {
    Coordinate[] from = ring.getCoordinates();
    List<Coordinate> to = new ArrayList<>(from.length);
    Coordinate at = placed(from[0]);
    to.add(at);
    for (int i = 1; i < from.length; i++) {
      Coordinate next = i == from.length - 1 ? to.get(0) : placed(from[i]);
      split(at, next, 0, to);
      to.add(next);
      at = next;
    }
    return Region.factory().createLinearRing(to.toArray(Coordinate[]::new));
  }

  private void split(Coordinate a, Coordinate b, int depth, List<Coordinate> into) {
    Coordinate middle = new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2);
    Coordinate there = placed(middle);
    if (there.equals2D(middle) || depth == DEEPEST_SPLIT) {
      return;
    }
    split(a, there, depth + 1, into);
    into.add(there);
    split(there, b, depth + 1, into);
  }

  /** The same coordinate if it is near enough to the nominal distance. */
  private Coordinate placed(Coordinate c) {
    Coordinate at = c;
    @Nullable Point before = null;
    for (int move = 0; move < MOST_MOVES; move++) {
      BoundaryDistance.Nearest near = source.nearest(new Point(at.x, at.y));
      double d = near.distanceMm();
      if (Math.abs(d - nominalMm) <= limitMm || d == 0) {
        return at;
      }
      changed = true;
      Coordinate between = before == null ? null : between(at, before, near.foot());
      at = between != null ? between : along(at, near.foot(), nominalMm / d);
      before = near.foot();
    }
    return at;
  }

  private static Coordinate along(Coordinate at, Point foot, double factor) {
    return new Coordinate(
        foot.x() + (at.x - foot.x()) * factor, foot.y() + (at.y - foot.y()) * factor);
  }

  /**
   * Where two fronts meet, moving away from one comes too near to the other. This is the place at
   * the nominal distance from both, to first order; null if the feet are one, or it lies far away.
   */
  private @Nullable Coordinate between(Coordinate at, Point foot1, Point foot2) {
    Point p = new Point(at.x, at.y);
    double d1 = p.distance(foot1);
    double d2 = p.distance(foot2);
    Point n1 = p.minus(foot1).times(1 / d1);
    Point n2 = p.minus(foot2).times(1 / d2);
    double sin = n1.cross(n2);
    if (Math.abs(sin) < LEAST_SIN) {
      return null;
    }
    double miss1 = nominalMm - d1;
    double miss2 = nominalMm - d2;
    double dx = (miss1 * n2.y() - miss2 * n1.y()) / sin;
    double dy = (miss2 * n1.x() - miss1 * n2.x()) / sin;
    return Math.hypot(dx, dy) > FARTHEST * limitMm ? null : new Coordinate(at.x + dx, at.y + dy);
  }
}
