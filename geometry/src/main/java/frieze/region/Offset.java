package frieze.region;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Moves the boundary of a region by a distance, with round joins.
 *
 * <p><i>Guarantees</i>
 *
 * <ul>
 *   <li>Every vertex and the middle of every edge of the result lies at the distance from the
 *       region's own boundary, within the tolerance.
 *   <li>The result is valid: no ring crosses itself or another; parts that vanish are gone, parts
 *       that touch are one, holes are kept, opened or closed as they must.
 * </ul>
 *
 * <p><i>Approximation:</i> the bound is to the polygon that is given; what its flattening lost
 * comes on top.
 *
 * <p><i>Source:</i> the polygon library's buffer, whose rounding of shallow turns is made good by
 * measuring each vertex and edge of the result against the source.
 */
public final class Offset {
  private Offset() {}

  /**
   * Grows a region (positive distance) or shrinks it (negative).
   *
   * @param toleranceMm the most by which the result departs from the exact offset
   */
  public static Region offset(Region region, double distanceMm, double toleranceMm) {
    requireUsable(distanceMm, toleranceMm);
    if (distanceMm == 0 || region.isEmpty()) {
      return region;
    }
    BoundaryDistance source = BoundaryDistance.of(region);
    return step(region, distanceMm, source, Math.abs(distanceMm), toleranceMm);
  }

  /**
   * Shrinks a region again and again until nothing is left, each time by one step more.
   *
   * <p>Each result is made from the one before it, which is fast, and measured against the region
   * itself, so that errors do not add up.
   *
   * @param firstMm the distance of the first result
   * @param stepMm the distance from each result to the next
   * @return the results from the outside in; none of them is empty
   */
  public static List<Region> inwardRings(
      Region region, double firstMm, double stepMm, double toleranceMm) {
    requireUsable(firstMm, toleranceMm);
    if (!(firstMm >= 0) || !(stepMm > 0)) {
      throw new IllegalArgumentException(
          "firstMm must be >= 0 and stepMm > 0 but were " + firstMm + ", " + stepMm + " mm");
    }
    List<Region> rings = new ArrayList<>();
    if (region.isEmpty()) {
      return rings;
    }
    BoundaryDistance source = BoundaryDistance.of(region);
    Region ring = firstMm == 0 ? region : step(region, -firstMm, source, firstMm, toleranceMm);
    for (int k = 1; !ring.isEmpty(); k++) {
      rings.add(ring);
      ring = step(ring, -stepMm, source, firstMm + k * stepMm, toleranceMm);
    }
    return rings;
  }

  private static void requireUsable(double distanceMm, double toleranceMm) {
    if (!Double.isFinite(distanceMm)) {
      throw new IllegalArgumentException("distanceMm must be finite but was " + distanceMm + " mm");
    }
    if (!(toleranceMm > 0)) {
      throw new IllegalArgumentException("toleranceMm must be > 0 but was " + toleranceMm + " mm");
    }
  }

  /** Moves a boundary by a distance to where it has the nominal distance from the source. */
  private static Region step(
      Region from, double byMm, BoundaryDistance source, double nominalMm, double toleranceMm) {
    Geometry raw = buffer(from.geometry(), byMm, toleranceMm);
    return Region.ofPolygons(new OffsetCorrection(source, nominalMm, toleranceMm).correct(raw));
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
