package frieze.post;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes comments of texts that people wrote, such that nothing in them can leave the comment.
 *
 * <p><i>Guarantees:</i> only ASCII letters, digits, single blanks and {@code . , : + - / = _} are
 * left. Characters that some controllers act on at once, even inside a comment ({@code ! ? ~ %}),
 * and those that end or open one ({@code ( ) ;} and line ends) are not among them.
 */
final class PlainText {
  private static final String KEPT = ".,:+-/=_";
  private static final String MESSAGE_SIGN = "MSG,";

  private PlainText() {}

  static String of(String text) {
    String spelled =
        Normalizer.normalize(
            text.replace("ß", "ss").replace("×", "x").replace("ø", "o").replace("°", " deg "),
            Normalizer.Form.NFKD);
    StringBuilder out = new StringBuilder();
    boolean gap = false;
    for (int i = 0; i < spelled.length(); i++) {
      char c = spelled.charAt(i);
      if (isKept(c)) {
        if (gap && !out.isEmpty()) {
          out.append(' ');
        }
        out.append(c);
        gap = false;
      } else {
        gap |= Character.getType(c) != Character.NON_SPACING_MARK;
      }
    }
    return out.toString();
  }

  private static boolean isKept(char c) {
    boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    return letter || (c >= '0' && c <= '9') || KEPT.indexOf(c) >= 0;
  }

  /** Breaks a plain text into pieces of at most so many characters, between words if it can. */
  static List<String> wrap(String plain, int width) {
    List<String> lines = new ArrayList<>();
    String rest = plain;
    while (rest.length() > width) {
      int cut = rest.lastIndexOf(' ', width);
      boolean between = cut > 0;
      lines.add(rest.substring(0, between ? cut : width));
      rest = rest.substring(between ? cut + 1 : width);
    }
    if (!rest.isEmpty()) {
      lines.add(rest);
    }
    return lines;
  }

  /** Whether a controller would show the comment instead of passing over it. */
  static boolean looksLikeMessage(String plain) {
    return plain.replace(" ", "").regionMatches(true, 0, MESSAGE_SIGN, 0, MESSAGE_SIGN.length());
  }
}
