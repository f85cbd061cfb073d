package frieze.sheet;

import java.util.Locale;

/**
 * Writes quantities for a person at the machine.
 *
 * @param inches whether inches come first
 */
public record Measures(boolean inches) {
  private static final double MM_PER_INCH = 25.4;
  private static final int FINEST = 64;

  /** An inch fraction is shown when it is as near as this. */
  private static final double FRACTION_INCH = 0.0005;

  /** The length in the first unit, without its name: {@code 28-1/2} or {@code 723.9}. */
  String number(double mm) {
    return inches ? inch(mm) : mm(mm, 1);
  }

  /** The length in the first unit with its name. */
  String one(double mm) {
    return inches ? inch(mm) + " in" : mm(mm, 2) + " mm";
  }

  /** The length in both units: {@code 28-1/2 in (723.9 mm)}. */
  public String both(double mm) {
    return inches
        ? inch(mm) + " in (" + mm(mm, 2) + " mm)"
        : mm(mm, 2) + " mm (" + inch(mm) + " in)";
  }

  /** A length that is no exact fraction: {@code 0.034 in (about 1/32)} or {@code 0.86 mm}. */
  public String about(double mm) {
    if (!inches) {
      return mm(mm, 2) + " mm";
    }
    String near = inch(Math.rint(mm / MM_PER_INCH * FINEST) / FINEST * MM_PER_INCH);
    String exact = mm(mm / MM_PER_INCH, 3) + " in";
    return near.equals("0") || inch(mm).equals(near) ? one(mm) : exact + " (about " + near + ")";
  }

  /** A feed in the first unit. */
  String feed(double mmPerMin) {
    return inches
        ? decimals(mmPerMin / MM_PER_INCH, 0) + " in/min"
        : decimals(mmPerMin, 0) + " mm/min";
  }

  /** A travelled length, in metres or feet. */
  String travelled(double mm) {
    return inches ? decimals(mm / MM_PER_INCH / 12, 1) + " ft" : decimals(mm / 1000, 1) + " m";
  }

  static String mm(double mm, int digits) {
    return decimals(mm, digits);
  }

  /** Inches as a whole number and a fraction if that is exact enough, else as a decimal. */
  static String inch(double mm) {
    double inch = Math.abs(mm) / MM_PER_INCH;
    String sign = mm < 0 && Math.rint(inch * FINEST) != 0 ? "-" : "";
    long parts = Math.round(inch * FINEST);
    if (Math.abs(inch - (double) parts / FINEST) > FRACTION_INCH) {
      return decimals(mm / MM_PER_INCH, 3);
    }
    long whole = parts / FINEST;
    long top = parts % FINEST;
    long bottom = FINEST;
    while (top != 0 && top % 2 == 0) {
      top /= 2;
      bottom /= 2;
    }
    if (top == 0) {
      return sign + whole;
    }
    return sign + (whole == 0 ? "" : whole + "-") + top + "/" + bottom;
  }

  /** A number with at most that many decimals. */
  public static String decimals(double value, int digits) {
    String text = String.format(Locale.ROOT, "%." + digits + "f", value);
    if (digits > 0) {
      text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
    return text.equals("-0") ? "0" : text;
  }

  /** A time such as {@code 1 h 05 min} or {@code 4 min 20 s}. */
  static String time(double seconds) {
    long s = Math.round(seconds);
    if (s < 60) {
      return s + " s";
    }
    if (s < 3600) {
      return s / 60 + " min" + (s % 60 == 0 ? "" : String.format(Locale.ROOT, " %02d s", s % 60));
    }
    long min = Math.round(seconds / 60);
    return min / 60 + " h " + String.format(Locale.ROOT, "%02d min", min % 60);
  }

  /** Revolutions per minute, thousands set apart by a thin gap. */
  static String rpm(double rpm) {
    return String.format(Locale.ROOT, "%,.0f", rpm).replace(',', '\u2009') + " rpm";
  }
}
