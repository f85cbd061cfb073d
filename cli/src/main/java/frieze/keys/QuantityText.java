package frieze.keys;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads numbers with units as people in a shop write them: {@code 19 mm}, {@code 3/4 in}, {@code
 * 5-1/4}, {@code 5 1/4"}, {@code 2 ft 4-5/8 in}, {@code 1½ in}, {@code 40%}.
 */
final class QuantityText {
  private static final String DECIMAL = "(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?";
  private static final Pattern TERM =
      Pattern.compile(
          "\\s*(?:(\\d+)(?:\\s+|\\s*-\\s*)(\\d+)/(\\d+)|(\\d+)/(\\d+)|("
              + DECIMAL
              + "))\\s*([^\\d\\s.+-][^\\s.+-]*)?");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+(\\s*[^\\d,]*)?");
  private static final Pattern NOT_FINITE =
      Pattern.compile("[+-]?\\.?(nan|inf|infinity|∞)(\\s.*)?", Pattern.CASE_INSENSITIVE);
  private static final String[][] VULGAR = {
    {"½", "1/2"}, {"¼", "1/4"}, {"¾", "3/4"}, {"⅛", "1/8"}, {"⅜", "3/8"}, {"⅝", "5/8"}, {"⅞", "7/8"}
  };

  private QuantityText() {}

  /** Why a text is not a quantity. */
  static final class NotAQuantity extends Exception {
    private static final long serialVersionUID = 1L;

    private final JobCode code;
    private final String hint;

    NotAQuantity(JobCode code, String message, String hint) {
      super(message);
      this.code = code;
      this.hint = hint;
    }

    JobCode code() {
      return code;
    }

    String hint() {
      return hint;
    }

    String text() {
      return String.valueOf(getMessage());
    }
  }

  /**
   * Reads a quantity.
   *
   * @param inches whether a bare number is in inches (in/min, in/s2)
   * @return in the inner unit of the kind: mm, mm/min, mm/s2, rad, rpm, s, N, or a share of 1
   */
  static double read(String text, UnitKind kind, boolean inches) throws NotAQuantity {
    String rest = withPlainFractions(text.strip());
    refuseSpecials(rest, kind);
    double sign = rest.startsWith("-") ? -1 : 1;
    if (rest.startsWith("-") || rest.startsWith("+")) {
      rest = rest.substring(1);
    }
    double sum = 0;
    int terms = 0;
    Matcher term = TERM.matcher(rest);
    while (!rest.isBlank()) {
      if (!term.lookingAt()) {
        throw notANumber(text, kind);
      }
      String unit = term.group(7);
      String left = rest.substring(term.end());
      if (unit == null && (terms > 0 || !left.isBlank())) {
        throw notANumber(text, kind);
      }
      sum += value(term, text) * factor(unit, text, kind, inches);
      terms++;
      rest = left;
      term.reset(rest);
    }
    if (terms == 0) {
      throw notANumber(text, kind);
    }
    return finite(sign * sum, text);
  }

  private static String withPlainFractions(String text) {
    String plain = text.replace('⁄', '/');
    for (String[] pair : VULGAR) {
      int at = plain.indexOf(pair[0]);
      if (at >= 0) {
        boolean mixed = at > 0 && Character.isDigit(plain.charAt(at - 1));
        plain = plain.replace(pair[0], (mixed ? "-" : "") + pair[1]);
      }
    }
    return plain;
  }

  private static void refuseSpecials(String text, UnitKind kind) throws NotAQuantity {
    if (NOT_FINITE.matcher(text).matches()) {
      throw new NotAQuantity(
          JobCode.OUT_OF_RANGE, "\"" + text + "\" is not a finite number", example(kind));
    }
    if (DECIMAL_COMMA.matcher(text).matches()) {
      throw new NotAQuantity(
          JobCode.NOT_A_QUANTITY,
          "\"" + text + "\" has a comma where a decimal point is expected",
          "write " + text.replace(',', '.'));
    }
  }

  private static NotAQuantity notANumber(String text, UnitKind kind) {
    return new NotAQuantity(
        JobCode.NOT_A_QUANTITY, "\"" + text + "\" is not " + kind.label(), example(kind));
  }

  static String example(UnitKind kind) {
    return switch (kind) {
      case LENGTH -> "write a length like 19 mm, 3/4 in or 5-1/4 in";
      case FEED -> "write a feed like 1200 mm/min or 48 in/min";
      case ACCELERATION -> "write an acceleration like 300 mm/s2";
      case ANGLE -> "write an angle like 60 deg";
      case SPEED -> "write a turning speed like 18000 rpm";
      case TIME -> "write a time like 3 s";
      case FORCE -> "write a force like 60 N or 15 lbf";
      case SHARE -> "write a share like 40%";
    };
  }

  private static double value(Matcher term, String text) throws NotAQuantity {
    if (term.group(1) != null) {
      return number(term.group(1)) + ratio(term.group(2), term.group(3), text);
    }
    if (term.group(4) != null) {
      return ratio(term.group(4), term.group(5), text);
    }
    return number(term.group(6));
  }

  private static double ratio(String above, String below, String text) throws NotAQuantity {
    if (number(below) == 0) {
      throw new NotAQuantity(
          JobCode.OUT_OF_RANGE, "\"" + text + "\" divides by 0", "check the fraction");
    }
    return number(above) / number(below);
  }

  private static double number(String digits) {
    return Double.parseDouble(digits);
  }

  private static double factor(String unit, String text, UnitKind kind, boolean inches)
      throws NotAQuantity {
    Map<String, Double> units = kind.units();
    String written = unit == null ? kind.bareUnit(inches) : unit;
    Double factor = units.getOrDefault(written, units.get(written.toLowerCase(Locale.ROOT)));
    if (factor == null) {
      throw new NotAQuantity(
          JobCode.WRONG_UNIT,
          "\"" + text + "\" is not " + kind.label() + ": unknown unit \"" + unit + "\"",
          example(kind));
    }
    return factor;
  }

  private static double finite(double value, String text) throws NotAQuantity {
    if (!Double.isFinite(value)) {
      throw new NotAQuantity(
          JobCode.OUT_OF_RANGE, "\"" + text + "\" is not a finite number", "write a smaller one");
    }
    return value;
  }
}
