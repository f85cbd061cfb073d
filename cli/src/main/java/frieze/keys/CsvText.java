package frieze.keys;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits a table of comma-separated values into its cells.
 *
 * <p><em>Source:</em> RFC 4180: commas between cells, a line for each row, quotes around cells that
 * hold commas, quotes or line ends, quotes inside doubled. Line ends of all systems are taken.
 */
public final class CsvText {
  private final String text;
  private final List<List<Cell>> rows = new ArrayList<>();
  private List<Cell> row = new ArrayList<>();
  private int at;
  private int line;
  private int lineStart;

  private CsvText(String text) {
    this.text = text;
  }

  /**
   * One cell.
   *
   * @param text without its quotes and the blanks around it
   * @param line counted from 0
   * @param column of its first letter, without the quote before it, counted from 0
   * @param length of the text where it stands in one line, else 0
   */
  public record Cell(String text, int line, int column, int length) {
    public boolean isEmpty() {
      return text.isEmpty();
    }
  }

  /** A quote that is opened and not closed. */
  public static final class OpenQuoteException extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;

    OpenQuoteException(int line, int column) {
      super("a quote is not closed");
      this.line = line;
      this.column = column;
    }

    public int line() {
      return line;
    }

    public int column() {
      return column;
    }
  }

  /**
   * Splits a text into rows; empty lines are left out.
   *
   * @throws OpenQuoteException if a quote is not closed
   */
  public static List<List<Cell>> rows(String text) throws OpenQuoteException {
    CsvText csv = new CsvText(text.startsWith("\uFEFF") ? text.substring(1) : text);
    while (csv.at < csv.text.length()) {
      csv.cell();
    }
    csv.endRow();
    return csv.rows;
  }

  private void cell() throws OpenQuoteException {
    StringBuilder cell = new StringBuilder();
    int startLine = line;
    int startColumn = at - lineStart;
    boolean quoted = text.charAt(at) == '"';
    boolean open = quoted;
    at += quoted ? 1 : 0;
    while (at < text.length() && (open || !isEnd(text.charAt(at)))) {
      char c = next();
      if (!open || c != '"') {
        cell.append(c);
      } else if (at < text.length() && text.charAt(at) == '"') {
        cell.append(next());
      } else {
        open = false;
      }
    }
    if (open) {
      throw new OpenQuoteException(startLine, startColumn);
    }
    String written = cell.toString();
    int blanks = written.length() - written.stripLeading().length();
    row.add(
        new Cell(
            written.strip(),
            startLine,
            startColumn + blanks + (quoted ? 1 : 0),
            line == startLine ? written.strip().length() : 0));
    if (at < text.length() && next() != ',') {
      endRow();
    }
  }

  private char next() {
    char c = text.charAt(at++);
    boolean firstOfTwo = c == '\r' && at < text.length() && text.charAt(at) == '\n';
    if (c == '\n' || (c == '\r' && !firstOfTwo)) {
      line++;
      lineStart = at;
    }
    return c;
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
