package frieze.design;

/**
 * Bridges left in a through cut.
 *
 * @param widthMm the length of each along the outline that stays
 * @param alongGrainMm the same on edges along the grain, where it is pulled across its fibres
 * @param thicknessMm what stays above the stock's bottom
 * @param ramped whether their ends slope, instead of standing upright
 */
public record Tabs(
    int count, double widthMm, double alongGrainMm, double thicknessMm, boolean ramped) {
  /** Tabs of one width. */
  public Tabs(int count, double widthMm, double thicknessMm, boolean ramped) {
    this(count, widthMm, widthMm, thicknessMm, ramped);
  }

  /** Upright tabs. */
  public Tabs(int count, double widthMm, double thicknessMm) {
    this(count, widthMm, thicknessMm, false);
  }
}
