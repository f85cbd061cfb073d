package frieze.plan.vgroove;

import frieze.shop.Tool;
import frieze.shop.ToolShape;

/**
 * The cone of a V-bit, and how deep it may stand.
 *
 * @param tangent of half the bit's angle: how much wider a cut becomes for each millimetre of depth
 * @param tipRadiusMm the radius of the flat at the tip, 0 for a point
 * @param floorMm the deepest that the tip may stand, below the stock's top
 * @param proudMm how much the stock's top stands above the face on which the outline is drawn
 */
public record VCutter(double tangent, double tipRadiusMm, double floorMm, double proudMm) {

  /**
   * Takes the cone of a V-bit.
   *
   * @param floorMm the deepest that the tip may stand, below the face on which the outline is drawn
   * @throws IllegalArgumentException if the tool has another shape
   */
  public static VCutter of(Tool tool, double floorMm, double proudMm) {
    if (!(tool.shape() instanceof ToolShape.Vee vee)) {
      throw new IllegalArgumentException("tool must be a V-bit but was " + tool.name());
    }
    return new VCutter(
        StrictMath.tan(vee.angleRad() / 2), vee.tipMm() / 2, floorMm + proudMm, proudMm);
  }

  /**
   * The depth at which the walls pass the drawn face at a distance from the axis, below the deepest
   * or not.
   */
  double depthMm(double wallMm) {
    return proudMm + (wallMm - tipRadiusMm) / tangent;
  }

  /** How far the floor's edge lies from the outline. */
  double wallWidthMm() {
    return (floorMm - proudMm) * tangent;
  }

  /** The distance of the walls from the axis, on the drawn face, when the tip is on the floor. */
  double floorWallMm() {
    return wallWidthMm() + tipRadiusMm;
  }

  /**
   * How far apart successive offsets may be so that what is left between them is no higher. In
   * corners a place may be this far from the nearest one, not only half as far.
   */
  public double stepoverMm(double ridgeMm) {
    return tipRadiusMm + tangent * ridgeMm;
  }
}
