package frieze.field;

/** Depths of a stock field on a coarser grid, for pictures. */
public final class DepthMap {
  private final int columns;
  private final int rows;
  private final double cellMm;
  private final float[] depthsMm;

  /** Takes over {@code depthsMm}: below the stock's top, row by row. */
  DepthMap(int columns, int rows, double cellMm, float[] depthsMm) {
    if (depthsMm.length != columns * rows) {
      throw new IllegalArgumentException(
          "depthsMm must hold " + columns + " x " + rows + " values but holds " + depthsMm.length);
    }
    this.columns = columns;
    this.rows = rows;
    this.cellMm = cellMm;
    this.depthsMm = depthsMm;
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

  /**
   * The deepest within a cell, in millimetres below the stock's top; at most the stock's thickness,
   * which is a hole.
   *
   * @param column from the left
   * @param row from the front
   */
  public float depthMm(int column, int row) {
    return depthsMm[row * columns + column];
  }
}
