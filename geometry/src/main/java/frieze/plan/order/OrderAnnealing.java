package frieze.plan.order;

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

  /** After so many steps it is cooled anew. */
  private static final int STEPS_PER_HEAT = 64;

  private static final int START = -1;

  private final List<CutOrder.Stop> stops;
  private final List<BitSet> predecessors;
  private final CutOrder.Ends ends;
  private final Ways ways;
  private int[] order = {};
  private int[] position = {};

  /** For each stop the number of its way among all. */
  private int[] way = {};

  OrderAnnealing(List<CutOrder.Stop> stops, List<BitSet> predecessors, CutOrder.Ends ends) {
    this.stops = stops;
    this.predecessors = predecessors;
    this.ends = ends;
    this.ways = new Ways(stops, ends);
  }

  /** The ends of all ways of all stops, and of the start, as plain numbers. */
  private static final class Ways {
    /** Where the ways of each stop begin, and where the last one's end. */
    final int[] first;

    private final double[] fromX;
    private final double[] fromY;
    private final double[] toX;
    private final double[] toY;
    private final Point start;

    /** The air from each way to the end. */
    private final double[] home;

    Ways(List<CutOrder.Stop> stops, CutOrder.Ends ends) {
      this.start = ends.start();
      first = new int[stops.size() + 1];
      for (int i = 0; i < stops.size(); i++) {
        first[i + 1] = first[i] + stops.get(i).ways().size();
      }
      List<CutOrder.Way> all = stops.stream().flatMap(s -> s.ways().stream()).toList();
      fromX = all.stream().mapToDouble(w -> w.from().x()).toArray();
      fromY = all.stream().mapToDouble(w -> w.from().y()).toArray();
      toX = all.stream().mapToDouble(w -> w.to().x()).toArray();
      toY = all.stream().mapToDouble(w -> w.to().y()).toArray();
      home = all.stream().mapToDouble(w -> ends.homeMm(w.to())).toArray();
    }

    /** The air between the end of a way, or the start, and the beginning of another way. */
    double air(int a, int b) {
      double dx = fromX[b] - (a == START ? start.x() : toX[a]);
      double dy = fromY[b] - (a == START ? start.y() : toY[a]);
      return Math.sqrt(dx * dx + dy * dy);
    }
  }

  List<CutOrder.Visit> improve(List<CutOrder.Visit> from, long seed) {
    int n = from.size();
    order = from.stream().mapToInt(CutOrder.Visit::stop).toArray();
    way = new int[n];
    position = new int[n];
    for (int i = 0; i < n; i++) {
      way[from.get(i).stop()] = ways.first[from.get(i).stop()] + from.get(i).way();
      position[order[i]] = i;
    }
    double length = CutOrder.airMm(stops, from, ends);
    int[] bestOrder = order.clone();
    int[] bestWay = way.clone();
    double least = length;
    int[][] near = nearest();
    SplittableRandom random = new SplittableRandom(seed);
    long steps = n < 2 ? 0 : Math.min(MOST_STEPS, n * STEPS_PER_STOP);
    double hot = HOT * length / n;
    double heat = hot;
    for (long step = 0; step < steps; step++) {
      if (step % STEPS_PER_HEAT == 0) {
        heat = hot * StrictMath.pow(COLD / HOT, (double) step / steps);
      }
      double change = tryMove(random, near, heat);
      length += change;
      if (change < 0 && length < least - heat * 1e-6) {
        least = length;
        System.arraycopy(order, 0, bestOrder, 0, n);
        System.arraycopy(way, 0, bestWay, 0, n);
      }
    }
    order = bestOrder;
    way = bestWay;
    return visits();
  }

  private List<CutOrder.Visit> visits() {
    List<CutOrder.Visit> visits = new ArrayList<>();
    for (int stop : order) {
      visits.add(new CutOrder.Visit(stop, way[stop] - ways.first[stop]));
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
    boolean single = j - i == 1;
    int last = way[order[j - 1]];
    int before = at(to - 1);
    int first = bestWay(before, stop, single ? to : i + 1);
    double change =
        air(at(i - 1), j)
            - air(at(i - 1), i)
            - air(last, j)
            - air(before, to)
            + ways.air(before, first)
            + air(single ? first : last, to);
    if (!single) {
      change += air(first, i + 1) - air(way[stop], i + 1);
    }
    if (!isTaken(change / heat, chance) || !isAllowed(i, j, to)) {
      return 0;
    }
    way[stop] = first;
    move(i, j, to);
    return change;
  }

  /**
   * Whether a chance lies below exp(-rise), which is seldom worked out: its series lies below it
   * after four terms, and so does the inverse of the series of exp(rise) above it.
   */
  private static boolean isTaken(double rise, double chance) {
    double square = rise * rise / 2;
    double cube = rise * square / 3;
    if (rise <= 0 || chance < 1 - rise + square - cube) {
      return true;
    }
    return chance * (1 + rise + square + cube) < 1 && chance < StrictMath.exp(-rise);
  }

  /** The way of the stop at an index; the start before the first one. */
  private int at(int index) {
    return index < 0 ? START : way[order[index]];
  }

  /** The air from a way to the stop at an index; to the end behind the last one. */
  private double air(int from, int index) {
    if (index < order.length) {
      return ways.air(from, at(index));
    }
    return from == START ? 0 : ways.home[from];
  }

  /** The best way of a stop between a way and the stop at an index. */
  private int bestWay(int before, int stop, int after) {
    int best = ways.first[stop];
    double least = Double.POSITIVE_INFINITY;
    for (int w = ways.first[stop]; w < ways.first[stop + 1]; w++) {
      double d = ways.air(before, w) + air(w, after);
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
