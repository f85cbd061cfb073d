package frieze.job;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits a table of comma-separated values into its cells.
 *
 * <p><em>Source:</em> RFC 4180: commas between cells, a line for each row, quotes around cells that
 * hold commas, quotes or line ends, quotes inside doubled. Line ends of all systems are taken.
 */
final class CsvText {
  private final String text;
  private final List<List<String>> rows = new ArrayList<>();
  private List<String> row = new ArrayList<>();
  private int at;

  private CsvText(String text) {
    this.text = text;
  }

  /**
   * Splits a text into rows; empty lines are left out.
   *
   * @throws IllegalArgumentException if a quote is not closed
   */
  static List<List<String>> rows(String text) {
    CsvText csv = new CsvText(text.startsWith("\uFEFF") ? text.substring(1) : text);
    while (csv.at < csv.text.length()) {
      csv.cell();
    }
    csv.endRow();
    return csv.rows;
  }

  private void cell() {
    StringBuilder cell = new StringBuilder();
    boolean quoted = text.charAt(at) == '"';
    at += quoted ? 1 : 0;
    while (at < text.length() && (quoted || !isEnd(text.charAt(at)))) {
      char c = text.charAt(at++);
      if (!quoted || c != '"') {
        cell.append(c);
      } else if (at < text.length() && text.charAt(at) == '"') {
        cell.append(text.charAt(at++));
      } else {
        quoted = false;
      }
    }
    if (quoted) {
      throw new IllegalArgumentException("a quote in row " + (rows.size() + 1) + " is not closed");
    }
    row.add(cell.toString().strip());
    if (at < text.length() && text.charAt(at++) != ',') {
      endRow();
    }
  }

  private static boolean isEnd(char c) {
    return c == ',' || c == '\n' || c == '\r';
  }

  private void endRow() {
    if (row.stream().anyMatch(cell -> !cell.isEmpty())) {
      rows.add(row);
    }
    row = new ArrayList<>();
  }
}
