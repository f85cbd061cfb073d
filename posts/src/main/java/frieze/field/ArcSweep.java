package frieze.field;

import frieze.curve.Bounds;
import frieze.curve.Point;

/**
 * The exact sweep of a level arc of at most a quarter turn, without the tool's shape at its ends:
 * the points whose nearest point on the arc lies between the ends.
 *
 * <p>The tool cuts a point at its distance from the arc, {@code |rho - radius|}. Ends and longer
 * arcs are put together in {@link Sweeps}.
 */
final class ArcSweep implements Sweep {
  private final double cx;
  private final double cy;
  private final double radius;
  private final double z;
  private final Profile profile;

  /** Directions of the two ends, the second one counter-clockwise from the first. */
  private final Point startDirection;

  private final Point endDirection;

  /**
   * Makes a sweep.
   *
   * @param sweepRad above 0, at most a quarter turn
   */
  ArcSweep(
      Point centre, double radiusMm, double startRad, double sweepRad, double z, Profile profile) {
    this.cx = centre.x();
    this.cy = centre.y();
    this.radius = radiusMm;
    this.z = z;
    this.profile = profile;
    this.startDirection = Point.polar(Point.ORIGIN, 1, startRad);
    this.endDirection = Point.polar(Point.ORIGIN, 1, startRad + sweepRad);
  }

  private double outer() {
    return radius + profile.radiusMm();
  }

  private double inner() {
    return Math.max(0, radius - profile.radiusMm());
  }

  /** The four corners, and the outer circle's limits that lie between the ends. */
  @Override
  public Bounds bounds() {
    Bounds b = Bounds.EMPTY;
    for (double r : new double[] {inner(), outer()}) {
      b = b.with(at(startDirection, r)).with(at(endDirection, r));
    }
    for (int quarter = 0; quarter < 4; quarter++) {
      double x = quarter == 0 ? 1 : quarter == 2 ? -1 : 0;
      double y = quarter == 1 ? 1 : quarter == 3 ? -1 : 0;
      if (between(x, y)) {
        b = b.with(new Point(cx + outer() * x, cy + outer() * y));
      }
    }
    return b;
  }

  private Point at(Point direction, double r) {
    return new Point(cx + r * direction.x(), cy + r * direction.y());
  }

  private boolean between(double dx, double dy) {
    return startDirection.x() * dy - startDirection.y() * dx >= 0
        && endDirection.x() * dy - endDirection.y() * dx <= 0;
  }

  @Override
  public boolean mayMeet(Bounds rectangle) {
    double farX = Math.max(Math.abs(rectangle.minX() - cx), Math.abs(rectangle.maxX() - cx));
    double farY = Math.max(Math.abs(rectangle.minY() - cy), Math.abs(rectangle.maxY() - cy));
    return farX * farX + farY * farY >= inner() * inner();
  }

  @Override
  public double lowestMm() {
    return z;
  }

  @Override
  public boolean isLevelFloor() {
    return profile.isFlat();
  }

  @Override
  public void intersect(double y, Row row) {
    double dy = y - cy;
    double outer = outer();
    if (Math.abs(dy) > outer) {
      row.setEmpty();
      return;
    }
    double half = Math.sqrt(outer * outer - dy * dy);
    double low = -half;
    double high = half;
    // start direction x point >= 0, end direction x point <= 0
    double fromStart = startDirection.y();
    double fromEnd = endDirection.y();
    if (fromStart > 0) {
      high = Math.min(high, startDirection.x() * dy / fromStart);
    } else if (fromStart < 0) {
      low = Math.max(low, startDirection.x() * dy / fromStart);
    } else if (startDirection.x() * dy < 0) {
      row.setEmpty();
      return;
    }
    if (fromEnd > 0) {
      low = Math.max(low, endDirection.x() * dy / fromEnd);
    } else if (fromEnd < 0) {
      high = Math.min(high, endDirection.x() * dy / fromEnd);
    } else if (endDirection.x() * dy > 0) {
      row.setEmpty();
      return;
    }
    row.set(cx + low, cx + high);
    double inner = inner();
    if (low <= high && Math.abs(dy) < inner) {
      double hole = Math.sqrt(inner * inner - dy * dy);
      row.remove(cx - hole, cx + hole);
    }
  }

  @Override
  public double heightAt(double x, double y) {
    double dx = x - cx;
    double dy = y - cy;
    double r = Math.abs(Math.sqrt(dx * dx + dy * dy) - radius);
    if (r > profile.radiusMm() || !between(dx, dy)) {
      return Double.POSITIVE_INFINITY;
    }
    return z + profile.heightAtMm(r);
  }

  /**
   * The distance from the arc is {@code |n| / (sqrt(radius^2 + n) + radius)} with {@code n = rho^2
   * - radius^2}, which loses no digits for large radii.
   */
  @Override
  public void heights(double y, Columns columns, int first, int end, float[] heights) {
    if (profile.hollowMm() > 0) {
      hollow(y, columns, first, end, heights);
      return;
    }
    float[] xs = columns.offsets();
    double dx = columns.originMm() - cx;
    double dy = y - cy;
    float constant = (float) (dx * dx + dy * dy - radius * radius);
    float twice = (float) (2 * dx);
    float radius1 = (float) radius;
    float radius2 = (float) (radius * radius);
    float ball = (float) profile.ballMm();
    float touch = (float) profile.touchMm();
    float base = (float) (z + profile.ballMm());
    float slope = (float) profile.slope();
    float knee = (float) profile.kneeMm();
    for (int i = first; i < end; i++) {
      float x = xs[i];
      float n = constant + x * (twice + x);
      float rho = (float) Math.sqrt(Math.max(0f, radius2 + n));
      float r = Math.abs(n) / (rho + radius1);
      float on = Math.min(r, touch);
      heights[i] =
          base - (float) Math.sqrt((ball - on) * (ball + on)) + slope * Math.max(0f, r - knee);
    }
  }

  /** In double precision, because a hollow begins upright. */
  private void hollow(double y, Columns columns, int first, int end, float[] heights) {
    for (int i = first; i < end; i++) {
      double dx = columns.originMm() + columns.offsets()[i] - cx;
      double dy = y - cy;
      double r = Math.abs(Math.sqrt(dx * dx + dy * dy) - radius);
      heights[i] = (float) (z + profile.heightAtMm(r));
    }
  }
}
