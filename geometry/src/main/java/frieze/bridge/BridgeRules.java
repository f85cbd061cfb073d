package frieze.bridge;

/**
 * What bridges must be.
 *
 * @param thicknessMm of the sheet
 * @param widthMm of each bridge, after the cut
 * @param yieldMpa the stress at which the metal starts to bend for good
 * @param sideLoadN the push, square to the sheet, that an island must stand at its worst place
 * @param veinReachMm how far a vein is taken to go on, straight, beyond its drawn ends
 */
public record BridgeRules(
    double thicknessMm, double widthMm, double yieldMpa, double sideLoadN, double veinReachMm) {
  /** Yield strength of common mild steel, known by memory: S235 of EN 10025-2, 235 MPa. */
  public static final double MILD_STEEL_MPA = 235;

  /** A firm push of a hand's finger; our own choice, not a published value. */
  public static final double USUAL_LOAD_N = 40;

  private static final double LEAST_WIDTH_MM = 5;

  public BridgeRules {
    requirePositive("thicknessMm", thicknessMm);
    requirePositive("widthMm", widthMm);
    requirePositive("yieldMpa", yieldMpa);
    if (!(sideLoadN >= 0) || !(veinReachMm >= 0)) {
      throw new IllegalArgumentException(
          "sideLoadN and veinReachMm must be >= 0 but were "
              + (sideLoadN + " N, " + veinReachMm + " mm"));
    }
  }

  private static void requirePositive(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + value);
    }
  }

  /** Bridges twice as wide as the sheet is thick, and at least 5 mm, in mild steel. */
  public static BridgeRules usual(double thicknessMm) {
    double width = Math.max(2 * thicknessMm, LEAST_WIDTH_MM);
    return new BridgeRules(thicknessMm, width, MILD_STEEL_MPA, USUAL_LOAD_N, 2 * width);
  }

  public BridgeRules withWidth(double newWidthMm) {
    return new BridgeRules(thicknessMm, newWidthMm, yieldMpa, sideLoadN, veinReachMm);
  }

  public BridgeRules withSideLoad(double newtons) {
    return new BridgeRules(thicknessMm, widthMm, yieldMpa, newtons, veinReachMm);
  }
}
