package frieze.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.CutoutWay;
import frieze.design.Fade;
import frieze.design.Work;
import frieze.fixtures.Seeds;
import frieze.shop.FinishAllowance;
import frieze.shop.Setup;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What is taken off after cutting, against the depths that a rectangle must then have. */
class AllowanceTest {
  private static final double FACE_MM = 0.8;
  private static final double WALLS_MM = 0.3;
  private static final double LENGTH_MM = 24;
  private static final double HEIGHT_MM = 14;
  private static final double CLOSE_MM = 0.02;
  private static final Affine PLACE = Affine.translation(30, 30);
  private static final Path SHAPE = Bench.rectangle(0, 0, LENGTH_MM, HEIGHT_MM);
  private static final Tool VEE =
      new Tool(
          "vee 60",
          7,
          new ToolShape.Vee(30, StrictMath.toRadians(60), 0),
          2,
          30,
          40,
          true,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          20_000,
          2_000,
          400);

  private static Plan plan(Work work, boolean filled) {
    Setup setup = Bench.setup().allowing(new FinishAllowance(FACE_MM, WALLS_MM));
    return Planner.plan(
        Bench.design(
            filled ? Bench.filled("shape", SHAPE) : Bench.stroked("shape", SHAPE), PLACE, work),
        setup,
        Tolerances.DEFAULT);
  }

  /** The distance of a place from the rectangle's edge, positive inside; outside, beside edges. */
  private static double signed(double x, double y) {
    return Math.min(Math.min(x, LENGTH_MM - x), Math.min(y, HEIGHT_MM - y));
  }

  private static Point onPanel(double x, double y) {
    return PLACE.apply(new Point(x, y));
  }

  private static double deepest(Plan plan) {
    return -plan.cuts().stream()
        .flatMap(c -> c.moves().stream())
        .mapToDouble(m -> m.path().at(1).z())
        .min()
        .orElseThrow();
  }

  @Test
  void a_v_groove_keeps_its_outline_on_the_finished_face_and_is_wider_by_two_t_tan_above_it() {
    Work.VGroove work =
        new Work.VGroove(
            Bench.recess("shape", Bench.FLAT_3, 1).on(),
            VEE,
            OptionalDouble.empty(),
            List.of(),
            0.1,
            0.2,
            Work.Milling.CLIMB,
            Bench.WHERE);
    Carved carved = new Carved(plan(work, true).cuts());
    double tangent = StrictMath.tan(StrictMath.toRadians(30));
    SplittableRandom random = Seeds.random(11);
    for (int i = 0; i < 200; i++) {
      double x = 3 + (LENGTH_MM - 6) * random.nextDouble();
      double y = (HEIGHT_MM + 2) * random.nextDouble() - 1;
      double wanted = Math.max(0, FACE_MM + signed(x, y) / tangent);
      assertThat(carved.depthMm(onPanel(x, y)))
          .as("at %s, %s; %s", x, y, Seeds.seed(11))
          .isCloseTo(wanted, within(CLOSE_MM / tangent));
    }
  }

  @Test
  void a_recess_is_deeper_by_the_face_and_its_walls_stand_proud_of_the_outline() {
    Plan plan = plan(Bench.recess("shape", Bench.FLAT_3, 2), true);
    Carved carved = new Carved(plan.cuts());
    double middle = HEIGHT_MM / 2;
    for (double aside : new double[] {-CLOSE_MM, CLOSE_MM}) {
      double wanted = aside > 0 ? 2 + FACE_MM : 0;
      double in = WALLS_MM + aside;
      assertThat(carved.depthMm(onPanel(in, middle))).isCloseTo(wanted, within(1e-9));
      assertThat(carved.depthMm(onPanel(LENGTH_MM - in, middle))).isCloseTo(wanted, within(1e-9));
      assertThat(carved.depthMm(onPanel(LENGTH_MM / 2, in))).isCloseTo(wanted, within(1e-9));
    }
    assertThat(deepest(plan)).isEqualTo(2 + FACE_MM);
  }

  @Test
  void an_opening_is_cut_smaller_and_a_part_larger_by_what_comes_off_the_walls() {
    for (Work.Side side : Work.Side.values()) {
      CutoutWay way =
          new CutoutWay(Optional.of(new Work.Target("shape", Optional.empty())), side, 0, 0.5);
      Work cutout =
          new Work.Cutout(Bench.FLAT_3, Optional.empty(), Work.Milling.CLIMB, way, Bench.WHERE);
      double sign = side == Work.Side.OUTSIDE ? -1 : side == Work.Side.INSIDE ? 1 : 0;
      double leftmost =
          plan(cutout, true).cuts().stream()
              .flatMap(c -> c.moves().stream())
              .mapToDouble(m -> m.path().at(1).x())
              .min()
              .orElseThrow();
      assertThat(leftmost)
          .as("%s", side)
          .isCloseTo(30 + sign * (1.5 + WALLS_MM), within(Tolerances.DEFAULT.totalMm()));
    }
  }

  @Test
  void grooves_are_deeper_also_where_they_run_out_or_follow_the_width_of_their_lines() {
    assertThat(deepest(plan(Bench.groove("shape", VEE, 1.5), false)))
        .isCloseTo(1.5 + FACE_MM, within(1e-12));
    Work.Groove byWidth =
        new Work.Groove(
            new Work.Target("shape", Optional.empty()),
            VEE,
            4,
            Optional.empty(),
            true,
            Bench.WHERE);
    double drawn = 1 / 2.0 / StrictMath.tan(StrictMath.toRadians(30));
    assertThat(deepest(plan(byWidth, false))).isCloseTo(drawn + FACE_MM, within(1e-12));
    Work open = Bench.fading("line", VEE, 2, new Fade(Fade.Ends.END, 0.2, OptionalDouble.empty()));
    Plan fading =
        Planner.plan(
            Bench.design(
                Bench.stroked(
                    "line", Path.polyline(List.of(new Point(0, 0), new Point(40, 0)), false)),
                PLACE,
                open),
            Bench.setup().allowing(new FinishAllowance(FACE_MM, 0)),
            Tolerances.DEFAULT);
    Carved carved = new Carved(fading.cuts());
    for (double x = 5; x < 40; x += 5) {
      double wanted = FACE_MM + 0.2 + 1.8 * (40 - x) / 40;
      assertThat(carved.depthMm(onPanel(x, 0))).isCloseTo(wanted, within(CLOSE_MM));
    }
  }

  @Test
  void without_an_allowance_nothing_changes() {
    Setup setup = Bench.setup();
    Work work = Bench.recess("shape", Bench.FLAT_3, 2);
    var design = Bench.design(Bench.filled("shape", SHAPE), PLACE, work);
    assertThat(AsCut.of(design, setup.allowance())).isSameAs(design);
  }
}
