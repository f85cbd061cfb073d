package frieze.region;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * The parallel curve of one ring, trimmed where it can be seen from a few edges in a row what is
 * nearer to the ring than the distance.
 *
 * <p>Where the ring turns away from the curve, points on an arc about the vertex fill the gap, or
 * one point where the edges' parallels meet if that is near enough. Where it turns towards the
 * curve, the edges end where their parallels meet; edges of which nothing is left are taken out, if
 * the parallels of those on both sides meet at a place that is as far from all of them. Where that
 * is not so, the ends are joined by a straight line, which the curve crosses: such loops are left
 * to {@link OffsetPieces}.
 */
final class OffsetRing {
  /** Parallels that turn by more than this are not brought to meet, in radians. */
  private static final double SHARPEST = 2.6;

  /** How far a meeting point may be too near to the edges that are taken out for it. */
  private static final double SLACK_MM = 1e-7;

  /** Points of the curve nearer to each other than this are one. */
  private static final double SAME_MM = 1e-8;

  private final double by;
  private final double largestMissMm;
  private final int n;
  private final double[] x;
  private final double[] y;
  private final double[] dx;
  private final double[] dy;
  private final double[] length;

  /** The edges that are left, as a ring, and how much of each is trimmed at both ends. */
  private final int[] next;

  private final int[] previous;
  private final double[] trimmedAtStart;
  private final double[] trimmedAtEnd;
  private final boolean[] gone;

  /** Whether the ends of the parallels before and after a vertex are joined as they are. */
  private final boolean[] plain;

  private final Deque<Integer> waiting = new ArrayDeque<>();
  private final List<Coordinate> curve = new ArrayList<>();

  /**
   * Prepares a ring.
   *
   * @param ring closed
   * @param by how far to its right the curve runs; negative for the left
   */
  OffsetRing(Coordinate[] ring, double by, double largestMissMm) {
    this.by = by;
    this.largestMissMm = largestMissMm;
    n = ring.length - 1;
    x = new double[n];
    y = new double[n];
    dx = new double[n];
    dy = new double[n];
    length = new double[n];
    next = new int[n];
    previous = new int[n];
    trimmedAtStart = new double[n];
    trimmedAtEnd = new double[n];
    gone = new boolean[n];
    plain = new boolean[n];
    for (int i = 0; i < n; i++) {
      x[i] = ring[i].x;
      y[i] = ring[i].y;
      double ex = ring[i + 1].x - x[i];
      double ey = ring[i + 1].y - y[i];
      length[i] = Math.sqrt(ex * ex + ey * ey);
      dx[i] = ex / length[i];
      dy[i] = ey / length[i];
      next[i] = i + 1 < n ? i + 1 : 0;
      previous[i] = i > 0 ? i - 1 : n - 1;
    }
  }

  /** The curve, closed, without points that coincide. */
  Coordinate[] curve() {
    for (int i = 0; i < n; i++) {
      meet(previous[i], i);
    }
    boolean changed = true;
    while (changed) {
      for (int i = 0; i < n; i++) {
        settle(i);
      }
      changed = putBackWrong();
    }
    int first = first();
    int at = first;
    do {
      join(previous[at], at);
      at = next[at];
    } while (at != first);
    if (curve.size() > 1 && isLast(curve.get(0).x, curve.get(0).y)) {
      curve.remove(curve.size() - 1);
    }
    curve.add(curve.get(0).copy());
    return curve.toArray(Coordinate[]::new);
  }

  private int first() {
    int first = 0;
    while (gone[first]) {
      first++;
    }
    return first;
  }

  private double cross(int a, int b) {
    return dx[a] * dy[b] - dy[a] * dx[b];
  }

  private double dot(int a, int b) {
    return dx[a] * dx[b] + dy[a] * dy[b];
  }

  /** Whether the curve is on the inner side of the turn from one edge to the next. */
  private boolean isInner(int a, int b) {
    return cross(a, b) * by < 0;
  }

  /** Trims two neighbours where their parallels meet. */
  private void meet(int a, int b) {
    trimmedAtEnd[a] = 0;
    trimmedAtStart[b] = 0;
    if (plain[b] || !isInner(a, b)) {
      return;
    }
    double sin = cross(a, b);
    if (Math.abs(StrictMath.atan2(sin, dot(a, b))) > SHARPEST) {
      plain[b] = true;
      return;
    }
    // The feet of the place are as far from where the edges' lines cross.
    double trim = Math.abs(by) * Math.abs(sin) / (1 + dot(a, b));
    if (after(a) == b) {
      trimmedAtEnd[a] = trim;
      trimmedAtStart[b] = trim;
    } else {
      double wx = x[b] - x[a];
      double wy = y[b] - y[a];
      trimmedAtEnd[a] = length[a] - (wx * dy[b] - wy * dx[b]) / sin + trim;
      trimmedAtStart[b] = (wx * dy[a] - wy * dx[a]) / sin + trim;
    }
  }

  /** The edge that follows on the ring as it was. */
  private int after(int edge) {
    return edge + 1 < n ? edge + 1 : 0;
  }

  /** Makes an edge run forward, by taking out edges or by joining parallels as they are. */
  private void settle(int edge) {
    waiting.add(edge);
    while (!waiting.isEmpty()) {
      int at = waiting.poll();
      if (gone[at] || trimmedAtStart[at] + trimmedAtEnd[at] <= length[at]) {
        continue;
      }
      int before = previous[at];
      int after = next[at];
      if (isBetweenInner(before, at, after)) {
        takeOut(at);
        meet(before, after);
        if (plain[after]) {
          putBack(before, after);
        }
      } else if (trimmedAtStart[at] > 0) {
        putBack(before, at);
      } else {
        putBack(at, after);
      }
      waiting.add(before);
      waiting.add(at);
      waiting.add(after);
    }
  }

  private boolean isBetweenInner(int before, int at, int after) {
    return before != after
        && !plain[at]
        && !plain[after]
        && isInner(before, at)
        && isInner(at, after)
        && isInner(before, after);
  }

  /** Puts back edges for which others meet at a place that is too near, or not beside both. */
  private boolean putBackWrong() {
    boolean changed = false;
    int first = first();
    int at = first;
    do {
      int b = next[at];
      boolean beside = trimmedAtEnd[at] >= 0 && trimmedAtStart[b] >= 0;
      if (after(at) != b && !(beside && isClear(at, b))) {
        putBack(at, b);
        changed = true;
      }
      at = b;
    } while (at != first);
    return changed;
  }

  private void takeOut(int edge) {
    gone[edge] = true;
    next[previous[edge]] = next[edge];
    previous[next[edge]] = previous[edge];
  }

  /** Whether the place where two edges' parallels meet is far enough from those between. */
  private boolean isClear(int a, int b) {
    double along = length[a] - trimmedAtEnd[a];
    double px = x[a] + along * dx[a] + by * dy[a];
    double py = y[a] + along * dy[a] - by * dx[a];
    for (int e = after(a); e != b; e = after(e)) {
      double away = ((px - x[e]) * dy[e] - (py - y[e]) * dx[e]) * Math.signum(by);
      if (away < Math.abs(by) - SLACK_MM) {
        return false;
      }
    }
    return true;
  }

  /** Puts back all edges between two, and joins their parallels as they are. */
  private void putBack(int a, int b) {
    int at = a;
    while (at != b) {
      int after = after(at);
      next[at] = after;
      previous[after] = at;
      gone[after] = false;
      plain[after] = true;
      trimmedAtEnd[at] = 0;
      trimmedAtStart[after] = 0;
      at = after;
    }
  }

  private void join(int a, int b) {
    if (plain[b]) {
      point(a, length[a]);
      point(b, 0);
    } else if (isInner(a, b)) {
      point(b, trimmedAtStart[b]);
    } else {
      turn(a, b);
    }
  }

  /** The point beside an edge. */
  private void point(int edge, double along) {
    double px = x[edge] + along * dx[edge] + by * dy[edge];
    double py = y[edge] + along * dy[edge] - by * dx[edge];
    if (!isLast(px, py)) {
      curve.add(new Coordinate(px, py));
    }
  }

  private boolean isLast(double px, double py) {
    if (curve.isEmpty()) {
      return false;
    }
    Coordinate last = curve.get(curve.size() - 1);
    return Math.abs(last.x - px) + Math.abs(last.y - py) < SAME_MM;
  }

  /** Fills the gap at the vertex between two edges. */
  private void turn(int a, int b) {
    double d = Math.abs(by);
    double turn = Math.abs(StrictMath.atan2(cross(a, b), dot(a, b)));
    double miss = d * turn * turn / 8;
    if (miss <= largestMissMm) {
      about(a, b, 0.5, 1 / Math.cos(turn / 2));
    } else if (miss <= 2 * largestMissMm) {
      about(a, b, 0.5, 1 + turn * turn / 16);
    } else {
      double halfStep = Math.sqrt(4 * largestMissMm / (1.5 * d));
      int steps = Math.max(2, (int) Math.ceil(turn / 2 / halfStep));
      double half = turn / 2 / steps;
      point(a, length[a]);
      for (int k = 1; k < steps; k++) {
        about(a, b, (double) k / steps, 1 + half * half / 4);
      }
      point(b, 0);
    }
  }

  /** A point about the vertex between two edges, at some share of the turn. */
  private void about(int a, int b, double share, double times) {
    double angle = StrictMath.atan2(cross(a, b), dot(a, b)) * share;
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    double ux = dx[a] * cos - dy[a] * sin;
    double uy = dy[a] * cos + dx[a] * sin;
    double px = x[b] + times * by * uy;
    double py = y[b] - times * by * ux;
    if (!isLast(px, py)) {
      curve.add(new Coordinate(px, py));
    }
  }
}
