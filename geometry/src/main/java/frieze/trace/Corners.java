package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the corners of a closed row of evenly spaced points that blur has rounded.
 *
 * <p>At each point, parabolas are fitted to both sides, away from what the blur has spoilt, and
 * carried on to the point. Where their directions differ by more than a smooth outline explains,
 * there is a corner; the sharpest place of such a stretch is its tip.
 */
final class Corners {
  /**
   * A turn between the sides that counts. Corners of 30 degrees are to be found in spite of noise.
   */
  private static final double LEAST_TURN_RAD = Math.toRadians(24);

  /** Lengths of a side, in pixels; the longest that a parabola fits is taken. */
  private static final double[] SIDES_PX = {9, 6, 4};

  /** A parabola fits if it leaves the points by no more than this, in pixels. */
  private static final double FITS_PX = 0.08;

  /** So far from a corner the blur has moved the outline, in blurs. */
  static final double SPOILT = 2.2;

  private final List<Point> points;
  private final double step;
  private final int n;
  private final int gap;
  private final double fits;

  private Corners(List<Point> points, double stepPx, double sigmaPx, double noisePx) {
    this.points = points;
    this.step = stepPx;
    this.n = points.size();
    this.gap = (int) Math.ceil(SPOILT * sigmaPx / stepPx);
    this.fits = Math.max(FITS_PX, 2 * noisePx);
  }

  /**
   * Gives the indices of the tips, in order.
   *
   * @param stepPx between the points
   * @param sigmaPx the blur of the edge
   * @param noisePx by how much the points scatter
   */
  static List<Integer> find(List<Point> points, double stepPx, double sigmaPx, double noisePx) {
    return new Corners(points, stepPx, sigmaPx, noisePx).find();
  }

  private List<Integer> find() {
    double[] turn = new double[n];
    double[] sharp = new double[n];
    int near = Math.max(2, (int) Math.round(2 / step));
    for (int i = 0; i < n; i++) {
      turn[i] = turn(i);
      sharp[i] = Math.abs(angle(at(i).minus(at(i - near)), at(i + near).minus(at(i))));
    }
    int apart = gap + 1;
    List<Integer> tips = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      if (turn[i] >= LEAST_TURN_RAD && sharpest(sharp, i, apart) && sharp[i] > turn[i] / 4) {
        tips.add(i);
      }
    }
    return tips;
  }

  private boolean sharpest(double[] sharp, int i, int apart) {
    for (int k = 1; k <= apart; k++) {
      if (sharp[Math.floorMod(i - k, n)] >= sharp[i] || sharp[(i + k) % n] > sharp[i]) {
        return false;
      }
    }
    return true;
  }

  private double turn(int i) {
    return Math.abs(angle(side(i, -1).direction(0), side(i, 1).direction(0)));
  }

  private Stretch side(int i, int sign) {
    for (double length : SIDES_PX) {
      int reach = Math.max(3, (int) Math.round(length / step));
      int near = i + sign * gap;
      int far = near + sign * reach;
      Stretch fitted = Stretch.fit(points, i, Math.min(near, far), Math.max(near, far), 2);
      if (fitted.rms() <= fits) {
        return fitted;
      }
    }
    int far = i + sign * (gap + 3);
    return Stretch.fit(points, i, Math.min(i + sign * gap, far), Math.max(i + sign * gap, far), 1);
  }

  private Point at(int i) {
    return points.get(Math.floorMod(i, n));
  }

  static double angle(Point from, Point to) {
    return StrictMath.atan2(from.cross(to), from.dot(to));
  }
}
