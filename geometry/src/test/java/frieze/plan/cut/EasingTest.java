package frieze.plan.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.plan.Bench;
import frieze.plan.Plan;
import frieze.plan.Planner;
import frieze.plan.RecessTest;
import frieze.shop.Tool;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Angles of engagement and feeds against closed forms: chords of a circle. */
class EasingTest {
  private static final double R = 3;
  private static final Affine AT = Affine.translation(30, 20);

  private final RimLoad load = new RimLoad(R, p -> true);

  private static Motion line(double x0, double y0, double x1, double y1) {
    return new Motion.Straight(new Position(x0, y0, -2), new Position(x1, y1, -2));
  }

  private double mostDeg(Motion path) {
    return Math.toDegrees(
        load.next(path).stream().mapToDouble(RimLoad.Stretch::rimRad).max().orElseThrow());
  }

  private static double sideDeg(double widthMm) {
    return Math.toDegrees(StrictMath.acos(1 - widthMm / R));
  }

  @Test
  void a_slot_has_half_of_the_rim_in_material_and_what_is_cut_already_none() {
    assertThat(mostDeg(line(10, 20, 40, 20))).isEqualTo(180);
    assertThat(mostDeg(line(39, 20, 11, 20))).isLessThan(12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 1, 2, 3, 4.5})
  void a_side_cut_has_the_angle_of_its_width(double width) {
    load.next(line(-10, 20, 70, 20));
    assertThat(mostDeg(line(-8, 20 + width, 60, 20 + width)))
        .isCloseTo(sideDeg(width), within(1.5));
  }

  /** In a square corner the wall ahead is added to that at the side: 90 degrees more. */
  @Test
  void a_corner_has_the_wall_ahead_as_well() {
    for (double y = 8; y <= 20; y += 2) {
      load.next(line(-10, y, 40, y));
    }
    assertThat(mostDeg(line(-8, 21.5, 30, 21.5))).isCloseTo(sideDeg(1.5), within(1.5));
    load.next(line(40, 8, 40, 20));
    assertThat(mostDeg(line(30, 21.5, 41.5, 21.5))).isCloseTo(90 + sideDeg(1.5), within(2.0));
  }

  @Test
  void what_was_cut_less_deep_is_still_in_the_way() {
    load.next(new Motion.Straight(new Position(0, 0, -1), new Position(30, 0, -1)));
    assertThat(mostDeg(line(0, 0, 30, 0))).isEqualTo(180);
  }

  @Test
  void the_feed_falls_as_what_is_removed_grows() {
    assertThat(Easing.part(Math.PI, Math.PI / 2)).isCloseTo(0.5, within(1e-12));
    assertThat(Easing.part(Math.toRadians(120), Math.PI / 2)).isCloseTo(2 / 3.0, within(1e-12));
    assertThat(Easing.part(Math.toRadians(80), Math.PI / 2)).isEqualTo(1);
  }

  /** Rings half a diameter apart: 90 degrees along the sides, 180 on the first and in corners. */
  @Test
  void the_first_ring_and_the_corners_of_a_recess_are_slowed() {
    Tool limited = Bench.FLAT_6.withEngagement(Math.toRadians(100));
    Motif motif = Bench.filled("field", Bench.rectangle(0, 0, 60, 40));
    Plan plan = plan(motif, Bench.recess("field", limited, 2));
    Plan free = plan(motif, Bench.recess("field", Bench.FLAT_6, 2));
    double full = fastest(free);
    double slot = Math.floor(Easing.part(Math.PI, Math.toRadians(100)) * 20) / 20 * full;
    assertThat(fastest(plan)).isEqualTo(full);
    assertThat(slowest(plan)).isCloseTo(slot, within(1e-9));
    assertThat(slowest(free)).isEqualTo(full);
    assertThat(lengthMm(plan)).isCloseTo(lengthMm(free), within(1e-6));
    // The outermost ring, 3 mm from the wall: full feed in the middle, slowed in its four corners.
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      Point p = move.path().at(0.5).xy().minus(new Point(60, 40));
      boolean outer =
          Math.abs(Math.abs(p.y()) - 17) < 0.01 || Math.abs(Math.abs(p.x()) - 27) < 0.01;
      boolean middle = Math.abs(p.x()) < 15 && move.path().lengthMm() > 10;
      if (outer && middle) {
        assertThat(move.feedMmPerMin()).as("%s", move).isEqualTo(full);
      }
      if (outer && move.path().to().xy().distance(new Point(87, 57)) < 0.01) {
        assertThat(move.feedMmPerMin()).as("%s", move).isLessThan(0.8 * full);
      }
    }
    RimUse rim = plan.rims().get(0);
    assertThat(Math.toDegrees(rim.mostRad())).isEqualTo(180);
    assertThat(Math.toDegrees(rim.usualRad())).isBetween(70.0, 95.0);
    assertThat(rim.beyond().part()).isBetween(0.02, 0.3);
    assertThat(plan.notes())
        .filteredOn(d -> d.code() == PlanCode.ENGAGED_AND_SLOWED)
        .singleElement()
        .extracting(d -> d.message())
        .asString()
        .contains("up to 180 deg of its rim in material where it may have 100");
  }

  /** (D - d) / D of the straight feed: a middle on a radius of 2 with a tool of 3 has 2/3.5. */
  @Test
  void a_tight_circle_inside_a_wall_has_the_feed_of_its_outside() {
    Motif motif = Bench.filled("dot", Path.circle(new Point(10, 10), 3.5));
    Plan plan = plan(motif, Bench.recess("dot", Bench.FLAT_3, 1));
    double full =
        Feeds.choose(
                Bench.FLAT_3,
                Bench.setup().stock().material(),
                Bench.setup().machine(),
                Bench.WHERE)
            .feedMmPerMin();
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      boolean rising = move.path().to().z() > move.path().from().z();
      if (!rising && move.path() instanceof Motion.Turn turn && turn.plane() == Plane.XY) {
        double part = turn.radiusMm() / (turn.radiusMm() + 1.5);
        assertThat(move.feedMmPerMin())
            .as("radius %s", turn.radiusMm())
            .isBetween((part - 0.05) * full - 1e-6, part * full + 1e-6);
      }
    }
  }

  private static Plan plan(Motif motif, Work work) {
    return Planner.plan(Bench.design(motif, AT, work), Bench.setup(), Tolerances.DEFAULT);
  }

  private static double fastest(Plan plan) {
    return feeds(plan).stream().mapToDouble(f -> f).max().orElseThrow();
  }

  private static double slowest(Plan plan) {
    return feeds(plan).stream().mapToDouble(f -> f).min().orElseThrow();
  }

  private static List<Double> feeds(Plan plan) {
    return RecessTest.moves(plan.cuts()).stream()
        .filter(m -> m.path().from().z() == m.path().to().z())
        .map(Cut.Move::feedMmPerMin)
        .toList();
  }

  private static double lengthMm(Plan plan) {
    return RecessTest.moves(plan.cuts()).stream().mapToDouble(m -> m.path().lengthMm()).sum();
  }

  /** A limit is lower where the cut is deeper: a lap at the whole depth has its own. */
  @Test
  void what_is_told_is_the_angle_where_it_is_beyond_and_the_limit_there() {
    RimUse.Tally tally = new RimUse.Tally();
    tally.add(Math.toRadians(140), 300, Math.PI, 1);
    tally.add(Math.toRadians(120), 1, Math.PI / 2, 0.65);
    assertThat(Easing.note(tally.of("recess leaf", Bench.FLAT_3)))
        .contains(
            "up to 120 deg of its rim in material where it may have 90; on less than 1% of its way"
                + " it is slowed, down to 65% of its feed");
  }
}
