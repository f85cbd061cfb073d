package frieze.artwork.svg;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How letters are set.
 *
 * @param families names in order of preference; none for any
 * @param anchor which part of a line of text is before its place: 0 at the start, 1 at the end
 * @param letterSpacing between any two letters, in user units
 * @param wordSpacing at each space, in user units
 * @param baseline what of the letters is at the height of the text, as written
 * @param keepsSpace whether each space and line end counts
 */
record FontStyle(
    List<String> families,
    boolean bold,
    boolean italic,
    double anchor,
    double letterSpacing,
    double wordSpacing,
    String baseline,
    boolean keepsSpace) {
  /** What a drawing starts with. Source: SVG 1.1, property index. */
  static final FontStyle INITIAL =
      new FontStyle(List.of(), false, false, 0, 0, 0, "alphabetic", false);

  /** The lightest weight that is set bold. Source: CSS Fonts 4, 5.2, with two weights at hand. */
  private static final int BOLD = 600;

  FontStyle {
    families = List.copyOf(families);
  }

  /** The style inside an element, from what is declared for it. */
  FontStyle inside(Style.Values values, Length.Basis basis) {
    String family = values.word("font-family", "");
    return new FontStyle(
        family.isEmpty() ? families : families(family),
        bold(values.word("font-weight", "")),
        italic(values.word("font-style", "")),
        anchor(values.word("text-anchor", "")),
        spacing(values, "letter-spacing", letterSpacing, basis),
        spacing(values, "word-spacing", wordSpacing, basis),
        values.word("dominant-baseline", baseline),
        keeps(values.word("white-space", values.word("xml:space", ""))));
  }

  private static List<String> families(String text) {
    return Arrays.stream(text.split(",", -1))
        .map(f -> f.replaceAll("[\"']", "").strip().replaceAll("\\s+", " "))
        .filter(f -> !f.isEmpty())
        .toList();
  }

  private boolean bold(String word) {
    return switch (word) {
      case "" -> bold;
      case "bold", "bolder" -> true;
      case "normal", "lighter" -> false;
      default -> word.matches("\\d{1,4}") ? Integer.parseInt(word) >= BOLD : bold;
    };
  }

  private boolean italic(String word) {
    return word.isEmpty() ? italic : word.equals("italic") || word.startsWith("oblique");
  }

  private double anchor(String word) {
    return switch (word) {
      case "start" -> 0;
      case "middle" -> 0.5;
      case "end" -> 1;
      default -> anchor;
    };
  }

  private static double spacing(
      Style.Values values, String property, double otherwise, Length.Basis basis) {
    return values.word(property, "").equals("normal")
        ? 0
        : values.length(property, otherwise, basis);
  }

  private boolean keeps(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "preserve", "pre", "pre-wrap", "break-spaces" -> true;
      case "default", "normal", "nowrap", "pre-line" -> false;
      default -> keepsSpace;
    };
  }

  /**
   * The size of letters that a word stands for; NaN if it is none. Source: CSS Fonts 3, 3.5.
   *
   * @param around the size of the letters around
   */
  static double size(String word, double around) {
    double medium = Style.INITIAL.fontSizePx();
    return switch (word) {
      case "xx-small" -> medium * 3 / 5;
      case "x-small" -> medium * 3 / 4;
      case "small" -> medium * 8 / 9;
      case "medium" -> medium;
      case "large" -> medium * 6 / 5;
      case "x-large" -> medium * 3 / 2;
      case "xx-large" -> medium * 2;
      case "larger" -> around * 6 / 5;
      case "smaller" -> around * 5 / 6;
      default -> Double.NaN;
    };
  }
}
