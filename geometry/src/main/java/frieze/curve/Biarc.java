package frieze.curve;

/**
 * Two arcs, tangent to each other, that leave one vertex and arrive at another in given directions.
 *
 * <p>The lengths of the tangents from each end to the joint's tangent are one free choice: either
 * fixes the other. Source: Drysdale, Rote, Sturm, Approximation of an open polygonal curve with a
 * minimum number of circular arcs and biarcs, Computational Geometry 41 (2008) 31-47.
 */
final class Biarc {
  /** A stretch too short to have a direction. */
  private static final double NOTHING_MM = 1e-9;

  private final FitSource s;
  private final int i;
  private final int j;
  private final double vx;
  private final double vy;
  private final double leaving;
  private final double arriving;
  private final double oneMinusCos;

  double jointX;
  double jointY;
  double sweep1;
  double sweep2;
  private double directionX;
  private double directionY;

  Biarc(FitSource s, int i, int j) {
    this.s = s;
    this.i = i;
    this.j = j;
    vx = s.x[j] - s.x[i];
    vy = s.y[j] - s.y[i];
    leaving = vx * s.outX[i] + vy * s.outY[i];
    arriving = vx * s.inX[j] + vy * s.inY[j];
    oneMinusCos = 1 - (s.outX[i] * s.inX[j] + s.outY[i] * s.inY[j]);
  }

  /** The tangent length at which both are equal. */
  double equalLength() {
    double sum = leaving + arriving;
    double squared = vx * vx + vy * vy;
    return squared / (sum + Math.sqrt(sum * sum + 2 * oneMinusCos * squared));
  }

  /** Works out the joint for a first tangent length; false if there is none. */
  boolean shape(double first) {
    double second = ((vx * vx + vy * vy) / 2 - first * leaving) / (arriving + first * oneMinusCos);
    if (!(second > 0) || !Double.isFinite(second)) {
      return false;
    }
    double q1x = s.x[i] + first * s.outX[i];
    double q1y = s.y[i] + first * s.outY[i];
    double q2x = s.x[j] - second * s.inX[j];
    double q2y = s.y[j] - second * s.inY[j];
    double sum = first + second;
    jointX = (q1x * second + q2x * first) / sum;
    jointY = (q1y * second + q2y * first) / sum;
    directionX = (q2x - q1x) / sum;
    directionY = (q2y - q1y) / sum;
    sweep1 = 2 * PieceFinder.turn(s.outX[i], s.outY[i], jointX - s.x[i], jointY - s.y[i]);
    sweep2 = 2 * PieceFinder.turn(s.x[j] - jointX, s.y[j] - jointY, s.inX[j], s.inY[j]);
    return Math.abs(sweep1) <= Math.PI && Math.abs(sweep2) <= Math.PI;
  }

  /** Whether the arcs and the polyline between the vertices agree. */
  boolean holds(double tol) {
    int k = i + 1;
    while (k < j && before(k)) {
      k++;
    }
    double at0 = (s.x[k - 1] - jointX) * directionX + (s.y[k - 1] - jointY) * directionY;
    double at1 = (s.x[k] - jointX) * directionX + (s.y[k] - jointY) * directionY;
    if (!(at0 <= 0 && at1 >= 0 && at1 > at0)) {
      return false;
    }
    double fraction = -at0 / (at1 - at0);
    double splitX = s.x[k - 1] + (s.x[k] - s.x[k - 1]) * fraction;
    double splitY = s.y[k - 1] + (s.y[k] - s.y[k - 1]) * fraction;
    if (Math.hypot(splitX - jointX, splitY - jointY) > tol) {
      return false;
    }
    double[] split = {splitX, splitY};
    return firstHolds(k - 1, split, tol) && secondHolds(k, split, tol);
  }

  private boolean before(int k) {
    return (s.x[k] - jointX) * directionX + (s.y[k] - jointY) * directionY < 0;
  }

  private boolean firstHolds(int last, double[] split, double tol) {
    ArcOrLine piece = new ArcOrLine(s.x[i], s.y[i], jointX, jointY, sweep1);
    if (last > i && !piece.near(s, (i + last) / 2, tol)) {
      return false;
    }
    for (int k = i; k < last; k++) {
      if (!piece.edgeHolds(s.x[k], s.y[k], s.x[k + 1], s.y[k + 1], tol)) {
        return false;
      }
    }
    return piece.edgeHolds(s.x[last], s.y[last], split[0], split[1], tol);
  }

  private boolean secondHolds(int first, double[] split, double tol) {
    ArcOrLine piece = new ArcOrLine(jointX, jointY, s.x[j], s.y[j], sweep2);
    if (first < j && !piece.near(s, (first + j) / 2, tol)) {
      return false;
    }
    for (int k = first; k < j; k++) {
      if (!piece.edgeHolds(s.x[k], s.y[k], s.x[k + 1], s.y[k + 1], tol)) {
        return false;
      }
    }
    return piece.edgeHolds(split[0], split[1], s.x[first], s.y[first], tol);
  }

  /** One half of the pair; straight if its sweep vanishes. */
  private static final class ArcOrLine {
    private final Circle circle;
    private final double sign;

    ArcOrLine(double ax, double ay, double bx, double by, double sweep) {
      double swept = Math.abs(sweep) < Circle.FLAT_RAD ? Circle.FLAT_RAD : sweep;
      circle = Circle.through(ax, ay, bx, by, swept);
      sign = Math.signum(swept);
    }

    boolean near(FitSource s, int k, double tol) {
      return circle.off(s.x[k], s.y[k]) <= tol;
    }

    boolean edgeHolds(double ax, double ay, double bx, double by, double tol) {
      boolean nothing = Math.abs(bx - ax) + Math.abs(by - ay) < NOTHING_MM;
      return nothing || circle.edgeHolds(ax, ay, bx, by, sign, tol);
    }
  }
}
