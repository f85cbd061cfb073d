package frieze.field;

import frieze.shop.ToolShape;

/**
 * The cutting surface of a turning tool in one formula: a ball up to {@code touchMm}, then a
 * straight flank; or a flat tip up to {@code kneeMm} with a hollow quarter round above it.
 *
 * <p>{@code height(r) = ball - sqrt(ball^2 - min(r, touch)^2) + slope * max(0, r - knee)} for
 * {@code r <= radius}; nothing is cut farther out. With a hollow it is {@code sqrt(o (2 hollow -
 * o))}, where {@code o} is {@code r - knee}, between 0 and {@code hollow}. The height never falls
 * with {@code r}, and without a hollow it is convex; the exact swept surfaces rest on that.
 *
 * @param radiusMm the largest radius that cuts
 * @param ballMm the radius of the ball at the tip; 0 for none
 * @param touchMm the radius at which the ball ends
 * @param kneeMm the radius at which the flank or the hollow starts
 * @param slope rise of the flank for each millimetre of radius
 * @param hollowMm the radius of the hollow; 0 for none
 */
public record Profile(
    double radiusMm, double ballMm, double touchMm, double kneeMm, double slope, double hollowMm) {
  /** A profile without a hollow. */
  public Profile(double radiusMm, double ballMm, double touchMm, double kneeMm, double slope) {
    this(radiusMm, ballMm, touchMm, kneeMm, slope, 0);
  }

  public static Profile of(ToolShape shape) {
    return shape.accept(FROM_SHAPE);
  }

  private static final ToolShape.Visitor<Profile> FROM_SHAPE =
      new ToolShape.Visitor<>() {
        @Override
        public Profile flat(ToolShape.Flat flat) {
          return new Profile(flat.diameterMm() / 2, 0, 0, 0, 0);
        }

        @Override
        public Profile ball(ToolShape.Ball ball) {
          double r = ball.diameterMm() / 2;
          return new Profile(r, r, r, r, 0);
        }

        @Override
        public Profile vee(ToolShape.Vee vee) {
          return new Profile(
              vee.diameterMm() / 2, 0, 0, vee.tipMm() / 2, cotangent(vee.angleRad() / 2));
        }

        @Override
        public Profile tapered(ToolShape.Tapered tapered) {
          double half = tapered.angleRad() / 2;
          double ball = tapered.tipMm() / 2;
          double touch = ball * StrictMath.cos(half);
          return new Profile(tapered.diameterMm() / 2, ball, touch, touch, cotangent(half));
        }

        @Override
        public Profile drill(ToolShape.Drill drill) {
          return new Profile(drill.diameterMm() / 2, 0, 0, 0, cotangent(drill.angleRad() / 2));
        }

        @Override
        public Profile roundOver(ToolShape.RoundOver bit) {
          return new Profile(bit.diameterMm() / 2, 0, 0, bit.tipMm() / 2, 0, bit.cornerMm());
        }
      };

  /** Exactly 0 for a half angle of 90 degrees. */
  private static double cotangent(double halfRad) {
    return halfRad >= Math.PI / 2 ? 0 : 1 / StrictMath.tan(halfRad);
  }

  /** The same surface, cut off at a smaller radius. */
  Profile slimmer(double byMm) {
    return cutOffAt(Math.max(radiusMm / 2, radiusMm - byMm));
  }

  /**
   * The same surface, cut off where it rises {@code heightMm} above the tip: all of it that a tool
   * takes down to that depth below a flat top.
   */
  public Profile upTo(double heightMm) {
    double reached = radiusAtMm(heightMm);
    return reached >= radiusMm ? this : cutOffAt(reached);
  }

  private Profile cutOffAt(double radius) {
    return new Profile(radius, ballMm, touchMm, kneeMm, slope, hollowMm);
  }

  /** The radius at which the surface has risen by a height; infinite if it never does. */
  private double radiusAtMm(double heightMm) {
    double onBall = ballMm - Math.sqrt(Math.max(0, ballMm * ballMm - touchMm * touchMm));
    if (ballMm > 0 && heightMm < onBall) {
      return Math.sqrt(heightMm * (2 * ballMm - heightMm));
    }
    if (hollowMm > 0 && heightMm < hollowMm) {
      return kneeMm + hollowMm - Math.sqrt(hollowMm * hollowMm - heightMm * heightMm);
    }
    return slope == 0 ? Double.POSITIVE_INFINITY : kneeMm + (heightMm - onBall) / slope;
  }

  boolean isFlat() {
    return ballMm == 0 && slope == 0 && hollowMm == 0;
  }

  public double heightAtMm(double r) {
    if (hollowMm > 0) {
      double over = Math.max(0, Math.min(r - kneeMm, hollowMm));
      return Math.sqrt(over * (2 * hollowMm - over));
    }
    double onBall = Math.min(r, touchMm);
    return ballMm
        - Math.sqrt(Math.max(0, ballMm * ballMm - onBall * onBall))
        + slope * Math.max(0, r - kneeMm);
  }
}
