package frieze.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlattenerTest {
  /** Closed form: the fewest chords of a circle are pi / acos(1 - e / R), rounded up. */
  @ParameterizedTest
  @CsvSource({"0.01, 10, 71", "0.05, 50, 71", "0.001, 25.4, 355"})
  void a_circle_takes_the_fewest_chords(double tolerance, double radius, int chords) {
    assertThat(Flattener.flatten(Path.circle(Point.ORIGIN, radius), tolerance)).hasSize(chords);
  }

  /** Closed form: 71 chords of a circle of radius 10 lose 0.409894 mm2 and sag by 0.009787735. */
  @Test
  void a_disc_comes_out_small_by_the_closed_form() {
    List<Point> points = Flattener.flatten(Path.circle(Point.ORIGIN, 10), 0.01);
    assertThat(Math.PI * 100 - shoelace(points)).isCloseTo(0.409894, within(1e-6));
    double middle = points.get(0).towards(points.get(1), 0.5).norm();
    assertThat(10 - middle).isCloseTo(0.009787735, within(1e-9));
  }

  /** Ten millimetres of a circle whose radius drowns the tolerance sag by less than an atom. */
  @Test
  void an_almost_straight_arc_takes_one_chord() {
    Point centre = new Point(0, 1e15);
    Arc arc = new Arc(new Point(0, 0), new Point(10, 0), centre, 1e-14);
    assertThat(Flattener.flatten(new Path(List.of(arc), false), 0.001)).hasSize(2);
  }

  /** An ellipse is a circle stretched: as many chords as its larger radius asks for. */
  @Test
  void an_ellipse_takes_as_many_chords_as_a_circle_of_its_larger_radius() {
    for (double angle : new double[] {0, 0.4, 2}) {
      Path turned = Shapes.ellipse(30, 20).transformed(Affine.rotation(angle));
      assertThat(Flattener.flatten(turned, 0.002))
          .hasSameSizeAs(Flattener.flatten(Path.circle(Point.ORIGIN, 30), 0.002));
    }
  }

  @Test
  void chord_and_curve_lie_within_the_tolerance_of_each_other() {
    SplittableRandom random = Seeds.random(7001);
    for (int i = 0; i < 200; i++) {
      Segment segment = anySegment(random);
      double tolerance = 0.001 * Math.pow(100, random.nextDouble());
      List<Point> points = Flattener.flatten(new Path(List.of(segment), false), tolerance);
      for (int k = 0; k <= 400; k++) {
        assertThat(toPolyline(segment.at(k / 400.0), points))
            .as("seed %d, %s", Seeds.seed(7001), segment)
            .isLessThanOrEqualTo(tolerance * (1 + 1e-6));
      }
    }
  }

  @Test
  void ends_of_segments_are_vertices() {
    Path path = Shapes.blob(Seeds.random(7002), 6, 40);
    List<Point> points = Flattener.flatten(path, 0.01);
    assertThat(points).containsAll(path.segments().stream().map(Segment::end).toList());
    assertThat(points).doesNotHaveDuplicates();
  }

  /** Stepping from 57.85714285714286 the whole way to this end misses it by 2.7e-15. */
  @Test
  void the_end_of_a_line_is_the_point_it_was_drawn_to() {
    Point left = new Point(2.1428571428571432, 55.71428571428571);
    Point right = new Point(57.85714285714286, 55.71428571428571);
    assertThat(right.towards(left, 1)).isNotEqualTo(left);
    assertThat(Flattener.flatten(Path.polyline(List.of(right, left), false), 0.01))
        .containsExactly(right, left);
  }

  @Test
  void a_reversed_path_gives_the_reversed_points() {
    SplittableRandom random = Seeds.random(7003);
    for (int i = 0; i < 100; i++) {
      Path path = new Path(List.of(anySegment(random)), false);
      List<Point> there = Flattener.flatten(path, 0.01, 0.1);
      List<Point> back = Flattener.flatten(path.reversed(), 0.01, 0.1);
      assertThat(back).as("seed %d, %s", Seeds.seed(7003), path).hasSameSizeAs(there);
      for (int k = 0; k < back.size(); k++) {
        assertThat(back.get(k).distance(there.get(there.size() - 1 - k))).isLessThan(1e-9);
      }
    }
  }

  @Test
  void the_turn_along_a_chord_is_limited() {
    SplittableRandom random = Seeds.random(7004);
    for (int i = 0; i < 100; i++) {
      Segment segment = anySegment(random);
      List<Point> points = Flattener.flatten(new Path(List.of(segment), false), 1, 0.05);
      for (int k = 2; k < points.size(); k++) {
        Point before = points.get(k - 1).minus(points.get(k - 2));
        Point after = points.get(k).minus(points.get(k - 1));
        boolean cusp = Math.min(before.norm(), after.norm()) < 1e-3;
        assertThat(cusp ? 0 : Math.abs(Directions.angle(before, after)))
            .as("seed %d, %s", Seeds.seed(7004), segment)
            .isLessThanOrEqualTo(2 * 0.05 + 1e-9);
      }
    }
    assertThat(Flattener.turnForOffset(12.7, 0.002)).isCloseTo(0.017747, within(1e-6));
  }

  @Test
  void a_path_that_turns_on_the_spot_ends() {
    Point p = new Point(0, 0);
    Cubic cusp = new Cubic(p, new Point(10, 10), new Point(0, 10), new Point(10, 0));
    Cubic still = new Cubic(p, p, p, p);
    assertThat(Flattener.flatten(new Path(List.of(cusp), false), 0.01, 0.01)).hasSizeLessThan(2000);
    assertThat(Flattener.flatten(new Path(List.of(still), false), 0.01, 0.01)).hasSize(2);
  }

  @Test
  void bad_calls_are_refused() {
    Path circle = Path.circle(Point.ORIGIN, 1);
    assertThatThrownBy(() -> Flattener.flatten(circle, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("toleranceMm");
    assertThatThrownBy(() -> Flattener.flatten(circle, 1, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("turnRad");
  }

  static Segment anySegment(SplittableRandom random) {
    Point a = anyPoint(random);
    Point b = anyPoint(random);
    double sweep = (random.nextDouble() * 2 - 1) * 2 * Math.PI;
    double start = random.nextDouble() * 7 - 3.5;
    return switch (random.nextInt(3)) {
      case 0 -> Arc.polar(a, 0.1 + 30 * random.nextDouble(), start, sweep);
      case 1 -> new Cubic(a, anyPoint(random), anyPoint(random), b);
      default -> elliptic(a, b.times(0.5), anyPoint(random).times(0.5), start, sweep);
    };
  }

  private static EllipticArc elliptic(Point centre, Point u, Point v, double start, double sweep) {
    Point from = centre.plus(u.times(Math.cos(start))).plus(v.times(Math.sin(start)));
    double end = start + sweep;
    Point to = centre.plus(u.times(Math.cos(end))).plus(v.times(Math.sin(end)));
    return new EllipticArc(from, to, centre, u, v, start, sweep);
  }

  static Point anyPoint(SplittableRandom random) {
    return new Point(60 * random.nextDouble() - 30, 60 * random.nextDouble() - 30);
  }

  static double toPolyline(Point p, List<Point> points) {
    double best = p.distance(points.get(0));
    for (int i = 1; i < points.size(); i++) {
      Line edge = new Line(points.get(i - 1), points.get(i));
      best = Math.min(best, LeastPieces.toPiece(p, edge));
    }
    return best;
  }

  static double shoelace(List<Point> points) {
    double sum = 0;
    List<Point> ring = new ArrayList<>(points);
    for (int i = 0; i < ring.size(); i++) {
      sum += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return sum / 2;
  }
}
