package frieze.plan.order;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Orders stretches of cutting so that the tool travels little through the air, and what must come
 * first comes first.
 *
 * <p><i>Guarantees</i>
 *
 * <ul>
 *   <li>Each stretch is cut once, in one of its ways.
 *   <li>Every constraint is kept.
 *   <li>The way of each stretch (where a closed loop is entered, which end of an open one comes
 *       first) is the best for the order that was found.
 *   <li>The same input gives the same order; the work is a fixed number of steps.
 * </ul>
 *
 * <p><i>Approximation:</i> the order is a good one, not proven the best; never longer than the
 * nearest next one.
 */
public final class CutOrder {
  private CutOrder() {}

  /** One way to cut a stretch: where the tool comes down and where it is raised. */
  public record Way(Point from, Point to) {}

  /** A stretch of cutting. A closed loop has a way for each point where it may be entered. */
  public record Stop(List<Way> ways) {
    public Stop {
      ways = List.copyOf(ways);
      if (ways.isEmpty()) {
        throw new IllegalArgumentException("a stop needs at least one way");
      }
    }
  }

  /** One stop, by its index, must come before another. */
  public record Before(int first, int second) {}

  /**
   * Where the tool is before the first stop, and where it goes after the last.
   *
   * @param end empty if it stays where it is
   */
  public record Ends(Point start, Optional<Point> end) {
    /** The air from a place to the end. */
    double homeMm(Point from) {
      return end.map(from::distance).orElse(0.0);
    }
  }

  /** A stop in the order found, by its index, and the index of its way. */
  public record Visit(int stop, int way) {}

  /**
   * Orders stops; the tool stays where the last one ends.
   *
   * @see #order(List, List, Ends, long)
   */
  public static List<Visit> order(
      List<Stop> stops, List<Before> constraints, Point start, long seed) {
    return order(stops, constraints, new Ends(start, Optional.empty()), seed);
  }

  /**
   * Orders stops.
   *
   * @param seed decides among chances, so that each panel has its own
   * @throws IllegalArgumentException if constraints go round in a circle or name no stop
   */
  public static List<Visit> order(
      List<Stop> stops, List<Before> constraints, Ends ends, long seed) {
    List<BitSet> predecessors = predecessors(stops.size(), constraints);
    if (stops.isEmpty()) {
      return List.of();
    }
    List<Visit> nearest = nearestNext(stops, predecessors, ends.start());
    List<Visit> best = new OrderAnnealing(stops, predecessors, ends).improve(nearest, seed);
    List<Visit> ordered = bestWays(stops, best, ends);
    List<Visit> plain = bestWays(stops, nearest, ends);
    return airMm(stops, ordered, ends) <= airMm(stops, plain, ends) ? ordered : plain;
  }

  /** How far the tool travels through the air, in millimetres, from the start to the last stop. */
  public static double airMm(List<Stop> stops, List<Visit> visits, Point start) {
    return airMm(stops, visits, new Ends(start, Optional.empty()));
  }

  /** How far the tool travels through the air, in millimetres, from the start to the end. */
  public static double airMm(List<Stop> stops, List<Visit> visits, Ends ends) {
    double sum = 0;
    Point at = ends.start();
    for (Visit visit : visits) {
      Way way = stops.get(visit.stop()).ways().get(visit.way());
      sum += at.distance(way.from());
      at = way.to();
    }
    return sum + ends.homeMm(at);
  }

  private static List<BitSet> predecessors(int stops, List<Before> constraints) {
    List<BitSet> predecessors = new ArrayList<>();
    for (int i = 0; i < stops; i++) {
      predecessors.add(new BitSet());
    }
    for (Before before : constraints) {
      int least = Math.min(before.first(), before.second());
      int most = Math.max(before.first(), before.second());
      if (least < 0 || most >= stops) {
        throw new IllegalArgumentException("no such stop in " + before + " among " + stops);
      }
      predecessors.get(before.second()).set(before.first());
    }
    return predecessors;
  }

  /** From each stop to the nearest one that nothing keeps back any more. */
  private static List<Visit> nearestNext(List<Stop> stops, List<BitSet> predecessors, Point start) {
    List<Visit> visits = new ArrayList<>();
    List<BitSet> missing = predecessors.stream().map(b -> (BitSet) b.clone()).toList();
    BitSet done = new BitSet();
    Point at = start;
    while (visits.size() < stops.size()) {
      Visit next = nearest(stops, missing, done, at);
      if (next.stop() < 0) {
        throw new IllegalArgumentException("constraints go round in a circle");
      }
      visits.add(next);
      done.set(next.stop());
      missing.forEach(m -> m.clear(next.stop()));
      at = stops.get(next.stop()).ways().get(next.way()).to();
    }
    return visits;
  }

  private static Visit nearest(List<Stop> stops, List<BitSet> missing, BitSet done, Point at) {
    Visit best = new Visit(-1, -1);
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < stops.size(); s++) {
      if (done.get(s) || !missing.get(s).isEmpty()) {
        continue;
      }
      List<Way> ways = stops.get(s).ways();
      for (int w = 0; w < ways.size(); w++) {
        double d = at.distance(ways.get(w).from());
        if (d < least) {
          least = d;
          best = new Visit(s, w);
        }
      }
    }
    return best;
  }

  /** The best ways for a given order, by a dynamic program along it. */
  private static List<Visit> bestWays(List<Stop> stops, List<Visit> order, Ends ends) {
    int n = order.size();
    int[][] came = new int[n][];
    double[] before = {0};
    List<Way> from = List.of(new Way(ends.start(), ends.start()));
    for (int i = 0; i < n; i++) {
      List<Way> ways = stops.get(order.get(i).stop()).ways();
      double[] costs = new double[ways.size()];
      came[i] = new int[ways.size()];
      for (int w = 0; w < costs.length; w++) {
        costs[w] = Double.POSITIVE_INFINITY;
        for (int f = 0; f < before.length; f++) {
          double cost = before[f] + from.get(f).to().distance(ways.get(w).from());
          if (cost < costs[w]) {
            costs[w] = cost;
            came[i][w] = f;
          }
        }
      }
      before = costs;
      from = ways;
    }
    int way = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int w = 0; w < before.length; w++) {
      double all = before[w] + ends.homeMm(from.get(w).to());
      if (all < least) {
        least = all;
        way = w;
      }
    }
    Visit[] result = new Visit[n];
    for (int i = n - 1; i >= 0; i--) {
      result[i] = new Visit(order.get(i).stop(), way);
      way = came[i][way];
    }
    return List.of(result);
  }
}
