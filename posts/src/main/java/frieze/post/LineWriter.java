package frieze.post;

import frieze.lower.Capabilities;
import java.util.ArrayList;
import java.util.List;

/** Collects lines: numbers them where wanted, keeps them short enough, knows where each is from. */
final class LineWriter {
  private static final int NUMBER_STEP = 10;

  /** The largest line number of NISTIR 6556, 3.3.1, rounded down to the step. */
  private static final int LAST_NUMBER = 99990;

  private final Capabilities.Layout layout;
  private final Ascii text = new Ascii();
  private final List<String> origins = new ArrayList<>();
  private String origin = "";
  private int number;

  LineWriter(Capabilities.Layout layout) {
    this.layout = layout;
  }

  void origin(String newOrigin) {
    origin = newOrigin;
  }

  /** Writes a line that takes no number: a {@code %}. */
  void bare(String line) {
    text.append(line).append(layout.crLf() ? "\r\n" : "\n");
    origins.add(origin);
  }

  /**
   * Writes a line of words.
   *
   * @throws IllegalArgumentException when it is longer than the controller reads
   */
  void line(Ascii words) {
    int start = text.length();
    if (layout.lineNumbers()) {
      number = number >= LAST_NUMBER ? NUMBER_STEP : number + NUMBER_STEP;
      text.append('N');
      text.number(number, 0, false);
      text.append(' ');
    }
    text.append(words);
    if (text.length() - start > layout.maxLineLength()) {
      throw new IllegalArgumentException(
          "a line is longer than " + layout.maxLineLength() + " characters: " + text.from(start));
    }
    text.append(layout.crLf() ? "\r\n" : "\n");
    origins.add(origin);
  }

  /** Writes a text as comments, if the controller has any. */
  void comment(String words) {
    String plain = PlainText.of(words);
    if (layout.comments() == Capabilities.CommentForm.NONE) {
      return;
    }
    boolean round = layout.comments() == Capabilities.CommentForm.PARENTHESES;
    String shown = PlainText.looksLikeMessage(plain) ? "- " + plain : plain;
    for (String piece : PlainText.wrap(shown, layout.maxLineLength() - 2)) {
      bare(round ? "(" + piece + ")" : "; " + piece);
    }
  }

  String text() {
    return text.toString();
  }

  List<String> origins() {
    return origins;
  }
}
