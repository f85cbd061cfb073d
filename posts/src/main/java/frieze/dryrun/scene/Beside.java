package frieze.dryrun.scene;

import frieze.field.StockField;
import frieze.motion.Motion;
import frieze.motion.Position;

/**
 * Measures in a stock field how far material stands above the tip within a distance of the axis: it
 * is what a shank or a collet would rub on.
 *
 * <p><b>Approximation:</b> the path is looked at in steps of a quarter of the distance, cells at
 * least every {@link #STRIDE_MM}: thinner walls may be missed. <b>Cost:</b> up to 8,000 heights for
 * each step, so it is asked only of moves that are deep below the stock's top.
 */
final class Beside {
  private static final double STRIDE_MM = 0.5;
  private static final double STEPS_PER_DISTANCE = 4;

  private final StockField field;
  private final int stride;

  Beside(StockField field) {
    this.field = field;
    this.stride = (int) Math.max(1, Math.floor(STRIDE_MM / field.cellMm()));
  }

  /**
   * The most by which material stands above the tip.
   *
   * @param path in the stock frame
   * @param distanceMm from the axis, seen from above
   */
  double highestAboveTipMm(Motion path, double distanceMm) {
    int steps = (int) Math.max(1, Math.ceil(path.lengthMm() * STEPS_PER_DISTANCE / distanceMm));
    double highest = 0;
    for (int i = 0; i <= steps; i++) {
      Position tip = path.at((double) i / steps);
      highest = Math.max(highest, highestMm(tip, distanceMm) - tip.z());
    }
    return highest;
  }

  private double highestMm(Position tip, double distanceMm) {
    double cell = field.cellMm();
    int firstRow = index((tip.y() - distanceMm) / cell, field.rows());
    int lastRow = index((tip.y() + distanceMm) / cell, field.rows());
    double highest = Double.NEGATIVE_INFINITY;
    for (int row = firstRow; row <= lastRow; row += stride) {
      double dy = (row + 0.5) * cell - tip.y();
      double half = Math.sqrt(Math.max(0, distanceMm * distanceMm - dy * dy));
      int last = index((tip.x() + half) / cell, field.columns());
      for (int column = index((tip.x() - half) / cell, field.columns());
          column <= last;
          column += stride) {
        double dx = (column + 0.5) * cell - tip.x();
        if (dx * dx + dy * dy <= distanceMm * distanceMm) {
          highest = Math.max(highest, field.height(column, row));
        }
      }
    }
    return highest;
  }

  private static int index(double cells, int count) {
    return (int) Math.max(0, Math.min(count - 1, Math.floor(cells)));
  }
}
