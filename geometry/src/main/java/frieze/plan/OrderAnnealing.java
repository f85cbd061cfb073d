package frieze.plan;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Improves an order by moving short runs of stops next to near ones, as long as every constraint is
 * kept.
 *
 * <p>A move that makes the way longer is taken now and then, ever more seldom; the best order seen
 * is kept. Source: Kirkpatrick, Gelatt, Vecchi, Optimization by simulated annealing, Science 220
 * (1983).
 */
final class OrderAnnealing {
  private static final int LONGEST_RUN = 3;
  private static final int NEIGHBOURS = 8;
  private static final long STEPS_PER_STOP = 4_000;
  private static final long MOST_STEPS = 2_000_000;

  /** Temperatures at the start and at the end, as parts of the mean distance between neighbours. */
  private static final double HOT = 0.5;

  private static final double COLD = 0.005;

  private final List<CutOrder.Stop> stops;
  private final List<BitSet> predecessors;
  private final CutOrder.Way start;
  private int[] order = {};
  private int[] position = {};
  private int[] way = {};

  OrderAnnealing(List<CutOrder.Stop> stops, List<BitSet> predecessors, Point start) {
    this.stops = stops;
    this.predecessors = predecessors;
    this.start = new CutOrder.Way(start, start);
  }

  List<CutOrder.Visit> improve(List<CutOrder.Visit> from, long seed) {
    int n = from.size();
    order = from.stream().mapToInt(CutOrder.Visit::stop).toArray();
    way = new int[n];
    position = new int[n];
    for (int i = 0; i < n; i++) {
      way[from.get(i).stop()] = from.get(i).way();
      position[order[i]] = i;
    }
    double length = CutOrder.airMm(stops, from, start.from());
    List<CutOrder.Visit> best = from;
    double least = length;
    int[][] near = nearest();
    SplittableRandom random = new SplittableRandom(seed);
    long steps = n < 2 ? 0 : Math.min(MOST_STEPS, n * STEPS_PER_STOP);
    double hot = HOT * length / n;
    for (long step = 0; step < steps; step++) {
      double heat = hot * StrictMath.pow(COLD / HOT, (double) step / steps);
      double change = tryMove(random, near, heat);
      length += change;
      if (change != 0 && length < least - heat * 1e-6) {
        least = length;
        best = visits();
      }
    }
    return best;
  }

  private List<CutOrder.Visit> visits() {
    List<CutOrder.Visit> visits = new ArrayList<>();
    for (int stop : order) {
      visits.add(new CutOrder.Visit(stop, way[stop]));
    }
    return visits;
  }

  private int[][] nearest() {
    List<Point> middles = new ArrayList<>();
    int[] numbers = new int[stops.size()];
    for (int i = 0; i < numbers.length; i++) {
      middles.add(stops.get(i).ways().get(0).from());
      numbers[i] = i;
    }
    return new TourArray(middles, numbers).nearest(NEIGHBOURS);
  }

  /** Moves a run of stops behind or before a stop near its first one; returns the change made. */
  private double tryMove(SplittableRandom random, int[][] near, double heat) {
    int n = order.length;
    int stop = random.nextInt(n);
    int i = position[stop];
    int run = 1 + random.nextInt(Math.min(LONGEST_RUN, n - 1));
    int target = near[stop][random.nextInt(near[stop].length)];
    boolean behind = random.nextBoolean();
    double chance = random.nextDouble();
    int j = Math.min(n, i + run);
    int to = position[target] + (behind ? 1 : 0);
    if (to >= i && to <= j) {
      return 0;
    }
    CutOrder.Way last = wayOf(order[j - 1]);
    CutOrder.Way before = at(to - 1);
    int bestWay = bestWay(before, stop, j - i > 1 ? at(i + 1) : at(to), j - i > 1 || to < n);
    CutOrder.Way first = stops.get(stop).ways().get(bestWay);
    CutOrder.Way lastThen = j - i > 1 ? last : first;
    double change =
        air(at(i - 1), j)
            - air(at(i - 1), i)
            - air(last, j)
            - air(before, to)
            + before.to().distance(first.from())
            + air(lastThen, to);
    if (j - i > 1) {
      change += first.to().distance(at(i + 1).from()) - wayOf(stop).to().distance(at(i + 1).from());
    }
    boolean taken = change <= 0 || chance < StrictMath.exp(-change / heat);
    if (!taken || !isAllowed(i, j, to)) {
      return 0;
    }
    way[stop] = bestWay;
    move(i, j, to);
    return change;
  }

  private CutOrder.Way wayOf(int stop) {
    return stops.get(stop).ways().get(way[stop]);
  }

  private CutOrder.Way at(int index) {
    return index < 0 || index >= order.length ? start : wayOf(order[index]);
  }

  /** The air from a way to the stop at an index; none behind the last one. */
  private double air(CutOrder.Way from, int index) {
    return index >= order.length ? 0 : from.to().distance(at(index).from());
  }

  private int bestWay(CutOrder.Way before, int stop, CutOrder.Way after, boolean hasAfter) {
    List<CutOrder.Way> ways = stops.get(stop).ways();
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int w = 0; w < ways.size(); w++) {
      double d = before.to().distance(ways.get(w).from());
      d += hasAfter ? ways.get(w).to().distance(after.from()) : 0;
      if (d < least) {
        least = d;
        best = w;
      }
    }
    return best;
  }

  /** Whether the run i..j may change places with the stretch between it and the index. */
  private boolean isAllowed(int i, int j, int to) {
    int from = to < i ? to : j;
    int end = to < i ? i : to;
    for (int k = from; k < end; k++) {
      for (int r = i; r < j; r++) {
        int earlier = to < i ? order[k] : order[r];
        int later = to < i ? order[r] : order[k];
        if (predecessors.get(later).get(earlier)) {
          return false;
        }
      }
    }
    return true;
  }

  private void move(int i, int j, int to) {
    int run = j - i;
    int[] moved = Arrays.copyOfRange(order, i, j);
    int low = Math.min(i, to);
    int high = Math.max(j, to);
    if (to < i) {
      System.arraycopy(order, to, order, to + run, i - to);
      System.arraycopy(moved, 0, order, to, run);
    } else {
      System.arraycopy(order, j, order, i, to - j);
      System.arraycopy(moved, 0, order, to - run, run);
    }
    for (int k = low; k < high; k++) {
      position[order[k]] = k;
    }
  }
}
