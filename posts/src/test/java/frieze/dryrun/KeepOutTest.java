package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.dryrun.check.KeepOutCheck;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed.KnownAxes;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.rs274.ReadingRules.Paths;
import frieze.rs274.ReadingRules.Rapids;
import frieze.shop.KeepOut;
import frieze.shop.Zero;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * A clamp that reaches from X-4 Y20 to X0 Y26, 3 mm above the top of the stock; a bit with a radius
 * of 3.175 mm that sticks out by 32 mm.
 */
class KeepOutTest {
  private static final double RADIUS = 3.175;
  private static final KnownAxes XY = new KnownAxes(true, true, false);
  private static final Surroundings KNOWN =
      Bench.KNOWN.withKeepOuts(List.of(new KeepOut("clamp", -4, 20, 0, 26, 3)));
  private static final Paths STRAIGHT = new Paths(Rapids.STRAIGHT, OptionalDouble.empty());
  private static final Paths EACH_AXIS = new Paths(Rapids.EACH_AXIS, OptionalDouble.empty());

  private static List<Finding> meets(Passage passage) {
    return meets(KNOWN, new Paths(Rapids.UNSAID, OptionalDouble.empty()), passage);
  }

  private static List<Finding> meets(Surroundings known, Paths paths, Passage passage) {
    KeepOutCheck check = new KeepOutCheck(known);
    FindingLog log = Moves.log();
    check.paths(paths);
    check.move(passage, log);
    return log.findings();
  }

  private static Moves bit() {
    return Moves.in(KNOWN).with(Bench.FLAT);
  }

  private static Finding only(List<Finding> findings, FindingCode code) {
    assertThat(findings).extracting(Finding::code).containsExactly(code);
    return findings.get(0);
  }

  @Test
  void a_bit_hits_a_clamp_that_is_nearer_than_its_radius() {
    double near = RADIUS - Slack.LENGTH_MM;
    assertThat(meets(bit().feed(near, 10, 1, near, 40, 1))).isEmpty();
    double less = Math.nextDown(near);
    assertThat(meets(bit().feed(less, 10, 1, less, 40, 1))).hasSize(1);
    Finding finding = only(meets(bit().feed(1, 10, 1, 1, 40, 1)), FindingCode.HITS_KEEP_OUT);
    assertThat(finding.amount().value()).isCloseTo(RADIUS - 1, within(1e-12));
    assertThat(finding.message()).isEqualTo("the tool runs into clamp");
  }

  @Test
  void a_bit_at_the_height_of_the_clamp_passes_over_it() {
    double height = 3 - Slack.LENGTH_MM;
    assertThat(meets(bit().feed(-2, 10, height, -2, 40, height))).isEmpty();
    double lower = Math.nextDown(height);
    assertThat(meets(bit().feed(-2, 10, lower, -2, 40, lower))).hasSize(1);
  }

  /** Of a move that goes down only the part below the clamp's top counts: here from Y31 on. */
  @Test
  void a_slope_counts_from_where_it_is_below_the_top() {
    assertThat(meets(bit().feed(-2, 11, 23, -2, 41, -7))).isEmpty();
    // Down to the top 2 mm before the clamp's far side has passed.
    assertThat(meets(bit().feed(-2, 4, 23, -2, 34, -7))).hasSize(1);
  }

  @Test
  void an_arc_hits_with_its_true_path() {
    Motion around =
        new Motion.Turn(
            new Position(10, 13, 1), new Position(10, 33, 1), Plane.XY, 10, 23, -Math.PI);
    Finding finding = only(meets(bit().feed(around)), FindingCode.HITS_KEEP_OUT);
    assertThat(finding.amount().value()).isCloseTo(RADIUS, within(0.011));
    Motion away =
        new Motion.Turn(
            new Position(10, 13, 1), new Position(10, 33, 1), Plane.XY, 10, 23, Math.PI);
    assertThat(meets(bit().feed(away))).isEmpty();
  }

  @Test
  void a_tool_that_is_not_known_has_no_size_but_a_place() {
    assertThat(meets(Moves.in(KNOWN).feed(0.001, 10, 1, 0.001, 40, 1))).isEmpty();
    Finding finding =
        only(meets(Moves.in(KNOWN).feed(0, 10, 1, 0, 40, 1)), FindingCode.HITS_KEEP_OUT);
    assertThat(finding.amount()).isEqualTo(Amount.mm(Slack.LENGTH_MM));
  }

  /** Its holder, 50 mm across, begins 32 mm above the tip. */
  @Test
  void a_holder_hits_what_the_bit_clears() {
    double height = 3 - 32 - Slack.LENGTH_MM;
    assertThat(meets(bit().feed(20, 10, height, 20, 40, height))).isEmpty();
    Finding finding = only(meets(bit().feed(20, 10, -30, 20, 40, -30)), FindingCode.HITS_KEEP_OUT);
    assertThat(finding.amount().value()).isCloseTo(5, within(1e-12));
    assertThat(finding.message()).contains("the holder, taken as 50 mm across, runs into clamp");
    assertThat(meets(bit().feed(25, 10, -30, 25, 40, -30))).isEmpty();
    assertThat(meets(Moves.in(KNOWN).feed(20, 10, -99, 20, 40, -99))).isEmpty();
  }

  @Test
  void a_rapid_that_hits_is_not_told_twice() {
    only(meets(bit().rapid(1, 10, 1, 1, 40, 1)), FindingCode.HITS_KEEP_OUT);
    only(meets(bit().rapid(-30, 18, -30, 30, 60, -30)), FindingCode.HITS_KEEP_OUT);
  }

  @Test
  void a_clamp_is_placed_from_the_corner_of_the_stock() {
    Surroundings centred =
        KNOWN.withStock(
            Bench.STOCK, new Zero(Zero.AlongX.CENTRE, Zero.AlongY.BACK, Zero.AlongZ.BED));
    // The corner lies at X-150 Y-150, the top at Z19.1.
    Passage through = Moves.in(centred).with(Bench.FLAT).feed(-152, -145, 22, -152, -100, 22);
    assertThat(meets(centred, STRAIGHT, through)).hasSize(1);
    Passage beside = Moves.in(centred).with(Bench.FLAT).feed(-140, -145, 22, -140, -100, 22);
    assertThat(meets(centred, STRAIGHT, beside)).isEmpty();
    Passage bent = Moves.in(centred).with(Bench.FLAT).rapid(-170, -128, 21, -140, -60, 21);
    Finding finding =
        only(
            meets(centred, new Paths(Rapids.UNSAID, OptionalDouble.empty()), bent),
            FindingCode.DOGLEG_MAY_HIT);
    assertThat(finding.amount().value()).isCloseTo(1.1, within(1e-9));
  }

  /** Along each side of the clamp, at 2 mm and at 4 mm: placed, and from an unknown height. */
  @Test
  void each_side_of_a_clamp_has_its_place() {
    Surroundings centred =
        KNOWN.withStock(
            Bench.STOCK, new Zero(Zero.AlongX.CENTRE, Zero.AlongY.CENTRE, Zero.AlongZ.TOP));
    double[] box = {-154, -55, -150, -49};
    for (double off : new double[] {2, 4}) {
      double[][] ways = {
        {box[0] - off, box[1], box[0] - off, box[3]},
        {box[2] + off, box[1], box[2] + off, box[3]},
        {box[0], box[1] - off, box[2], box[1] - off},
        {box[0], box[3] + off, box[2], box[3] + off}
      };
      for (double[] w : ways) {
        Moves moves = Moves.in(centred).with(Bench.FLAT);
        Passage placed = moves.feed(w[0], w[1], 1, w[2], w[3], 1);
        assertThat(meets(centred, STRAIGHT, placed)).hasSize(off < RADIUS ? 1 : 0);
        Passage bent = moves.known(XY, KnownAxes.ALL).rapid(w[0], w[1], 9, w[2], w[3], 1);
        assertThat(meets(centred, EACH_AXIS, bent)).hasSize(off < RADIUS ? 1 : 0);
      }
    }
  }

  /** From X-30 Y18 to X30 Y60 the straight way passes the clamp at a distance, a bent one not. */
  @Test
  void a_rapid_may_run_anywhere_in_its_box_unless_its_way_is_known() {
    Passage rapid = bit().rapid(-30, 18, 2, 30, 60, 2);
    Finding finding = only(meets(rapid), FindingCode.DOGLEG_MAY_HIT);
    assertThat(finding.amount().value()).isCloseTo(1, within(1e-12));
    assertThat(finding.message()).contains("may run into clamp, 1 mm below its top");
    assertThat(meets(KNOWN, STRAIGHT, rapid)).isEmpty();
    assertThat(meets(KNOWN, EACH_AXIS, rapid)).isEmpty();
    assertThat(meets(bit().feed(-30, 18, 2, 30, 60, 2))).isEmpty();
    double height = 3 - Slack.LENGTH_MM;
    assertThat(meets(bit().rapid(-30, 18, 3, 30, 60, 3))).isEmpty();
    assertThat(meets(bit().rapid(-30, 18, height - 1e-6, 30, 60, height - 1e-6))).hasSize(1);
  }

  /** The box of the move begins beside the corner of the clamp, at a distance of 0.6 a by 0.8 a. */
  @Test
  void a_box_further_than_the_radius_from_the_clamp_is_clear() {
    double clear = RADIUS - Slack.LENGTH_MM + 1e-6;
    double hits = RADIUS - Slack.LENGTH_MM - 1e-6;
    assertThat(meets(boxed(clear))).isEmpty();
    assertThat(meets(boxed(hits))).hasSize(1);
  }

  private static Passage boxed(double a) {
    // It falls from the near corner's X to the near corner's Y.
    return bit().rapid(0.6 * a, 90, 2, 60, 26 + 0.8 * a, 2);
  }

  /** Nobody knows the height at its start: the straight way is not judged, its box is. */
  @Test
  void a_rapid_from_an_unknown_height_counts_with_the_height_of_its_end() {
    Moves unknown = bit().known(XY, KnownAxes.ALL);
    only(meets(KNOWN, EACH_AXIS, unknown.rapid(-2, 10, 9, -2, 40, 1)), FindingCode.DOGLEG_MAY_HIT);
    only(meets(KNOWN, EACH_AXIS, unknown.rapid(-9, 23, 9, 9, 23, 1)), FindingCode.DOGLEG_MAY_HIT);
    assertThat(meets(KNOWN, STRAIGHT, unknown.rapid(-2, 10, 9, -2, 40, 1))).isEmpty();
    Moves nowhere = bit().known(XY, XY);
    assertThat(meets(nowhere.rapid(-2, 10, 1, -2, 40, 1))).isEmpty();
    KnownAxes yz = new KnownAxes(false, true, true);
    assertThat(meets(bit().known(yz, yz).rapid(-2, 10, 1, -2, 40, 1))).isEmpty();
    KnownAxes zx = new KnownAxes(true, false, true);
    assertThat(meets(bit().known(zx, zx).rapid(-2, 10, 1, -2, 40, 1))).isEmpty();
  }

  @Test
  void what_was_not_looked_at_is_said() {
    assertThat(new KeepOutCheck(KNOWN).notChecked()).isEmpty();
    assertThat(new KeepOutCheck(Bench.KNOWN.withKeepOuts(List.of())).notChecked())
        .extracting(NotChecked::why)
        .containsExactly("no keep-outs are given");
    Surroundings noStock = Surroundings.UNKNOWN.withKeepOuts(KNOWN.keepOuts());
    assertThat(new KeepOutCheck(noStock).notChecked())
        .extracting(NotChecked::why)
        .containsExactly("the stock or the zero on it is not given");
    assertThat(meets(noStock, STRAIGHT, bit().feed(-2, 10, 1, -2, 40, 1))).isEmpty();
  }
}
