package frieze.cli;

import java.util.ArrayList;
import java.util.List;

/** A table in plain text: columns as wide as their widest cell, two spaces between. */
final class Table {
  private final List<List<String>> rows = new ArrayList<>();

  Table(String... heads) {
    rows.add(List.of(heads));
  }

  void row(List<String> cells) {
    if (cells.size() != rows.get(0).size()) {
      throw new IllegalArgumentException(
          "row must have " + rows.get(0).size() + " cells but has " + cells.size());
    }
    rows.add(List.copyOf(cells));
  }

  @Override
  public String toString() {
    int columns = rows.get(0).size();
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int i = 0; i < columns; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < columns; i++) {
        line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
    return text.toString();
  }
}
