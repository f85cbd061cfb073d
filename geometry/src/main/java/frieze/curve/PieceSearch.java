package frieze.curve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Covers a run of vertices with the fewest lines, arcs and pairs of arcs.
 *
 * <p>For each vertex the farthest one that a single piece, and a pair, reaches is found by doubling
 * and halving. If whatever starts later also reaches as far, then layer by layer the farthest
 * vertex that k pieces reach gives the least count; every piece is tested before it is used, and
 * where one fails the search goes back. Cost: O(n m log m) for pieces over m vertices.
 */
final class PieceSearch {
  /** A line where no tangent piece fits counts as much as this many pieces. */
  private static final int KINK_COST = 3;

  /** A search this deep takes a small part of a thread's stack. */
  private static final int MOST_PIECES = 1000;

  private static final int NONE = -1;

  private final FitSource s;
  private final PieceFinder finder;
  private final int[] farSingle;
  private final int[] farPair;

  PieceSearch(FitSource source, int starts, int longest, double toleranceMm) {
    this.s = source;
    this.finder = new PieceFinder(source, toleranceMm);
    this.farSingle = new int[starts];
    this.farPair = new int[starts];
    for (int v = 0; v < starts; v++) {
      int limit = limit(v, longest);
      int guess = v == 0 ? 1 : farSingle[v - 1];
      farSingle[v] = far(v, guess, limit, true);
      farPair[v] = far(v, v == 0 ? farSingle[0] : farPair[v - 1], limit, false);
    }
  }

  /** The last vertex that a piece from {@code v} may reach: no piece runs over a corner. */
  private int limit(int v, int longest) {
    int last = Math.min(s.size() - 1, v + longest);
    int k = v + 1;
    while (k < last && !s.corner[k]) {
      k++;
    }
    return k;
  }

  private int far(int v, int guess, int limit, boolean single) {
    int good = v;
    int probe = Math.min(limit, Math.max(v + 1, guess));
    int step = 1;
    int bad = limit + 1;
    while (good < limit && probe < bad) {
      if (fits(v, probe, single)) {
        good = probe;
        probe = Math.min(limit, probe + step);
        step *= 2;
      } else {
        bad = probe;
      }
    }
    while (bad - good > 1) {
      int mid = (good + bad) >>> 1;
      if (fits(v, mid, single)) {
        good = mid;
      } else {
        bad = mid;
      }
    }
    return good;
  }

  private boolean fits(int i, int j, boolean single) {
    return !Double.isNaN(single ? finder.single(i, j) : finder.pair(i, j));
  }

  /**
   * The pieces of a least cover from one vertex to another. A run of more than {@link #MOST_PIECES}
   * is covered in halves, because the search goes as deep as there are pieces; that costs a piece
   * where the halves meet, at most.
   */
  List<Segment> cover(int from, int to) {
    Cover whole = new Cover(from, to);
    if (whole.layers() <= MOST_PIECES) {
      return whole.segments();
    }
    int middle = (from + to) >>> 1;
    List<Segment> all = new ArrayList<>(cover(from, middle));
    all.addAll(cover(middle, to));
    return all;
  }

  /** How many pieces {@link #cover} will use, unless a piece fails its last test. */
  int count(int from, int to) {
    return new Cover(from, to).layers();
  }

  /** The smallest span from some vertex to the farthest that one piece or pair from it reaches. */
  int[] narrowest() {
    int best = 0;
    for (int v = 1; v < farSingle.length; v++) {
      if (reach(v) - v < reach(best) - best) {
        best = v;
      }
    }
    return new int[] {best, Math.max(best + 1, reach(best))};
  }

  private int reach(int v) {
    return Math.max(farSingle[v], farPair[v]);
  }

  /** One search over one run. */
  private final class Cover {
    private final int from;
    private final int to;
    private final int[] bestSingle;
    private final int[] bestPair;
    private final List<Integer> reached = new ArrayList<>();
    private final Set<Long> dead = new HashSet<>();

    Cover(int from, int to) {
      this.from = from;
      this.to = to;
      bestSingle = new int[to - from];
      bestPair = new int[to - from];
      for (int v = from; v < to; v++) {
        int k = v - from;
        bestSingle[k] = Math.max(k == 0 ? NONE : bestSingle[k - 1], farSingle(v));
        bestPair[k] = Math.max(k == 0 ? NONE : bestPair[k - 1], farPair(v));
      }
      reached.add(from);
      while (reached.get(reached.size() - 1) < to) {
        addLayer();
      }
    }

    private int farSingle(int v) {
      return v < farSingle.length ? farSingle[v] : farSingle[v - period()] + period();
    }

    private int farPair(int v) {
      return v < farPair.length ? farPair[v] : farPair[v - period()] + period();
    }

    private int period() {
      return farSingle.length;
    }

    private void addLayer() {
      int k = reached.size();
      int far = bestSingle[reached.get(k - 1) - from];
      if (k >= 2) {
        far = Math.max(far, bestPair[reached.get(k - 2) - from]);
      }
      if (k >= KINK_COST) {
        far = Math.max(far, reached.get(k - KINK_COST) + 1);
      }
      reached.add(Math.min(to, Math.max(far, reached.get(k - 1))));
    }

    int layers() {
      return reached.size() - 1;
    }

    List<Segment> segments() {
      for (int pieces = layers(); ; pieces++) {
        List<Segment> found = trace(to, pieces);
        if (found != null) {
          return found;
        }
        while (reached.size() <= pieces + 1) {
          reached.add(to);
        }
      }
    }

    /** A cover that ends at a vertex with no more than the given count, or null. */
    private @Nullable List<Segment> trace(int end, int pieces) {
      if (end == from) {
        return new ArrayList<>();
      }
      long key = ((long) pieces << 32) | end;
      if (pieces <= 0 || reached.get(pieces) < end || dead.contains(key)) {
        return null;
      }
      List<Segment> found = bySingle(end, pieces);
      if (found == null && pieces >= 2) {
        found = byPair(end, pieces);
      }
      if (found == null && pieces >= KINK_COST) {
        found = trace(end - 1, pieces - KINK_COST);
        if (found != null) {
          found.add(new Line(s.point(end - 1), s.point(end)));
        }
      }
      if (found == null) {
        dead.add(key);
      }
      return found;
    }

    private @Nullable List<Segment> bySingle(int end, int pieces) {
      for (int v = Math.min(end - 1, reached.get(pieces - 1)); v >= from; v--) {
        if (bestSingle[v - from] < end) {
          return null;
        }
        double sweep = farSingle(v) >= end ? finder.single(v, end) : Double.NaN;
        List<Segment> before = Double.isNaN(sweep) ? null : trace(v, pieces - 1);
        if (before != null) {
          before.addAll(finder.lineOrArc(v, end, sweep));
          return before;
        }
      }
      return null;
    }

    private @Nullable List<Segment> byPair(int end, int pieces) {
      for (int v = Math.min(end - 1, reached.get(pieces - 2)); v >= from; v--) {
        if (bestPair[v - from] < end) {
          return null;
        }
        double length = farPair(v) >= end ? finder.pair(v, end) : Double.NaN;
        List<Segment> before = Double.isNaN(length) ? null : trace(v, pieces - 2);
        if (before != null) {
          before.addAll(finder.twoArcs(v, end, length));
          return before;
        }
      }
      return null;
    }
  }
}
