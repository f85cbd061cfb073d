package frieze.opening;

/**
 * What the weld leaves in the corners of an opening.
 *
 * @param sizeMm the radius of a round one, the leg of a bevelled one; 0 for sharp corners
 */
public record Bead(Shape shape, double sizeMm) {
  /** Corners without a weld. */
  public static final Bead NONE = new Bead(Shape.ROUND, 0);

  /** How it looks from the front. */
  public enum Shape {
    ROUND,
    BEVELLED
  }

  public Bead {
    if (!(sizeMm >= 0 && sizeMm < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("sizeMm must be >= 0 but was " + sizeMm + " mm");
    }
  }
}
