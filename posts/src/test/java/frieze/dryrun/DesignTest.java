package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.Intent;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Surroundings;
import frieze.shop.Setup;
import frieze.shop.Zero;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The good program against the design that it was written for by hand, and with one fault. */
class DesignTest {
  private static final double QUARTER = Math.PI / 2;

  private static Setup setup() {
    return new Setup(
        Bench.machine(false),
        Bench.STOCK,
        Zero.LEFT_FRONT_TOP,
        0,
        0,
        5,
        0.4,
        Bench.KNOWN.keepOuts(),
        List.of(Bench.FLAT, Bench.DRILL));
  }

  /** The tip of the drill's cone is 1.502 mm below its full diameter. */
  private static List<Intent> intents() {
    Path ring =
        new Path(
            List.of(
                line(50, 40, 150, 40),
                corner(150, 40, 160, 50, 150, 50),
                line(160, 50, 160, 90),
                corner(160, 90, 150, 100, 150, 90),
                line(150, 100, 50, 100),
                corner(50, 100, 40, 90, 50, 90),
                line(40, 90, 40, 50),
                corner(40, 50, 50, 40, 50, 50)),
            true);
    Path line = new Path(List.of(line(200, 100, 240, 100)), false);
    double deep = 19.3 - 2.5 / Math.tan(Math.toRadians(59));
    return List.of(
        new Intent.Groove("ring", List.of(ring), 6, Bench.FLAT),
        new Intent.Groove("line", List.of(line), 2, Bench.FLAT),
        new Intent.Hole("hole 1", new Point(260, 40), 5, deep, Bench.DRILL),
        new Intent.Hole("hole 2", new Point(260, 110), 5, deep, Bench.DRILL));
  }

  private static Line line(double x0, double y0, double x1, double y1) {
    return new Line(new Point(x0, y0), new Point(x1, y1));
  }

  private static Arc corner(double x0, double y0, double x1, double y1, double cx, double cy) {
    return new Arc(new Point(x0, y0), new Point(x1, y1), new Point(cx, cy), QUARTER);
  }

  private static DryRunResult run(String text) {
    return DryRun.in(Surroundings.of(setup()))
        .comparedWith(setup(), intents())
        .run(List.of(Bench.program("ring.nc", text)));
  }

  @Test
  void the_good_program_makes_the_design() {
    DryRunResult result = run(Bench.GOOD);
    assertThat(result.findings()).isEmpty();
    assertThat(result.mayWrite()).isTrue();
    assertThat(result.design()).isPresent();
    assertThat(result.stock()).isPresent();
  }

  /** The wrong way round in the first pass only: nothing but the design can tell. */
  @Test
  void an_arc_the_wrong_way_round_is_named_as_a_gouge_at_its_line() {
    String broken = Bench.GOOD.replaceFirst("G3 X160 Y50", "G2 X160 Y50");
    DryRunResult result = run(broken);
    assertThat(result.mayWrite()).isFalse();
    assertThat(result.findings())
        .anySatisfy(
            f -> {
              assertThat(f.code()).isEqualTo(FindingCode.GOUGE);
              assertThat(f.program()).isEqualTo("ring.nc");
              assertThat(f.text()).isEqualTo("G2 X160 Y50 I0 J10");
              assertThat(f.amount().unit()).isEqualTo("mm");
              assertThat(f.amount().value()).isBetween(2.99, 3.01);
            });
  }

  @Test
  void a_cut_that_is_missing_is_named_as_left_standing() {
    String broken = Bench.GOOD.replace("G1 X240 Z-2 F800\nG1 X200\n", "");
    assertThat(broken).isNotEqualTo(Bench.GOOD);
    assertThat(run(broken).findings())
        .anySatisfy(
            f -> {
              assertThat(f.code()).isEqualTo(FindingCode.LEFT_STANDING);
              assertThat(f.message()).contains("line");
            });
  }

  /** Half a millimetre to the side is far below what the other checks see. */
  @Test
  void a_small_shift_is_named_as_a_gouge() {
    String broken = Bench.GOOD.replace("G0 X200 Y100", "G0 X200 Y100.5");
    DryRunResult result = run(broken);
    assertThat(result.findings())
        .anySatisfy(f -> assertThat(f.code()).isEqualTo(FindingCode.GOUGE));
    assertThat(Bench.run(Bench.KNOWN, broken).findings()).isEmpty();
  }
}
