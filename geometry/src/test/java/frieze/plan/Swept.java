package frieze.plan;

import frieze.curve.Point;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import java.util.ArrayList;
import java.util.List;

/**
 * What a flat tool leaves, by brute force: a height field of square cells, stamped with the tool's
 * disc at positions two cells apart. Shares nothing with the planner but the moves themselves.
 */
public final class Swept {

  final double cellMm;
  final int columns;
  final int rows;
  final double[] height;
  private final double x0;
  private final double y0;

  public Swept(double x0, double y0, double width, double depth, double cellMm) {
    this.x0 = x0;
    this.y0 = y0;
    this.cellMm = cellMm;
    this.columns = (int) Math.ceil(width / cellMm);
    this.rows = (int) Math.ceil(depth / cellMm);
    this.height = new double[columns * rows];
  }

  public Swept cut(List<Cut> cuts) {
    for (Cut cut : cuts) {
      for (Cut.Move move : cut.moves()) {
        Motion path = move.path();
        int steps = (int) Math.max(1, Math.ceil(path.lengthMm() / (2 * cellMm)));
        for (int i = 0; i <= steps; i++) {
          stamp(path.at((double) i / steps), cut.tool().radiusMm());
        }
      }
    }
    return this;
  }

  /** The height of each cell, row by row. */
  public double[] heights() {
    return height.clone();
  }

  private void stamp(Position p, double radius) {
    int fromRow = (int) Math.max(0, Math.floor((p.y() - radius - y0) / cellMm));
    int toRow = (int) Math.min(rows - 1, Math.ceil((p.y() + radius - y0) / cellMm));
    for (int row = fromRow; row <= toRow; row++) {
      double dy = y0 + (row + 0.5) * cellMm - p.y();
      double half = radius * radius - dy * dy;
      if (half < 0) {
        continue;
      }
      half = Math.sqrt(half);
      int from = (int) Math.max(0, Math.ceil((p.x() - half - x0) / cellMm - 0.5));
      int to = (int) Math.min(columns - 1, Math.floor((p.x() + half - x0) / cellMm - 0.5));
      for (int column = from; column <= to; column++) {
        int cell = row * columns + column;
        height[cell] = Math.min(height[cell], p.z());
      }
    }
  }

  /** The area at or below a depth. */
  double areaMm2(double depthMm) {
    int count = 0;
    for (double z : height) {
      if (z <= -depthMm + 1e-9) {
        count++;
      }
    }
    return count * cellMm * cellMm;
  }

  public double volumeMm3() {
    double sum = 0;
    for (double z : height) {
      sum -= z;
    }
    return sum * cellMm * cellMm;
  }

  double at(Point p) {
    int column = (int) Math.floor((p.x() - x0) / cellMm);
    int row = (int) Math.floor((p.y() - y0) / cellMm);
    return height[row * columns + column];
  }

  /** The middles of all cells at or below a depth. */
  List<Point> cells(double depthMm) {
    List<Point> cells = new ArrayList<>();
    for (int i = 0; i < height.length; i++) {
      if (height[i] <= -depthMm + 1e-9) {
        int row = i / columns;
        int column = i % columns;
        cells.add(new Point(x0 + (column + 0.5) * cellMm, y0 + (row + 0.5) * cellMm));
      }
    }
    return cells;
  }
}
