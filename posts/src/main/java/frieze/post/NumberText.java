package frieze.post;

import java.util.Locale;

/**
 * Writes numbers the way that a controller reads them.
 *
 * <p><i>Guarantees:</i> the shortest text of the value, with {@code .} as the point; no exponent,
 * no {@code -0}, no digit beyond the last; the same in every locale.
 */
public final class NumberText {
  /** The most characters of a number: 19 digits, a point and a sign, and noughts before them. */
  static final int LONGEST = 32;

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
    byte[] room = new byte[LONGEST];
    for (int i = write(ticks, decimals, pointAlways, room, LONGEST); i < LONGEST; i++) {
      out.append((char) room[i]);
    }
  }

  /**
   * Writes a number such that it ends before a place of a buffer, from its last digit to its first.
   *
   * @return where it starts; at most {@link #LONGEST} bytes before the end
   */
  static int write(long ticks, int decimals, boolean pointAlways, byte[] into, int end) {
    long rest = Math.abs(ticks);
    int at = end;
    int left = decimals;
    while (left > 0 && rest % RADIX == 0) {
      rest /= RADIX;
      left--;
    }
    if (left > 0 || pointAlways) {
      for (; left > 0; left--) {
        long tens = rest / RADIX;
        into[--at] = (byte) ('0' + (rest - tens * RADIX));
        rest = tens;
      }
      into[--at] = '.';
    }
    do {
      long tens = rest / RADIX;
      into[--at] = (byte) ('0' + (rest - tens * RADIX));
      rest = tens;
    } while (rest > 0);
    if (ticks < 0) {
      into[--at] = '-';
    }
    return at;
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
