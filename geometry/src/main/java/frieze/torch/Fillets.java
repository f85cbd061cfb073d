package frieze.torch;

import frieze.bridge.Bridge;
import frieze.bridge.Bridged;
import frieze.region.Offset;
import frieze.region.Region;

/**
 * Rounds the inner corners at bridges as the arc would leave them anyway: half a kerf and a little.
 *
 * <p><i>Guarantees:</i> adds metal only, and only in corners at a bridge: what was drawn stays.
 */
final class Fillets {
  private static final double MORE_MM = 0.05;
  private static final double NEAR_MM = 0.1;

  /** In squares of the radius: a corner of 25 degrees; what is more is a slot, told elsewhere. */
  private static final double MOST_AREA = 3.16;

  private Fillets() {}

  /** The material of a result, with fillets. */
  static Region of(Bridged bridged, double kerfMm, double toleranceMm) {
    Region material = bridged.material();
    if (bridged.bridges().isEmpty()) {
      return material;
    }
    Region strips = Region.EMPTY;
    for (Bridge bridge : bridged.bridges()) {
      strips = strips.union(bridge.area());
    }
    strips = Offset.offset(strips, NEAR_MM, toleranceMm);
    double radius = kerfMm / 2 + MORE_MM;
    Region grown = Offset.offset(material, radius, toleranceMm);
    Region closed = Offset.offset(grown, -radius, toleranceMm);
    Region filled = material;
    for (Region corner : closed.minus(material).parts()) {
      boolean isCorner =
          corner.area() > toleranceMm * toleranceMm && corner.area() < MOST_AREA * radius * radius;
      if (isCorner && !corner.intersection(strips).isEmpty()) {
        filled = filled.union(Offset.offset(corner, toleranceMm, toleranceMm));
      }
    }
    return filled;
  }
}
