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
import frieze.design.BoreWay;
import frieze.design.Design;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.motion.Motion;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.PlanCode;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

  /** On a circle inside, the side of the tool runs a longer way than its middle: D to D - d. */
  @Test
  void the_wall_of_a_milled_hole_passes_at_the_feed_of_a_straight_cut_at_most() {
    double straight =
        Feeds.choose(
                SIDE_ONLY_6,
                Bench.setup().stock().material(),
                Bench.setup().machine(),
                SourceSpan.file("bore"))
            .feedMmPerMin();
    for (double diameter : new double[] {6.5, 8, 14, 25}) {
      double fastest = 0;
      for (Cut.Move move : RecessTest.moves(plan(SIDE_ONLY_6, diameter, Optional.of(8.0)).cuts())) {
        if (move.path() instanceof Motion.Turn turn) {
          double wall = turn.radiusMm() + SIDE_ONLY_6.radiusMm();
          fastest = Math.max(fastest, move.feedMmPerMin() * wall / turn.radiusMm());
        }
      }
      assertThat(fastest).as("hole of %s mm", diameter).isCloseTo(straight, within(1e-6));
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

  private static Tool vee(double angleDeg) {
    return new Tool(
        "vee " + angleDeg,
        9,
        new ToolShape.Vee(12, StrictMath.toRadians(angleDeg), 0.5),
        2,
        12,
        20,
        true,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        20_000,
        2_000,
        400);
  }

  private static BoreWay sunk(double headMm, double angleDeg, Tool tool) {
    BoreWay.Countersink sink =
        new BoreWay.Countersink(headMm, StrictMath.toRadians(angleDeg), tool);
    return new BoreWay(Optional.of(sink), Optional.empty(), List.of(), Optional.empty());
  }

  private static BoreWay slot(double lengthMm, double directionDeg) {
    BoreWay.Slot slot = new BoreWay.Slot(lengthMm, StrictMath.toRadians(directionDeg));
    return new BoreWay(Optional.empty(), Optional.of(slot), List.of(), Optional.empty());
  }

  private static Plan plan(Tool tool, double diameterMm, Optional<Double> depthMm, BoreWay way) {
    Work bore = new Work.Bore(List.of(CENTRE), diameterMm, depthMm, tool, way, Bench.WHERE);
    return Planner.plan(
        new Design(Bench.panel(), List.of(), List.of(), List.of(bore)),
        Bench.setup(),
        Tolerances.DEFAULT);
  }

  /** A cone of 90 degrees is half as deep as it is wide: (9 - 0.5) / 2 below a tip of 0.5. */
  @Test
  void a_countersink_is_as_wide_as_the_head_at_the_top() {
    List<Cut> cuts = plan(DRILL_5, 5, Optional.of(10.0), sunk(9, 90, vee(90))).cuts();
    assertThat(cuts).hasSize(2);
    assertThat(cuts.get(1).end().z()).isCloseTo(-4.25, within(1e-12));
    assertThat(cuts.get(1).end().xy()).isEqualTo(CENTRE);
  }

  @Test
  void a_countersink_that_does_not_suit_is_an_error() {
    for (BoreWay way : List.of(sunk(9, 82, vee(90)), sunk(4, 90, vee(90)), sunk(14, 90, vee(90)))) {
      assertThatThrownBy(() -> plan(DRILL_5, 5, Optional.of(10.0), way))
          .hasMessageContaining("error[PLAN-047]");
    }
  }

  /** Two half circles and a rectangle between them. */
  @Test
  void a_slot_is_cut_all_of_it_and_no_more() {
    for (Tool tool : List.of(FLAT_6, FLAT_3)) {
      for (double direction : new double[] {0, 90, 30}) {
        double expected = Math.PI * 9 + 14 * 6;
        Plan plan = plan(tool, 6, Optional.of(8.0), slot(20, direction));
        Swept swept = new Swept(15, 25, 30, 30, 0.05).cut(plan.cuts());
        assertThat(swept.areaMm2(8)).isCloseTo(expected, within(expected * 0.01));
        assertThat(swept.volumeMm3()).isCloseTo(expected * 8, within(expected * 8 * 0.01));
      }
    }
  }

  @Test
  void a_slot_no_longer_than_wide_is_an_error() {
    assertThatThrownBy(() -> plan(FLAT_6, 6, Optional.of(8.0), slot(6, 0)))
        .hasMessageContaining("error[PLAN-048]");
  }

  @Test
  void a_drill_that_would_turn_too_fast_gives_way_to_a_mill_that_fits() {
    Tool slow =
        new Tool(
            "slow drill",
            5,
            DRILL_5.shape(),
            2,
            60,
            80,
            true,
            OptionalDouble.empty(),
            OptionalDouble.of(0.1),
            3_000,
            400,
            300);
    assertThatThrownBy(() -> plan(slow, 5, Optional.of(10.0), BoreWay.PLAIN))
        .hasMessageContaining("error[PLAN-017]");
    BoreWay mills =
        new BoreWay(Optional.empty(), Optional.empty(), List.of(FLAT_6, FLAT_3), Optional.empty());
    Plan plan = plan(slow, 5, Optional.of(10.0), mills);
    assertThat(plan.cuts()).allMatch(c -> c.tool().equals(FLAT_3));
    assertThat(plan.notes()).anyMatch(d -> d.code() == PlanCode.MILLED_NOT_DRILLED);
    Swept swept = new Swept(15, 25, 30, 30, 0.05).cut(plan.cuts());
    assertThat(swept.areaMm2(10)).isCloseTo(Math.PI * 6.25, within(0.3));
  }
}
