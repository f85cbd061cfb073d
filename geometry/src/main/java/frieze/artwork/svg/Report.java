package frieze.artwork.svg;

import frieze.artwork.ArtworkCode;
import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;

/** Adds diagnostics about elements and their attributes, with their places. */
record Report(SourceText source, Diagnostics found) {
  private static final int LONGEST_QUOTE = 40;

  SourceSpan span(SvgElement element) {
    return source.span(element.startOffset(), element.endOffset() - element.startOffset());
  }

  void error(ArtworkCode code, SvgElement element, String message, String hint) {
    found.error(code, span(element), message, hint);
  }

  void warning(ArtworkCode code, SvgElement element, String message, String hint) {
    found.warning(code, span(element), message, hint);
  }

  /** Adds an error about a value that can't be read. */
  void unreadable(SvgElement element, String attribute, String value, SyntaxException why) {
    ArtworkCode code =
        why.noSize() ? ArtworkCode.NUMBER_OUT_OF_RANGE : ArtworkCode.UNREADABLE_VALUE;
    found.error(
        code,
        span(element, attribute, why.position()),
        attribute + "=\"" + shortened(value) + "\" can't be read: " + why.getMessage(),
        "");
  }

  static String shortened(String value) {
    return value.length() <= LONGEST_QUOTE ? value : value.substring(0, LONGEST_QUOTE) + "...";
  }

  /** The place of a character in an attribute's value; of the element if it is not found. */
  SourceSpan span(SvgElement element, String attribute, int position) {
    String text = source.text();
    int at = element.startOffset();
    while (true) {
      at = text.indexOf(attribute, at + 1);
      if (at < 0 || at >= element.endOffset()) {
        return span(element);
      }
      int quote = at + attribute.length();
      while (quote < element.endOffset() && "= \t\r\n".indexOf(text.charAt(quote)) >= 0) {
        quote++;
      }
      boolean starts = NumberScanner.isSpace(text.charAt(at - 1));
      boolean value = quote > at + attribute.length() && "\"'".indexOf(text.charAt(quote)) >= 0;
      if (starts && value) {
        return source.span(Math.min(quote + 1 + position, element.endOffset()), 1);
      }
    }
  }
}
