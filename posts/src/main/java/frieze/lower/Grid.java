package frieze.lower;

/**
 * The numbers that a program can say: whole multiples of its last digit.
 *
 * @param inches whether the program is in inches
 * @param decimals behind the point
 */
public record Grid(boolean inches, int decimals) {
  private static final double MM_PER_INCH = 25.4;

  /** The largest number that a program may hold, in last digits; far above any machine. */
  private static final double LARGEST = 1e12;

  /** Inches or millimetres in one last digit. */
  private static long perUnit(int decimals) {
    long p = 1;
    for (int i = 0; i < decimals; i++) {
      p *= 10;
    }
    return p;
  }

  /** The size of the last digit. */
  public double tickMm() {
    return (inches ? MM_PER_INCH : 1) / perUnit(decimals);
  }

  /** Rounds a length to the nearest multiple of the last digit. */
  public long ticks(double mm) {
    double ticks = (inches ? mm / MM_PER_INCH : mm) * perUnit(decimals);
    requireSayable(ticks, mm);
    return (long) Math.rint(ticks);
  }

  /** Rounds a speed down, so that it never exceeds what was allowed. */
  public long ticksBelow(double mm) {
    double ticks = (inches ? mm / MM_PER_INCH : mm) * perUnit(decimals);
    requireSayable(ticks, mm);
    double nearest = Math.rint(ticks);
    boolean same = Math.abs(nearest - ticks) <= 1e-9 * Math.abs(ticks);
    return (long) (same ? nearest : Math.floor(ticks));
  }

  /** The length that a number of last digits stands for. */
  public double mm(long ticks) {
    return ticks * (inches ? MM_PER_INCH : 1) / perUnit(decimals);
  }

  private static void requireSayable(double ticks, double mm) {
    if (!(Math.abs(ticks) < LARGEST)) {
      throw new IllegalArgumentException("a number is too large for a program: " + mm + " mm");
    }
  }
}
