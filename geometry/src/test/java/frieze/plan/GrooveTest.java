package frieze.plan;

import static frieze.plan.Bench.FLAT_6;
import static frieze.plan.Bench.SIDE_ONLY_6;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Cubic;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Motif;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.PlanCode;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GrooveTest {
  private static Plan plan(Motif motif, Tool tool, double depthMm) {
    return Planner.plan(
        Bench.design(motif, Affine.translation(30, 30), Bench.groove(motif.name(), tool, depthMm)),
        Bench.setup(),
        Tolerances.DEFAULT);
  }

  private static Motif stroke(double lengthMm) {
    return Bench.stroked(
        "vein", Path.polyline(List.of(new Point(0, 0), new Point(lengthMm, 0)), false));
  }

  /** Closed form: section D d times the length, and a full disc shared by the two ends. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 2, 3.5, 50})
  void a_straight_groove_has_the_volume_of_its_section(double lengthMm) {
    for (double depth : new double[] {2, 7}) {
      Plan plan = plan(stroke(lengthMm), FLAT_6, depth);
      double expected = 6 * depth * lengthMm + Math.PI * 36 * depth / 4;
      double volume = new Swept(25, 25, lengthMm + 10, 10, 0.04).cut(plan.cuts()).volumeMm3();
      assertThat(volume).isCloseTo(expected, within(expected * 0.006));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {3.5, 20, 50, 100})
  void the_tool_enters_on_a_ramp_along_the_line(double lengthMm) {
    Plan plan = plan(stroke(lengthMm), SIDE_ONLY_6, 7);
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      Motion path = move.path();
      double drop = path.from().z() - path.to().z();
      assertThat(drop)
          .isLessThanOrEqualTo(path.lengthMm() * StrictMath.sin(MoveBuilder.RAMP_RAD) + 1e-9);
      assertThat(path.to().y()).isCloseTo(30, within(1e-12));
      assertThat(path.to().x()).isBetween(30 - 1e-12, 30 + lengthMm + 1e-12);
    }
    assertThat(plan.cuts()).hasSize(1);
  }

  @Test
  void a_line_too_short_for_a_tool_that_cannot_plunge_is_reported_with_its_place() {
    Motif two =
        Bench.stroked(
            "vein",
            Path.polyline(List.of(new Point(0, 0), new Point(2, 0)), false),
            Path.polyline(List.of(new Point(0, 20), new Point(20, 20)), false));
    Plan plan = plan(two, SIDE_ONLY_6, 2);
    assertThat(plan.cuts()).hasSize(1);
    assertThat(plan.notes())
        .anyMatch(
            d ->
                d.code() == PlanCode.NO_ROOM_TO_ENTER
                    && d.message().contains("groove vein 1")
                    && d.message().contains("x 30, y 30 mm"));
  }

  @Test
  void a_circle_is_followed_by_full_turns_exactly() {
    Plan plan = plan(Bench.stroked("ring", Path.circle(new Point(20, 20), 15)), FLAT_6, 5);
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      assertThat(move.path()).isInstanceOf(Motion.Turn.class);
      assertThat(((Motion.Turn) move.path()).radiusMm()).isCloseTo(15, within(1e-9));
    }
    Swept swept = new Swept(25, 25, 50, 50, 0.05).cut(plan.cuts());
    double expected = Math.PI * (18 * 18 - 12 * 12);
    assertThat(swept.areaMm2(5)).isCloseTo(expected, within(expected * 2e-3));
  }

  @Test
  void a_curve_is_followed_within_the_tolerances_by_lines_and_arcs() {
    Cubic curve =
        new Cubic(new Point(0, 0), new Point(30, 60), new Point(60, -50), new Point(90, 10));
    Plan plan = plan(Bench.stroked("vein", new Path(List.of(curve), false)), FLAT_6, 2);
    List<Point> fine = new ArrayList<>();
    for (int i = 0; i <= 2_000; i++) {
      fine.add(curve.at(i / 2_000.0).plus(new Point(30, 30)));
    }
    // Chords of this length stay within a tenth of a micrometre of the curve.
    double worst = 0;
    for (Position p : RecessTest.positions(plan.cuts())) {
      worst = Math.max(worst, BruteForce.distanceToOpen(fine, p.xy()));
    }
    assertThat(worst).isLessThan(Tolerances.DEFAULT.totalMm());
    assertThat(RecessTest.moves(plan.cuts())).hasSizeLessThan(60);
    assertThat(RecessTest.moves(plan.cuts())).anyMatch(m -> m.path() instanceof Motion.Turn);
  }
}
