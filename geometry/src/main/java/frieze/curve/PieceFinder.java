package frieze.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * Tries to replace a stretch of a polyline by one line, one arc, or two tangent arcs.
 *
 * <p>A piece fits if it and its stretch lie within the tolerance of each other, everywhere, and if
 * it leaves and arrives in the directions of the source where that is smooth.
 */
final class PieceFinder {
  /** The most by which a piece departs from the direction of a smooth source: 0.1 degrees. */
  static final double TANGENT = Math.PI / 1800;

  private static final double LARGEST_SWEEP = 1.5 * Math.PI;

  /** Where the joint of two arcs is tried: first tangent length over that of equal lengths. */
  private static final double[] JOINTS = {1, 0.8, 1.25, 0.63, 1.6, 0.5, 2, 0.4, 2.5, 0.3, 3.3};

  private final FitSource s;
  private final double tol;

  PieceFinder(FitSource source, double toleranceMm) {
    this.s = source;
    this.tol = toleranceMm;
  }

  /** The sweep of the one piece from vertex i to vertex j: 0 for a line, NaN if none fits. */
  double single(int i, int j) {
    double chordX = s.x[j] - s.x[i];
    double chordY = s.y[j] - s.y[i];
    if (chordX == 0 && chordY == 0) {
      return Double.NaN;
    }
    double leave = s.corner[i] ? Double.NaN : turn(s.outX[i], s.outY[i], chordX, chordY);
    double arrive = s.corner[j] ? Double.NaN : turn(chordX, chordY, s.inX[j], s.inY[j]);
    if (agree(0, leave, arrive) && lineHolds(i, j)) {
      return 0;
    }
    int mid = (i + j) / 2;
    double middle =
        mid == i
            ? Double.NaN
            : turn(s.x[mid] - s.x[i], s.y[mid] - s.y[i], s.x[j] - s.x[mid], s.y[j] - s.y[mid]);
    double[] halves = {balanced(i, j, leave, arrive), middle, (leave + arrive) / 2, leave, arrive};
    for (double half : halves) {
      if (agree(half, leave, arrive) && arcHolds(i, j, 2 * half)) {
        return 2 * half;
      }
    }
    return Double.NaN;
  }

  /** Whether half a sweep agrees with the directions at both ends; a free end is NaN. */
  private static boolean agree(double half, double leave, double arrive) {
    return !(Math.abs(half - leave) > TANGENT)
        && !(Math.abs(half - arrive) > TANGENT)
        && Math.abs(half) <= LARGEST_SWEEP / 2;
  }

  /**
   * The half sweep in the middle of those that the vertices, the middles of the edges and the ends
   * allow, NaN if there is none. Each point allows those near the half sweep of the circle through
   * it; how near is worked out to first order.
   */
  private double balanced(int i, int j, double leave, double arrive) {
    double low = -Math.PI / 4;
    double high = Math.PI / 4;
    for (int step = 1; step < 2 * (j - i); step++) {
      int k = i + step / 2;
      double px = step % 2 == 0 ? s.x[k] : (s.x[k] + s.x[k + 1]) / 2;
      double py = step % 2 == 0 ? s.y[k] : (s.y[k] + s.y[k + 1]) / 2;
      double ax = px - s.x[i];
      double ay = py - s.y[i];
      double bx = s.x[j] - px;
      double by = s.y[j] - py;
      double dot = ax * bx + ay * by;
      double tan = (ax * by - ay * bx) / dot;
      if (!(dot > 0) || Math.abs(tan) > 1) {
        return Double.NaN;
      }
      double half = Math.atan(tan);
      double slack =
          tol * Math.sqrt(sum(ax, bx, ay, by) / ((ax * ax + ay * ay) * (bx * bx + by * by)));
      low = Math.max(low, half - slack);
      high = Math.min(high, half + slack);
      if (low > high) {
        return Double.NaN;
      }
    }
    for (double end : new double[] {leave, arrive}) {
      if (!Double.isNaN(end)) {
        low = Math.max(low, end - TANGENT);
        high = Math.min(high, end + TANGENT);
      }
    }
    return low > high ? Double.NaN : (low + high) / 2;
  }

  private static double sum(double ax, double bx, double ay, double by) {
    return (ax + bx) * (ax + bx) + (ay + by) * (ay + by);
  }

  private boolean lineHolds(int i, int j) {
    double dx = s.x[j] - s.x[i];
    double dy = s.y[j] - s.y[i];
    double length = Math.sqrt(dx * dx + dy * dy);
    double before = 0;
    for (int k = i + 1; k < j; k++) {
      double px = s.x[k] - s.x[i];
      double py = s.y[k] - s.y[i];
      double along = (px * dx + py * dy) / length;
      if (Math.abs(px * dy - py * dx) > tol * length || along < before || along > length) {
        return false;
      }
      before = along;
    }
    return true;
  }

  private boolean arcHolds(int i, int j, double sweep) {
    if (sweep == 0) {
      return false;
    }
    Circle c = Circle.through(s.x[i], s.y[i], s.x[j], s.y[j], sweep);
    return c.holds(s, i + 1, j - 1, tol);
  }

  /** The first tangent length of two arcs from vertex i to vertex j, or NaN if none fit. */
  double pair(int i, int j) {
    double equal = new Biarc(s, i, j).equalLength();
    if (!(equal > 0)) {
      return Double.NaN;
    }
    for (double joint : JOINTS) {
      if (new Biarc(s, i, j).shape(equal * joint) && pairHolds(i, j, equal * joint)) {
        return equal * joint;
      }
    }
    return Double.NaN;
  }

  private boolean pairHolds(int i, int j, double firstLength) {
    Biarc b = new Biarc(s, i, j);
    return b.shape(firstLength) && b.holds(tol);
  }

  List<Segment> lineOrArc(int i, int j, double sweep) {
    if (sweep == 0) {
      return List.of(new Line(s.point(i), s.point(j)));
    }
    return List.of(
        Circle.through(s.x[i], s.y[i], s.x[j], s.y[j], sweep).arc(s.point(i), s.point(j)));
  }

  List<Segment> twoArcs(int i, int j, double firstLength) {
    Biarc b = new Biarc(s, i, j);
    b.shape(firstLength);
    List<Segment> arcs = new ArrayList<>();
    Point joint = new Point(b.jointX, b.jointY);
    arcs.add(piece(s.point(i), joint, b.sweep1));
    arcs.add(piece(joint, s.point(j), b.sweep2));
    return arcs;
  }

  private static Segment piece(Point from, Point to, double sweep) {
    return Math.abs(sweep) < Circle.FLAT_RAD
        ? new Line(from, to)
        : Circle.through(from.x(), from.y(), to.x(), to.y(), sweep).arc(from, to);
  }

  static double turn(double ax, double ay, double bx, double by) {
    return StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }
}
