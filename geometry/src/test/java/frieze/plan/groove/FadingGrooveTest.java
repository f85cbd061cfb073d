package frieze.plan.groove;

import static frieze.plan.Bench.FLAT_6;
import static frieze.plan.Bench.SIDE_ONLY_6;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Cubic;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Fade;
import frieze.design.Fade.Ends;
import frieze.design.Motif;
import frieze.diagnostic.BadInputException;
import frieze.fixtures.Seeds;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.Bench;
import frieze.plan.Plan;
import frieze.plan.Planner;
import frieze.plan.RecessTest;
import frieze.plan.Swept;
import frieze.plan.cut.Cut;
import frieze.plan.cut.MoveBuilder;
import frieze.shop.Tool;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FadingGrooveTest {
  private static final double LENGTH = 60;

  private static Plan plan(Motif motif, Tool tool, double depthMm, Fade fade) {
    return Planner.plan(
        Bench.design(
            motif, Affine.translation(30, 30), Bench.fading(motif.name(), tool, depthMm, fade)),
        Bench.setup(),
        Tolerances.DEFAULT);
  }

  private static Motif line() {
    return Bench.stroked(
        "vein", Path.polyline(List.of(new Point(0, 0), new Point(LENGTH, 0)), false));
  }

  private static Fade over(Ends ends, double toMm, double overMm) {
    return new Fade(ends, toMm, OptionalDouble.of(overMm));
  }

  /** The depth that is asked for, said again in other words. */
  private static double asked(Ends ends, double at, double depth, double to, double over) {
    double fromStart = ends == Ends.END ? 1e9 : at;
    double fromEnd = ends == Ends.START ? 1e9 : LENGTH - at;
    double share = Math.min(1, Math.min(fromStart, fromEnd) / over);
    return to + share * (depth - to);
  }

  @ParameterizedTest
  @EnumSource(Ends.class)
  void the_floor_lies_as_deep_as_asked_all_along(Ends ends) {
    SplittableRandom random = Seeds.random(61);
    for (int i = 0; i < 12; i++) {
      double depth = random.nextDouble(0.5, 8);
      double to = random.nextBoolean() ? 0 : random.nextDouble(0, depth * 0.9);
      double over = random.nextDouble(5, ends == Ends.BOTH ? 30 : 60);
      Plan plan = plan(line(), FLAT_6, depth, over(ends, to, over));
      assertThat(plan.cuts()).hasSize(1);
      // Deepest tip on short stretches of the line, against the law.
      double[] deepest = new double[61];
      for (Cut.Move move : RecessTest.moves(plan.cuts())) {
        for (int k = 0; k <= 400; k++) {
          Position p = move.path().at(k / 400.0);
          double at = p.x() - 30;
          assertThat(p.y()).isCloseTo(30, within(1e-9));
          assertThat(-p.z())
              .as(
                  "at %s of %s %s to %s over %s, seed %d",
                  at, ends, depth, to, over, Seeds.seed(61))
              .isLessThanOrEqualTo(asked(ends, at, depth, to, over) + 1e-9);
          int near = (int) Math.rint(at);
          if (Math.abs(at - near) < 0.2) {
            deepest[near] = Math.max(deepest[near], -p.z());
          }
        }
      }
      double slope = (depth - to) / over;
      for (int at = 1; at < 60; at++) {
        assertThat(deepest[at])
            .as("at %s of %s %s to %s over %s, seed %d", at, ends, depth, to, over, Seeds.seed(61))
            .isGreaterThan(asked(ends, at, depth, to, over) - 0.4 * slope - 1e-9);
      }
    }
  }

  /** Closed form: a triangle, whose height grows to the depth, times the width of a flat bit. */
  @Test
  void a_wedge_has_the_volume_of_its_section() {
    Plan plan = plan(line(), FLAT_6, 6, new Fade(Ends.START, 0, OptionalDouble.empty()));
    double section = 6 * 6 * LENGTH / 2;
    // The flat bit sinks with its whole face: from each place it reaches 3 mm back and ahead.
    double volume = new Swept(25, 25, LENGTH + 10, 10, 0.04).cut(plan.cuts()).volumeMm3();
    double ahead = Math.PI * 9 / 2 * 6;
    assertThat(volume).isBetween(section, section + ahead + 6 * 6 * 3);
  }

  @Test
  void passes_stay_within_the_limit_and_none_plunges() {
    Plan plan = plan(line(), SIDE_ONLY_6, 2.5, new Fade(Ends.END, 0, OptionalDouble.empty()));
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      Motion path = move.path();
      if (path.from().z() <= 0 && path.to().z() < path.from().z()) {
        assertThat((path.from().z() - path.to().z()) / path.lengthMm())
            .isLessThanOrEqualTo(StrictMath.sin(MoveBuilder.RAMP_RAD) + 1e-9);
      }
    }
    assertThat(RecessTest.moves(plan.cuts()).stream().mapToDouble(m -> m.path().box().minZ()).min())
        .hasValueCloseTo(-2.5, within(1e-12));
  }

  @Test
  void a_slope_too_steep_for_a_tool_that_cannot_plunge_is_left_out_and_said() {
    assertThatThrownBy(() -> plan(line(), SIDE_ONLY_6, 8, over(Ends.END, 0, 10)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("PLAN-014")
        .hasMessageContaining("can't plunge");
  }

  @Test
  void a_curve_stays_a_curve_while_it_fades() {
    Cubic curve =
        new Cubic(new Point(0, 0), new Point(30, 60), new Point(60, -50), new Point(90, 10));
    Motif motif = Bench.stroked("vein", new Path(List.of(curve), false));
    Plan plan = plan(motif, FLAT_6, 2, new Fade(Ends.END, 0, OptionalDouble.empty()));
    assertThat(RecessTest.moves(plan.cuts())).anyMatch(m -> m.path() instanceof Motion.Turn);
    assertThat(RecessTest.moves(plan.cuts())).hasSizeLessThan(80);
  }

  @Test
  void closed_lines_and_rising_depths_are_refused() {
    Fade fade = new Fade(Ends.END, 0, OptionalDouble.empty());
    Motif ring = Bench.stroked("ring", Path.circle(new Point(20, 20), 15));
    assertThatThrownBy(() -> plan(ring, FLAT_6, 2, fade))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("1 of 1 lines are closed");
    assertThatThrownBy(() -> plan(line(), FLAT_6, 2, new Fade(Ends.END, 2, OptionalDouble.empty())))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("PLAN-045");
  }
}
