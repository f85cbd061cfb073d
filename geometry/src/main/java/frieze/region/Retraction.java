package frieze.region;

import frieze.curve.Point;
import org.jspecify.annotations.Nullable;

/**
 * Moves points of a region onto its medial axis, away from their nearest boundary point.
 *
 * <p>The disc that touches there is grown until it touches a second time; each touch too many gives
 * the next smaller disc. Source: the shrinking ball of Ma, Bae, Choi, 3D medial axis point
 * approximation using nearest neighbors and the normal field, Visual Computer 28 (2012), with exact
 * distances to edges in place of points.
 */
final class Retraction {
  /** A disc whose centre is nearer to the boundary than its radius by this touches too much. */
  private static final double TOUCH_MM = 1e-8;

  /** Walls that differ by less than this in direction do not place a point along its ray. */
  private static final double LEAST_OPENING = 0.1;

  private static final int MOST_STEPS = 60;

  private final BoundaryDistance boundary;
  private final double largestMm;

  Retraction(BoundaryDistance boundary) {
    this.boundary = boundary;
    var b = boundary.region().bounds();
    this.largestMm = Math.hypot(b.width(), b.height());
  }

  /** The disc of a point's own distance. */
  Disc at(Point p) {
    return new Disc(p, boundary.distance(p));
  }

  /**
   * The disc that touches where a point's disc does, and once more; null if the walls it touches
   * face the same way, so that its place is not determined.
   */
  @Nullable Disc onto(Point p) {
    return grow(p, 0);
  }

  /**
   * As {@link #onto}, but does not stop at walls that face the same way until the disc overlaps
   * them by the slack.
   */
  @Nullable Disc past(Point p, double slackMm) {
    return grow(p, slackMm);
  }

  private @Nullable Disc grow(Point p, double slackMm) {
    BoundaryDistance.Foot foot = boundary.foot(p.x(), p.y());
    double d = foot.distance();
    if (!(d > TOUCH_MM) || !boundary.contains(p)) {
      return null;
    }
    double nx = (p.x() - foot.x()) / d;
    double ny = (p.y() - foot.y()) / d;
    double t = Math.min(largestMm, d * 1.125 + 0.01);
    boolean limited = false;
    for (int step = 0; step < MOST_STEPS; step++) {
      double cx = foot.x() + t * nx;
      double cy = foot.y() + t * ny;
      BoundaryDistance.Foot touch = boundary.foot(cx, cy);
      double mx = (cx - touch.x()) / touch.distance();
      double my = (cy - touch.y()) / touch.distance();
      boolean opening = Math.hypot(nx - mx, ny - my) >= LEAST_OPENING;
      if (touch.distance() >= t - (opening ? TOUCH_MM : Math.max(TOUCH_MM, slackMm))) {
        if (limited || t >= largestMm) {
          return limited ? new Disc(new Point(cx, cy), touch.distance()) : null;
        }
        t = Math.min(largestMm, 2 * t);
        continue;
      }
      if (!opening && slackMm == 0) {
        return null;
      }
      t = smaller(foot, touch, nx, ny);
      limited = true;
      if (!(t >= d * (1 - 1e-9) - TOUCH_MM)) {
        return null;
      }
    }
    return null;
  }

  /** The radius at which the disc passes through another foot; what is larger overlaps there. */
  private static double smaller(
      BoundaryDistance.Foot foot, BoundaryDistance.Foot touch, double nx, double ny) {
    double vx = touch.x() - foot.x();
    double vy = touch.y() - foot.y();
    return (vx * vx + vy * vy) / (2 * (nx * vx + ny * vy));
  }
}
