package frieze.field;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.motion.Position;
import java.util.Optional;

/**
 * The exact sweep of a straight move: level, ramping or straight up and down.
 *
 * <p>In coordinates {@code s} along and {@code v} across the move, seen from above, the tool at
 * {@code s - a} cuts the point {@code (s, v)} at {@code z0 + m (s - a) + height(sqrt(a^2 + v^2))},
 * where {@code m >= 0} is the rise of the move (it is turned round if it falls). That is convex in
 * {@code a}, so the lowest value is at the free minimum {@code a*(v)} clamped to the interval in
 * which the tool exists and reaches the point. For every {@link Profile} the free minimum is {@code
 * max(k |v|, e sqrt(q^2 - v^2))} with constants of the move. A hollow is not convex; see {@link
 * HollowMinimum}.
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
  private final boolean discDone;
  private final boolean slabOnly;
  private final Slab slab;
  private final Optional<JointWedge> wedge;
  private final Bounds bounds;
  private final double flankFactor;
  private final double rootFactor;
  private final double rootRadius;
  private final HollowMinimum hollow;

  /** Makes a sweep that may leave out what others cut, as told in {@code ends}. */
  StraightSweep(Position from, Position to, Profile profile, Ends ends) {
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
    boolean started = ends.start() != Ends.Start.NEW;
    boolean taken = ends.onward().isPresent() && low.z() == to.z() && !vertical;
    this.lowEndDone = !vertical && (falls ? taken : started);
    this.discDone = ends.start() == Ends.Start.DONE && !falls;
    this.slabOnly = taken && started && rise == 0;
    Point way = new Point(falls ? -ux : ux, falls ? -uy : uy);
    this.wedge =
        ends.onward().filter(onward -> taken).map(onward -> wedge(to, way, onward, profile));
    this.slab = Slab.of(ux, uy, length, profile.radiusMm(), OVERLAP_MM);
    this.bounds = slabOnly ? slabBounds() : capsuleBounds();
    FreeMinimum free = FreeMinimum.of(profile, rise);
    this.flankFactor = free.flankFactor();
    this.rootFactor = free.rootFactor();
    this.rootRadius = free.rootRadius();
    this.hollow = HollowMinimum.of(profile, rise);
  }

  private static JointWedge wedge(Position at, Point way, Point onward, Profile profile) {
    return new JointWedge(at.xy(), way, onward, profile.radiusMm(), OVERLAP_MM);
  }

  @Override
  public Bounds bounds() {
    return bounds;
  }

  private Bounds capsuleBounds() {
    double r = profile.radiusMm();
    return new Bounds(
        Math.min(x0, x1) - r, Math.min(y0, y1) - r, Math.max(x0, x1) + r, Math.max(y0, y1) + r);
  }

  private Bounds slabBounds() {
    double besideX = profile.radiusMm() * Math.abs(uy) + OVERLAP_MM;
    double besideY = profile.radiusMm() * Math.abs(ux) + OVERLAP_MM;
    Bounds slab =
        new Bounds(
            Math.min(x0, x1) - besideX,
            Math.min(y0, y1) - besideY,
            Math.max(x0, x1) + besideX,
            Math.max(y0, y1) + besideY);
    return wedge.map(w -> slab.with(w.bounds())).orElse(slab);
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
    if (slabOnly) {
      slab.intersect(x0, y - y0, row);
    } else {
      intersectCapsule(y, row);
      if (lowEndDone) {
        leaveOutStart(row, y - y0);
      }
    }
    if (wedge.isPresent()) {
      wedge.get().widen(y, row);
    }
  }

  private void intersectCapsule(double y, Row row) {
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
  }

  private void leaveOutStart(Row row, double d0) {
    if (discDone && isLevelFloor()) {
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
    if (row.low1 > row.high1) {
      row.setEmpty();
    }
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
    if (profile.hollowMm() > 0) {
      return z0 + rise * s + hollow.lowestMm(v, Math.max(least, s - length), most);
    }
    double root = rootFactor * Math.sqrt(Math.max(0, rootRadius * rootRadius - v * v));
    double free = Math.max(flankFactor * Math.abs(v), root);
    double a = Math.max(least, Math.min(free, most));
    double along = Math.max(0, Math.min(length, s - a));
    return z0 + rise * along + profile.heightAtMm(Math.sqrt(a * a + v * v));
  }

  @Override
  public void heights(double y, Columns columns, int first, int end, float[] heights) {
    if (rise > STEEP || profile.hollowMm() > 0) {
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
      heights[i] = (float) Math.sqrt(a * a + across * across);
    }
    float[] onBall = columns.work();
    for (int i = first; i < end; i++) {
      float on = Math.min(heights[i], touch);
      onBall[i] = z - (float) Math.sqrt((ball - on) * (ball + on));
    }
    for (int i = first; i < end; i++) {
      heights[i] = onBall[i] + slope * Math.max(0f, heights[i] - knee);
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
    float[] across = columns.work();
    for (int i = first; i < end; i++) {
      across[i] = Math.abs(acrossRow + acrossX * xs[i]);
    }
    for (int i = first; i < end; i++) {
      float v = across[i];
      float onRoot = rootBy * (float) Math.sqrt(Math.max(0f, (root - v) * (root + v)));
      heights[i] = Math.max(flankBy * v, onRoot);
    }
    for (int i = first; i < end; i++) {
      float v = across[i];
      float w = (float) Math.sqrt(Math.max(0f, (reach - v) * (reach + v)));
      heights[i] = Math.min(heights[i], w);
    }
    for (int i = first; i < end; i++) {
      float s = alongX * xs[i];
      heights[i] = Math.max(Math.min(heights[i], alongRow + s), pastRow + s);
    }
    for (int i = first; i < end; i++) {
      float a = heights[i];
      float v = across[i];
      heights[i] = z + riseX * xs[i] - m * a;
      across[i] = (float) Math.sqrt(a * a + v * v);
    }
    if (ball > 0) {
      for (int i = first; i < end; i++) {
        float on = Math.min(across[i], touch);
        heights[i] -= (float) Math.sqrt((ball - on) * (ball + on));
      }
    }
    for (int i = first; i < end; i++) {
      heights[i] += slope * Math.max(0f, across[i] - knee);
    }
  }
}
