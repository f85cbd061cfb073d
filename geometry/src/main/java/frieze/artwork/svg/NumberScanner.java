package frieze.artwork.svg;

import frieze.artwork.Limits;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads numbers and single characters from SVG microsyntaxes (path data, points, transforms).
 *
 * <p>Numbers keep the full precision of a {@code double}. Source: SVG 2, 9.3.9 (the grammar of path
 * data), with the trailing decimal point of SVG 1.1 refused as SVG 2 does.
 */
final class NumberScanner {
  /** Says that the text is not what the grammar asks for. */
  static final class SyntaxException extends Exception {
    private static final long serialVersionUID = 1L;

    private final int position;
    private final boolean noSize;

    SyntaxException(String message, int position, boolean noSize) {
      super(message, null, false, false);
      this.position = position;
      this.noSize = noSize;
    }

    /** Whether the text holds something that stands for a number but is none that can be drawn. */
    boolean noSize() {
      return noSize;
    }

    /** Where, in characters from the start of the attribute's value. */
    int position() {
      return position;
    }
  }

  private final String text;
  private int at;

  NumberScanner(String text) {
    this.text = text;
  }

  /** Reads two or more numbers from 0 to 1, with spaces between. */
  static List<Double> shares(String text) throws SyntaxException {
    NumberScanner numbers = new NumberScanner(text);
    List<Double> shares = new ArrayList<>();
    numbers.skipSpace();
    while (!numbers.atEnd()) {
      double share = numbers.number();
      if (!(share >= 0 && share <= 1)) {
        throw new SyntaxException("a part is from 0 to 1", numbers.position(), false);
      }
      shares.add(share);
      numbers.skipSpace();
    }
    if (shares.size() < 2) {
      throw new SyntaxException("two parts or more are needed", numbers.position(), false);
    }
    return shares;
  }

  int position() {
    return at;
  }

  boolean atEnd() {
    return at >= text.length();
  }

  /** The next character, or NUL at the end. */
  char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  char next() {
    return text.charAt(at++);
  }

  void skipSpace() {
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
  }

  static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
  }

  /** Skips space with at most one comma in it; says whether there was a comma. */
  boolean skipSeparator() {
    skipSpace();
    if (peek() != ',') {
      return false;
    }
    at++;
    skipSpace();
    return true;
  }

  boolean atNumber() {
    char c = peek();
    return isDigit(c) || c == '.' || c == '-' || c == '+';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Reads a flag: the single character 0 or 1. */
  boolean flag() throws SyntaxException {
    char c = peek();
    if (c != '0' && c != '1') {
      throw fail("a flag must be 0 or 1");
    }
    at++;
    return c == '1';
  }

  /** Reads a number. */
  double number() throws SyntaxException {
    int start = at;
    if (peek() == '+' || peek() == '-') {
      at++;
    }
    int digits = skipDigits();
    if (peek() == '.') {
      at++;
      int fraction = skipDigits();
      if (fraction == 0) {
        throw fail(digits == 0 ? "a number is expected" : "digits must follow the decimal point");
      }
      digits += fraction;
    }
    if (digits == 0) {
      at = start;
      throw fail("a number is expected");
    }
    skipExponent();
    double value = Double.parseDouble(text.substring(start, at));
    if (!(Math.abs(value) <= Limits.MAX_COORDINATE)) {
      throw new SyntaxException(
          "the number " + text.substring(start, at) + " is out of range", start, true);
    }
    return value;
  }

  /** Whether the text goes on with a name that programs write for what is no number. */
  private boolean isNoNumber() {
    int from = peek() == '-' || peek() == '+' ? at + 1 : at;
    return text.regionMatches(true, from, "nan", 0, 3)
        || text.regionMatches(true, from, "inf", 0, 3);
  }

  private int skipDigits() {
    int start = at;
    while (isDigit(peek())) {
      at++;
    }
    return at - start;
  }

  /** Skips an exponent if it is a whole one, so that units such as {@code em} stay. */
  private void skipExponent() {
    if (peek() != 'e' && peek() != 'E') {
      return;
    }
    int start = at;
    at++;
    if (peek() == '+' || peek() == '-') {
      at++;
    }
    if (skipDigits() == 0) {
      at = start;
    }
  }

  /** The letters that follow. */
  String word() {
    int start = at;
    while (Character.isLetter(peek()) || peek() == '%') {
      at++;
    }
    return text.substring(start, at);
  }

  SyntaxException fail(String message) {
    String found = atEnd() ? "the end" : "\"" + text.charAt(at) + "\"";
    return new SyntaxException(message + " but " + found + " was found", at, isNoNumber());
  }
}
