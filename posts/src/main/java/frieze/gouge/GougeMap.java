package frieze.gouge;

/** Where a simulated stock departs from what was asked, on a coarse grid, for a picture. */
public final class GougeMap {
  private final int columns;
  private final int rows;
  private final double cellMm;
  private final byte[] marks;

  /** Takes over {@code marks}, one for each cell, row by row. */
  GougeMap(int columns, int rows, double cellMm, byte[] marks) {
    this.columns = columns;
    this.rows = rows;
    this.cellMm = cellMm;
    this.marks = marks;
  }

  /** The number of cells along X. */
  public int columns() {
    return columns;
  }

  /** The number of cells along Y. */
  public int rows() {
    return rows;
  }

  /** The side of a cell. */
  public double cellMm() {
    return cellMm;
  }

  /** Whether something within a cell was cut too deep. */
  public boolean isTooDeep(int column, int row) {
    return marks[row * columns + column] == GougeCheck.TOO_DEEP_MARK;
  }

  /** Whether something within a cell was left standing, and nothing cut too deep. */
  public boolean isLeft(int column, int row) {
    return marks[row * columns + column] == GougeCheck.LEFT_MARK;
  }
}
