package frieze.curve;

import java.util.List;

/**
 * Tells corners from smooth vertices of a polyline, and estimates the directions of the curve that
 * it stands for.
 *
 * <p>An edge is straight for its own sake if the arc that its turns suggest would leave it by more
 * than the tolerance. A vertex is a corner if it turns sharply, if it lies between two straight
 * edges, or if the directions of a straight edge and of the curve that follows it disagree.
 */
final class Directions {
  /** No smooth curve is flattened with turns beyond this, about 34 degrees. */
  private static final double SHARP_RAD = 0.6;

  /** A straight edge and a curve that differ by no more than this, about 1 degree, are tangent. */
  private static final double SMOOTH_RAD = 0.02;

  /** The widest neighbourhood, in vertices to each side, from which a direction is estimated. */
  private static final int WIDEST = 64;

  /** The part of the tolerance by which a neighbourhood may depart from one circle. */
  private static final double CIRCLE_SHARE = 0.125;

  private final List<Point> points;
  private final boolean closed;
  private final double toleranceMm;
  private final int n;
  private final double[] turn;
  private final boolean[] straight;
  private final FitSource source;

  private Directions(List<Point> points, boolean closed, double toleranceMm) {
    this.points = points;
    this.closed = closed;
    this.toleranceMm = toleranceMm;
    this.n = points.size();
    this.turn = new double[n];
    this.straight = new boolean[n];
    this.source = new FitSource(n);
  }

  /** Works out the directions at each vertex. No two neighbours may coincide. */
  static FitSource of(List<Point> points, boolean closed, double toleranceMm) {
    Directions directions = new Directions(points, closed, toleranceMm);
    directions.markStraight();
    directions.markCorners();
    directions.markBreaksBesideStraight();
    directions.estimate();
    return directions.source;
  }

  private Point at(int i) {
    return points.get(Math.floorMod(i, n));
  }

  private boolean corner(int i) {
    return source.corner[Math.floorMod(i, n)];
  }

  private boolean straight(int edge) {
    return straight[Math.floorMod(edge, n)];
  }

  private Point edge(int i) {
    return at(i + 1).minus(at(i));
  }

  private boolean hasEdge(int i) {
    return closed || (i >= 0 && i < n - 1);
  }

  private void markStraight() {
    for (int i = 0; i < n; i++) {
      source.x[i] = points.get(i).x();
      source.y[i] = points.get(i).y();
      turn[i] = hasEdge(i - 1) && hasEdge(i) ? angle(edge(i - 1), edge(i)) : Math.PI;
    }
    for (int i = 0; i < n; i++) {
      if (hasEdge(i)) {
        double most = Math.max(softTurn(i), softTurn((i + 1) % n));
        straight[i] = edge(i).norm() * most / 8 > toleranceMm;
      }
    }
  }

  /** The turn at a vertex; 0 at a sharp one, which says nothing about the curves beside it. */
  private double softTurn(int i) {
    double t = Math.abs(turn[i]);
    return t > SHARP_RAD ? 0 : t;
  }

  private void markCorners() {
    for (int i = 0; i < n; i++) {
      double t = Math.abs(turn[i]);
      boolean ends = !hasEdge(i - 1) || !hasEdge(i);
      boolean betweenStraight = !ends && straight(i - 1) && straight(i) && t > PieceFinder.TANGENT;
      boolean rough = !ends && Math.min(edge(i - 1).norm(), edge(i).norm()) * t / 8 > toleranceMm;
      source.corner[i] = ends || t > SHARP_RAD || betweenStraight || rough;
    }
  }

  private void markBreaksBesideStraight() {
    boolean[] breaks = new boolean[n];
    for (int i = 0; i < n; i++) {
      if (!source.corner[i] && straight(i - 1) != straight(i)) {
        Point along = straight(i) ? edge(i) : edge(i - 1);
        Point curve = straight(i) ? oneSided(i, -1).times(-1) : oneSided(i, 1);
        breaks[i] = Math.abs(angle(along, curve)) > SMOOTH_RAD;
      }
    }
    for (int i = 0; i < n; i++) {
      source.corner[i] |= breaks[i];
    }
  }

  private void estimate() {
    for (int i = 0; i < n; i++) {
      if (source.corner[i]) {
        Point in = hasEdge(i - 1) ? oneSided(i, -1).times(-1) : unit(edge(i));
        Point out = hasEdge(i) ? oneSided(i, 1) : unit(edge(i - 1));
        source.setDirections(i, in, out);
      } else {
        Point both = smooth(i);
        source.setDirections(i, both, both);
      }
    }
  }

  private Point smooth(int i) {
    if (straight(i - 1) != straight(i)) {
      return unit(straight(i) ? edge(i) : edge(i - 1));
    }
    Point best = middleDirection(at(i - 1), at(i), at(i + 1));
    for (int w = 2; w <= WIDEST && reaches(i, -w) && reaches(i, w) && 2 * w < n; w *= 2) {
      if (!onOneCircle(i - w, i, i + w)) {
        break;
      }
      best = middleDirection(at(i - w), at(i), at(i + w));
    }
    return best;
  }

  /** The direction of leaving a vertex, forwards or backwards, by the vertices on that side. */
  private Point oneSided(int i, int sign) {
    Point best = unit(at(i + sign).minus(at(i)));
    for (int w = 1; w <= WIDEST && reaches(i, 2 * w * sign) && 2 * w < n; w *= 2) {
      int mid = i + w * sign;
      int end = i + 2 * w * sign;
      if (w > 1 && !onOneCircle(i, mid, end)) {
        break;
      }
      double half = angle(at(mid).minus(at(i)), at(end).minus(at(mid)));
      best = unit(at(end).minus(at(i))).turned(-half);
    }
    return best;
  }

  /** Whether the vertices from {@code i} on, by {@code span}, lie on one curve. */
  private boolean reaches(int i, int span) {
    int step = Integer.signum(span);
    for (int k = 0; k != span; k += step) {
      int edge = step > 0 ? i + k : i + k - 1;
      if (!hasEdge(edge) || straight(edge) || (k != 0 && corner(i + k))) {
        return false;
      }
    }
    return true;
  }

  private boolean onOneCircle(int first, int mid, int last) {
    Point a = at(first);
    Point chord = at(last).minus(a);
    double half = angle(at(mid).minus(a), at(last).minus(at(mid)));
    double sin = Math.sin(half);
    double limit = toleranceMm * CIRCLE_SHARE;
    boolean flat = Math.abs(sin) * chord.norm() < limit * 0.01;
    double r = flat ? 0 : chord.norm() / 2 / sin;
    Point left = unit(new Point(-chord.y(), chord.x()));
    Point centre = a.towards(at(last), 0.5).plus(left.times(r * Math.cos(half)));
    int step = first < last ? 1 : -1;
    for (int k = first + step; k != last; k += step) {
      double off = flat ? at(k).minus(a).dot(left) : centre.distance(at(k)) - Math.abs(r);
      if (Math.abs(off) > limit) {
        return false;
      }
    }
    return true;
  }

  /** The direction at the middle one of three points of a circle. */
  private static Point middleDirection(Point a, Point b, Point c) {
    Point before = b.minus(a);
    Point after = c.minus(b);
    return unit(before.times(1 / before.dot(before)).plus(after.times(1 / after.dot(after))));
  }

  static double angle(Point from, Point to) {
    return StrictMath.atan2(from.cross(to), from.dot(to));
  }

  private static Point unit(Point p) {
    return p.times(1 / p.norm());
  }
}
