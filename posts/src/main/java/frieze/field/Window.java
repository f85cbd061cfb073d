package frieze.field;

import frieze.motion.Position;
import java.util.Arrays;

/**
 * A small rectangle of heights, finer than the stock field and anywhere: each sweep lowers those
 * that it passes below.
 *
 * <p>Its row {@code j} and column {@code i} is the middle of a cell, at {@code (i + 0.5) * cellMm}
 * and {@code (j + 0.5) * cellMm} from the corner.
 */
public final class Window {
  private final double minYMm;
  private final int columns;
  private final int rows;
  private final double cellMm;
  private final float[] heights;
  private final Sweep.Columns at;
  private final Sweep.Row meets = new Sweep.Row();
  private final float[] swept;

  private Window(double minXMm, double minYMm, int columns, int rows, double cellMm) {
    this.minYMm = minYMm;
    this.columns = columns;
    this.rows = rows;
    this.cellMm = cellMm;
    this.heights = new float[columns * rows];
    this.at = Sweep.Columns.of(minXMm, columns, cellMm);
    this.swept = new float[columns];
  }

  /**
   * Makes a window.
   *
   * @param corner the corner of least X and Y; its Z is the height of every cell at first
   * @param cellMm the side of a cell
   */
  public static Window of(Position corner, int columns, int rows, double cellMm) {
    Window window = new Window(corner.x(), corner.y(), columns, rows, cellMm);
    Arrays.fill(window.heights, (float) corner.z());
    return window;
  }

  /**
   * Lowers what a tool passes on a straight way.
   *
   * @param joined whether the way starts where the last one ended, with the same tool
   */
  public void lower(Position from, Position to, Profile tool, boolean joined) {
    lower(new StraightSweep(from, to, tool, Ends.startDone(joined)));
  }

  /** Lowers what the sweep passes. */
  void lower(Sweep sweep) {
    int first = (int) Math.max(0, Math.ceil((sweep.bounds().minY() - minYMm) / cellMm - 0.5));
    int end = (int) Math.min(rows, Math.floor((sweep.bounds().maxY() - minYMm) / cellMm - 0.5) + 1);
    for (int row = first; row < end; row++) {
      double y = minYMm + (row + 0.5) * cellMm;
      sweep.intersect(y, meets);
      lower(sweep, row, meets.low1, meets.high1);
      lower(sweep, row, meets.low2, meets.high2);
    }
  }

  private void lower(Sweep sweep, int row, double low, double high) {
    if (low > high) {
      return;
    }
    int first = at.firstFrom(low);
    int end = at.endAt(high, columns);
    if (!isAnyAbove(sweep.lowestMm(), row * columns + first, row * columns + end)) {
      return;
    }
    sweep.heights(minYMm + (row + 0.5) * cellMm, at, first, end, swept);
    for (int i = first; i < end; i++) {
      int cell = row * columns + i;
      heights[cell] = Math.min(heights[cell], swept[i]);
    }
  }

  private boolean isAnyAbove(double heightMm, int from, int end) {
    for (int cell = from; cell < end; cell++) {
      if (heights[cell] > heightMm) {
        return true;
      }
    }
    return false;
  }

  /** The heights, row by row; not a copy. */
  public float[] heights() {
    return heights;
  }
}
