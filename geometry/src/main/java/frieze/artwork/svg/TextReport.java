package frieze.artwork.svg;

import frieze.artwork.ArtworkCode;
import frieze.artwork.svg.TextContent.Letter;
import frieze.artwork.text.FontFace;
import frieze.artwork.text.FontFamilies;
import java.text.Bidi;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Tells in which fonts text is set, and what of it is not as it was meant. */
final class TextReport {
  /** What text asks for beside letters and their places. */
  private static final List<String> NOT_FOLLOWED =
      List.of(
          "textLength",
          "text-decoration",
          "writing-mode",
          "baseline-shift",
          "font-variant",
          "inline-size",
          "shape-inside");

  private static final List<String> USUAL =
      List.of("", "none", "normal", "inherit", "auto", "baseline", "0", "horizontal-tb", "lr-tb");

  private final Report report;
  private final Map<String, Count> fonts = new LinkedHashMap<>();
  private final Map<String, Count> missing = new LinkedHashMap<>();

  /** How often something was met, and where first. */
  private static final class Count {
    private final SvgElement first;
    private final boolean asked;
    private int letters;

    Count(SvgElement first, boolean asked) {
      this.first = first;
      this.asked = asked;
    }
  }

  TextReport(Report report) {
    this.report = report;
  }

  /** Whether a character leaves no ink in any font. */
  static boolean isUnseen(int codePoint) {
    int kind = Character.getType(codePoint);
    return kind == Character.CONTROL
        || kind == Character.FORMAT
        || Character.isSpaceChar(codePoint);
  }

  /** Hears of the font of a letter. */
  void set(Letter letter, FontFamilies.Choice choice) {
    if (isUnseen(letter.codePoint())) {
      return;
    }
    SvgElement element = letter.innermost().element();
    FontFace face = choice.face();
    List<String> families = letter.font().families();
    String words = face.name() + (choice.bundled() ? ", which comes with Frieze" : "");
    if (!choice.asked()) {
      String wanted = Report.shortened(String.join(", ", families));
      words += "; \"" + wanted + "\" is not at hand, and its letters have other shapes and widths";
    }
    fonts.computeIfAbsent(words, k -> new Count(element, choice.asked())).letters++;
  }

  /** Hears that a font can't draw a letter. */
  void missing(Letter letter, FontFace face) {
    int c = letter.codePoint();
    if (!isUnseen(c)) {
      String which =
          String.format(
              Locale.ROOT, "\"%s\" (U+%04X) is not in %s", Character.toString(c), c, face.name());
      missing.computeIfAbsent(which, k -> new Count(letter.innermost().element(), false)).letters++;
    }
  }

  /** Says what a part of a text asks for that is not followed. */
  void check(SvgElement part, Map<String, String> declared) {
    for (String wish : NOT_FOLLOWED) {
      String value = declared.getOrDefault(wish, part.attribute(wish, ""));
      if (!USUAL.contains(value)) {
        notFollowed(part, wish);
      }
    }
    String baseline = declared.getOrDefault("dominant-baseline", "");
    if (!USUAL.contains(baseline)
        && !baseline.equals("alphabetic")
        && !baseline.equals("middle")
        && !baseline.equals("central")) {
      notFollowed(part, "dominant-baseline=\"" + Report.shortened(baseline) + "\"");
    }
    for (SvgElement.Words words : part.words()) {
      if (Bidi.requiresBidi(words.text().toCharArray(), 0, words.text().length())) {
        notFollowed(part, "writing from right to left");
        return;
      }
    }
  }

  private void notFollowed(SvgElement part, String wish) {
    report.warning(
        ArtworkCode.EFFECT_LEFT_OUT,
        part,
        wish + " is not followed: the letters stand one behind the other on a line",
        "turn the text into outlines in the drawing program");
  }

  /** Adds what was heard to the report. */
  void finish() {
    fonts.forEach(
        (words, count) -> {
          String message =
              count.letters
                  + (count.letters == 1 ? " letter is" : " letters are")
                  + " set in "
                  + words;
          if (count.asked) {
            report.found().note(ArtworkCode.TEXT_SET, report.span(count.first), message);
          } else {
            report.warning(
                ArtworkCode.TEXT_SET,
                count.first,
                message,
                "name the font's file with `font`, or turn the text into outlines");
          }
        });
    missing.forEach(
        (which, count) ->
            report.warning(
                ArtworkCode.GLYPH_MISSING,
                count.first,
                "the character " + which + " and is left out " + times(count.letters),
                "name another font with `font`, or turn the text into outlines"));
  }

  private static String times(int count) {
    return count == 1 ? "once" : count + " times";
  }
}
