package frieze.field;

/**
 * The rectangle beside a straight move, seen from above and met row by row.
 *
 * <p>A row {@code d} from the move's start meets the strip between the ends, and the strip as wide
 * as the tool, each in an interval with a middle and a half width. Along an axis one of the two
 * strips is parallel to the rows; whether a row lies in it is then left to the bounds of the sweep.
 */
record Slab(double start, double lean, double alongHalf, double across, double acrossHalf) {
  /** A direction counts as along an axis when it departs from it by less. */
  private static final double AXIS = 1e-12;

  /**
   * Makes a slab.
   *
   * @param ux the direction of the move, with {@code uy}
   * @param overlapMm by how much it is longer at each end
   */
  static Slab of(double ux, double uy, double lengthMm, double reachMm, double overlapMm) {
    boolean turnsX = Math.abs(ux) > AXIS;
    boolean turnsY = Math.abs(uy) > AXIS;
    return new Slab(
        turnsX ? lengthMm / 2 / ux : 0,
        turnsX ? uy / ux : 0,
        turnsX ? (lengthMm / 2 + overlapMm) / Math.abs(ux) : Double.POSITIVE_INFINITY,
        turnsY ? ux / uy : 0,
        turnsY ? reachMm / Math.abs(uy) : Double.POSITIVE_INFINITY);
  }

  void intersect(double x0, double d, Sweep.Row row) {
    double alongMiddle = start - d * lean;
    double acrossMiddle = d * across;
    double low = Math.max(alongMiddle - alongHalf, acrossMiddle - acrossHalf);
    double high = Math.min(alongMiddle + alongHalf, acrossMiddle + acrossHalf);
    if (low <= high) {
      row.set(x0 + low, x0 + high);
    } else {
      row.setEmpty();
    }
  }
}
