package frieze.torch;

import frieze.bridge.Bridge;
import frieze.bridge.Bridged;
import frieze.region.Offset;
import frieze.region.Region;

/**
 * Rounds the inner corners at bridges so that the torch turns there on an arc that a table can
 * follow: by one kerf, which leaves the torch half of one; where that would fill more than a
 * corner, by half a kerf and a little, as the arc leaves a corner anyway.
 *
 * <p><i>Guarantees:</i> adds metal only, and only in corners at a bridge: what was drawn stays.
 */
final class Fillets {
  private static final double MORE_MM = 0.05;
  private static final double NEAR_MM = 0.1;

  /** In squares of the radius: a corner of 53 degrees. */
  private static final double ROUND_AREA = 0.9;

  /** The same for the smaller radius: 25 degrees; what is more is a slot, told elsewhere. */
  private static final double MOST_AREA = 3.16;

  private Fillets() {}

  /** The material of a result, with fillets. */
  static Region of(Bridged bridged, double kerfMm, double toleranceMm) {
    if (bridged.bridges().isEmpty()) {
      return bridged.material();
    }
    Region strips = Region.EMPTY;
    for (Bridge bridge : bridged.bridges()) {
      strips = strips.union(bridge.area());
    }
    strips = Offset.offset(strips, NEAR_MM, toleranceMm);
    Region round = rounded(bridged.material(), strips, kerfMm, ROUND_AREA, toleranceMm);
    return rounded(round, strips, kerfMm / 2 + MORE_MM, MOST_AREA, toleranceMm);
  }

  private static Region rounded(
      Region material, Region strips, double radius, double mostArea, double toleranceMm) {
    Region grown = Offset.offset(material, radius, toleranceMm);
    Region closed = Offset.offset(grown, -radius, toleranceMm);
    Region filled = material;
    for (Region corner : closed.minus(material).parts()) {
      boolean isCorner =
          corner.area() > toleranceMm * toleranceMm && corner.area() < mostArea * radius * radius;
      if (isCorner && !corner.intersection(strips).isEmpty()) {
        filled = filled.union(Offset.offset(corner, toleranceMm, toleranceMm));
      }
    }
    return filled;
  }
}
