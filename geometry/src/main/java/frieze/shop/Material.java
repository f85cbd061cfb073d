package frieze.shop;

/**
 * What the stock is made of.
 *
 * @param name as written in the job, such as {@code white ash}
 * @param zincCoated whether it carries zinc, whose fume makes people ill
 */
public record Material(String name, Kind kind, boolean zincCoated) {
  /** Steel weighs this much; EN 1991-1-1, table A.4, says 77 to 78.5 kN/m3 (from memory). */
  private static final double STEEL_KG_PER_M3 = 7850;

  private static final double MM3_PER_M3 = 1e9;

  /** How a material behaves under a cutter. */
  public enum Kind {
    SOFTWOOD,
    HARDWOOD,
    /** MDF and plywood. */
    SHEET,
    STEEL
  }

  /** A material without a coating. */
  public Material(String name, Kind kind) {
    this(name, kind, false);
  }

  /**
   * The weight of a piece of steel sheet in kilograms.
   *
   * @throws IllegalArgumentException for another material
   */
  public double steelKg(double areaMm2, double thicknessMm) {
    if (kind != Kind.STEEL) {
      throw new IllegalArgumentException("kind must be STEEL but was " + kind);
    }
    return areaMm2 * thicknessMm * STEEL_KG_PER_M3 / MM3_PER_M3;
  }
}
