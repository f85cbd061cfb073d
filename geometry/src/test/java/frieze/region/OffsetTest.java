package frieze.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Shapes;
import frieze.fixtures.Seeds;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class OffsetTest {
  private static final double TOLERANCE = 0.002;

  private static final Map<String, Path> SHAPES =
      Map.of(
          "rectangle", Shapes.rectangle(60, 40),
          "triangle", Shapes.triangle(30),
          "ell", Shapes.ell(),
          "ellipse", Shapes.ellipse(30, 20),
          "leaf", Shapes.leaf(50, 60));

  /**
   * Closed forms: Steiner's formulas for convex shapes, the L by its corners, the ellipse by its
   * perimeter, the leaf as the part common to two circles.
   */
  @ParameterizedTest
  @CsvSource({
    "rectangle, 3, 3028.274334, 218.849556",
    "rectangle, -3, 1836, 176",
    "triangle, 3, 687.985766, 108.849556",
    "triangle, -3, 166.476804, 58.823085",
    "ell, 2, 891.707963, 151.707963",
    "ell, -2, 336.858407, 123.141593",
    "ellipse, 3, 2389.193114, 177.503952",
    "ellipse, -3, 1437.266738, 139.804840",
    "leaf, 3, 2821.127555, 204.308600",
    "leaf, -3, 1710.456417, 165.160116"
  })
  void area_and_perimeter_agree_with_the_closed_form(
      String shape, double distance, double area, double perimeter) {
    double fine = 1e-5;
    Region source = Region.of(List.of(SHAPES.get(shape)), FillRule.NONZERO, fine);
    Region offset = Offset.offset(source, distance, fine);
    assertThat(offset.area()).isCloseTo(area, within(2 * fine * perimeter));
    assertThat(offset.perimeter()).isCloseTo(perimeter, within(0.002));
    Region usual =
        Offset.offset(
            Region.of(List.of(SHAPES.get(shape)), FillRule.NONZERO, TOLERANCE),
            distance,
            TOLERANCE);
    assertThat(usual.area()).isCloseTo(area, within(2 * TOLERANCE * perimeter));
  }

  /** The inward offset of the leaf is the leaf of circles smaller by the distance. */
  @Test
  void an_inset_leaf_is_a_leaf_of_smaller_circles() {
    Region leaf = Region.of(List.of(Shapes.leaf(50, 60)), FillRule.NONZERO, 1e-5);
    Region inset = Offset.offset(leaf, -3, 1e-5);
    assertThat(inset.bounds().height()).isCloseTo(72.360210, within(1e-3));
    assertThat(inset.bounds().width()).isCloseTo(34, within(1e-4));
  }

  @Test
  void what_is_thinner_than_twice_the_distance_vanishes() {
    Region rectangle = Region.of(List.of(Shapes.rectangle(60, 40)), FillRule.NONZERO, TOLERANCE);
    assertThat(Offset.offset(rectangle, -20, TOLERANCE).isEmpty()).isTrue();
    assertThat(Offset.offset(rectangle, -25, TOLERANCE).isEmpty()).isTrue();
    assertThat(Offset.offset(rectangle, -19.999, TOLERANCE).isEmpty()).isFalse();
    assertThat(Offset.offset(Region.EMPTY, 5, TOLERANCE).isEmpty()).isTrue();
  }

  @Test
  void a_waist_splits_and_a_gap_closes() {
    Region dumbbell =
        Region.ofRing(
            Shapes.points(
                0, 0, 10, 0, 10, 4, 20, 4, 20, 0, 30, 0, 30, 10, 20, 10, 20, 6, 10, 6, 10, 10, 0,
                10));
    assertThat(Offset.offset(dumbbell, -1.5, TOLERANCE).parts()).hasSize(2);
    Region grown = Offset.offset(dumbbell, 5.01, TOLERANCE);
    assertThat(grown.parts()).hasSize(1);
    assertThat(grown.rings()).hasSize(1);
  }

  @Test
  void holes_shrink_when_the_region_grows() {
    Region frame =
        Region.of(
            List.of(Shapes.rectangle(60, 40), Path.circle(new Point(30, 20), 10)),
            FillRule.EVEN_ODD,
            1e-5);
    Region grown = Offset.offset(frame, 3, 1e-5);
    assertThat(grown.area()).isCloseTo(3028.274334 - Math.PI * 49, within(0.01));
    Region shrunk = Offset.offset(frame, -3, 1e-5);
    assertThat(shrunk.area()).isCloseTo(1836 - Math.PI * 169, within(0.01));
    assertThat(Offset.offset(frame, 10.1, 1e-4).rings()).hasSize(1);
  }

  /** Closed form: a round cutter leaves (4 - pi) r^2 in four square corners. */
  @Test
  void opening_leaves_what_a_round_cutter_cannot_reach() {
    double r = 3;
    Region rectangle = Region.of(List.of(Shapes.rectangle(60, 40)), FillRule.NONZERO, 1e-5);
    Region floor = Offset.offset(Offset.offset(rectangle, -r, 1e-5), r, 1e-5);
    assertThat(floor.area()).isCloseTo(2392.274334, within(0.005));
    Region leaf = Region.of(List.of(Shapes.leaf(50, 60)), FillRule.NONZERO, 1e-5);
    assertThat(Offset.offset(Offset.offset(leaf, -r, 1e-5), r, 1e-5).area())
        .isCloseTo(2234.211098, within(0.01));
  }

  /** Closed form: an inside corner of angle a keeps r^2 (cot(a/2) - (pi - a)/2). */
  @ParameterizedTest
  @CsvSource({"30, 21.807485", "60, 6.163679", "90, 1.931417", "120, 0.483763"})
  void one_corner_keeps_its_closed_form(double degrees, double kept) {
    double half = Math.toRadians(degrees / 2);
    double base = 100 * Math.tan(half);
    Region wedge =
        Region.ofRing(List.of(Point.ORIGIN, new Point(100, -base), new Point(100, base)));
    Region floor = Offset.offset(Offset.offset(wedge, -3, 1e-5), 3, 1e-5);
    Region tip = Region.of(List.of(Path.circle(Point.ORIGIN, 20)), FillRule.NONZERO, 1e-5);
    assertThat(wedge.minus(floor).intersection(tip).area()).isCloseTo(kept, within(0.002));
  }

  /** Closed forms of the integral of the distance, which is that of the inward offsets' areas. */
  @ParameterizedTest
  @CsvSource({"rectangle, 20, 18666.666667", "triangle, 8.660254, 1125", "leaf, 20, 17049.622696"})
  void areas_of_successive_offsets_add_up_to_the_volume_of_a_groove(
      String shape, double deepest, double integral) {
    Region source = Region.of(List.of(SHAPES.get(shape)), FillRule.NONZERO, 1e-4);
    int steps = 200;
    double step = deepest / steps;
    List<Region> rings = Offset.inwardRings(source, 0, step, 1e-4);
    double sum = 0;
    for (int k = 0; k <= steps; k++) {
      double area = k < rings.size() ? rings.get(k).area() : 0;
      sum += area * (k == 0 || k == steps ? 1 : k % 2 == 1 ? 4 : 2);
    }
    assertThat(sum * step / 3).isCloseTo(integral, within(integral * 1e-5));
  }

  @Test
  void every_vertex_and_middle_lies_at_the_distance() {
    SplittableRandom random = Seeds.random(7301);
    for (int i = 0; i < 80; i++) {
      assertAtDistance(shape(random, i), (2 * random.nextDouble() - 1) * 13, 7301);
    }
  }

  @Test
  @Tag("corpus")
  void every_vertex_and_middle_lies_at_the_distance_over_many_outlines() {
    SplittableRandom random = Seeds.random(7302);
    for (int i = 0; i < 4000; i++) {
      assertAtDistance(shape(random, i), (2 * random.nextDouble() - 1) * 13, 7302);
    }
  }

  private static Region shape(SplittableRandom random, int i) {
    double size = 10 + 60 * random.nextDouble();
    Path path =
        i % 2 == 0
            ? Shapes.blob(random, 4 + random.nextInt(16), size)
            : Path.polyline(Shapes.star(random, 4 + random.nextInt(40), size), true);
    Path hole = Path.circle(new Point(3, 4), size / 9);
    return Region.of(i % 3 == 0 ? List.of(path, hole) : List.of(path), FillRule.EVEN_ODD, 0.002);
  }

  private static void assertAtDistance(Region source, double distance, long seed) {
    Region offset = Offset.offset(source, distance, TOLERANCE);
    String as = "seed " + Seeds.seed(seed) + ", distance " + distance + " of " + source;
    assertThat(offset.geometry().isValid()).as(as).isTrue();
    double[] edges = OffsetChecks.edges(source);
    for (Ring ring : offset.rings()) {
      double worst = OffsetChecks.worstMiss(ring.points(), edges, Math.abs(distance));
      assertThat(worst).as(as).isLessThanOrEqualTo(TOLERANCE);
    }
  }

  /** A second way: the library's own buffer, finer than ours, which finds its parts otherwise. */
  @Test
  void no_part_is_lost_or_added_against_a_fine_buffer() {
    SplittableRandom random = Seeds.random(7305);
    for (int i = 0; i < 80; i++) {
      Region source = shape(random, i);
      double distance = (2 * random.nextDouble() - 1) * 13;
      Region offset = Offset.offset(source, distance, TOLERANCE);
      BufferParameters fine = new BufferParameters(90);
      fine.setSimplifyFactor(1e-5);
      Geometry other = new BufferOp(source.geometry(), fine).getResultGeometry(distance);
      double apart = offset.geometry().symDifference(other).getArea();
      // the buffer leaves out shallow joins, which puts it up to distance / 800 too near
      double most = (TOLERANCE + Math.abs(distance) / 800) * (offset.perimeter() + 1);
      assertThat(apart)
          .as("seed %d, outline %d by %s", Seeds.seed(7305), i, distance)
          .isLessThanOrEqualTo(most);
    }
  }

  @Test
  void successive_offsets_do_not_add_up_errors() {
    Region source =
        Region.of(List.of(Shapes.blob(Seeds.random(7303), 9, 60)), FillRule.NONZERO, 0.002);
    double[] edges = OffsetChecks.edges(source);
    List<Region> rings = Offset.inwardRings(source, 0.5, 0.7, TOLERANCE);
    assertThat(rings).hasSizeGreaterThan(10);
    for (int k = 0; k < rings.size(); k++) {
      for (Ring ring : rings.get(k).rings()) {
        assertThat(OffsetChecks.worstMiss(ring.points(), edges, 0.5 + k * 0.7))
            .as("ring %d, seed %d", k, Seeds.seed(7303))
            .isLessThanOrEqualTo(TOLERANCE);
      }
    }
  }

  /** The library's buffer with its default parameters, against the same distances. */
  @Test
  void misses_are_less_than_an_eighth_of_the_librarys_defaults() {
    SplittableRandom random = Seeds.random(7304);
    for (double distance : new double[] {3, -3, 6.35, 12.7}) {
      double ours = 0;
      double defaults = 0;
      for (int i = 0; i < 10; i++) {
        Region source = shape(random, i);
        double[] edges = OffsetChecks.edges(source);
        ours = Math.max(ours, worst(Offset.offset(source, distance, TOLERANCE), edges, distance));
        Region plain = Region.ofPolygons(BufferOp.bufferOp(source.geometry(), distance));
        defaults = Math.max(defaults, worst(plain, edges, distance));
      }
      assertThat(ours).as("seed %d, at %s", Seeds.seed(7304), distance).isLessThan(defaults / 8);
    }
  }

  private static double worst(Region offset, double[] edges, double distance) {
    double worst = 0;
    for (Ring ring : offset.rings()) {
      worst = Math.max(worst, OffsetChecks.worstMiss(ring.points(), edges, Math.abs(distance)));
    }
    return worst;
  }

  @Test
  void two_outward_offsets_are_one_by_their_sum() {
    Region ell = Region.of(List.of(Shapes.ell()), FillRule.NONZERO, TOLERANCE);
    Region twice = Offset.offset(Offset.offset(ell, 2, TOLERANCE), 3, TOLERANCE);
    Region once = Offset.offset(ell, 5, TOLERANCE);
    assertThat(twice.area()).isCloseTo(once.area(), within(2 * TOLERANCE * once.perimeter()));
  }

  @Test
  void bad_calls_are_refused() {
    Region ell = Region.of(List.of(Shapes.ell()), FillRule.NONZERO, TOLERANCE);
    assertThatThrownBy(() -> Offset.offset(ell, Double.NaN, TOLERANCE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("distanceMm");
    assertThatThrownBy(() -> Offset.offset(ell, 1, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("toleranceMm");
    assertThatThrownBy(() -> Offset.inwardRings(ell, 1, 0, TOLERANCE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("stepMm");
  }
}
