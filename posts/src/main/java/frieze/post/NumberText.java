package frieze.post;

import java.util.Locale;

/**
 * Writes numbers the way that a controller reads them.
 *
 * <p><i>Guarantees:</i> the shortest text of the value, with {@code .} as the point; no exponent,
 * no {@code -0}, no digit beyond the last; the same in every locale.
 */
public final class NumberText {
  private static final int RADIX = 10;
  private static final int MILLI_DIGITS = 3;
  private static final double MILLI = 1000;
  private static final double LARGEST = 1e12;

  private NumberText() {}

  /**
   * Appends a number given in units of its last digit: 12500 with 3 decimals is {@code 12.5}.
   *
   * @param pointAlways whether a whole number keeps its point, as in {@code 12.}
   */
  public static void append(StringBuilder out, long ticks, int decimals, boolean pointAlways) {
    long rest = Math.abs(ticks);
    int skipped = 0;
    while (skipped < decimals && rest % RADIX == 0) {
      rest /= RADIX;
      skipped++;
    }
    if (ticks < 0) {
      out.append('-');
    }
    int behind = decimals - skipped;
    if (behind == 0) {
      out.append(rest);
      if (pointAlways) {
        out.append('.');
      }
      return;
    }
    appendWithPoint(out, rest, behind);
  }

  private static void appendWithPoint(StringBuilder out, long value, int behind) {
    long unit = 1;
    for (int i = 0; i < behind; i++) {
      unit *= RADIX;
    }
    out.append(value / unit).append('.');
    long rest = value % unit;
    for (long place = unit / RADIX; place > 0; place /= RADIX) {
      out.append((char) ('0' + rest / place));
      rest %= place;
    }
  }

  /** Writes a time or the like to a thousandth. */
  public static String thousandths(double value, boolean pointAlways) {
    if (!(Math.abs(value) < LARGEST)) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "a number is too large for a program: %s", value));
    }
    StringBuilder out = new StringBuilder();
    append(out, Math.round(value * MILLI), MILLI_DIGITS, pointAlways);
    return out.toString();
  }
}
