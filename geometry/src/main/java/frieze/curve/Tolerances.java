package frieze.curve;

/**
 * The budget of permitted deviations, one for each step between a drawing and a program.
 *
 * <p>The programmed path lies within {@link #totalMm()} of the exact one. That is arithmetic; what
 * a shop can expect depends on its machine.
 *
 * @param flattenMm from a curve to its polyline
 * @param offsetMm from the exact offset of that polyline to the computed one
 * @param arcFitMm from a polyline to the lines and arcs that replace it
 * @param textMm from a number to its text
 */
public record Tolerances(double flattenMm, double offsetMm, double arcFitMm, double textMm) {
  /** The budget in use unless a caller has a reason: 2, 2, 5 and 2 micrometres. */
  public static final Tolerances DEFAULT = new Tolerances(0.002, 0.002, 0.005, 0.002);

  public Tolerances {
    requirePositive("flattenMm", flattenMm);
    requirePositive("offsetMm", offsetMm);
    requirePositive("arcFitMm", arcFitMm);
    requirePositive("textMm", textMm);
  }

  private static void requirePositive(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + value + " mm");
    }
  }

  public double totalMm() {
    return flattenMm + offsetMm + arcFitMm + textMm;
  }
}
