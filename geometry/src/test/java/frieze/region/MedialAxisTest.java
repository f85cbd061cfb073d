package frieze.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Shapes;
import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Against the closed forms of simple shapes' axes, and against distances to every edge. */
class MedialAxisTest {
  private static final double MICROMETRE = 0.001;
  private static final double FINE = 1e-4;

  private static MedialAxis axis(Path path, double flattenMm) {
    return MedialAxis.of(region(path, flattenMm), Math.max(5 * FINE, 1.5 * flattenMm));
  }

  private static Region region(Path path, double flattenMm) {
    return Region.of(List.of(path), FillRule.NONZERO, flattenMm);
  }

  private static List<Disc> discs(MedialAxis axis) {
    return axis.branches().stream().flatMap(b -> b.discs().stream()).toList();
  }

  private static double length(MedialAxis axis) {
    double sum = 0;
    for (MedialAxis.Branch branch : axis.branches()) {
      for (int i = 1; i < branch.discs().size(); i++) {
        sum += branch.discs().get(i).centre().distance(branch.discs().get(i - 1).centre());
      }
    }
    return sum;
  }

  private static void assertHolds(MedialAxis axis, double x, double y, double radius) {
    assertThat(discs(axis))
        .anySatisfy(
            d -> {
              assertThat(d.centre().distance(new Point(x, y))).isLessThan(MICROMETRE);
              assertThat(d.radiusMm()).isCloseTo(radius, within(MICROMETRE));
            });
  }

  /** A rectangle: a segment and four diagonals, (w - h) + 2 sqrt 2 h long. */
  @Test
  void a_rectangle_has_a_ridge_and_four_diagonals() {
    MedialAxis axis = axis(Shapes.rectangle(60, 40), FINE);
    assertThat(axis.branches()).hasSize(5);
    assertThat(length(axis)).isCloseTo(133.137085, within(MICROMETRE));
    assertHolds(axis, 20, 20, 20);
    assertHolds(axis, 40, 20, 20);
    for (Point corner : Shapes.points(0, 0, 60, 0, 60, 40, 0, 40)) {
      assertHolds(axis, corner.x(), corner.y(), 0);
    }
    for (Disc d : discs(axis)) {
      double x = Math.min(d.centre().x(), 60 - d.centre().x());
      double y = Math.min(d.centre().y(), 40 - d.centre().y());
      double off = d.radiusMm() > 19.999 ? Math.abs(y - 20) : Math.abs(x - y) / Math.sqrt(2);
      assertThat(off).as("%s", d).isLessThan(MICROMETRE);
      assertThat(d.radiusMm()).isCloseTo(Math.min(x, y), within(MICROMETRE));
    }
  }

  /** The largest disc is w (2 - sqrt 2) from both sides; round the reflex corner, a parabola. */
  @Test
  void an_l_has_a_parabola_at_its_reflex_corner() {
    MedialAxis axis = axis(Shapes.ell(), FINE);
    Disc largest = axis.largest();
    assertThat(largest.centre().distance(new Point(5.857864, 5.857864))).isLessThan(MICROMETRE);
    assertThat(largest.radiusMm()).isCloseTo(5.857864, within(MICROMETRE));
    int onParabola = 0;
    for (Disc d : discs(axis)) {
      double x = d.centre().x();
      double y = d.centre().y();
      if (x > 5.858 && x < 10 && y < 6) {
        assertThat(y).as("%s", d).isCloseTo(((x - 10) * (x - 10) + 100) / 20, within(MICROMETRE));
        assertThat(d.radiusMm()).isCloseTo(y, within(MICROMETRE));
        onParabola++;
      }
    }
    assertThat(onParabola).isGreaterThan(10);
  }

  @Test
  void a_triangle_has_three_bisectors() {
    MedialAxis axis = axis(Shapes.triangle(30), FINE);
    assertThat(axis.branches()).hasSize(3);
    assertHolds(axis, 15, 8.660254, 8.660254);
    assertThat(length(axis)).isCloseTo(3 * 17.320508, within(MICROMETRE));
  }

  /** The axis of an ellipse ends at the centres of curvature, radius b^2 / a. */
  @Test
  void an_ellipse_has_a_segment_between_its_centres_of_curvature() {
    MedialAxis axis = axis(Shapes.ellipse(30, 20), FINE);
    assertThat(axis.branches()).hasSize(1);
    double least = 0;
    double most = 0;
    for (Disc d : discs(axis)) {
      double x = d.centre().x();
      double expected = 20 * Math.sqrt(1 - x * x / 500);
      assertThat(d.radiusMm()).as("%s", d).isCloseTo(expected, within(MICROMETRE));
      assertThat(d.centre().y()).as("%s", d).isCloseTo(0, within(MICROMETRE));
      least = Math.min(least, x);
      most = Math.max(most, x);
    }
    assertThat(least).isCloseTo(-16.666667, within(0.15));
    assertThat(most).isCloseTo(16.666667, within(0.15));
  }

  /** The radius at height y is R - sqrt(c^2 + y^2). */
  @Test
  void a_leaf_has_a_segment_from_tip_to_tip() {
    MedialAxis axis = axis(Shapes.leaf(50, 60), FINE);
    assertThat(axis.branches()).hasSize(1);
    for (Disc d : discs(axis)) {
      double y = d.centre().y();
      assertThat(d.centre().x()).as("%s", d).isCloseTo(0, within(MICROMETRE));
      assertThat(d.radiusMm()).as("%s", d).isCloseTo(50 - Math.hypot(30, y), within(MICROMETRE));
    }
    assertHolds(axis, 0, 40, 0);
    assertHolds(axis, 0, -40, 0);
  }

  @Test
  void a_circle_has_one_point() {
    for (double radius : new double[] {0.5, 10, 200}) {
      MedialAxis axis = axis(Path.circle(new Point(1, 2), radius), 0.002);
      assertThat(axis.branches()).hasSize(1);
      assertThat(axis.branches().get(0).discs()).hasSize(1);
      assertThat(axis.largest().centre().distance(new Point(1, 2))).isLessThan(MICROMETRE);
      assertThat(axis.largest().radiusMm()).isCloseTo(radius, within(0.002));
    }
  }

  @Test
  void an_annulus_has_a_circle_between_its_edges() {
    Region annulus =
        Region.of(
            List.of(Path.circle(Point.ORIGIN, 20), Path.circle(Point.ORIGIN, 12)),
            FillRule.EVEN_ODD,
            FINE);
    MedialAxis axis = MedialAxis.of(annulus, 5 * FINE);
    assertThat(axis.branches()).hasSize(1);
    List<Disc> loop = axis.branches().get(0).discs();
    assertThat(loop.get(0)).isEqualTo(loop.get(loop.size() - 1));
    for (Disc d : loop) {
      assertThat(d.centre().norm()).isCloseTo(16, within(MICROMETRE));
      assertThat(d.radiusMm()).isCloseTo(4, within(MICROMETRE));
    }
    assertThat(length(axis)).isCloseTo(32 * Math.PI, within(0.01));
  }

  @Test
  void each_radius_is_the_distance_to_the_boundary() {
    SplittableRandom random = Seeds.random(7501);
    for (int i = 0; i < 30; i++) {
      Region region = outline(random, i);
      MedialAxis axis = MedialAxis.of(region, 0.003);
      assertRadii(region, axis, 7501);
      assertDiscsCover(region, axis, 7501);
      assertConnected(axis, 7501);
    }
  }

  @Test
  @Tag("corpus")
  void discs_of_many_outlines_touch_and_cover_and_hang_together() {
    SplittableRandom random = Seeds.random(7502);
    for (int i = 0; i < 1000; i++) {
      Region region = outline(random, i);
      MedialAxis axis = MedialAxis.of(region, 0.003);
      assertRadii(region, axis, 7502);
      assertDiscsCover(region, axis, 7502);
      assertConnected(axis, 7502);
    }
  }

  private static Region outline(SplittableRandom random, int i) {
    double size = 8 + 50 * random.nextDouble();
    Path path =
        i % 2 == 0
            ? Shapes.blob(random, 4 + random.nextInt(12), size)
            : Path.polyline(Shapes.star(random, 4 + random.nextInt(25), size), true);
    Path hole = Path.circle(new Point(size / 30, 0), size / 15);
    return Region.of(i % 3 == 0 ? List.of(path, hole) : List.of(path), FillRule.EVEN_ODD, 0.002);
  }

  private static void assertRadii(Region region, MedialAxis axis, long seed) {
    double[] edges = OffsetChecks.edges(region);
    Region.Locator inside = region.locator();
    for (Disc d : discs(axis)) {
      String as = "seed " + Seeds.seed(seed) + ", " + d;
      assertThat(d.radiusMm())
          .as(as)
          .isCloseTo(OffsetChecks.distance(d.centre(), edges), within(1e-9));
      assertThat(d.radiusMm() == 0 || inside.contains(d.centre())).as(as).isTrue();
    }
  }

  /** Points along the boundary lie within 5 micrometres of some disc of the axis. */
  private static void assertDiscsCover(Region region, MedialAxis axis, long seed) {
    for (Ring ring : region.rings()) {
      for (int i = 0; i < ring.points().size(); i++) {
        Point a = ring.points().get(i);
        Point b = ring.points().get((i + 1) % ring.points().size());
        for (double t : new double[] {0, 0.37}) {
          assertThat(gap(a.towards(b, t), axis))
              .as("seed %d, %s of %s", Seeds.seed(seed), a.towards(b, t), region)
              .isLessThan(0.005);
        }
      }
    }
  }

  private static double gap(Point p, MedialAxis axis) {
    double best = Double.POSITIVE_INFINITY;
    for (MedialAxis.Branch branch : axis.branches()) {
      List<Disc> d = branch.discs();
      best = Math.min(best, p.distance(d.get(0).centre()) - d.get(0).radiusMm());
      for (int i = 1; i < d.size(); i++) {
        best = Math.min(best, gap(p, d.get(i - 1), d.get(i)));
      }
    }
    return best;
  }

  /** To the discs between two neighbours: the best of a few, as the gap is convex along them. */
  private static double gap(Point p, Disc a, Disc b) {
    double low = 0;
    double high = 1;
    double near = p.distance(a.centre()) - a.radiusMm() - a.centre().distance(b.centre()) * 2;
    if (near > 0.005) {
      return near;
    }
    for (int k = 0; k < 30; k++) {
      double left = low + (high - low) / 3;
      double right = high - (high - low) / 3;
      if (between(p, a, b, left) < between(p, a, b, right)) {
        high = right;
      } else {
        low = left;
      }
    }
    return between(p, a, b, (low + high) / 2);
  }

  private static double between(Point p, Disc a, Disc b, double t) {
    double radius = a.radiusMm() + t * (b.radiusMm() - a.radiusMm());
    return p.distance(a.centre().towards(b.centre(), t)) - radius;
  }

  /** Branches that share ends form one piece for each part of the region. */
  private static void assertConnected(MedialAxis axis, long seed) {
    for (int part = 0; part < axis.parts(); part++) {
      List<MedialAxis.Branch> waiting = new ArrayList<>();
      for (MedialAxis.Branch branch : axis.branches()) {
        if (branch.part() == part) {
          waiting.add(branch);
        }
      }
      assertThat(waiting).isNotEmpty();
      Set<String> reached = new TreeSet<>(ends(waiting.remove(0)));
      boolean grown = true;
      while (grown) {
        grown = waiting.removeIf(b -> touches(b, reached));
      }
      assertThat(waiting).as("seed %d", Seeds.seed(seed)).isEmpty();
    }
  }

  private static boolean touches(MedialAxis.Branch branch, Set<String> reached) {
    if (ends(branch).stream().noneMatch(reached::contains)) {
      return false;
    }
    reached.addAll(ends(branch));
    return true;
  }

  private static List<String> ends(MedialAxis.Branch branch) {
    List<Disc> d = branch.discs();
    return List.of(d.get(0).toString(), d.get(d.size() - 1).toString());
  }

  @Test
  void it_reaches_into_each_convex_corner() {
    SplittableRandom random = Seeds.random(7503);
    for (int i = 0; i < 40; i++) {
      List<Point> p = Shapes.star(random, 4 + i, 50);
      List<Disc> discs = discs(MedialAxis.of(Region.ofRing(p), 0.003));
      for (int k = 0; k < p.size(); k++) {
        Point before = p.get(k).minus(p.get((k + p.size() - 1) % p.size()));
        Point after = p.get((k + 1) % p.size()).minus(p.get(k));
        if (Math.atan2(before.cross(after), before.dot(after)) > 0.8) {
          assertThat(discs).as("seed %d", Seeds.seed(7503)).contains(new Disc(p.get(k), 0));
        }
      }
    }
  }

  /** Each disc touches the boundary at two places that lie apart, seen from its centre. */
  @Test
  void discs_within_straight_walls_touch_twice() {
    SplittableRandom random = Seeds.random(7504);
    for (int i = 0; i < 25; i++) {
      Region region = Region.ofRing(Shapes.star(random, 4 + i, 50));
      for (Disc d : discs(MedialAxis.of(region, 0.003))) {
        assertThat(d.radiusMm() == 0 || touchesTwice(d, OffsetChecks.edges(region)))
            .as("seed %d, %d: %s", Seeds.seed(7504), i, d)
            .isTrue();
      }
    }
  }

  private static boolean touchesTwice(Disc d, double[] edges) {
    List<Point> touches = new ArrayList<>();
    for (int e = 0; e < edges.length; e += 4) {
      Point a = new Point(edges[e], edges[e + 1]);
      Point b = new Point(edges[e + 2], edges[e + 3]);
      Point along = b.minus(a);
      double t = d.centre().minus(a).dot(along) / along.dot(along);
      Point foot = a.towards(b, Math.max(0, Math.min(1, t)));
      if (foot.distance(d.centre()) <= d.radiusMm() + MICROMETRE) {
        touches.add(foot);
      }
    }
    double apart = 0;
    for (Point p : touches) {
      apart = Math.max(apart, p.distance(touches.get(0)));
    }
    return apart > 0.01 * d.radiusMm();
  }

  @Test
  void the_same_region_has_the_same_axis() {
    Region region = outline(Seeds.random(7505), 3);
    assertThat(MedialAxis.of(region, 0.003).branches())
        .isEqualTo(MedialAxis.of(region, 0.003).branches());
  }

  @Test
  void hairlines_and_specks_have_an_axis() {
    for (double width : new double[] {0.001, 0.05, 0.4}) {
      MedialAxis axis = axis(Shapes.rectangle(30, width), FINE);
      assertThat(axis.largest().radiusMm()).isCloseTo(width / 2, within(1e-9));
      assertConnected(axis, 0);
    }
    assertThat(axis(Shapes.rectangle(0.01, 0.01), FINE).branches()).isNotEmpty();
    assertThat(MedialAxis.of(Region.EMPTY, 0.003).branches()).isEmpty();
  }

  @Test
  void bad_calls_are_refused() {
    assertThatThrownBy(() -> MedialAxis.of(Region.EMPTY, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("toleranceMm");
  }
}
