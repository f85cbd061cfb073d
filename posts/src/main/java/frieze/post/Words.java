package frieze.post;

import frieze.lower.Capabilities;
import frieze.lower.Grid;

/** Collects the words of one line. */
final class Words {
  private static final int SHORT_CODE = 2;

  private final boolean twoDigits;
  private final boolean pointAlways;
  private final int decimals;
  private final int feedDecimals;
  private final Ascii line = new Ascii();

  Words(Capabilities capabilities, Grid grid, Grid feedGrid) {
    this.twoDigits = capabilities.layout().twoDigits();
    this.pointAlways = capabilities.numbers().pointAlways();
    this.decimals = grid.decimals();
    this.feedDecimals = feedGrid.decimals();
  }

  private void gap() {
    if (!line.isEmpty()) {
      line.append(' ');
    }
  }

  /** Adds a G or M code. */
  void code(String code) {
    gap();
    if (twoDigits && code.length() == SHORT_CODE) {
      line.append(code.charAt(0)).append('0').append(code.charAt(1));
    } else {
      line.append(code);
    }
  }

  /**
   * Adds a line of the dialect, with its codes and numbers in the form that the controller wants.
   */
  void ownLine(String own) {
    for (String word : own.split(" +", -1)) {
      char letter = word.charAt(0);
      if (letter == 'G' || letter == 'M') {
        code(word);
      } else {
        text(word);
      }
    }
  }

  /** Adds a length in last digits. */
  void length(char letter, long ticks) {
    gap();
    line.append(letter);
    line.number(ticks, decimals, pointAlways);
  }

  /** The text of a length in last digits. */
  String lengthText(long ticks) {
    StringBuilder out = new StringBuilder();
    NumberText.append(out, ticks, decimals, pointAlways);
    return out.toString();
  }

  void feed(long ticks) {
    gap();
    line.append('F');
    line.number(ticks, feedDecimals, pointAlways);
  }

  void text(String word) {
    gap();
    line.append(word);
  }

  /** Writes the line, unless nothing was added, and starts another. */
  void endLine(LineWriter lines) {
    if (!line.isEmpty()) {
      lines.line(line);
      line.clear();
    }
  }
}
