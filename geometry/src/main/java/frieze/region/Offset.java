package frieze.region;

import java.util.ArrayList;
import java.util.List;

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
 * <p><i>Source:</i> the parallel curves of the rings, cut where they cross, of which the pieces are
 * kept that are far enough from the boundary: {@link OffsetRing}, {@link OffsetPieces}. Where it is
 * not certain which those are, the polygon library's buffer, each vertex and edge of which is
 * measured against the source and moved where it misses: {@link OffsetCorrection}.
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
    return new OffsetSource(region).step(region, distanceMm, distanceMm, toleranceMm);
  }

  /**
   * Shrinks a region again and again until nothing is left, each time by one step more.
   *
   * <p>Each result is measured against the region itself, so that errors do not add up.
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
    OffsetSource source = new OffsetSource(region);
    Region ring = firstMm == 0 ? region : source.step(region, -firstMm, -firstMm, toleranceMm);
    for (int k = 1; !ring.isEmpty(); k++) {
      rings.add(ring);
      ring = source.step(ring, -stepMm, -(firstMm + k * stepMm), toleranceMm);
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
}
