package frieze.field;

import frieze.curve.Bounds;
import frieze.motion.Position;

/**
 * The exact sweep of a straight move: level, ramping or straight up and down.
 *
 * <p>In coordinates {@code s} along and {@code v} across the move, seen from above, the tool at
 * {@code s - a} cuts the point {@code (s, v)} at {@code z0 + m (s - a) + height(sqrt(a^2 + v^2))},
 * where {@code m >= 0} is the rise of the move (it is turned round if it falls). That is convex in
 * {@code a}, so the lowest value is at the free minimum {@code a*(v)} clamped to the interval in
 * which the tool exists and reaches the point. For every {@link Profile} the free minimum is {@code
 * max(k |v|, e sqrt(q^2 - v^2))} with constants of the move.
 *
 * <p><b>Approximation:</b> rows are computed in single precision relative to the row's origin: the
 * surface is off by less than 0.1 micrometre for tiles below 50 mm; single points in double
 * precision.
 */
final class StraightSweep implements Sweep {
  /** Shorter than this seen from above, a move counts as straight up or down. */
  private static final double VERTICAL_MM = 1e-6;

  /**
   * What was cut already is cut again so near to its edge: a cell that lies on the edge itself
   * could else be left out by both moves.
   */
  private static final double OVERLAP_MM = 1e-3;

  /** Steeper than this, rows are computed in double precision. */
  private static final double STEEP = 4;

  private final double x0;
  private final double y0;
  private final double z0;
  private final double x1;
  private final double y1;
  private final double length;
  private final double ux;
  private final double uy;
  private final double rise;
  private final Profile profile;
  private final boolean lowEndDone;
  private final double flankFactor;
  private final double rootFactor;
  private final double rootRadius;

  /**
   * Makes a sweep.
   *
   * @param startDone whether the tool's shape at {@code from} has been cut already; what only it
   *     would cut may then be left out
   */
  StraightSweep(Position from, Position to, Profile profile, boolean startDone) {
    boolean falls = to.z() < from.z();
    Position low = falls ? to : from;
    Position high = falls ? from : to;
    double dx = high.x() - low.x();
    double dy = high.y() - low.y();
    double plane = Math.sqrt(dx * dx + dy * dy);
    boolean vertical = plane < VERTICAL_MM;
    this.x0 = low.x();
    this.y0 = low.y();
    this.z0 = low.z();
    this.x1 = vertical ? x0 : high.x();
    this.y1 = vertical ? y0 : high.y();
    this.length = vertical ? 0 : plane;
    this.ux = vertical ? 1 : dx / plane;
    this.uy = vertical ? 0 : dy / plane;
    this.rise = vertical ? 0 : (high.z() - low.z()) / plane;
    this.profile = profile;
    this.lowEndDone = startDone && !falls && !vertical;
    if (rise == 0) {
      flankFactor = 0;
      rootFactor = 0;
      rootRadius = 0;
    } else if (profile.ballMm() > 0 && profile.slope() == 0) {
      flankFactor = 0;
      rootFactor = rise / Math.sqrt(1 + rise * rise);
      rootRadius = profile.ballMm();
    } else if (rise >= profile.slope()) {
      flankFactor = 0;
      rootFactor = 1;
      rootRadius = profile.radiusMm();
    } else {
      flankFactor = rise / Math.sqrt(profile.slope() * profile.slope() - rise * rise);
      boolean ball = profile.ballMm() > 0;
      rootFactor = ball ? rise / Math.sqrt(1 + rise * rise) : 1;
      rootRadius = ball ? profile.ballMm() : profile.kneeMm();
    }
  }

  @Override
  public Bounds bounds() {
    double r = profile.radiusMm();
    return new Bounds(
        Math.min(x0, x1) - r, Math.min(y0, y1) - r, Math.max(x0, x1) + r, Math.max(y0, y1) + r);
  }

  @Override
  public boolean mayMeet(Bounds rectangle) {
    double dx = (rectangle.minX() + rectangle.maxX()) / 2 - x0;
    double dy = (rectangle.minY() + rectangle.maxY()) / 2 - y0;
    double halfX = rectangle.width() / 2;
    double halfY = rectangle.height() / 2;
    return Math.abs(ux * dy - uy * dx)
        <= profile.radiusMm() + Math.abs(uy) * halfX + Math.abs(ux) * halfY;
  }

  @Override
  public double lowestMm() {
    return z0;
  }

  @Override
  public boolean isLevelFloor() {
    return rise == 0 && profile.isFlat();
  }

  @Override
  public void intersect(double y, Row row) {
    double r = profile.radiusMm();
    double d0 = y - y0;
    double d1 = y - y1;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    if (Math.abs(d0) <= r) {
      double half0 = Math.sqrt(r * r - d0 * d0);
      low = x0 - half0;
      high = x0 + half0;
    }
    if (Math.abs(d1) <= r) {
      double half1 = Math.sqrt(r * r - d1 * d1);
      low = Math.min(low, x1 - half1);
      high = Math.max(high, x1 + half1);
    }
    if (length > 0) {
      double alongLow = x0 + slabLow(ux, uy * d0, 0, length);
      double alongHigh = x0 + slabHigh(ux, uy * d0, 0, length);
      double from = Math.max(alongLow, x0 + slabLow(-uy, ux * d0, -r, r));
      double to = Math.min(alongHigh, x0 + slabHigh(-uy, ux * d0, -r, r));
      if (from <= to) {
        low = Math.min(low, from);
        high = Math.max(high, to);
      }
    }
    row.set(low, high);
    if (lowEndDone) {
      leaveOutStart(row, d0);
    }
  }

  private void leaveOutStart(Row row, double d0) {
    if (isLevelFloor()) {
      double r = profile.radiusMm() - OVERLAP_MM;
      if (Math.abs(d0) < r) {
        double half = Math.sqrt(r * r - d0 * d0);
        row.remove(x0 - half, x0 + half);
      }
      return;
    }
    double far = Double.POSITIVE_INFINITY;
    row.low1 = Math.max(row.low1, x0 + slabLow(ux, uy * d0, -OVERLAP_MM, far));
    row.high1 = Math.min(row.high1, x0 + slabHigh(ux, uy * d0, -OVERLAP_MM, far));
  }

  /** The least {@code t} with {@code from <= factor t + shift <= to}. */
  private static double slabLow(double factor, double shift, double from, double to) {
    if (factor == 0) {
      return from <= shift && shift <= to ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }
    return ((factor > 0 ? from : to) - shift) / factor;
  }

  private static double slabHigh(double factor, double shift, double from, double to) {
    if (factor == 0) {
      return from <= shift && shift <= to ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }
    return ((factor > 0 ? to : from) - shift) / factor;
  }

  @Override
  public double heightAt(double x, double y) {
    double dx = x - x0;
    double dy = y - y0;
    double s = ux * dx + uy * dy;
    double v = ux * dy - uy * dx;
    double r = profile.radiusMm();
    double w2 = r * r - v * v;
    if (w2 < 0) {
      return Double.POSITIVE_INFINITY;
    }
    double w = Math.sqrt(w2);
    double least = Math.max(s - length, -w);
    double most = Math.min(s, w);
    if (least > most) {
      return Double.POSITIVE_INFINITY;
    }
    double root = rootFactor * Math.sqrt(Math.max(0, rootRadius * rootRadius - v * v));
    double free = Math.max(flankFactor * Math.abs(v), root);
    double a = Math.max(least, Math.min(free, most));
    double along = Math.max(0, Math.min(length, s - a));
    return z0 + rise * along + profile.heightAtMm(Math.sqrt(a * a + v * v));
  }

  @Override
  public void heights(double y, Columns columns, int first, int end, float[] heights) {
    if (rise > STEEP) {
      for (int i = first; i < end; i++) {
        heights[i] = (float) heightAt(columns.originMm() + columns.offsets()[i], y);
      }
    } else if (rise > 0) {
      sloped(y, columns, first, end, heights);
    } else if (profile.ballMm() > 0) {
      levelBall(y, columns, first, end, heights);
    } else {
      levelFlank(y, columns, first, end, heights);
    }
  }

  private void levelFlank(double y, Columns columns, int first, int end, float[] heights) {
    float[] xs = columns.offsets();
    float alongX = (float) ux;
    float acrossX = (float) -uy;
    float alongRow = (float) (ux * (columns.originMm() - x0) + uy * (y - y0));
    float pastRow = (float) (ux * (columns.originMm() - x1) + uy * (y - y1));
    float acrossRow = (float) (ux * (y - y0) - uy * (columns.originMm() - x0));
    float z = (float) z0;
    float slope = (float) profile.slope();
    float knee = (float) profile.kneeMm();
    for (int i = first; i < end; i++) {
      float x = xs[i];
      float across = acrossRow + acrossX * x;
      float a = Math.max(Math.min(0f, alongRow + alongX * x), pastRow + alongX * x);
      float r = (float) Math.sqrt(a * a + across * across);
      heights[i] = z + slope * Math.max(0f, r - knee);
    }
  }

  private void levelBall(double y, Columns columns, int first, int end, float[] heights) {
    float[] xs = columns.offsets();
    float alongX = (float) ux;
    float acrossX = (float) -uy;
    float alongRow = (float) (ux * (columns.originMm() - x0) + uy * (y - y0));
    float pastRow = (float) (ux * (columns.originMm() - x1) + uy * (y - y1));
    float acrossRow = (float) (ux * (y - y0) - uy * (columns.originMm() - x0));
    float ball = (float) profile.ballMm();
    float touch = (float) profile.touchMm();
    float z = (float) (z0 + profile.ballMm());
    float slope = (float) profile.slope();
    float knee = (float) profile.kneeMm();
    for (int i = first; i < end; i++) {
      float x = xs[i];
      float across = acrossRow + acrossX * x;
      float a = Math.max(Math.min(0f, alongRow + alongX * x), pastRow + alongX * x);
      float r = (float) Math.sqrt(a * a + across * across);
      float on = Math.min(r, touch);
      heights[i] =
          z - (float) Math.sqrt((ball - on) * (ball + on)) + slope * Math.max(0f, r - knee);
    }
  }

  private void sloped(double y, Columns columns, int first, int end, float[] heights) {
    float[] xs = columns.offsets();
    float alongX = (float) ux;
    float acrossX = (float) -uy;
    float alongRow = (float) (ux * (columns.originMm() - x0) + uy * (y - y0));
    float pastRow = (float) (ux * (columns.originMm() - x1) + uy * (y - y1));
    float acrossRow = (float) (ux * (y - y0) - uy * (columns.originMm() - x0));
    double rowAlong = ux * (columns.originMm() - x0) + uy * (y - y0);
    float z = (float) (z0 + profile.ballMm() + rise * rowAlong);
    float riseX = (float) (rise * ux);
    float m = (float) rise;
    float reach = (float) profile.radiusMm();
    float root = (float) rootRadius;
    float rootBy = (float) rootFactor;
    float flankBy = (float) flankFactor;
    float ball = (float) profile.ballMm();
    float touch = (float) profile.touchMm();
    float slope = (float) profile.slope();
    float knee = (float) profile.kneeMm();
    for (int i = first; i < end; i++) {
      float x = xs[i];
      float v = Math.abs(acrossRow + acrossX * x);
      float w = (float) Math.sqrt(Math.max(0f, (reach - v) * (reach + v)));
      float onRoot = rootBy * (float) Math.sqrt(Math.max(0f, (root - v) * (root + v)));
      float free = Math.max(flankBy * v, onRoot);
      float most = Math.min(Math.min(free, w), alongRow + alongX * x);
      float a = Math.max(most, Math.max(pastRow + alongX * x, -w));
      float r = (float) Math.sqrt(a * a + v * v);
      float on = Math.min(r, touch);
      heights[i] =
          z
              + riseX * x
              - m * a
              - (float) Math.sqrt((ball - on) * (ball + on))
              + slope * Math.max(0f, r - knee);
    }
  }
}
