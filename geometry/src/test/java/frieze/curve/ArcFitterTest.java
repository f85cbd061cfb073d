package frieze.curve;

import static frieze.curve.Shapes.blob;
import static frieze.curve.Shapes.ellipse;
import static frieze.curve.Shapes.leaf;
import static frieze.curve.Shapes.roundedRectangle;
import static frieze.curve.Shapes.star;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ArcFitterTest {
  private static final double TOLERANCE = 0.005;
  private static final double ROUNDING = 1e-7;

  @Test
  void result_and_polyline_lie_within_the_tolerance_of_each_other() {
    SplittableRandom random = Seeds.random(8101);
    for (int i = 0; i < 15; i++) {
      List<Point> smooth = Flattener.flatten(blob(random, 4 + i % 9, 10 + 4 * i), 0.002);
      List<Point> sharp = star(random, 3 + i, 40);
      for (List<Point> points : List.of(smooth, sharp, jittered(smooth, random, 0.0015))) {
        Path fit = ArcFitter.fit(points, true, TOLERANCE);
        assertThat(away(points, fit))
            .as("seed %d, %d", Seeds.seed(8101), i)
            .isLessThan(TOLERANCE + ROUNDING);
      }
    }
  }

  @Test
  void corners_of_the_source_stay_where_they_are() {
    SplittableRandom random = Seeds.random(8102);
    for (int i = 0; i < 20; i++) {
      List<Point> points = star(random, 4 + i, 50);
      List<Point> ends =
          ArcFitter.fit(points, true, TOLERANCE).segments().stream().map(Segment::end).toList();
      assertThat(ends).as("seed %d, %d", Seeds.seed(8102), i).containsAll(points);
    }
  }

  @Test
  void pieces_meet_within_two_tenths_of_a_degree_where_the_source_is_smooth() {
    SplittableRandom random = Seeds.random(8103);
    List<Path> smooth =
        new ArrayList<>(List.of(ellipse(30, 20), ellipse(12, 3), roundedRectangle(30, 20, 3)));
    for (int i = 0; i < 20; i++) {
      smooth.add(blob(random, 4 + i % 7, 30 + i));
    }
    for (Path path : smooth) {
      Path fit = ArcFitter.fit(Flattener.flatten(path, 0.002), true, TOLERANCE);
      assertThat(sharpestJoint(fit))
          .as("seed %d", Seeds.seed(8103))
          .isLessThan(Math.toRadians(0.2) + ROUNDING);
    }
  }

  @Test
  void points_of_a_circle_come_back_as_two_half_turns() {
    for (double radius : new double[] {0.3, 3, 47.5, 600}) {
      Point centre = new Point(12, -7);
      Path fit =
          ArcFitter.fit(Flattener.flatten(Path.circle(centre, radius), 0.002), true, TOLERANCE);
      assertThat(fit.segments()).hasSize(2);
      for (Segment s : fit.segments()) {
        assertThat(s)
            .isInstanceOfSatisfying(
                Arc.class,
                arc -> {
                  assertThat(arc.radius()).isCloseTo(radius, within(1e-6));
                  assertThat(arc.centre().distance(centre)).isLessThan(1e-6);
                  assertThat(arc.sweepRad()).isEqualTo(Math.PI);
                });
      }
    }
  }

  @Test
  void direction_of_travel_is_kept() {
    List<Point> points = Flattener.flatten(Path.circle(Point.ORIGIN, 5).reversed(), 0.002);
    assertThat(ArcFitter.fit(points, true, TOLERANCE).segments())
        .allSatisfy(s -> assertThat(((Arc) s).sweepRad()).isEqualTo(-Math.PI));
  }

  @Test
  void arcs_that_were_drawn_come_back_as_they_were() {
    assertThat(ArcFitter.fit(Flattener.flatten(leaf(50, 60), 0.002), true, TOLERANCE).segments())
        .hasSize(2)
        .allSatisfy(s -> assertThat(((Arc) s).radius()).isCloseTo(50, within(1e-6)));
    List<Segment> rounded =
        ArcFitter.fit(Flattener.flatten(roundedRectangle(30, 20, 3), 0.002), true, TOLERANCE)
            .segments();
    assertThat(rounded).hasSize(8);
    assertThat(rounded.stream().filter(Line.class::isInstance)).hasSize(4);
    assertThat(rounded.stream().filter(Arc.class::isInstance))
        .allSatisfy(s -> assertThat(((Arc) s).radius()).isCloseTo(3, within(1e-6)));
  }

  /** Against a dynamic program over all pairs; Drysdale, Rote, Sturm 2008. */
  @Test
  void pieces_are_at_most_a_tenth_more_than_the_fewest() {
    SplittableRandom random = Seeds.random(8104);
    List<Path> shapes =
        new ArrayList<>(List.of(ellipse(30, 20), leaf(50, 60), roundedRectangle(30, 20, 3)));
    for (int i = 0; i < 4; i++) {
      shapes.add(blob(random, 4 + i, 15 + 5 * i));
    }
    for (Path shape : shapes) {
      List<Point> points = Flattener.flatten(shape, 0.002);
      int fitted = ArcFitter.fit(points, true, TOLERANCE).segments().size();
      int least = LeastPieces.closed(Directions.of(points, true, TOLERANCE), TOLERANCE);
      assertThat(fitted)
          .as("seed %d, least %d", Seeds.seed(8104), least)
          .isLessThanOrEqualTo((int) (1.1 * least));
    }
  }

  @Test
  void open_polylines_keep_their_ends() {
    Arc arc = Arc.polar(Point.ORIGIN, 20, 0.3, 2);
    Path path = new Path(List.of(new Line(new Point(25, 0), arc.start()), arc), false);
    List<Point> points = Flattener.flatten(path, 0.002);
    Path fit = ArcFitter.fit(points, false, TOLERANCE);
    assertThat(fit.closed()).isFalse();
    assertThat(fit.start()).isEqualTo(path.start());
    assertThat(fit.end()).isEqualTo(path.end());
    assertThat(fit.segments()).hasSize(2);
  }

  @Test
  void collinear_points_become_one_line() {
    List<Point> points = Shapes.points(0, 0, 1, 1, 2, 2, 2, 2, 5, 5);
    assertThat(ArcFitter.fit(points, false, TOLERANCE).segments())
        .containsExactly(new Line(new Point(0, 0), new Point(5, 5)));
    assertThat(ArcFitter.fit(Shapes.points(0, 0, 3, 0), false, TOLERANCE).segments()).hasSize(1);
  }

  @Test
  void a_polygon_of_few_sides_stays_a_polygon() {
    for (int sides = 3; sides <= 24; sides++) {
      List<Point> points = new ArrayList<>();
      for (int i = 0; i < sides; i++) {
        points.add(Point.polar(Point.ORIGIN, 20, 2 * Math.PI * i / sides));
      }
      assertThat(ArcFitter.fit(points, true, TOLERANCE).segments())
          .hasSize(sides)
          .allMatch(Line.class::isInstance);
    }
  }

  /** As a rough scan may give them: each point is off by far more than the tolerance. */
  @Test
  void an_outline_of_many_thousand_pieces_is_fitted() {
    SplittableRandom random = Seeds.random(6000);
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < 12_000; i++) {
      double t = 2 * Math.PI * i / 12_000;
      ring.add(Point.polar(Point.ORIGIN, 800 + 0.3 * random.nextDouble(), t));
    }
    Path path = ArcFitter.fit(ring, true, 0.001);
    assertThat(path.segments()).hasSizeGreaterThan(6000);
    Set<Point> ends = path.segments().stream().map(Segment::start).collect(Collectors.toSet());
    assertThat(path.closed()).isTrue();
    assertThat(ring.stream().filter(ends::contains).count()).isGreaterThan(5000);
  }

  @Test
  void bad_calls_are_refused() {
    assertThatThrownBy(() -> ArcFitter.fit(Shapes.points(1, 1, 1, 1), false, TOLERANCE))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ArcFitter.fit(Shapes.points(1, 1, 2, 1), false, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("toleranceMm");
  }

  private static List<Point> jittered(List<Point> points, SplittableRandom random, double byMm) {
    return points.stream()
        .map(p -> Point.polar(p, byMm * random.nextDouble(), 2 * Math.PI * random.nextDouble()))
        .toList();
  }

  private static double sharpestJoint(Path fit) {
    double worst = 0;
    int n = fit.segments().size();
    for (int i = 0; i < n; i++) {
      Point before = fit.segments().get(i).tangentAt(1);
      Point after = fit.segments().get((i + 1) % n).tangentAt(0);
      worst = Math.max(worst, Math.abs(Directions.angle(before, after)));
    }
    return worst;
  }

  /** The Hausdorff distance, by exact distances from vertices and from samples of the pieces. */
  static double away(List<Point> points, Path fit) {
    List<Segment> edges = Path.polyline(points, true).segments();
    double worst = 0;
    for (Point p : points) {
      worst = Math.max(worst, nearest(p, fit.segments()));
    }
    for (Segment piece : fit.segments()) {
      for (int k = 0; k < 30; k++) {
        worst = Math.max(worst, nearest(piece.at(k / 30.0), edges));
      }
    }
    return worst;
  }

  private static double nearest(Point p, List<Segment> pieces) {
    return pieces.stream().mapToDouble(s -> LeastPieces.toPiece(p, s)).min().orElseThrow();
  }
}
