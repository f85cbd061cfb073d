package frieze.rs274;

import java.nio.charset.StandardCharsets;

/**
 * Reads decimal numbers as the language writes them: a sign or none, digits with at most one point,
 * no exponent, blanks anywhere.
 *
 * <p>Guarantees: the result is the double nearest to what is written. Source: NISTIR 6556, 3.3.2.1.
 */
final class NumberReader {
  /** Powers of ten that a double holds exactly. */
  private static final double[] POWERS = new double[23];

  static {
    double p = 1;
    for (int i = 0; i < POWERS.length; i++) {
      POWERS[i] = p;
      p *= 10;
    }
  }

  /** Whole numbers below this are exact in a double: 2 to the power 53. */
  private static final long EXACT = 1L << 53;

  /** As many digits as a long can always gather. */
  private static final int GATHERED = 18;

  private int end;

  /** The byte after the number that was read last. */
  int end() {
    return end;
  }

  /**
   * Reads the number that starts at a byte.
   *
   * @param pos at the sign, the point or the first digit
   * @throws Refusal if there is no digit or a second point
   */
  double read(byte[] b, int pos, int stop) {
    boolean negative = b[pos] == '-';
    int first = negative || b[pos] == '+' ? pos + 1 : pos;
    long mantissa = 0;
    int decimals = 0;
    int i = first;
    int d = digit(b, i, stop);
    for (; d >= 0; d = digit(b, i, stop)) {
      mantissa = mantissa * 10 + d;
      i++;
    }
    int digits = i - first;
    if (i < stop && b[i] == '.') {
      int point = i++;
      for (d = digit(b, i, stop); d >= 0; d = digit(b, i, stop)) {
        mantissa = mantissa * 10 + d;
        i++;
      }
      decimals = i - point - 1;
      digits += decimals;
    }
    while (i < stop && (b[i] == ' ' || b[i] == '\t')) {
      i++;
    }
    boolean goesOn = i < stop && (b[i] == '.' || digit(b, i, stop) >= 0);
    if (digits == 0 || digits > GATHERED || goesOn || mantissa >= EXACT) {
      double size = inPieces(b, pos, first, stop);
      return negative ? -size : size;
    }
    end = i;
    double size = mantissa / POWERS[decimals];
    return negative ? -size : size;
  }

  /** The digit at a byte; -1 for anything else and at the end. */
  private static int digit(byte[] b, int i, int stop) {
    if (i >= stop) {
      return -1;
    }
    int d = b[i] - '0';
    return d <= 9 ? d : -1;
  }

  /** Reads a number with blanks between its digits, or with more of them than a double holds. */
  private double inPieces(byte[] b, int pos, int first, int stop) {
    int digits = 0;
    boolean point = false;
    int i = first;
    for (; i < stop; i++) {
      int c = b[i];
      if (c >= '0' && c <= '9') {
        digits++;
      } else if (c == '.') {
        if (point) {
          throw twoPoints(pos, i);
        }
        point = true;
      } else if (c != ' ' && c != '\t') {
        break;
      }
    }
    end = i;
    if (digits == 0) {
      throw noDigit(pos, i);
    }
    return slow(b, first, i);
  }

  private static Refusal noDigit(int pos, int end) {
    return new Refusal(
        ProgramCode.NUMBER, pos, Math.max(end, pos + 1), "a number needs at least one digit", "");
  }

  private static Refusal twoPoints(int pos, int second) {
    return new Refusal(
        ProgramCode.NUMBER, pos, second + 1, "a number has two points", "write one point");
  }

  /** Takes the long way for numbers of more digits than fit; without the sign. */
  private static double slow(byte[] b, int from, int to) {
    StringBuilder text = new StringBuilder(GATHERED);
    for (int i = from; i < to; i++) {
      char c = (char) b[i];
      if (c == '.' || (c >= '0' && c <= '9')) {
        text.append(c);
      }
    }
    double value = Double.parseDouble(text.toString());
    if (Double.isInfinite(value)) {
      throw new Refusal(
          ProgramCode.OUT_OF_RANGE,
          from,
          to,
          "a number of " + text.length() + " digits is too large",
          "");
    }
    return value;
  }

  /** Reads ASCII text, for tests and messages. */
  static String text(byte[] b, int from, int to) {
    return new String(b, from, to - from, StandardCharsets.UTF_8);
  }
}
