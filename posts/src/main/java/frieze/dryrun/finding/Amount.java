package frieze.dryrun.finding;

import java.util.Locale;

/**
 * How much, with its unit.
 *
 * @param unit such as {@code mm}, {@code mm/min}, {@code rpm}, {@code deg}, {@code s}
 */
public record Amount(double value, String unit) {
  /** Nothing to measure: it is so or it is not. */
  public static final Amount NONE = new Amount(0, "");

  public static Amount mm(double value) {
    return new Amount(value, "mm");
  }

  public boolean isNone() {
    return unit.isEmpty();
  }

  /** The number with at most three decimals and its unit; empty for {@link #NONE}. */
  @Override
  public String toString() {
    return isNone() ? "" : text(value) + " " + unit;
  }

  /** Writes a number with at most three decimals, without trailing zeros. */
  public static String text(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value);
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    if (text.charAt(end - 1) == '.') {
      end--;
    }
    String trimmed = text.substring(0, end);
    return trimmed.equals("-0") ? "0" : trimmed;
  }
}
