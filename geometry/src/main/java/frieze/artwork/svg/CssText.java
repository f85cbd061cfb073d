package frieze.artwork.svg;

import org.jspecify.annotations.Nullable;
import org.w3c.css.sac.LexicalUnit;

/** Writes the values of CSS declarations as they would stand in an attribute. */
final class CssText {
  private CssText() {}

  /** All parts of a value, parted by spaces and commas. */
  static String everything(LexicalUnit first) {
    StringBuilder written = new StringBuilder();
    for (LexicalUnit unit = first; unit != null; unit = unit.getNextLexicalUnit()) {
      boolean comma = unit.getLexicalUnitType() == LexicalUnit.SAC_OPERATOR_COMMA;
      written.append(comma ? "," : " " + first(unit));
    }
    return written.toString().trim();
  }

  /** The first part of a value, the only one that matters to most properties; null if unknown. */
  static @Nullable String first(LexicalUnit value) {
    return switch (value.getLexicalUnitType()) {
      case LexicalUnit.SAC_INHERIT -> "inherit";
      case LexicalUnit.SAC_IDENT, LexicalUnit.SAC_STRING_VALUE -> value.getStringValue();
      case LexicalUnit.SAC_URI -> "url(" + value.getStringValue() + ")";
      case LexicalUnit.SAC_INTEGER -> Integer.toString(value.getIntegerValue());
      case LexicalUnit.SAC_REAL -> Float.toString(value.getFloatValue());
      case LexicalUnit.SAC_RGBCOLOR -> function("rgb", value.getParameters());
      case LexicalUnit.SAC_FUNCTION -> function(value.getFunctionName(), value.getParameters());
      case LexicalUnit.SAC_PERCENTAGE -> value.getFloatValue() + "%";
      default -> dimension(value);
    };
  }

  private static @Nullable String dimension(LexicalUnit value) {
    try {
      return value.getFloatValue() + value.getDimensionUnitText();
    } catch (IllegalStateException e) {
      return null;
    }
  }

  private static String function(String name, @Nullable LexicalUnit parameters) {
    StringBuilder written = new StringBuilder(name).append('(');
    for (LexicalUnit p = parameters; p != null; p = p.getNextLexicalUnit()) {
      boolean comma = p.getLexicalUnitType() == LexicalUnit.SAC_OPERATOR_COMMA;
      written.append(comma ? "," : String.valueOf(first(p)));
    }
    return written.append(')').toString();
  }
}
