package frieze.field;

import frieze.motion.Position;
import frieze.shop.ToolShape;
import java.util.Arrays;

/**
 * A stock field as it is first thought of: the tool's shape, worked out once for its own square of
 * cells, is stamped at every cell's width along the path.
 */
final class Stamping {
  private final int columns;
  private final int rows;
  private final double cell;
  private final float[] heights;
  private float[] stamp = new float[0];
  private int half;
  private ToolShape stamped = new ToolShape.Flat(1);

  Stamping(int columns, int rows, double cell) {
    this.columns = columns;
    this.rows = rows;
    this.cell = cell;
    this.heights = new float[columns * rows];
  }

  void reset() {
    Arrays.fill(heights, 0);
  }

  double heightAt(double x, double y) {
    int column = (int) (x / cell);
    int row = (int) (y / cell);
    return heights[row * columns + column];
  }

  private void prepare(ToolShape shape) {
    if (!shape.equals(stamped) || stamp.length == 0) {
      stamped = shape;
      double radius = shape.diameterMm() / 2;
      half = (int) Math.ceil(radius / cell);
      int side = 2 * half + 1;
      stamp = new float[side * side];
      for (int j = 0; j < side; j++) {
        for (int i = 0; i < side; i++) {
          double r = cell * Math.sqrt((i - half) * (i - half) + (j - half) * (j - half));
          stamp[j * side + i] = r > radius ? Float.POSITIVE_INFINITY : (float) shape.heightAtMm(r);
        }
      }
    }
  }

  void cut(Position from, Position to, ToolShape shape) {
    prepare(shape);
    int steps = (int) Math.max(1, Math.ceil(from.distance(to) / cell));
    for (int k = 1; k <= steps; k++) {
      double f = (double) k / steps;
      stampAt(
          from.x() + f * (to.x() - from.x()),
          from.y() + f * (to.y() - from.y()),
          from.z() + f * (to.z() - from.z()));
    }
  }

  private void stampAt(double x, double y, double z) {
    int column = (int) (x / cell);
    int row = (int) (y / cell);
    int side = 2 * half + 1;
    float tip = (float) z;
    for (int j = Math.max(0, half - row); j < Math.min(side, rows + half - row); j++) {
      int base = (row + j - half) * columns + column - half;
      int end = Math.min(side, columns + half - column);
      for (int i = Math.max(0, half - column); i < end; i++) {
        float height = tip + stamp[j * side + i];
        if (height < heights[base + i]) {
          heights[base + i] = height;
        }
      }
    }
  }
}
