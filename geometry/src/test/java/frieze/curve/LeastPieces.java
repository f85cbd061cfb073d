package frieze.curve;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The fewest lines, arcs and pairs of arcs that cover a closed polyline, by a dynamic program over
 * all pairs of vertices and all starts.
 *
 * <p>Same breakpoints, tolerance and directions as the {@link ArcFitter}; fits are tested here by
 * another code, at dense samples of the arcs, and joints are tried in finer steps. Source: the
 * dynamic program of Drysdale, Rote, Sturm 2008.
 */
final class LeastPieces {
  private static final int LONGEST = 110;
  private static final int JOINTS = 25;

  private final FitSource s;
  private final int n;
  private final double tol;
  private final int[][] cost;

  private LeastPieces(FitSource source, double tol) {
    this.n = source.size();
    this.s = source.cyclic(0, 2 * n);
    this.tol = tol;
    this.cost = new int[n][LONGEST + 1];
    for (int i = 0; i < n; i++) {
      Arrays.fill(cost[i], 1000);
      for (int k = 1; k <= Math.min(LONGEST, n - 1); k++) {
        cost[i][k] = single(i, i + k) ? 1 : pair(i, i + k) ? 2 : 1000;
        if (s.corner[i + k]) {
          break;
        }
      }
    }
  }

  static int closed(FitSource source, double tol) {
    LeastPieces all = new LeastPieces(source, tol);
    int best = Integer.MAX_VALUE;
    for (int start = 0; start < Math.min(LONGEST, all.n); start++) {
      best = Math.min(best, all.from(start));
    }
    return best;
  }

  private int from(int start) {
    int[] least = new int[n + 1];
    for (int to = 1; to <= n; to++) {
      least[to] = 100_000;
      for (int k = 1; k <= Math.min(LONGEST, to); k++) {
        least[to] = Math.min(least[to], least[to - k] + cost[(start + to - k) % n][k]);
      }
    }
    return least[n];
  }

  private Point out(int i) {
    return new Point(s.outX[i], s.outY[i]);
  }

  private Point in(int i) {
    return new Point(s.inX[i], s.inY[i]);
  }

  private boolean single(int i, int j) {
    Point a = s.point(i);
    Point b = s.point(j);
    Point chord = b.minus(a);
    double leave = s.corner[i] ? Double.NaN : Directions.angle(out(i), chord);
    double arrive = s.corner[j] ? Double.NaN : Directions.angle(chord, in(j));
    double low = -0.75 * Math.PI;
    double high = -low;
    for (double end : new double[] {leave, arrive}) {
      if (!Double.isNaN(end)) {
        low = Math.max(low, end - PieceFinder.TANGENT);
        high = Math.min(high, end + PieceFinder.TANGENT);
      }
    }
    if (low > high) {
      return false;
    }
    if (Double.isNaN(leave) && Double.isNaN(arrive)) {
      Point mid = s.point((i + j) / 2);
      double half = Directions.angle(mid.minus(a), b.minus(mid));
      low = half - 0.01;
      high = half + 0.01;
    }
    for (int k = 0; k <= 40; k++) {
      if (near(arc(a, b, 2 * (low + (high - low) * k / 40)), i, j)) {
        return true;
      }
    }
    return false;
  }

  private boolean pair(int i, int j) {
    Point a = s.point(i);
    Point b = s.point(j);
    Point v = b.minus(a);
    Point t0 = out(i);
    Point t1 = in(j);
    for (int k = 0; k < JOINTS; k++) {
      double d1 = v.norm() / 2 * Math.pow(4, 2.0 * k / (JOINTS - 1) - 1);
      double d2 = (v.dot(v) / 2 - d1 * v.dot(t0)) / (v.dot(t1) + d1 * (1 - t0.dot(t1)));
      if (!(d2 > 0) || d2 > 1e6) {
        continue;
      }
      Point q1 = a.plus(t0.times(d1));
      Point q2 = b.minus(t1.times(d2));
      Point joint = q1.towards(q2, d1 / (d1 + d2));
      Segment first = arc(a, joint, 2 * Directions.angle(t0, joint.minus(a)));
      Segment second = arc(joint, b, 2 * Directions.angle(b.minus(joint), t1));
      if (near(first, second, i, j)) {
        return true;
      }
    }
    return false;
  }

  static Segment arc(Point a, Point b, double sweep) {
    if (Math.abs(sweep) < 1e-7) {
      return new Line(a, b);
    }
    Point chord = b.minus(a);
    Point left = new Point(-chord.y(), chord.x());
    return new Arc(a, b, a.towards(b, 0.5).plus(left.times(0.5 / Math.tan(sweep / 2))), sweep);
  }

  private boolean near(Segment piece, int i, int j) {
    return near(piece, null, i, j);
  }

  /** Samples of the pieces near the polyline, vertices near the pieces, both in order. */
  private boolean near(Segment first, @Nullable Segment second, int i, int j) {
    if (away(s.point((i + j) / 2), first, second) > tol) {
      return false;
    }
    for (int k = i + 1; k < j; k++) {
      if (away(s.point(k), first, second) > tol) {
        return false;
      }
    }
    int samples = 4 * (j - i) + 8;
    int edge = i;
    double before = 0;
    for (int k = 0; k <= samples; k++) {
      double t = (double) k / samples;
      Point p = second == null ? first.at(t) : t < 0.5 ? first.at(2 * t) : second.at(2 * t - 1);
      while (edge < j - 1 && along(p, edge) > 1) {
        edge++;
        before = 0;
      }
      double at = along(p, edge);
      if (toEdge(p, edge) > tol || at < before - 0.5) {
        return false;
      }
      before = at;
    }
    return true;
  }

  private static double away(Point p, Segment first, @Nullable Segment second) {
    double d = toPiece(p, first);
    return second == null ? d : Math.min(d, toPiece(p, second));
  }

  private double along(Point p, int edge) {
    Point a = s.point(edge);
    Point e = s.point(edge + 1).minus(a);
    return p.minus(a).dot(e) / e.dot(e);
  }

  private double toEdge(Point p, int edge) {
    double t = Math.max(0, Math.min(1, along(p, edge)));
    return p.distance(s.point(edge).towards(s.point(edge + 1), t));
  }

  static double toPiece(Point p, Segment piece) {
    double ends = Math.min(p.distance(piece.start()), p.distance(piece.end()));
    if (piece instanceof Arc arc) {
      Point mid = arc.at(0.5).minus(arc.centre());
      double off = Math.abs(Directions.angle(mid, p.minus(arc.centre())));
      return off <= Math.abs(arc.sweepRad()) / 2
          ? Math.abs(p.distance(arc.centre()) - arc.radius())
          : ends;
    }
    Point e = piece.end().minus(piece.start());
    double t = p.minus(piece.start()).dot(e) / e.dot(e);
    return t > 0 && t < 1 ? p.distance(piece.at(t)) : ends;
  }
}
