package frieze.diagnostic;

import java.util.Locale;

/** Writes quantities for people: what a message says, not what a program holds. */
public final class Amounts {
  private static final double MM_PER_INCH = 25.4;

  private Amounts() {}

  /** A length in both units: {@code 20 mm (0.787 in)}. */
  public static String length(double mm) {
    return trimmed("%.2f", mm) + " mm (" + trimmed("%.3f", mm / MM_PER_INCH) + " in)";
  }

  /** An area in square millimetres. */
  public static String area(double mm2) {
    return trimmed("%.2f", mm2) + " mm2";
  }

  /** A place in the panel frame: {@code x 10, y 20 mm}. */
  public static String place(double xMm, double yMm) {
    return "x " + trimmed("%.1f", xMm) + ", y " + trimmed("%.1f", yMm) + " mm";
  }

  private static String trimmed(String format, double value) {
    String text = String.format(Locale.ROOT, format, value);
    text = text.replaceAll("0+$", "");
    text = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    return text.equals("-0") ? "0" : text;
  }
}
