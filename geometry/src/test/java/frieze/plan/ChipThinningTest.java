package frieze.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Work;
import frieze.diagnostic.Diagnostic;
import frieze.plan.cut.Cut;
import frieze.plan.cut.PlanCode;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChipThinningTest {
  /**
   * An edge that turns about the origin and is fed along X by a small advance f leaves, at an angle
   * phi from the side at which it just touches, a chip f sin(phi) thick.
   */
  @Test
  void the_thickest_place_is_where_the_edge_meets_the_uncut_side() {
    for (double part : new double[] {0.01, 0.1, 0.25, 0.4, 0.5}) {
      double phi = Math.acos(1 - 2 * part);
      assertThat(ChipThinning.factor(part * 6, 6)).isCloseTo(Math.sin(phi), within(1e-12));
    }
    assertThat(ChipThinning.factor(0.6, 6)).isCloseTo(0.6, within(1e-12));
    assertThat(ChipThinning.factor(4, 6)).isEqualTo(1);
  }

  @Test
  void close_loops_are_warned_of_and_no_feed_is_raised() {
    Plan wide = plan(0.4 * 6);
    Plan close = plan(0.1 * 6);
    assertThat(wide.notes()).noneMatch(d -> d.code() == PlanCode.CHIP_THINNED);
    Diagnostic warning =
        close.notes().stream()
            .filter(d -> d.code() == PlanCode.CHIP_THINNED)
            .findFirst()
            .orElseThrow();
    assertThat(warning.message()).contains("10% of its diameter", "60% of its");
    assertThat(fastest(close)).isEqualTo(fastest(wide));
  }

  private static Plan plan(double stepoverMm) {
    Work.Recess usual = Bench.recess("square", Bench.FLAT_6, 2);
    Work work =
        new Work.Recess(usual.on(), usual.tool(), 2, stepoverMm, Work.Milling.CLIMB, usual.where());
    Path square =
        Path.polyline(
            List.of(new Point(0, 0), new Point(30, 0), new Point(30, 30), new Point(0, 30)), true);
    return Planner.plan(
        Bench.design(Bench.filled("square", square), Affine.translation(20, 20), work),
        Bench.setup(),
        Tolerances.DEFAULT);
  }

  private static double fastest(Plan plan) {
    return plan.cuts().stream()
        .flatMap(c -> c.moves().stream())
        .mapToDouble(Cut.Move::feedMmPerMin)
        .max()
        .orElseThrow();
  }
}
