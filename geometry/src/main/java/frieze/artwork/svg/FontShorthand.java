package frieze.artwork.svg;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.css.sac.LexicalUnit;

/**
 * Takes the property {@code font} apart: slant and weight, then the size, perhaps the height of the
 * lines, then the families. Source: CSS 2.1, 15.8.
 */
final class FontShorthand {
  private FontShorthand() {}

  /** Adds what a value says to declarations; nothing if it names no size and no family. */
  static void expand(LexicalUnit value, Map<String, String> into) {
    String slant = "normal";
    String weight = "normal";
    for (LexicalUnit unit = value; unit != null; unit = unit.getNextLexicalUnit()) {
      String word = String.valueOf(CssText.first(unit));
      if (word.equals("italic") || word.equals("oblique")) {
        slant = word;
      } else if (isWeight(unit, word)) {
        weight = word;
      } else if (isSize(unit, word)) {
        LexicalUnit family = behindLineHeight(unit);
        if (family != null) {
          into.put("font-style", slant);
          into.put("font-weight", weight);
          into.put("font-size", word);
          into.put("font-family", CssText.everything(family));
        }
        return;
      }
    }
  }

  private static boolean isWeight(LexicalUnit unit, String word) {
    return unit.getLexicalUnitType() == LexicalUnit.SAC_INTEGER
        || word.equals("bold")
        || word.equals("bolder")
        || word.equals("lighter");
  }

  private static boolean isSize(LexicalUnit unit, String word) {
    boolean named = !Double.isNaN(FontStyle.size(word, 1));
    return named || unit.getLexicalUnitType() != LexicalUnit.SAC_IDENT;
  }

  private static @Nullable LexicalUnit behindLineHeight(LexicalUnit size) {
    LexicalUnit next = size.getNextLexicalUnit();
    if (next != null && next.getLexicalUnitType() == LexicalUnit.SAC_OPERATOR_SLASH) {
      LexicalUnit height = next.getNextLexicalUnit();
      return height == null ? null : height.getNextLexicalUnit();
    }
    return next;
  }
}
