package frieze.region;

import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Moves the boundary of a region by a distance, with round joins. */
public final class Offset {
  private Offset() {}

  /**
   * Grows a region (positive distance) or shrinks it (negative).
   *
   * @param toleranceMm the most by which the result departs from the exact offset
   */
  public static Region offset(Region region, double distanceMm, double toleranceMm) {
    double d = Math.abs(distanceMm);
    if (d == 0 || region.isEmpty()) {
      return region;
    }
    double halfStep = Math.acos(Math.max(0, 1 - toleranceMm / d));
    int quadrantSegments = Math.max(2, (int) Math.ceil(Math.PI / 4 / halfStep));
    BufferParameters parameters = new BufferParameters(quadrantSegments);
    parameters.setSimplifyFactor(1e-4);
    return Region.ofPolygons(
        new BufferOp(region.geometry(), parameters).getResultGeometry(distanceMm));
  }
}
