package frieze.layout;

/**
 * One operation of a frieze group: {@code x' = xSign x + halfPeriods / 2}, {@code y' = ySign y},
 * with x counted in periods along the band and y from the band's centre line.
 *
 * @param xSign 1 or -1
 * @param ySign 1 or -1
 * @param halfPeriods 0 or 1
 */
public record Symmetry(int xSign, int ySign, int halfPeriods) {
  public Symmetry {
    if (Math.abs(xSign) != 1 || Math.abs(ySign) != 1 || halfPeriods < 0 || halfPeriods > 1) {
      throw new IllegalArgumentException(
          "xSign, ySign, halfPeriods must be +-1, +-1, 0 or 1 but were "
              + (xSign + ", " + ySign + ", " + halfPeriods));
    }
  }

  /** Reads a coordinate triplet such as {@code -x+1/2,y}. */
  static Symmetry parse(String triplet) {
    String[] parts = triplet.split(",", -1);
    return new Symmetry(
        parts[0].startsWith("-") ? -1 : 1,
        parts[1].startsWith("-") ? -1 : 1,
        parts[0].endsWith("+1/2") ? 1 : 0);
  }

  /** The operation that applies this one first and {@code next} after it, modulo whole periods. */
  public Symmetry then(Symmetry next) {
    return new Symmetry(
        next.xSign * xSign,
        next.ySign * ySign,
        Math.floorMod(next.xSign * halfPeriods + next.halfPeriods, 2));
  }

  /** Whether it turns a left hand into a right one. */
  public boolean isMirroring() {
    return xSign * ySign < 0;
  }
}
