package frieze.lower;

import java.util.Locale;

/** Numbers in messages to the operator. */
final class NumberWords {
  private static final double MM_PER_INCH = 25.4;
  private static final int INCH_DECIMALS = 3;

  private NumberWords() {}

  /** A number with at most so many decimals, and none that are nought. */
  static String plain(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    String cut = text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
    return cut.equals("-0") ? "0" : cut;
  }

  /** A coordinate in the program's unit. */
  static String coordinate(double mm, boolean inches) {
    return inches ? plain(mm / MM_PER_INCH, INCH_DECIMALS) : plain(mm, 1);
  }
}
