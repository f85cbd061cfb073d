package frieze.region;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** A region of which offsets are made, and how far places are from its boundary. */
final class OffsetSource {
  /** The part of the tolerance by which the points on round joins miss at most. */
  private static final double JOIN_SHARE = 0.35;

  /** The part of the tolerance beyond which a piece of a parallel curve is too near. */
  private static final double NEAR_SHARE = 0.4;

  /**
   * Where parallel curves nearly touch, as in a place twice as wide as the distance, they do not if
   * the distance is another by so much of the tolerance.
   */
  private static final double[] TRIES = {0, -0.25, 0.25};

  /** For so few questions it does not pay to sort the edges. */
  private static final int FEW = 64;

  private final Region region;
  private final List<Coordinate[]> rings;
  private @Nullable BoundaryDistance boundary;
  private int asked;
  private int nearEdge = -1;

  OffsetSource(Region region) {
    this.region = region;
    this.rings = region.lines();
  }

  /**
   * Moves a boundary to where it has the nominal distance from the source.
   *
   * @param from the source, or an offset of it
   * @param byMm how far to move that
   * @param nominalMm how far the result is from the source, negative inside
   */
  Region step(Region from, double byMm, double nominalMm, double toleranceMm) {
    for (double share : TRIES) {
      double tried = nominalMm + share * toleranceMm;
      List<Coordinate[]> found = rings(tried, toleranceMm);
      if (found != null) {
        return RingNesting.resolve(found, FillRule.NONZERO);
      }
    }
    Geometry raw = buffer(from.geometry(), byMm, toleranceMm);
    return Region.ofPolygons(
        new OffsetCorrection(boundary(), Math.abs(nominalMm), toleranceMm).correct(raw));
  }

  /** The offset from parallel curves; null where they nearly touch, or for a tiny distance. */
  private @Nullable List<Coordinate[]> rings(double nominalMm, double toleranceMm) {
    double least = Math.abs(nominalMm) - NEAR_SHARE * toleranceMm;
    if (least <= toleranceMm) {
      return null;
    }
    List<Coordinate[]> curves = new ArrayList<>();
    for (Coordinate[] ring : rings) {
      curves.add(new OffsetRing(ring, -nominalMm, JOIN_SHARE * toleranceMm).curve());
    }
    boolean inside = nominalMm < 0;
    return new OffsetPieces(
            curves, (x, y) -> isFartherThan(least, x, y) && contains(x, y) == inside)
        .rings();
  }

  private BoundaryDistance boundary() {
    BoundaryDistance made = boundary != null ? boundary : BoundaryDistance.of(region);
    boundary = made;
    return made;
  }

  /** Asks first for the edge that was too near to the place before. */
  private boolean isFartherThan(double distanceMm, double x, double y) {
    asked++;
    if (asked <= FEW) {
      return isFartherFromEach(distanceMm * distanceMm, x, y);
    }
    BoundaryDistance tree = boundary();
    if (nearEdge >= 0 && tree.isNearerThan(nearEdge, distanceMm, x, y)) {
      return false;
    }
    int edge = tree.nearerThan(distanceMm, x, y);
    nearEdge = edge >= 0 ? edge : nearEdge;
    return edge < 0;
  }

  private boolean isFartherFromEach(double squared, double x, double y) {
    for (Coordinate[] ring : rings) {
      for (int i = 1; i < ring.length; i++) {
        if (squaredDistance(ring[i - 1], ring[i], x, y) < squared) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether a place that is not on the boundary lies inside. */
  private boolean contains(double x, double y) {
    boolean inside = false;
    for (Coordinate[] ring : rings) {
      for (int i = 1; i < ring.length; i++) {
        Coordinate a = ring[i - 1];
        Coordinate b = ring[i];
        if (a.y > y != b.y > y) {
          double side = (b.x - a.x) * (y - a.y) - (x - a.x) * (b.y - a.y);
          inside ^= side > 0 == b.y > a.y;
        }
      }
    }
    return inside;
  }

  private static double squaredDistance(Coordinate a, Coordinate b, double x, double y) {
    double dx = b.x - a.x;
    double dy = b.y - a.y;
    double px = x - a.x;
    double py = y - a.y;
    double along = px * dx + py * dy;
    double squared = dx * dx + dy * dy;
    if (along > 0 && along < squared) {
      double across = px * dy - py * dx;
      return across * across / squared;
    }
    double qx = along <= 0 ? px : x - b.x;
    double qy = along <= 0 ? py : y - b.y;
    return qx * qx + qy * qy;
  }

  /** Half of the tolerance goes to the chords of round joins, a tenth to leaving out points. */
  private static Geometry buffer(Geometry from, double byMm, double toleranceMm) {
    double d = Math.abs(byMm);
    double halfStep = StrictMath.acos(Math.max(0, 1 - toleranceMm / 2 / d));
    int quadrantSegments = Math.max(2, (int) Math.ceil(Math.PI / 4 / halfStep));
    BufferParameters parameters = new BufferParameters(quadrantSegments);
    parameters.setSimplifyFactor(Math.min(1e-4, toleranceMm / 10 / d));
    return new BufferOp(from, parameters).getResultGeometry(byMm);
  }
}
