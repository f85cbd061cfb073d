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
  private final StringBuilder line = new StringBuilder();

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

  /** A line of the dialect, with its codes and numbers in the form that the controller wants. */
  String ownLine(String line) {
    for (String word : line.split(" +", -1)) {
      char letter = word.charAt(0);
      if (letter == 'G' || letter == 'M') {
        code(word);
      } else {
        text(word);
      }
    }
    return take();
  }

  /** Adds a length in last digits. */
  void length(String letter, long ticks) {
    gap();
    line.append(letter);
    NumberText.append(line, ticks, decimals, pointAlways);
  }

  void feed(long ticks) {
    gap();
    line.append('F');
    NumberText.append(line, ticks, feedDecimals, pointAlways);
  }

  void text(String word) {
    gap();
    line.append(word);
  }

  /** Writes the line, unless nothing was added, and starts another. */
  void endLine(LineWriter lines) {
    if (!line.isEmpty()) {
      lines.line(line);
      line.setLength(0);
    }
  }

  /** Ends the line and gives it; empty when nothing was added. */
  String take() {
    String taken = line.toString();
    line.setLength(0);
    return taken;
  }
}
