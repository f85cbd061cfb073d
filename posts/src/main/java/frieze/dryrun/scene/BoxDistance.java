package frieze.dryrun.scene;

import frieze.motion.Motion;
import frieze.motion.Motion.Straight;
import frieze.motion.Motion.Turn;
import frieze.motion.Position;

/**
 * The distance in the plane between a path and a rectangle.
 *
 * <p><em>Approximation:</em> arcs count as chords that leave them by at most {@link
 * #CHORD_ERROR_MM}.
 */
public record BoxDistance(double minX, double minY, double maxX, double maxY) {
  static final double CHORD_ERROR_MM = 0.01;
  private static final int MOST_CHORDS = 4096;

  /** The least distance, in millimetres; 0 if the path crosses the rectangle. */
  public double to(Motion path) {
    return path.accept(
        new Motion.Visitor<Double>() {
          @Override
          public Double straight(Straight straight) {
            return toSegment(straight.from(), straight.to());
          }

          @Override
          public Double turn(Turn turn) {
            return toTurn(turn);
          }
        });
  }

  private double toTurn(Turn turn) {
    double radius = Math.max(turn.radiusMm(), CHORD_ERROR_MM);
    double step = 2 * StrictMath.acos(Math.max(0, 1 - CHORD_ERROR_MM / radius));
    int chords = (int) Math.min(MOST_CHORDS, Math.ceil(Math.abs(turn.sweepRad()) / step));
    double least = Double.POSITIVE_INFINITY;
    Position last = turn.from();
    for (int i = 1; i <= chords; i++) {
      Position next = turn.at((double) i / chords);
      least = Math.min(least, toSegment(last, next));
      last = next;
    }
    return least;
  }

  private double toSegment(Position a, Position b) {
    if (crosses(a, b)) {
      return 0;
    }
    double least = Math.min(toPoint(a.x(), a.y()), toPoint(b.x(), b.y()));
    least = Math.min(least, fromCorner(minX, minY, a, b));
    least = Math.min(least, fromCorner(maxX, minY, a, b));
    least = Math.min(least, fromCorner(maxX, maxY, a, b));
    return Math.min(least, fromCorner(minX, maxY, a, b));
  }

  private double toPoint(double x, double y) {
    double dx = Math.max(0, Math.max(minX - x, x - maxX));
    double dy = Math.max(0, Math.max(minY - y, y - maxY));
    return Math.hypot(dx, dy);
  }

  private static double fromCorner(double x, double y, Position a, Position b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double length2 = dx * dx + dy * dy;
    double t = length2 == 0 ? 0 : ((x - a.x()) * dx + (y - a.y()) * dy) / length2;
    double along = Math.min(1, Math.max(0, t));
    return Math.hypot(x - (a.x() + along * dx), y - (a.y() + along * dy));
  }

  /** Clips the segment by the four sides: something is left if it crosses the rectangle. */
  private boolean crosses(Position a, Position b) {
    double[] part = {0, 1};
    return clip(a.x(), b.x(), minX, maxX, part) && clip(a.y(), b.y(), minY, maxY, part);
  }

  private static boolean clip(double a, double b, double min, double max, double[] part) {
    double d = b - a;
    if (d == 0) {
      return a >= min && a <= max;
    }
    double t0 = (min - a) / d;
    double t1 = (max - a) / d;
    part[0] = Math.max(part[0], Math.min(t0, t1));
    part[1] = Math.min(part[1], Math.max(t0, t1));
    return part[0] <= part[1];
  }
}
