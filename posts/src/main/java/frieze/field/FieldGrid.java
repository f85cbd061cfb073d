package frieze.field;

import frieze.shop.Stock;

/**
 * The cells of a stock field: squares whose centres lie in the stock.
 *
 * @param columns along X
 * @param rows along Y
 * @param cellMm the side of a cell
 * @param topMm the height of the uncut top
 * @param bottomMm the height of the stock's underside
 */
record FieldGrid(int columns, int rows, double cellMm, double topMm, double bottomMm) {
  /** The usual cell sizes. */
  private static final double[] CELLS_MM = {0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.75, 1};

  FieldGrid {
    if (columns < 1 || rows < 1) {
      throw new IllegalArgumentException(
          "a field needs at least one cell but has " + columns + " x " + rows);
    }
  }

  static FieldGrid of(Stock stock, double cellMm) {
    if (!(cellMm > 0) || !Double.isFinite(cellMm)) {
      throw new IllegalArgumentException("cellMm must be > 0 but was " + cellMm + " mm");
    }
    return new FieldGrid(
        count(stock.lengthMm(), cellMm),
        count(stock.widthMm(), cellMm),
        cellMm,
        0,
        -stock.thickestMm());
  }

  private static int count(double sizeMm, double cellMm) {
    double count = Math.rint(sizeMm / cellMm);
    if (count > StockField.MOST_CELLS) {
      throw new IllegalArgumentException(
          "cellMm is too small for a stock of " + sizeMm + " mm: " + cellMm + " mm");
    }
    return (int) Math.max(1, count);
  }

  /** The finest of the usual cell sizes with which a stock has no more cells than given. */
  static double defaultCellMm(double lengthMm, double widthMm, long mostCells) {
    for (double cell : CELLS_MM) {
      if (lengthMm / cell * (widthMm / cell) <= mostCells) {
        return cell;
      }
    }
    return Math.ceil(Math.sqrt(lengthMm * widthMm / mostCells));
  }

  int tileColumns() {
    return (columns + Tile.SPAN - 1) / Tile.SPAN;
  }

  int tileRows() {
    return (rows + Tile.ROWS - 1) / Tile.ROWS;
  }

  long cells() {
    return (long) columns * rows;
  }
}
