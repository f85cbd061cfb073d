package frieze.wood;

/**
 * What changes the sizes between measuring and fitting, on each side.
 *
 * @param coatingMm paint or powder on the steel; it makes the opening smaller
 * @param sandedMm what sanding or charring takes off each edge of the panel after it is cut
 */
public record Allowances(double coatingMm, double sandedMm) {
  /** Bare steel, and an edge as it is cut. */
  public static final Allowances NONE = new Allowances(0, 0);

  public Allowances {
    if (!(coatingMm >= 0 && sandedMm >= 0)) {
      throw new IllegalArgumentException(
          "coatingMm and sandedMm must be >= 0 but were " + coatingMm + ", " + sandedMm + " mm");
    }
  }
}
