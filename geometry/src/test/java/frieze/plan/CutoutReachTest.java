package frieze.plan;

import static frieze.plan.Bench.FLAT_6;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Corners;
import frieze.design.CutoutWay;
import frieze.design.Design;
import frieze.design.Work;
import frieze.layout.Panel;
import frieze.plan.cut.PlanCode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CutoutReachTest {
  private static final double R = 3;

  /** A panel of 300 x 120 with a slit from above, 60 deep. */
  private static Plan slit(double widthMm) {
    double left = 150 - widthMm / 2;
    double right = 150 + widthMm / 2;
    Path outline =
        Path.polyline(
            List.of(
                new Point(0, 0),
                new Point(300, 0),
                new Point(300, 120),
                new Point(right, 120),
                new Point(right, 60),
                new Point(left, 60),
                new Point(left, 120),
                new Point(0, 120)),
            true);
    Work cutout = new Work.Cutout(FLAT_6, Optional.empty(), Work.Milling.CLIMB, Bench.WHERE);
    Design design = new Design(new Panel("slit", outline), List.of(), List.of(), List.of(cutout));
    return Planner.plan(design, Bench.setup(), Tolerances.DEFAULT);
  }

  private static double leftMm2(Plan plan) {
    return plan.leftovers().stream().mapToDouble(l -> l.area().area()).sum();
  }

  /** The bit dips into the mouth by the segment of its circle between the two corners. */
  @Test
  void a_slit_that_the_bit_does_not_enter_is_told_with_its_area() {
    Plan plan = slit(4);
    double half = StrictMath.asin(2 / R);
    double dips = R * R * (half - StrictMath.sin(half) * StrictMath.cos(half));
    assertThat(leftMm2(plan)).isCloseTo(4 * 60 - dips, within(0.5));
    assertThat(plan.notes())
        .filteredOn(d -> d.code() == PlanCode.NOT_ALL_REACHED)
        .singleElement()
        .asString()
        .contains("cutout slit: tool flat 6.0 does not reach 23", "at x 150, y 90 mm");
  }

  /** Each of two square inside corners keeps what lies between it and a quarter of a circle. */
  @Test
  void a_slit_that_the_bit_enters_keeps_its_round_corners() {
    assertThat(leftMm2(slit(10))).isCloseTo(2 * (1 - Math.PI / 4) * R * R, within(0.1));
  }

  @Test
  void an_opening_keeps_its_round_corners_unless_they_are_relieved() {
    for (Corners kind : Corners.values()) {
      Work.Target on = new Work.Target("window", Optional.empty());
      CutoutWay way = new CutoutWay(Optional.of(on), Work.Side.INSIDE, 0, 1, 0, kind);
      Work cutout = new Work.Cutout(FLAT_6, Optional.empty(), Work.Milling.CLIMB, way, Bench.WHERE);
      Design design =
          Bench.design(
              Bench.filled("window", Bench.rectangle(0, 0, 60, 40)),
              Affine.translation(100, 40),
              cutout);
      Plan plan = Planner.plan(design, Bench.setup(), Tolerances.DEFAULT);
      double left = kind == Corners.ROUND ? (4 - Math.PI) * R * R : 0;
      assertThat(leftMm2(plan)).as("%s", kind).isCloseTo(left, within(0.1));
    }
  }
}
