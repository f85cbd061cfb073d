package frieze.wood;

/**
 * How a panel fits its opening in one direction. All gaps are on each of two opposite sides, with
 * the panel in the middle.
 *
 * <p><em>Approximation:</em> the linear rule of the Wood Handbook, equation 13-2, D·C·(M2 − M1),
 * with D the size when it is cut; good between 6 and 14 % of moisture, an extrapolation elsewhere.
 *
 * @param openingMm the opening as measured, before coating
 * @param cutMm the size to cut now
 * @param gapNowMm after coating and sanding, at the moisture of now; as are the next two
 * @param gapDriestMm at the driest
 * @param gapWettestMm at the wettest; below 0 the panel binds
 */
public record SideFit(
    double openingMm, double cutMm, double gapNowMm, double gapDriestMm, double gapWettestMm) {
  /** A sum of lengths may be wrong by this: a nanometre. */
  private static final double ROUNDING_MM = 1e-6;

  /**
   * Works out the largest panel that keeps a least play even at its wettest.
   *
   * @param perPct the change for 1 % of moisture in this direction
   * @param playMm what must be left on each side at the wettest
   * @throws IllegalArgumentException if nothing of the opening would be left
   */
  public static SideFit withPlay(
      double openingMm, double perPct, Moisture moisture, double playMm, Allowances allowances) {
    double clear = openingMm - 2 * allowances.coatingMm() - 2 * playMm;
    double swelling = perPct * (moisture.wettestPct() - moisture.nowPct());
    double cutMm = clear / (1 + swelling) + 2 * allowances.sandedMm();
    return ofCut(openingMm, perPct, moisture, cutMm, allowances);
  }

  /** Works out the gaps of a panel that is cut to a size. */
  public static SideFit ofCut(
      double openingMm, double perPct, Moisture moisture, double cutMm, Allowances allowances) {
    double clearMm = openingMm - 2 * allowances.coatingMm();
    double fittedMm = cutMm - 2 * allowances.sandedMm();
    if (!(fittedMm > 0 && clearMm > 0)) {
      throw new IllegalArgumentException(
          "nothing is left of an opening of " + openingMm + " mm: the panel is " + fittedMm);
    }
    return new SideFit(
        openingMm,
        cutMm,
        (clearMm - fittedMm) / 2,
        (clearMm - fittedMm - change(fittedMm, perPct, moisture.nowPct(), moisture.driestPct()))
            / 2,
        (clearMm - fittedMm - change(fittedMm, perPct, moisture.nowPct(), moisture.wettestPct()))
            / 2);
  }

  /**
   * Calculates a change of size; positive for swelling.
   *
   * <p><em>Source:</em> Wood Handbook, chapter 13, D·C·(M2 − M1).
   */
  public static double change(double sizeMm, double perPct, double fromPct, double toPct) {
    return sizeMm * perPct * (toPct - fromPct);
  }

  /**
   * The gap on each side to draw or cut with: half of what the panel is smaller than the opening.
   */
  public double gapToCutMm() {
    return (openingMm - cutMm) / 2;
  }

  /** Whether the panel is larger than the opening at its wettest, by more than rounding. */
  public boolean binds() {
    return gapWettestMm < -ROUNDING_MM;
  }
}
