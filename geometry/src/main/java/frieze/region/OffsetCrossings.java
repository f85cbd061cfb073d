package frieze.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Where closed curves cross themselves and each other, by a sweep.
 *
 * <p>Cost: O(n log n), and n times the edges that a line across the sweep meets.
 */
final class OffsetCrossings {
  /** Edges whose ends come so near to others do not surely cross or stay apart. */
  static final double NEAR_MM = 1e-9;

  private static final int CELLS = 1 << 30;

  private final double[] ax;
  private final double[] ay;
  private final double[] bx;
  private final double[] by;

  /** The next edge along the same curve, and the curve it belongs to. */
  private final int[] next;

  private final List<Crossing> crossings = new ArrayList<>();
  private boolean sure = true;

  /** One place where two edges, counted through all curves, cross; and where along each. */
  record Crossing(int edge1, double share1, int edge2, double share2, Coordinate at) {}

  OffsetCrossings(List<Coordinate[]> curves) {
    int n = 0;
    for (Coordinate[] curve : curves) {
      n += curve.length - 1;
    }
    ax = new double[n];
    ay = new double[n];
    bx = new double[n];
    by = new double[n];
    next = new int[n];
    int at = 0;
    for (Coordinate[] curve : curves) {
      int first = at;
      for (int i = 1; i < curve.length; i++) {
        ax[at] = curve[i - 1].x;
        ay[at] = curve[i - 1].y;
        bx[at] = curve[i].x;
        by[at] = curve[i].y;
        next[at] = i + 1 < curve.length ? at + 1 : first;
        at++;
      }
    }
    sweep();
  }

  /** All crossings. */
  List<Crossing> list() {
    return crossings;
  }

  /** Whether each pair of edges surely crosses or stays apart. */
  boolean isSure() {
    return sure;
  }

  private void sweep() {
    int n = ax.length;
    double minX = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      minX = Math.min(minX, ax[i]);
      maxX = Math.max(maxX, ax[i]);
      minY = Math.min(minY, ay[i]);
      maxY = Math.max(maxY, ay[i]);
    }
    boolean alongX = maxX - minX >= maxY - minY;
    double origin = (alongX ? minX : minY) - NEAR_MM;
    double scale = CELLS / (Math.max(maxX - minX, maxY - minY) + 4 * NEAR_MM);
    long[] order = new long[n];
    int[] last = new int[n];
    for (int i = 0; i < n; i++) {
      double low = alongX ? Math.min(ax[i], bx[i]) : Math.min(ay[i], by[i]);
      double high = alongX ? Math.max(ax[i], bx[i]) : Math.max(ay[i], by[i]);
      order[i] = ((long) ((low - origin - NEAR_MM) * scale) << 32) | i;
      last[i] = (int) ((high - origin + NEAR_MM) * scale);
    }
    Arrays.sort(order);
    sweep(order, last, alongX);
  }

  private void sweep(long[] order, int[] last, boolean alongX) {
    double[] from = alongX ? ay : ax;
    double[] to = alongX ? by : bx;
    int[] open = new int[order.length];
    int count = 0;
    for (int k = 0; k < order.length && sure; k++) {
      int edge = (int) order[k];
      int now = (int) (order[k] >>> 32);
      double low = Math.min(from[edge], to[edge]) - NEAR_MM;
      double high = Math.max(from[edge], to[edge]) + NEAR_MM;
      int kept = 0;
      for (int j = 0; j < count; j++) {
        int other = open[j];
        if (last[other] >= now) {
          open[kept++] = other;
          if ((from[other] <= high || to[other] <= high)
              && (from[other] >= low || to[other] >= low)) {
            compare(edge, other);
          }
        }
      }
      open[kept++] = edge;
      count = kept;
    }
  }

  private void compare(int e, int f) {
    if (next[e] == f) {
      neighbours(e, f);
      return;
    }
    if (next[f] == e) {
      neighbours(f, e);
      return;
    }
    double ex = bx[e] - ax[e];
    double ey = by[e] - ay[e];
    double fx = bx[f] - ax[f];
    double fy = by[f] - ay[f];
    double fromE = ex * (ay[f] - ay[e]) - ey * (ax[f] - ax[e]);
    double toE = ex * (by[f] - ay[e]) - ey * (bx[f] - ax[e]);
    double nearE = NEAR_MM * (Math.abs(ex) + Math.abs(ey));
    if ((fromE > nearE && toE > nearE) || (fromE < -nearE && toE < -nearE)) {
      return;
    }
    double fromF = fx * (ay[e] - ay[f]) - fy * (ax[e] - ax[f]);
    double toF = fx * (by[e] - ay[f]) - fy * (bx[e] - ax[f]);
    double nearF = NEAR_MM * (Math.abs(fx) + Math.abs(fy));
    if ((fromF > nearF && toF > nearF) || (fromF < -nearF && toF < -nearF)) {
      return;
    }
    boolean across = Math.min(Math.abs(fromE), Math.abs(toE)) > nearE;
    if (!across || Math.min(Math.abs(fromF), Math.abs(toF)) <= nearF) {
      sure = false;
      return;
    }
    double share = fromE / (fromE - toE);
    Coordinate at = new Coordinate(ax[f] + share * fx, ay[f] + share * fy);
    crossings.add(new Crossing(e, fromF / (fromF - toF), f, share, at));
  }

  /** Edges that follow each other must not run back over each other. */
  private void neighbours(int e, int f) {
    double ex = bx[e] - ax[e];
    double ey = by[e] - ay[e];
    double fx = bx[f] - ax[f];
    double fy = by[f] - ay[f];
    double near = NEAR_MM * (Math.abs(ex) + Math.abs(ey) + Math.abs(fx) + Math.abs(fy));
    if (ex * fx + ey * fy < 0 && Math.abs(ex * fy - ey * fx) <= near) {
      sure = false;
    }
  }
}
