package frieze.artwork.svg;

import frieze.artwork.svg.NumberScanner.SyntaxException;
import java.util.Locale;

/**
 * A number with a unit.
 *
 * <p>Source: CSS Values 3, 5.2 (an inch has 96 px) and SVG 2, 8.9.
 *
 * @param unit in small letters; empty for none
 */
record Length(double value, String unit) {
  static final double PX_PER_INCH = 96;
  static final double MM_PER_INCH = 25.4;
  static final double PX_PER_MM = PX_PER_INCH / MM_PER_INCH;

  /**
   * What lengths are relative to.
   *
   * @param fontSizePx the size of letters
   * @param hundredPercentPx what 100 % is; NaN when that is not known
   */
  record Basis(double fontSizePx, double hundredPercentPx) {}

  /**
   * Reads a length.
   *
   * @throws SyntaxException if it is not one
   */
  static Length parse(String text) throws SyntaxException {
    NumberScanner in = new NumberScanner(text);
    in.skipSpace();
    double value = in.number();
    String unit = in.word().toLowerCase(Locale.ROOT);
    in.skipSpace();
    if (!in.atEnd()) {
      throw in.fail("nothing may follow a length");
    }
    return new Length(value, unit);
  }

  /** The lengths of a list, which are parted by space, a comma or both. */
  static String[] parts(String list) {
    return list.strip().split("\\s*,\\s*|\\s+", -1);
  }

  boolean isPercent() {
    return unit.equals("%");
  }

  /** Whether the unit is one of the real world. */
  boolean isPhysical() {
    return switch (unit) {
      case "mm", "cm", "q", "in", "pt", "pc" -> true;
      default -> false;
    };
  }

  /**
   * The length in px.
   *
   * @throws SyntaxException if the unit is not known, or relative to something unknown
   */
  double px(Basis basis) throws SyntaxException {
    double perUnit =
        switch (unit) {
          case "", "px" -> 1;
          case "in" -> PX_PER_INCH;
          case "mm" -> PX_PER_MM;
          case "cm" -> 10 * PX_PER_MM;
          case "q" -> PX_PER_MM / 4;
          case "pt" -> PX_PER_INCH / 72;
          case "pc" -> PX_PER_INCH / 6;
          case "em", "rem" -> basis.fontSizePx();
          case "ex" -> basis.fontSizePx() / 2;
          case "%" -> basis.hundredPercentPx() / 100;
          default -> throw new SyntaxException("the unit " + unit + " is not known", 0, false);
        };
    if (!Double.isFinite(perUnit)) {
      throw new SyntaxException("a percentage needs a drawing with a width and a height", 0, false);
    }
    return value * perUnit;
  }
}
