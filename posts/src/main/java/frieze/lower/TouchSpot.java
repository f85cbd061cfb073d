package frieze.lower;

import frieze.curve.Point;
import frieze.motion.Instruction;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.motion.Step;
import frieze.shop.Setup;
import frieze.shop.Tool;
import java.util.List;
import java.util.Optional;

/**
 * Chooses a spot of the stock's top that no tool has touched yet, for finding Z again after a tool
 * change: the one nearest to zero that keeps a margin from every cut, from clamps and from the
 * stock's edges.
 *
 * <p><i>Approximation:</i> spots are tried every {@value #CELL_MM} mm; cuts are looked at every
 * {@value #SAMPLE_MM} mm, which the margin covers.
 */
final class TouchSpot {
  private static final double CELL_MM = 5;
  private static final double SAMPLE_MM = 2;
  private static final double MARGIN_MM = 8;

  private final Setup setup;
  private final Point corner;
  private final int columns;
  private final int rows;
  private final boolean[] cut;
  private final double reachMm;

  private TouchSpot(Setup setup) {
    this.setup = setup;
    this.corner = setup.stockFromProgram().inverse().affine().apply(Point.ORIGIN);
    this.columns = (int) Math.floor(setup.stock().lengthMm() / CELL_MM) + 1;
    this.rows = (int) Math.floor(setup.stock().widthMm() / CELL_MM) + 1;
    this.cut = new boolean[columns * rows];
    this.reachMm = MARGIN_MM + setup.tools().stream().mapToDouble(Tool::radiusMm).max().orElse(0);
  }

  /**
   * Chooses a spot.
   *
   * @param before everything that is done before the tool change
   * @return in program coordinates; empty when no spot is left
   */
  static Optional<Point> choose(List<Step> before, Setup setup) {
    TouchSpot spots = new TouchSpot(setup);
    Cursor cursor = new Cursor();
    for (Step step : before) {
      if (step.instruction() instanceof Instruction.Feed feed) {
        spots.mark(new Motion.Straight(cursor.position(step.origin()), feed.to()));
      } else if (step.instruction() instanceof Instruction.Turn turn) {
        spots.mark(TurnPass.path(turn, cursor, step.origin()));
      } else if (step.instruction() instanceof Instruction.Drill drill) {
        spots.mark(new Position(drill.x(), drill.y(), drill.bottomZ()));
      }
      cursor.follow(step.instruction());
    }
    return spots.nearestToZero();
  }

  private void mark(Motion path) {
    int pieces = (int) Math.max(1, Math.ceil(path.lengthMm() / SAMPLE_MM));
    for (int i = 0; i <= pieces; i++) {
      mark(path.at((double) i / pieces));
    }
  }

  private void mark(Position p) {
    int reach = (int) Math.ceil(reachMm / CELL_MM);
    int column = (int) Math.round((p.x() - corner.x()) / CELL_MM);
    int row = (int) Math.round((p.y() - corner.y()) / CELL_MM);
    for (int r = Math.max(0, row - reach); r <= Math.min(rows - 1, row + reach); r++) {
      for (int c = Math.max(0, column - reach); c <= Math.min(columns - 1, column + reach); c++) {
        if (at(c, r).distance(p.xy()) < reachMm) {
          cut[r * columns + c] = true;
        }
      }
    }
  }

  private Point at(int column, int row) {
    return new Point(corner.x() + column * CELL_MM, corner.y() + row * CELL_MM);
  }

  private boolean insideEdges(Point p) {
    return p.x() >= corner.x() + MARGIN_MM
        && p.y() >= corner.y() + MARGIN_MM
        && p.x() <= corner.x() + setup.stock().lengthMm() - MARGIN_MM
        && p.y() <= corner.y() + setup.stock().widthMm() - MARGIN_MM;
  }

  private boolean clearOfClamps(Point p) {
    Point onStock = new Point(p.x() - corner.x(), p.y() - corner.y());
    return setup.keepOuts().stream()
        .allMatch(
            k ->
                onStock.x() < k.minXMm() - reachMm
                    || onStock.x() > k.maxXMm() + reachMm
                    || onStock.y() < k.minYMm() - reachMm
                    || onStock.y() > k.maxYMm() + reachMm);
  }

  private Optional<Point> nearestToZero() {
    Optional<Point> best = Optional.empty();
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        Point p = at(c, r);
        boolean free = !cut[r * columns + c] && insideEdges(p) && clearOfClamps(p);
        if (free && (best.isEmpty() || p.norm() < best.get().norm())) {
          best = Optional.of(p);
        }
      }
    }
    return best;
  }
}
