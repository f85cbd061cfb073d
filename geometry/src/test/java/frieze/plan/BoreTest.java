package frieze.plan;

import static frieze.plan.Bench.DRILL_5;
import static frieze.plan.Bench.FLAT_3;
import static frieze.plan.Bench.FLAT_6;
import static frieze.plan.Bench.SIDE_ONLY_6;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.motion.Motion;
import frieze.shop.Tool;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoreTest {
  private static final Point CENTRE = new Point(30, 40);

  private static Plan plan(Tool tool, double diameterMm, Optional<Double> depthMm) {
    Work bore = new Work.Bore(List.of(CENTRE), diameterMm, depthMm, tool, Bench.WHERE);
    return Planner.plan(
        new Design(Bench.panel(), List.of(), List.of(), List.of(bore)),
        Bench.setup(),
        Tolerances.DEFAULT);
  }

  @Test
  void a_hole_of_the_drills_size_is_drilled_with_pecks() {
    Cut cut = plan(DRILL_5, 5, Optional.empty()).cuts().get(0);
    assertThat(cut.peckMm()).hasValue(5);
    assertThat(cut.end().z()).isCloseTo(-19.7, within(1e-12));
    assertThat(cut.moves().get(0).feedMmPerMin()).isLessThanOrEqualTo(300);
    assertThat(cut.spindleRpm()).isLessThanOrEqualTo(12_000);
  }

  /** The point of a drill is half the diameter over the tangent of half the point angle high. */
  @Test
  void the_depth_of_a_blind_hole_is_that_of_its_full_diameter() {
    Cut cut = plan(DRILL_5, 5, Optional.of(10.0)).cuts().get(0);
    assertThat(cut.end().z()).isCloseTo(-10 - 2.5 / Math.tan(Math.toRadians(59)), within(1e-9));
  }

  @Test
  void a_larger_hole_is_milled_in_circles_all_of_it() {
    for (double diameter : new double[] {6.5, 8, 14, 25}) {
      Plan plan = plan(SIDE_ONLY_6, diameter, Optional.of(8.0));
      double expected = Math.PI * diameter * diameter / 4;
      Swept swept = new Swept(15, 25, 30, 30, 0.05).cut(plan.cuts());
      assertThat(swept.areaMm2(8)).isCloseTo(expected, within(0.02 + expected * 0.01));
      assertThat(swept.volumeMm3()).isCloseTo(expected * 8, within(1 + expected * 8 * 0.01));
      for (Cut.Move move : RecessTest.moves(plan.cuts())) {
        double drop = move.path().from().z() - move.path().to().z();
        assertThat(drop)
            .isLessThanOrEqualTo(
                move.path().lengthMm() * StrictMath.sin(MoveBuilder.RAMP_RAD) + 1e-9);
        if (move.path() instanceof Motion.Turn turn) {
          assertThat(turn.sweepRad()).isPositive();
        }
      }
    }
  }

  @Test
  void what_no_tool_can_make_is_an_error() {
    assertThatThrownBy(() -> plan(FLAT_6, 5, Optional.of(4.0)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("error[PLAN-008]")
        .hasMessageContaining("which is 1 mm (0.039 in) wider");
    assertThatThrownBy(() -> plan(SIDE_ONLY_6, 6, Optional.of(4.0)))
        .hasMessageContaining("error[PLAN-006]");
    assertThatThrownBy(() -> plan(DRILL_5, 8, Optional.of(4.0)))
        .hasMessageContaining("error[PLAN-006]");
    assertThatThrownBy(() -> plan(FLAT_3, 5, Optional.of(19.0)))
        .hasMessageContaining("error[PLAN-002]");
  }

  @Test
  void a_point_longer_than_the_cut_into_the_spoilboard_is_told() {
    // 2.5 / tan 59 degrees is 1.50 mm; 0.5 mm of it go into the spoilboard
    assertThat(plan(DRILL_5, 5, Optional.empty()).notes())
        .anyMatch(
            d ->
                d.code() == PlanCode.NOT_FULL_DIAMETER
                    && d.message().contains("the lowest 1 mm (0.039 in)"));
  }
}
