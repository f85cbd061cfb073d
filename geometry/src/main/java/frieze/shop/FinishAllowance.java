package frieze.shop;

/**
 * What charring, brushing or sanding takes off after a panel is cut. Designs give the finished
 * sizes, so that so much more wood has to be left.
 *
 * @param faceMm off the face: the stock's top stands this much above the finished one, from which
 *     depths are counted
 * @param wallsMm off the walls of recesses, openings and the panel's own edge
 */
public record FinishAllowance(double faceMm, double wallsMm) {
  /** The panel stays as it is cut. */
  public static final FinishAllowance NONE = new FinishAllowance(0, 0);

  /** What is taken off the back of a panel: nothing off its face, which is not seen. */
  public FinishAllowance ofBack() {
    return new FinishAllowance(0, wallsMm);
  }

  public FinishAllowance {
    if (!(faceMm >= 0 && wallsMm >= 0 && faceMm + wallsMm < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "faceMm and wallsMm must be >= 0 but were " + faceMm + ", " + wallsMm + " mm");
    }
  }
}
