package frieze.field;

import frieze.curve.Bounds;
import java.util.Arrays;

/**
 * A rectangle of cells of a height field, untouched until something cuts it.
 *
 * <p>Heights are held in single precision, rows one after the other, {@link #SPAN} cells each.
 */
final class Tile {
  /** Cells along X. */
  static final int SPAN = 256;

  /** Cells along Y. */
  static final int ROWS = 128;

  private final double originX;
  private final double originY;
  private final int columns;
  private final int rows;
  private final double cell;
  private final float top;
  private final float bottom;
  private float[] heights = new float[0];
  private boolean untouched = true;

  /** Makes the tile in a column and a row of tiles of a field. */
  Tile(FieldGrid grid, int tileColumn, int tileRow) {
    this.cell = grid.cellMm();
    this.originX = tileColumn * SPAN * cell;
    this.originY = tileRow * ROWS * cell;
    this.columns = Math.min(SPAN, grid.columns() - tileColumn * SPAN);
    this.rows = Math.min(ROWS, grid.rows() - tileRow * ROWS);
    this.top = (float) grid.topMm();
    this.bottom = (float) grid.bottomMm();
  }

  Bounds bounds() {
    return new Bounds(originX, originY, originX + columns * cell, originY + rows * cell);
  }

  /** Puts the uncut top back; the cells follow when something cuts them. */
  void reset() {
    untouched = true;
  }

  boolean isUntouched() {
    return untouched;
  }

  float height(int column, int row) {
    return isUntouched() ? top : heights[row * SPAN + column];
  }

  /** Copies a row of heights into an array, starting at an index. */
  void copyRow(int row, float[] into, int start) {
    if (isUntouched()) {
      Arrays.fill(into, start, start + columns, top);
    } else {
      System.arraycopy(heights, row * SPAN, into, start, columns);
    }
  }

  private void touch() {
    if (!untouched) {
      return;
    }
    boolean isNew = heights.length == 0;
    if (isNew) {
      heights = new float[SPAN * rows];
    }
    if (!isNew || top != 0) {
      Arrays.fill(heights, top);
    }
    untouched = false;
  }

  /** Working memory of one thread. */
  static final class Scratch {
    private final Sweep.Row row = new Sweep.Row();
    private final float[] swept = new float[SPAN];
    private final Sweep.Columns pattern;

    Scratch(double cell) {
      this.pattern = Sweep.Columns.of(0, SPAN, cell);
    }
  }

  private int firstRow(Bounds b) {
    return (int) Math.max(0, Math.ceil((b.minY() - originY) / cell - 0.5));
  }

  private int endRow(Bounds b) {
    return (int) Math.min(rows, Math.floor((b.maxY() - originY) / cell - 0.5) + 1);
  }

  /** Lowers the cells to what a sweep leaves. */
  void cut(Sweep sweep, Scratch scratch) {
    Bounds b = sweep.bounds();
    Sweep.Columns at = scratch.pattern.at(originX);
    Sweep.Row row = scratch.row;
    int end = endRow(b);
    for (int j = firstRow(b); j < end; j++) {
      double y = originY + (j + 0.5) * cell;
      sweep.intersect(y, row);
      cut(sweep, scratch, at, j, at.firstFrom(row.low1), at.endAt(row.high1, columns));
      if (row.low2 <= row.high2) {
        cut(sweep, scratch, at, j, at.firstFrom(row.low2), at.endAt(row.high2, columns));
      }
    }
  }

  private void cut(Sweep sweep, Scratch scratch, Sweep.Columns at, int j, int first, int end) {
    if (first >= end) {
      return;
    }
    touch();
    int base = j * SPAN;
    if (sweep.isLevelFloor()) {
      lower(base + first, base + end, (float) sweep.lowestMm());
    } else {
      sweep.heights(originY + (j + 0.5) * cell, at, first, end, scratch.swept);
      lower(base, first, end, scratch.swept);
    }
  }

  private void lower(int from, int to, float height) {
    float[] z = heights;
    for (int i = from; i < to; i++) {
      z[i] = Math.min(z[i], height);
    }
  }

  private void lower(int base, int first, int end, float[] swept) {
    float[] z = heights;
    for (int i = first; i < end; i++) {
      z[base + i] = Math.min(z[base + i], swept[i]);
    }
  }

  /** Adds to a measurement what a sweep would take from the cells as they stand. */
  void measure(Sweep sweep, Scratch scratch, Meeting meeting) {
    Bounds b = sweep.bounds();
    Sweep.Columns at = scratch.pattern.at(originX);
    Sweep.Row row = scratch.row;
    int end = endRow(b);
    for (int j = firstRow(b); j < end; j++) {
      double y = originY + (j + 0.5) * cell;
      sweep.intersect(y, row);
      measure(sweep, scratch, at, j, row.low1, row.high1, meeting);
      if (row.low2 <= row.high2) {
        measure(sweep, scratch, at, j, row.low2, row.high2, meeting);
      }
    }
  }

  private void measure(
      Sweep sweep,
      Scratch scratch,
      Sweep.Columns at,
      int j,
      double low,
      double high,
      Meeting meeting) {
    int first = at.firstFrom(low);
    int end = at.endAt(high, columns);
    if (first >= end) {
      return;
    }
    double y = originY + (j + 0.5) * cell;
    sweep.heights(y, at, first, end, scratch.swept);
    for (int i = first; i < end; i++) {
      float standing = height(i, j);
      float thick = standing - Math.max(bottom, scratch.swept[i]);
      if (thick > 0) {
        meeting.add(originX + (i + 0.5) * cell, y, standing, thick);
      }
    }
  }

  /** The sum over the cells of what is gone between top and bottom. */
  double removedDepths() {
    double sum = 0;
    if (!isUntouched()) {
      for (int j = 0; j < rows; j++) {
        for (int i = 0; i < columns; i++) {
          sum += top - Math.max(bottom, heights[j * SPAN + i]);
        }
      }
    }
    return sum;
  }

  float lowest() {
    float low = top;
    for (int j = 0; j < rows && !isUntouched(); j++) {
      for (int i = 0; i < columns; i++) {
        low = Math.min(low, heights[j * SPAN + i]);
      }
    }
    return low;
  }
}
