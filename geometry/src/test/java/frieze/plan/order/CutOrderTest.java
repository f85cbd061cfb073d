package frieze.plan.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import frieze.curve.Point;
import frieze.fixtures.Seeds;
import frieze.plan.order.CutOrder.Before;
import frieze.plan.order.CutOrder.Ends;
import frieze.plan.order.CutOrder.Stop;
import frieze.plan.order.CutOrder.Visit;
import frieze.plan.order.CutOrder.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CutOrderTest {
  private static Stop anyStop(SplittableRandom random) {
    Point centre = new Point(300 * random.nextDouble(), 200 * random.nextDouble());
    int entries = 1 + random.nextInt(6);
    List<Way> ways = new ArrayList<>();
    for (int k = 0; k < entries; k++) {
      Point entry = Point.polar(centre, 15, 2 * Math.PI * k / entries);
      ways.add(new Way(entry, entry));
    }
    if (random.nextInt(3) == 0) {
      Point far = Point.polar(centre, 40, 6 * random.nextDouble());
      ways = List.of(new Way(centre, far), new Way(far, centre));
    }
    return new Stop(ways);
  }

  private static List<Stop> stops(SplittableRandom random, int n) {
    List<Stop> stops = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      stops.add(anyStop(random));
    }
    return stops;
  }

  /** Some pairs of a hidden order, so that they cannot contradict each other. */
  private static List<Before> constraints(SplittableRandom random, int n, int count) {
    List<Before> result = new ArrayList<>();
    for (int k = 0; k < count && n > 1; k++) {
      int a = random.nextInt(n);
      int b = random.nextInt(n);
      int hiddenA = (a * 7919 + 13) % 10_007;
      int hiddenB = (b * 7919 + 13) % 10_007;
      if (hiddenA != hiddenB) {
        result.add(hiddenA < hiddenB ? new Before(a, b) : new Before(b, a));
      }
    }
    return result;
  }

  private static void assertKept(List<Visit> order, int n, List<Before> constraints) {
    List<Integer> sequence = order.stream().map(Visit::stop).toList();
    assertThat(sequence).hasSize(n).doesNotHaveDuplicates();
    for (Before b : constraints) {
      assertThat(sequence.indexOf(b.first())).isLessThan(sequence.indexOf(b.second()));
    }
  }

  @Test
  void every_constraint_is_kept_and_each_stop_cut_once() {
    SplittableRandom random = Seeds.random(7701);
    for (int i = 0; i < 40; i++) {
      int n = random.nextInt(40);
      List<Stop> stops = stops(random, n);
      List<Before> constraints = constraints(random, n, random.nextInt(60));
      assertKept(CutOrder.order(stops, constraints, Point.ORIGIN, i), n, constraints);
    }
  }

  @Test
  void small_orders_are_within_2_percent_of_the_best_by_trying_all() {
    SplittableRandom random = Seeds.random(7702);
    for (int i = 0; i < 40; i++) {
      int n = 2 + i % 5;
      List<Stop> stops = stops(random, n);
      List<Before> constraints = constraints(random, n, i % 4);
      Optional<Point> end = i % 2 == 0 ? Optional.empty() : Optional.of(new Point(300, 0));
      Ends ends = new Ends(Point.ORIGIN, end);
      List<Visit> order = CutOrder.order(stops, constraints, ends, i);
      assertKept(order, n, constraints);
      double least = best(stops, constraints, List.of(), ends);
      assertThat(CutOrder.airMm(stops, order, ends))
          .as("seed %d, %d", Seeds.seed(7702), i)
          .isBetween(least - 1e-9, least * 1.02);
    }
  }

  private static double best(
      List<Stop> stops, List<Before> constraints, List<Integer> done, Ends ends) {
    if (done.size() == stops.size()) {
      return ends.homeMm(ends.start());
    }
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < stops.size(); s++) {
      int stop = s;
      boolean free =
          !done.contains(s)
              && constraints.stream().allMatch(b -> b.second() != stop || done.contains(b.first()));
      if (free) {
        List<Integer> longer = new ArrayList<>(done);
        longer.add(s);
        for (Way way : stops.get(s).ways()) {
          double rest = best(stops, constraints, longer, new Ends(way.to(), ends.end()));
          least = Math.min(least, ends.start().distance(way.from()) + rest);
        }
      }
    }
    return least;
  }

  /** Without constraints an order is a tour left open: compared with the closed one's optimiser. */
  @Test
  void orders_of_many_single_points_are_short() {
    SplittableRandom random = Seeds.random(7703);
    List<Stop> stops = new ArrayList<>();
    List<Point> points = new ArrayList<>(List.of(Point.ORIGIN));
    for (int i = 0; i < 300; i++) {
      Point p = new Point(500 * random.nextDouble(), 300 * random.nextDouble());
      points.add(p);
      stops.add(new Stop(List.of(new Way(p, p))));
    }
    int[] tour = Tour.closed(points, 1);
    double closed = 0;
    for (int i = 0; i < tour.length; i++) {
      closed += points.get(tour[i]).distance(points.get(tour[(i + 1) % tour.length]));
    }
    double open =
        CutOrder.airMm(stops, CutOrder.order(stops, List.of(), Point.ORIGIN, 1), Point.ORIGIN);
    assertThat(open).as("seed %d", Seeds.seed(7703)).isLessThan(1.05 * closed);
  }

  @Test
  void a_loop_is_entered_where_it_is_nearest() {
    Stop loop =
        new Stop(
            List.of(
                new Way(new Point(10, 0), new Point(10, 0)),
                new Way(new Point(0, 10), new Point(0, 10))));
    Point at = new Point(0, 30);
    assertThat(CutOrder.order(List.of(loop), List.of(), at, 1)).containsExactly(new Visit(0, 1));
  }

  @Test
  void the_same_input_gives_the_same_order() {
    List<Stop> stops = stops(Seeds.random(7704), 30);
    assertThat(CutOrder.order(stops, List.of(), Point.ORIGIN, 5))
        .isEqualTo(CutOrder.order(stops, List.of(), Point.ORIGIN, 5));
  }

  @Test
  void contradictions_are_refused() {
    List<Stop> two = stops(Seeds.random(7705), 2);
    List<Before> circle = List.of(new Before(0, 1), new Before(1, 0));
    assertThatThrownBy(() -> CutOrder.order(two, circle, Point.ORIGIN, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("circle");
    assertThatThrownBy(() -> CutOrder.order(two, List.of(new Before(0, 2)), Point.ORIGIN, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no such stop");
    assertThatThrownBy(() -> new Stop(List.of())).isInstanceOf(IllegalArgumentException.class);
  }
}
