package frieze.plan.order;

import frieze.curve.Point;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** A closed tour as an array, with reversals that can be taken back. */
final class TourArray {
  private final double[] x;
  private final double[] y;
  private final int n;
  private final int[] tour;
  private final int[] position;

  /** Reversals since the last commit, as pairs of positions. */
  private int[] log = new int[64];

  private int logged;

  TourArray(List<Point> stops, int[] order) {
    n = order.length;
    x = stops.stream().mapToDouble(Point::x).toArray();
    y = stops.stream().mapToDouble(Point::y).toArray();
    tour = order.clone();
    position = new int[n];
    for (int i = 0; i < n; i++) {
      position[tour[i]] = i;
    }
  }

  int size() {
    return n;
  }

  int[] order() {
    return tour.clone();
  }

  int at(int index) {
    return tour[index % n];
  }

  int after(int stop) {
    int p = position[stop] + 1;
    return tour[p == n ? 0 : p];
  }

  int before(int stop) {
    int p = position[stop];
    return tour[p == 0 ? n - 1 : p - 1];
  }

  double distance(int a, int b) {
    double dx = x[a] - x[b];
    double dy = y[a] - y[b];
    return Math.sqrt(dx * dx + dy * dy);
  }

  /**
   * Reverses the stretch from one stop forwards to another, or what is left, if that is shorter.
   */
  void reverse(int first, int last) {
    int i = position[first];
    int j = position[last];
    int inner = Math.floorMod(j - i, n) + 1;
    if (2 * inner > n) {
      int k = i;
      i = j + 1 == n ? 0 : j + 1;
      j = k == 0 ? n - 1 : k - 1;
      inner = n - inner;
    }
    if (logged + 2 > log.length) {
      log = Arrays.copyOf(log, 2 * log.length);
    }
    log[logged++] = i;
    log[logged++] = j;
    swapInward(i, j, inner / 2);
  }

  private void swapInward(int from, int to, int swaps) {
    int i = from;
    int j = to;
    for (int k = 0; k < swaps; k++) {
      int a = tour[i];
      int b = tour[j];
      tour[i] = b;
      position[b] = i;
      tour[j] = a;
      position[a] = j;
      i = i + 1 == n ? 0 : i + 1;
      j = j == 0 ? n - 1 : j - 1;
    }
  }

  int mark() {
    return logged;
  }

  void commit() {
    logged = 0;
  }

  /** Takes back reversals until only those before the mark are left. */
  void undoTo(int mark) {
    while (logged > mark) {
      int j = log[--logged];
      int i = log[--logged];
      swapInward(i, j, (Math.floorMod(j - i, n) + 1) / 2);
    }
  }

  /** For each stop the others that are nearest, nearest first. */
  int[][] nearest(int count) {
    int kept = Math.min(count, n - 1);
    int[][] nearest = new int[n][];
    Integer[] byX = new Integer[n];
    Arrays.setAll(byX, i -> i);
    Arrays.sort(byX, Comparator.comparingDouble((Integer i) -> x[i]).thenComparing(i -> i));
    for (int at = 0; at < n; at++) {
      nearest[byX[at]] = nearestOf(byX, at, kept);
    }
    return nearest;
  }

  /** Looks to both sides along X until nothing nearer can come. */
  private int[] nearestOf(Integer[] byX, int at, int count) {
    int stop = byX[at];
    int[] best = new int[count];
    double[] distances = new double[count];
    int found = 0;
    int low = at - 1;
    int high = at + 1;
    while (low >= 0 || high < n) {
      double left = low >= 0 ? x[stop] - x[byX[low]] : Double.POSITIVE_INFINITY;
      double right = high < n ? x[byX[high]] - x[stop] : Double.POSITIVE_INFINITY;
      if (found == count && Math.min(left, right) > distances[count - 1]) {
        break;
      }
      int other = left <= right ? byX[low--] : byX[high++];
      double d = distance(stop, other);
      if (found < count || d < distances[count - 1]) {
        int k = found < count ? found++ : count - 1;
        while (k > 0 && distances[k - 1] > d) {
          distances[k] = distances[k - 1];
          best[k] = best[k - 1];
          k--;
        }
        distances[k] = d;
        best[k] = other;
      }
    }
    return best;
  }
}
