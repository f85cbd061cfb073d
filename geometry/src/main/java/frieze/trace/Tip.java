package frieze.trace;

import frieze.curve.Point;
import java.util.List;
import java.util.Optional;

/**
 * A corner as it was drawn.
 *
 * @param points where its sides end, in order: one for a sharp corner, two for one cut off square,
 *     more for a rounded one
 * @param shape with its sides, if they are known
 */
record Tip(List<Point> points, Optional<TipShape> shape) {
  static Tip of(TipShape shape) {
    return new Tip(shape.tip(), Optional.of(shape));
  }

  static Tip at(Point corner) {
    return new Tip(List.of(corner), Optional.empty());
  }

  Point first() {
    return points.get(0);
  }

  Point last() {
    return points.get(points.size() - 1);
  }

  boolean blunt() {
    return points.size() > 1;
  }

  /** Whether a point of the outline lies beside what is cut off or rounded. */
  boolean covers(Point seen) {
    return shape.isPresent() && shape.get().apex().distance(seen) < shape.get().missing();
  }

  /** Its first side, from a point of the outline in front of it, which is not given. */
  List<Point> before(Point seen) {
    return shape.map(s -> s.first(s.apex().distance(seen))).orElse(List.of());
  }

  /** Its second side, as far as a point of the outline behind it, which is not given. */
  List<Point> after(Point seen) {
    return shape.map(s -> s.second(s.apex().distance(seen))).orElse(List.of());
  }

  /**
   * The sides of a tip, away from what the blur has spoilt.
   *
   * @param met where they would meet
   * @param in the direction of the first one, towards the tip
   * @param out the direction of the second one, away from it
   */
  record Sides(Point met, Point in, Point out) {
    /** A sharp tip is seen where it must be, but for this, and for the scatter of its sides. */
    private static final double BLUNT_PX = 0.25;

    private static final double BLUNT_SCATTER = 4;

    /** Wider corners are not looked at for a blunt tip: each of its two would hardly turn. */
    private static final double MOST_BLUNT_RAD = Math.toRadians(50);

    private double halfRad() {
      return (Math.PI - Math.abs(Corners.angle(in, out))) / 2;
    }

    Wedge wedge() {
      return new Wedge(halfRad());
    }

    private Point outward() {
      return in.minus(out).times(1 / in.minus(out).norm());
    }

    /** Where the fit of a {@link TipShape} starts. */
    double[] start(Stretch first, Stretch last) {
      return new double[] {
        met.x(),
        met.y(),
        in.times(-1).angleRad(),
        out.angleRad(),
        -first.curvature(0),
        last.curvature(0)
      };
    }

    /**
     * The tip that is seen at a place through a blur, if the sides are straight.
     *
     * <p>One that is seen farther from where its sides would meet than a sharp one is blunt: it was
     * cut off square, or nearly so, by less than a side that shows. One that is seen nearer has
     * sides that bend on the way to it, as in a cusp; it lies where it must to be seen so.
     *
     * @param scatterPx of the outline
     * @param slackPx by which it may be nearer
     */
    Tip blurred(Point seen, double sigmaPx, double scatterPx, double slackPx) {
      double half = halfRad();
      double expected = sigmaPx * wedge().sharpSeenAt();
      double away = met.distance(seen);
      double scatters = BLUNT_PX + BLUNT_SCATTER * scatterPx / StrictMath.sin(half);
      boolean askew = expected > Smoothing.TIP_ROUND * away + slackPx;
      if (half > MOST_BLUNT_RAD || askew || Math.abs(away - expected) <= scatters) {
        return Tip.at(met);
      }
      if (away < expected) {
        return Tip.at(seen.plus(outward().times(expected)));
      }
      double cut = sigmaPx * wedge().cutFor(away / sigmaPx) / StrictMath.cos(half);
      return new Tip(List.of(met.minus(in.times(cut)), met.plus(out.times(cut))), Optional.empty());
    }
  }
}
