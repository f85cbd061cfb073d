package frieze.region;

import static frieze.curve.Shapes.points;
import static frieze.curve.Shapes.polygon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Shapes;
import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RegionTest {
  private static final double EXACT = 1e-9;

  /** Source of the rule: SVG 1.1, 11.3 (from memory); the areas are arithmetic. */
  @Test
  void concentric_squares_of_one_direction_have_a_hole_only_by_even_odd() {
    Path large = polygon(0, 0, 10, 0, 10, 10, 0, 10);
    Path small = polygon(3, 3, 7, 3, 7, 7, 3, 7);
    assertAreas(List.of(large, small), 100, 84);
    assertAreas(List.of(small, large), 100, 84);
    assertAreas(List.of(large, small.reversed()), 84, 84);
    assertAreas(List.of(large.reversed(), small), 84, 84);
  }

  @Test
  void overlapping_squares_share_what_even_odd_leaves_out() {
    Path left = polygon(0, 0, 10, 0, 10, 10, 0, 10);
    Path right = polygon(5, 0, 15, 0, 15, 10, 5, 10);
    assertAreas(List.of(left, right), 150, 100);
  }

  @Test
  void a_pentagram_is_filled_by_the_rule() {
    double[] xy = {
      0,
      -1,
      .587785252292,
      .809016994375,
      -.951056516295,
      -.309016994375,
      .951056516295,
      -.309016994375,
      -.587785252292,
      .809016994375
    };
    assertAreas(List.of(polygon(xy)), 1.122569941, 0.775676752);
  }

  /** Relative commands add up rounding: 0.1 + 0.2 is not 0.3. */
  @Test
  void squares_that_miss_each_other_by_rounding_are_one() {
    double edge = 0.1 + 0.2;
    Path left = polygon(0, 0, 0.3, 0, 0.3, 1, 0, 1);
    Path right = polygon(edge, 0, 1, 0, 1, 1, edge, 1);
    assertThat(edge).isGreaterThan(0.3);
    Region both = Region.of(List.of(left, right), FillRule.NONZERO, 0.01);
    assertThat(both.parts()).hasSize(1);
    assertThat(both.area()).isCloseTo(1, within(EXACT));
    Path apart = polygon(0.30001, 0, 1, 0, 1, 1, 0.30001, 1);
    assertThat(Region.of(List.of(left, apart), FillRule.NONZERO, 0.01).parts()).hasSize(2);
  }

  @Test
  void a_bow_tie_is_two_triangles() {
    List<Path> bowTie = List.of(polygon(0, 0, 10, 10, 10, 0, 0, 10));
    assertAreas(bowTie, 50, 50);
    assertThat(Region.of(bowTie, FillRule.NONZERO, 0.01).parts()).hasSize(2);
  }

  @Test
  void an_open_path_is_closed_by_a_straight_line() {
    Path open = Path.polyline(points(0, 0, 10, 0, 10, 10), false);
    assertAreas(List.of(open), 50, 50);
  }

  private static void assertAreas(List<Path> paths, double nonzero, double evenOdd) {
    assertThat(Region.of(paths, FillRule.NONZERO, 0.01).area()).isCloseTo(nonzero, within(1e-6));
    assertThat(Region.of(paths, FillRule.EVEN_ODD, 0.01).area()).isCloseTo(evenOdd, within(1e-6));
  }

  @Test
  void nothing_comes_of_nothing() {
    assertThat(Region.of(List.of(), FillRule.NONZERO, 0.01).isEmpty()).isTrue();
    assertThat(Region.ofRing(points(1, 1, 2, 2, 1, 1)).isEmpty()).isTrue();
    assertThat(Region.ofRing(points(1, 1, 1, 1, 1, 1, 1, 1)).isEmpty()).isTrue();
    assertThat(Region.ofRing(points(0, 0, 5, 5, 9, 9)).isEmpty()).isTrue();
  }

  @Test
  void repeated_points_and_spikes_do_no_harm() {
    List<Point> ring = points(0, 0, 10, 0, 10, 0, 10, 10, 5, 10, 5, 30, 5, 10, 0, 10, 0, 10);
    assertThat(Region.ofRing(ring).area()).isCloseTo(100, within(EXACT));
  }

  @Test
  void nested_rings_give_holes_and_islands() {
    List<Path> rings = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      rings.add(polygon(i, i, 20 - i, i, 20 - i, 20 - i, i, 20 - i));
    }
    Region striped = Region.of(rings, FillRule.EVEN_ODD, 0.01);
    assertThat(striped.area()).isCloseTo(400 - 324 + 256 - 196 + 144 - 100, within(EXACT));
    assertThat(striped.parts()).hasSize(3).allMatch(p -> p.rings().size() == 2);
    assertThat(Region.of(rings, FillRule.NONZERO, 0.01).area()).isCloseTo(400, within(EXACT));
  }

  /** The rule itself, point by point: winding numbers by angles, which no code under test uses. */
  @Test
  void points_are_inside_as_the_fill_rule_says() {
    SplittableRandom random = Seeds.random(7201);
    for (int i = 0; i < 60; i++) {
      List<Path> paths = new ArrayList<>();
      for (int k = 0; k < 1 + i % 4; k++) {
        Affine map = Affine.translation(40 * random.nextDouble(), 40 * random.nextDouble());
        paths.add(tangle(random, 3 + i % 8).transformed(map));
      }
      for (FillRule rule : FillRule.values()) {
        assertInside(paths, rule, random);
      }
    }
  }

  private static Path tangle(SplittableRandom random, int corners) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      points.add(new Point(50 * random.nextDouble(), 50 * random.nextDouble()));
    }
    return Path.polyline(points, true);
  }

  private static void assertInside(List<Path> paths, FillRule rule, SplittableRandom random) {
    Region region = Region.of(paths, rule, 0.01);
    assertThat(region.geometry().isValid()).isTrue();
    Region.Locator locator = region.locator();
    for (int i = 0; i < 100; i++) {
      Point p = new Point(90 * random.nextDouble(), 90 * random.nextDouble());
      long winding = 0;
      for (Path path : paths) {
        winding += turnsAround(p, path);
      }
      boolean inside = rule == FillRule.NONZERO ? winding != 0 : winding % 2 != 0;
      assertThat(locator.contains(p)).as("seed %d at %s", Seeds.seed(7201), p).isEqualTo(inside);
    }
  }

  private static long turnsAround(Point p, Path path) {
    double sum = 0;
    for (var s : path.segments()) {
      Point a = s.start().minus(p);
      Point b = s.end().minus(p);
      sum += Math.atan2(a.cross(b), a.dot(b));
    }
    return Math.round(sum / (2 * Math.PI));
  }

  @Test
  void rings_keep_the_area_on_their_left() {
    Path large = polygon(0, 0, 10, 0, 10, 10, 0, 10);
    Path small = polygon(3, 3, 7, 3, 7, 7, 3, 7);
    List<Ring> rings = Region.of(List.of(large, small), FillRule.EVEN_ODD, 0.01).rings();
    assertThat(rings).extracting(Ring::hole).containsExactly(false, true);
    assertThat(signedArea(rings.get(0))).isCloseTo(100, within(EXACT));
    assertThat(signedArea(rings.get(1))).isCloseTo(-16, within(EXACT));
  }

  private static double signedArea(Ring ring) {
    double sum = 0;
    List<Point> p = ring.points();
    for (int i = 0; i < p.size(); i++) {
      sum += p.get(i).cross(p.get((i + 1) % p.size()));
    }
    return sum / 2;
  }

  @Test
  void set_operations_agree_with_areas() {
    SplittableRandom random = Seeds.random(7202);
    for (int i = 0; i < 40; i++) {
      Region a = Region.ofRing(Shapes.star(random, 5 + i, 40));
      Region b =
          Region.ofRing(Shapes.star(random, 5 + i, 40)).transformed(Affine.translation(7, 3));
      double both = a.intersection(b).area();
      assertThat(a.union(b).area()).isCloseTo(a.area() + b.area() - both, within(1e-6));
      assertThat(a.minus(b).area()).isCloseTo(a.area() - both, within(1e-6));
    }
  }

  @Test
  void outlines_of_a_hundred_thousand_points_are_resolved() {
    int n = 100_000;
    List<Point> wavy = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * i / n;
      wavy.add(Point.polar(Point.ORIGIN, 200 * (1 + 0.3 * Math.sin(40 * angle)), angle));
    }
    Region region = Region.ofRing(wavy);
    double exact = Math.PI * 200 * 200 * (1 + 0.3 * 0.3 / 2);
    assertThat(region.area()).isCloseTo(exact, within(0.05));
  }
}
