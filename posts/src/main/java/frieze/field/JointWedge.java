package frieze.field;

import frieze.curve.Bounds;
import frieze.curve.Point;

/**
 * The part of the tool's disc at the joint of two straight moves that lies neither beside the first
 * nor beside or before the second: past the end of the first and behind the start of the second.
 *
 * <p>Empty when the path runs straight on.
 */
final class JointWedge {
  /** A direction counts as along an axis when it departs from it by less. */
  private static final double AXIS = 1e-12;

  private final Point joint;
  private final double reach;
  private final Bounds bounds;
  private final HalfPlane past;
  private final HalfPlane behind;

  /**
   * Makes a wedge.
   *
   * @param before the direction of the first move
   * @param after that of the second
   * @param overlapMm by how much the wedge is wider than it need be
   */
  JointWedge(Point joint, Point before, Point after, double reachMm, double overlapMm) {
    this.joint = joint;
    this.reach = reachMm;
    this.past = new HalfPlane(before.x(), before.y(), overlapMm);
    this.behind = new HalfPlane(-after.x(), -after.y(), overlapMm);
    double turn = before.x() * after.y() - before.y() * after.x();
    double side = turn > 0 ? reachMm : -reachMm;
    Bounds b =
        Bounds.of(joint)
            .with(joint.plus(new Point(side * before.y(), -side * before.x())))
            .with(joint.plus(new Point(side * after.y(), -side * after.x())));
    for (int quarter = 0; quarter < 4; quarter++) {
      double x = quarter == 0 ? 1 : quarter == 2 ? -1 : 0;
      double y = quarter == 1 ? 1 : quarter == 3 ? -1 : 0;
      if (before.x() * x + before.y() * y >= 0 && after.x() * x + after.y() * y <= 0) {
        b = b.with(joint.plus(new Point(reachMm * x, reachMm * y)));
      }
    }
    this.bounds = b.grown(overlapMm);
  }

  Bounds bounds() {
    return bounds;
  }

  /** Widens the only interval of a row so that it holds the wedge as well. */
  void widen(double y, Sweep.Row row) {
    double dy = y - joint.y();
    double square = reach * reach - dy * dy;
    if (y < bounds.minY() || y > bounds.maxY() || square < 0) {
      return;
    }
    double half = Math.sqrt(square);
    double low = Math.max(-half, Math.max(past.low(dy), behind.low(dy)));
    double high = Math.min(half, Math.min(past.high(dy), behind.high(dy)));
    if (low <= high) {
      row.low1 = Math.min(row.low1, joint.x() + low);
      row.high1 = Math.max(row.high1, joint.x() + high);
    }
  }

  /** The points with {@code x dx + y dy >= -overlap}, row by row. */
  private static final class HalfPlane {
    private final boolean level;
    private final boolean fromBelow;
    private final double factor;
    private final double shift;
    private final double y;

    HalfPlane(double x, double y, double overlapMm) {
      this.level = Math.abs(x) < AXIS;
      this.fromBelow = x > 0;
      this.factor = level ? 0 : -y / x;
      this.shift = level ? overlapMm : -overlapMm / x;
      this.y = y;
    }

    double low(double dy) {
      if (level) {
        return y * dy >= -shift ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
      }
      return fromBelow ? factor * dy + shift : Double.NEGATIVE_INFINITY;
    }

    double high(double dy) {
      if (level || fromBelow) {
        return Double.POSITIVE_INFINITY;
      }
      return factor * dy + shift;
    }
  }
}
