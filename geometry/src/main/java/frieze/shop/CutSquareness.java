package frieze.shop;

/**
 * How far the wall of a thermal cut may depart from square, over the whole thickness.
 *
 * <p><i>Source:</i> ISO 9013, perpendicularity tolerance u; the figures are known by memory.
 */
public enum CutSquareness {
  RANGE_1(0.05, 0.003),
  RANGE_2(0.15, 0.007),
  RANGE_3(0.4, 0.01),
  RANGE_4(0.8, 0.02),
  RANGE_5(1.2, 0.035);

  private final double constantMm;
  private final double part;

  CutSquareness(double constantMm, double part) {
    this.constantMm = constantMm;
    this.part = part;
  }

  /** The most that the range allows at a thickness (mm). */
  public double mostMm(double thicknessMm) {
    return constantMm + part * thicknessMm;
  }
}
