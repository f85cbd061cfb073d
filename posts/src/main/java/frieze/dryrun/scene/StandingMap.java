package frieze.dryrun.scene;

import frieze.field.StockField;
import java.util.Arrays;

/**
 * Which squares of the stock still stand above its underside, on a grid coarse enough to be looked
 * at again and again.
 *
 * <p><em>Approximation:</em> a square stands if anything in it stands, so that thin walls hold; a
 * slot narrower than two squares may be missed.
 */
public final class StandingMap {
  /** The grid has about so many squares at most. */
  static final int MOST_SQUARES = 1_000_000;

  private static final float ABOVE_BOTTOM_MM = 0.01f;

  private final int columns;
  private final int rows;
  private final double squareMm;
  private final boolean[] stands;

  private StandingMap(int columns, int rows, double squareMm, boolean[] stands) {
    this.columns = columns;
    this.rows = rows;
    this.squareMm = squareMm;
    this.stands = stands;
  }

  /** Looks at a field as it is now. */
  public static StandingMap of(StockField field) {
    double cells = (double) field.columns() * field.rows();
    int step = (int) Math.max(1, Math.ceil(Math.sqrt(cells / MOST_SQUARES)));
    int columns = -Math.floorDiv(-field.columns(), step);
    int rows = -Math.floorDiv(-field.rows(), step);
    boolean[] stands = new boolean[columns * rows];
    float[] heights = new float[field.columns()];
    float bottom = (float) -field.thicknessMm() + ABOVE_BOTTOM_MM;
    for (int row = 0; row < field.rows(); row++) {
      field.copyRow(row, heights);
      int base = row / step * columns;
      for (int column = 0; column < heights.length; column++) {
        if (heights[column] > bottom) {
          stands[base + column / step] = true;
        }
      }
    }
    return new StandingMap(columns, rows, step * field.cellMm(), stands);
  }

  public int columns() {
    return columns;
  }

  public int rows() {
    return rows;
  }

  public double squareMm() {
    return squareMm;
  }

  public boolean stands(int index) {
    return stands[index];
  }

  /** The square that holds a place, or the nearest one. */
  public int indexAt(double x, double y) {
    int column = (int) Math.min(columns - 1, Math.max(0, Math.floor(x / squareMm)));
    int row = (int) Math.min(rows - 1, Math.max(0, Math.floor(y / squareMm)));
    return row * columns + column;
  }

  /**
   * Numbers the pieces that hang together, from 1; 0 where nothing stands. Squares hang together
   * along their sides.
   */
  public int[] pieces() {
    return GridPieces.of(stands, columns, rows);
  }

  /** Whether each piece reaches the edge of the stock, by its number. */
  public boolean[] reachesEdge(int[] piece) {
    boolean[] reaches = new boolean[Arrays.stream(piece).max().orElse(0) + 1];
    for (int column = 0; column < columns; column++) {
      reaches[piece[column]] = true;
      reaches[piece[(rows - 1) * columns + column]] = true;
    }
    for (int row = 0; row < rows; row++) {
      reaches[piece[row * columns]] = true;
      reaches[piece[row * columns + columns - 1]] = true;
    }
    return reaches;
  }
}
