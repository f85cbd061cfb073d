package frieze.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.fixtures.Seeds;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SegmentTest {
  private static final int SAMPLES = 2000;

  @Test
  void bounds_are_those_of_the_points() {
    SplittableRandom random = Seeds.random(7101);
    for (int i = 0; i < 300; i++) {
      Segment s = FlattenerTest.anySegment(random);
      Bounds sampled = Bounds.EMPTY;
      for (int k = 0; k <= SAMPLES; k++) {
        sampled = sampled.with(s.at((double) k / SAMPLES));
      }
      Bounds exact = s.bounds();
      String as = "seed " + Seeds.seed(7101) + ", " + s;
      assertThat(exact.grown(1e-9).with(sampled)).as(as).isEqualTo(exact.grown(1e-9));
      assertThat(sampled.grown(1e-3).with(exact)).as(as).isEqualTo(sampled.grown(1e-3));
    }
  }

  @Test
  void bounds_of_a_clockwise_circle_do_not_depend_on_its_start() {
    for (int k = -9; k <= 9; k++) {
      Arc arc = Arc.polar(Point.ORIGIN, 5, k * 0.33, -2 * Math.PI);
      assertThat(arc.bounds().width()).isCloseTo(10, within(1e-12));
      assertThat(arc.bounds().height()).isCloseTo(10, within(1e-12));
    }
  }

  @Test
  void tangents_are_derivatives() {
    SplittableRandom random = Seeds.random(7102);
    double h = 1e-5;
    for (int i = 0; i < 200; i++) {
      Segment s = FlattenerTest.anySegment(random);
      double t = 0.1 + 0.8 * random.nextDouble();
      Point difference = s.at(t + h).minus(s.at(t - h)).times(0.5 / h);
      assertThat(s.tangentAt(t).distance(difference))
          .as("seed %d, %s at %s", Seeds.seed(7102), s, t)
          .isLessThan(1e-4);
    }
  }

  @Test
  void a_reversed_segment_has_the_same_points_from_end_to_start() {
    SplittableRandom random = Seeds.random(7103);
    for (int i = 0; i < 200; i++) {
      Segment s = FlattenerTest.anySegment(random);
      double t = random.nextDouble();
      assertThat(s.reversed().at(t).distance(s.at(1 - t))).isLessThan(1e-9);
      assertThat(s.reversed().reversed())
          .usingRecursiveComparison()
          .withComparatorForType(
              (Double a, Double b) -> Math.abs(a - b) < 1e-12 ? 0 : 1, Double.class)
          .isEqualTo(s);
    }
  }

  @Test
  void the_image_of_a_segment_is_the_image_of_its_points() {
    SplittableRandom random = Seeds.random(7104);
    for (int i = 0; i < 200; i++) {
      Segment s = FlattenerTest.anySegment(random);
      Affine similar = Affine.rotation(random.nextDouble() * 6).then(Affine.scaling(-2, 2));
      Affine skewed = new Affine(1, 0.3, -0.7, 2, 5, 6);
      for (Affine map : List.of(similar, skewed)) {
        double t = random.nextDouble();
        assertThat(s.transformed(map).at(t).distance(map.apply(s.at(t))))
            .as("seed %d, %s", Seeds.seed(7104), s)
            .isLessThan(1e-9);
      }
      if (s instanceof Arc) {
        assertThat(s.transformed(similar)).isInstanceOf(Arc.class);
        assertThat(s.transformed(skewed)).isInstanceOf(EllipticArc.class);
      }
    }
  }

  @Test
  void the_largest_radius_of_an_ellipse_is_its_longest_reach() {
    SplittableRandom random = Seeds.random(7105);
    for (int i = 0; i < 100; i++) {
      Point u = FlattenerTest.anyPoint(random);
      Point v = FlattenerTest.anyPoint(random);
      EllipticArc arc = new EllipticArc(u, u, Point.ORIGIN, u, v, 0, 2 * Math.PI);
      double longest = 0;
      for (int k = 0; k <= SAMPLES; k++) {
        longest = Math.max(longest, arc.at((double) k / SAMPLES).norm());
      }
      assertThat(arc.largestRadius()).isCloseTo(longest, within(1e-3));
    }
  }

  /** Closed form (area under a cubic by Green's theorem), length by fine chords. */
  @Test
  void a_cubic_has_the_area_length_and_bounds_of_the_closed_form() {
    Cubic c = new Cubic(new Point(0, 0), new Point(10, 20), new Point(30, 20), new Point(40, 0));
    assertThat(c.at(0.5)).isEqualTo(new Point(20, 15));
    assertThat(c.bounds()).isEqualTo(new Bounds(0, 0, 40, 15));
    List<Point> fine = Flattener.flatten(new Path(List.of(c), false), 1e-7);
    assertThat(FlattenerTest.shoelace(fine)).isCloseTo(-420, within(1e-5));
    double length = 0;
    for (int i = 1; i < fine.size(); i++) {
      length += fine.get(i).distance(fine.get(i - 1));
    }
    assertThat(length).isCloseTo(52.683655, within(1e-5));
  }

  /** The customary factor 4/3 (sqrt 2 - 1): radial error from 0 to +0.00027253 r. */
  @Test
  void four_cubics_stay_just_outside_their_circle() {
    double k = 4.0 / 3 * (Math.sqrt(2) - 1);
    Cubic quarter =
        new Cubic(
            new Point(100, 0), new Point(100, 100 * k), new Point(100 * k, 100), new Point(0, 100));
    double worst = 0;
    for (int i = 0; i <= SAMPLES; i++) {
      double off = quarter.at((double) i / SAMPLES).norm() - 100;
      assertThat(off).isGreaterThan(-1e-9);
      worst = Math.max(worst, off);
    }
    assertThat(worst).isCloseTo(0.027253, within(1e-6));
  }

  @Test
  void a_raised_quadratic_is_the_same_curve() {
    Point a = new Point(1, 2);
    Point q = new Point(5, 9);
    Point b = new Point(-3, 4);
    Cubic c = Cubic.fromQuadratic(a, q, b);
    for (double t = 0; t <= 1; t += 0.125) {
      Point expected = a.towards(q, t).towards(q.towards(b, t), t);
      assertThat(c.at(t).distance(expected)).isLessThan(1e-12);
    }
  }

  @Test
  void bad_arcs_are_refused() {
    Point a = new Point(1, 0);
    Point far = new Point(0, 2);
    assertThatThrownBy(() -> new Arc(a, far, Point.ORIGIN, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("radius");
    assertThatThrownBy(() -> new Arc(a, a, Point.ORIGIN, 7))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("sweepRad");
    assertThatThrownBy(() -> new Arc(a, a, Point.ORIGIN, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
