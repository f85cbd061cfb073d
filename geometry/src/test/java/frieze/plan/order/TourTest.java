package frieze.plan.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import frieze.curve.Point;
import frieze.fixtures.Seeds;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.StringTokenizer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TourTest {
  /** The published problems, beside the project if they are there at all. */
  private static final Path TOURS = Path.of("..", "..", "shared", "data", "tours");

  /** Proven optima as published with TSPLIB95 (Reinelt 1991); EUC_2D distances are rounded. */
  @ParameterizedTest
  @CsvSource({"berlin52, 7542", "a280, 2579", "pcb442, 50778", "pr1002, 259045"})
  void tours_of_published_problems_are_at_most_3_percent_over_the_optimum(
      String name, int optimum, TestReporter reporter) throws IOException {
    Path file = TOURS.resolve(name + ".tsp");
    assumeTrue(Files.exists(file), "not checked: the published problem " + name + " is not here");
    List<Point> stops = read(file);
    int[] order = Tour.closed(stops, 1);
    assertVisitsAll(order, stops.size());
    long length = roundedLength(stops, order);
    double over = 100.0 * (length - optimum) / optimum;
    reporter.publishEntry(name, String.format(Locale.ROOT, "%d, %.2f %% over", length, over));
    assertThat(length).isBetween((long) optimum, (long) (optimum * 1.03));
  }

  private static List<Point> read(Path file) throws IOException {
    List<Point> stops = new ArrayList<>();
    for (String line : Files.readAllLines(file)) {
      StringTokenizer words = new StringTokenizer(line);
      if (words.countTokens() == 3 && Character.isDigit(words.nextToken().charAt(0))) {
        double x = Double.parseDouble(words.nextToken());
        stops.add(new Point(x, Double.parseDouble(words.nextToken())));
      }
    }
    return stops;
  }

  private static long roundedLength(List<Point> stops, int[] order) {
    long sum = 0;
    for (int i = 0; i < order.length; i++) {
      Point next = stops.get(order[(i + 1) % order.length]);
      sum += (long) (stops.get(order[i]).distance(next) + 0.5);
    }
    return sum;
  }

  private static double length(List<Point> stops, int[] order) {
    double sum = 0;
    for (int i = 0; i < order.length; i++) {
      sum += stops.get(order[i]).distance(stops.get(order[(i + 1) % order.length]));
    }
    return sum;
  }

  private static void assertVisitsAll(int[] order, int size) {
    assertThat(Arrays.stream(order).distinct().count()).isEqualTo(size);
    assertThat(order).hasSize(size);
    if (size > 0) {
      assertThat(order[0]).isZero();
    }
  }

  /** Points on a convex curve: the shortest tour goes round it. */
  @Test
  void a_tour_of_points_on_a_circle_goes_round_it() {
    SplittableRandom random = Seeds.random(7601);
    List<Point> stops = new ArrayList<>();
    double[] angles = random.doubles(300, 0, 2 * Math.PI).toArray();
    for (double angle : angles) {
      stops.add(Point.polar(Point.ORIGIN, 100, angle));
    }
    Arrays.sort(angles);
    double round = 0;
    for (int i = 0; i < angles.length; i++) {
      double step = (angles[(i + 1) % angles.length] - angles[i] + 2 * Math.PI) % (2 * Math.PI);
      round += 200 * Math.sin(step / 2);
    }
    assertThat(length(stops, Tour.closed(stops, 1))).isCloseTo(round, within(1e-6));
  }

  /** A grid with an even number of points: as many steps of one pitch as points. */
  @Test
  void a_tour_of_a_grid_is_near_its_known_optimum() {
    List<Point> stops = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      stops.add(new Point(i % 20 * 5, i / 20 * 5));
    }
    assertThat(length(stops, Tour.closed(stops, 7))).isBetween(2000 - 1e-6, 2000 * 1.03);
  }

  @Test
  void tours_of_few_points_are_the_shortest_by_trying_all() {
    SplittableRandom random = Seeds.random(7602);
    for (int i = 0; i < 60; i++) {
      List<Point> stops = new ArrayList<>();
      for (int k = 0; k < 5 + i % 4; k++) {
        stops.add(new Point(random.nextDouble() * 100, random.nextDouble() * 100));
      }
      int[] order = Tour.closed(stops, i);
      assertVisitsAll(order, stops.size());
      double least = shortest(stops, new int[] {0}, 0);
      assertThat(length(stops, order))
          .as("seed %d, %d", Seeds.seed(7602), i)
          .isBetween(least - 1e-9, least * 1.001);
    }
  }

  private static double shortest(List<Point> stops, int[] done, double length) {
    Point at = stops.get(done[done.length - 1]);
    if (done.length == stops.size()) {
      return length + at.distance(stops.get(0));
    }
    double least = Double.POSITIVE_INFINITY;
    for (int next = 1; next < stops.size(); next++) {
      int candidate = next;
      if (Arrays.stream(done).noneMatch(d -> d == candidate)) {
        int[] longer = Arrays.copyOf(done, done.length + 1);
        longer[done.length] = next;
        least = Math.min(least, shortest(stops, longer, length + at.distance(stops.get(next))));
      }
    }
    return least;
  }

  @Test
  void each_point_is_visited_once_and_the_same_input_gives_the_same_tour() {
    SplittableRandom random = Seeds.random(7603);
    for (int n : new int[] {0, 1, 2, 3, 4, 5, 7, 8, 9, 50}) {
      List<Point> stops = new ArrayList<>();
      for (int k = 0; k < n; k++) {
        stops.add(new Point(random.nextInt(10), random.nextInt(10)));
      }
      int[] order = Tour.closed(stops, 3);
      assertVisitsAll(order, n);
      assertThat(Tour.closed(stops, 3)).isEqualTo(order);
    }
  }
}
