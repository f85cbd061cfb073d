package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.diagnostic.Code;
import frieze.dryrun.check.EndCheck;
import frieze.dryrun.check.FeedCheck;
import frieze.dryrun.check.PlungeCheck;
import frieze.dryrun.check.ReachCheck;
import frieze.dryrun.check.SpeedCheck;
import frieze.dryrun.check.SpoilboardCheck;
import frieze.dryrun.check.StockEdgeCheck;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Range;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed;
import frieze.motion.Executed.Rotation;
import frieze.shop.Zero;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Checks with one limit each: at the limit nothing is said, just beyond it the amount. A board of
 * 300 x 150 x 19.1 mm with zero on its top; a bit that may plunge at 400 and feed at 2000 mm/min.
 */
class LimitsTest {
  private static final double SLACK = Slack.LENGTH_MM;
  private static final double JUST = 1e-6;

  private final FindingLog log = Moves.log();

  private static Moves bit() {
    return Moves.in(Bench.KNOWN).with(Bench.FLAT);
  }

  private List<Code> told(Check check, Passage... passages) {
    for (Passage passage : passages) {
      check.move(passage, log);
    }
    return log.findings().stream().map(Finding::code).toList();
  }

  private double only(FindingCode code) {
    assertThat(log.findings()).extracting(Finding::code).containsExactly(code);
    return log.findings().get(0).amount().value();
  }

  @Test
  void the_spoilboard_may_be_cut_by_its_allowance() {
    SpoilboardCheck check = new SpoilboardCheck(Bench.KNOWN);
    double lowest = -19.1 - 0.4;
    assertThat(told(check, bit().feed(9, 9, 1, 9, 9, lowest - SLACK + JUST))).isEmpty();
    told(check, bit().feed(9, 9, 1, 9, 9, lowest - 0.25));
    assertThat(only(FindingCode.INTO_SPOILBOARD)).isCloseTo(0.25, within(1e-9));
    assertThat(log.findings().get(0).message())
        .contains("0.65 mm below the stock")
        .contains("0.25 mm more than the 0.4 mm");
  }

  @Test
  void a_probe_may_go_ten_millimetres_below_the_board() {
    SpoilboardCheck check = new SpoilboardCheck(Bench.KNOWN);
    assertThat(told(check, bit().probe(9, 9, 1, 9, 9, -29.1))).isEmpty();
    told(check, bit().probe(9, 9, 1, 9, 9, -30.1));
    assertThat(only(FindingCode.INTO_SPOILBOARD)).isCloseTo(1, within(1e-9));
  }

  @Test
  void the_axis_may_run_off_the_board_by_the_radius_with_a_warning() {
    StockEdgeCheck check = new StockEdgeCheck(Bench.KNOWN);
    assertThat(told(check, bit().feed(0, 9, -1, 300 + SLACK - JUST, 9, -1))).isEmpty();
    assertThat(told(check, bit().feed(-9, 9, 0, 309, 9, 0), bit().rapid(-9, 9, -1, 9, 9, -1)))
        .isEmpty();
    told(check, bit().feed(9, -3.175, -1, 9, 9, -1));
    assertThat(only(FindingCode.OVER_STOCK_EDGE)).isCloseTo(3.175, within(1e-9));
    told(check, bit().feed(9, 9, -1, 9, 153.185, -1));
    assertThat(log.findings())
        .extracting(Finding::code)
        .containsExactlyInAnyOrder(FindingCode.OVER_STOCK_EDGE, FindingCode.CUT_OFF_STOCK);
  }

  @Test
  void each_side_of_the_board_has_its_place() {
    for (Zero.AlongX x : Zero.AlongX.values()) {
      for (Zero.AlongY y : Zero.AlongY.values()) {
        Zero zero = new Zero(x, y, Zero.AlongZ.BED).pushed(7);
        StockBox box = StockBox.of(Bench.KNOWN.withStock(Bench.STOCK, zero)).orElseThrow();
        double left = -7 - (x == Zero.AlongX.LEFT ? 0 : x == Zero.AlongX.CENTRE ? 150 : 300);
        double front = y == Zero.AlongY.FRONT ? 0 : y == Zero.AlongY.CENTRE ? -75 : -150;
        assertThat(box).isEqualTo(new StockBox(left, front, left + 300, front + 150, 19.1, 0));
        assertThat(box.beyondMm(left - 2, front - 3, left, front)).isEqualTo(3);
        assertThat(box.beyondMm(left, front, left + 304, front + 153)).isEqualTo(4);
        assertThat(box.beyondMm(left, front, left + 300, front + 150)).isEqualTo(0);
      }
    }
  }

  @Test
  void speeds_are_compared_with_the_tool_and_with_the_spindle() {
    assertThat(told(new SpeedCheck(Bench.KNOWN), cutAt(20000 * (1 + Slack.RELATIVE)))).isEmpty();
    told(new SpeedCheck(Bench.KNOWN), cutAt(20050));
    assertThat(only(FindingCode.SPEED_BEYOND_TOOL)).isEqualTo(50);
  }

  private static Passage cutAt(double rpm) {
    return bit().spindle(Rotation.CLOCKWISE, rpm).feed(0, 9, -1, 9, 9, -1);
  }

  @Test
  void the_spindle_has_a_slowest_and_a_fastest_speed() {
    assertThat(told(new SpeedCheck(Bench.KNOWN), cutAt(7990))).isEmpty();
    told(new SpeedCheck(Bench.KNOWN), cutAt(7900));
    assertThat(only(FindingCode.SPEED_BEYOND_MACHINE)).isEqualTo(100);
    Surroundings byHand = Bench.KNOWN.withMachine(Bench.machine(true));
    assertThat(told(new SpeedCheck(byHand), cutAt(100))).hasSize(1);
  }

  @Test
  void a_spindle_turns_no_faster_than_it_can() {
    Passage fast =
        Moves.in(Bench.KNOWN).spindle(Rotation.CLOCKWISE, 24100).feed(0, 9, -1, 9, 9, -1);
    told(new SpeedCheck(Bench.KNOWN), fast);
    assertThat(only(FindingCode.SPEED_BEYOND_MACHINE)).isEqualTo(100);
  }

  @Test
  void a_speed_is_told_once_and_a_spindle_without_one_is_an_error() {
    SpeedCheck check = new SpeedCheck(Bench.KNOWN);
    Passage off = bit().spindle(Rotation.STOPPED, 0).feed(0, 9, -1, 9, 9, -1);
    assertThat(told(check, off, bit().spindle(Rotation.CLOCKWISE, 0).rapid(0, 9, 1, 9, 9, 1)))
        .isEmpty();
    told(check, cutAt(0), cutAt(0));
    only(FindingCode.NO_SPEED);
    assertThat(log.findings().get(0).moves()).isEqualTo(1);
  }

  @Test
  void feeds_are_compared_with_each_axis() {
    FeedCheck check = new FeedCheck(Bench.KNOWN);
    Moves air = Moves.in(Bench.KNOWN);
    // 3-4-5: at 5000 mm/min Y goes at 4000 and X at 3000, which is what each may.
    assertThat(told(check, air.feedMmPerMin(3750).feed(0, 0, 9, 3, 4, 9))).isEmpty();
    told(check, air.feedMmPerMin(5000).feed(0, 0, 9, 3, 4, 9));
    assertThat(only(FindingCode.FEED_BEYOND_MACHINE)).isCloseTo(1000, within(1e-9));
    assertThat(log.findings().get(0).message()).startsWith("Y would move at 4000 mm/min");
  }

  @Test
  void rounding_of_feeds_is_no_fault() {
    double most = 1000 * (1 + Slack.RELATIVE) + Slack.FEED_MM_PER_MIN;
    assertThat(FeedCheck.isAbove(most, 1000)).isFalse();
    assertThat(FeedCheck.isAbove(Math.nextUp(most), 1000)).isTrue();
  }

  @Test
  void a_tool_s_feed_counts_in_the_board_only() {
    FeedCheck check = new FeedCheck(Bench.KNOWN);
    assertThat(told(check, bit().feedMmPerMin(2500).feed(0, 9, 1, 9, 9, 1))).isEmpty();
    told(check, bit().feedMmPerMin(2500).feed(0, 9, -1, 9, 9, -1));
    assertThat(only(FindingCode.FEED_BEYOND_TOOL)).isEqualTo(500);
  }

  @Test
  void a_feed_move_needs_a_feed() {
    FeedCheck check = new FeedCheck(Bench.KNOWN);
    assertThat(told(check, bit().withoutFeed().rapid(0, 9, 1, 9, 9, 1))).isEmpty();
    told(check, bit().withoutFeed().at(3).feed(0, 9, 1, 9, 9, 1));
    assertThat(log.findings().get(0).message()).isEqualTo("no F word has been given");
    told(check, bit().feedMmPerMin(0).at(9).feed(0, 9, 1, 9, 9, 1));
    assertThat(log.findings().get(1).message()).isEqualTo("the feed rate is 0");
  }

  /** 5 degrees are 1 in 11.43; 60 degrees are straight down. */
  @Test
  void a_bit_that_does_not_cut_at_its_centre_ramps_gently() {
    PlungeCheck check = new PlungeCheck(Bench.KNOWN);
    double gentle = 10 * Math.tan(Math.toRadians(4.99));
    Moves slow = bit().feedMmPerMin(300);
    assertThat(told(check, slow.feed(9, 9, -1, 19, 9, -1 - gentle))).isEmpty();
    told(check, slow.feed(9, 9, -1, 19, 9, -1 - 10 * Math.tan(Math.toRadians(45))));
    assertThat(only(FindingCode.RAMP_TOO_STEEP)).isCloseTo(40, within(1e-9));
    told(check, slow.at(8).feed(9, 9, -1, 10, 9, -1 - Math.tan(Math.toRadians(60.01))));
    assertThat(log.findings()).extracting(Finding::code).contains(FindingCode.PLUNGE_OFF_CENTRE);
  }

  @Test
  void plunging_is_as_fast_as_the_part_of_the_feed_that_goes_down() {
    PlungeCheck check = new PlungeCheck(Bench.KNOWN);
    Moves drill = Moves.in(Bench.KNOWN).with(Bench.DRILL);
    assertThat(told(check, drill.feedMmPerMin(400).feed(9, 9, 0, 9, 9, -5))).isEmpty();
    assertThat(told(check, drill.feedMmPerMin(900).feed(9, 9, -5, 9, 9, 0))).isEmpty();
    told(check, drill.feedMmPerMin(500).feed(9, 9, 0, 9, 9, -5));
    assertThat(only(FindingCode.PLUNGE_TOO_FAST)).isCloseTo(100, within(1e-9));
  }

  @Test
  void a_drill_goes_straight_down() {
    PlungeCheck check = new PlungeCheck(Bench.KNOWN);
    Moves drill = Moves.in(Bench.KNOWN).with(Bench.DRILL).feedMmPerMin(300);
    assertThat(told(check, drill.feed(9, 9, -5, 9 + SLACK - JUST, 9, -5))).isEmpty();
    told(check, drill.feed(9, 9, -5, 12, 13, -5));
    assertThat(only(FindingCode.DRILL_SIDEWAYS)).isCloseTo(5, within(1e-9));
    assertThat(check.notChecked()).isEmpty();
    told(check, Moves.in(Bench.KNOWN).feed(9, 9, -5, 12, 13, -5));
    assertThat(check.notChecked()).hasSize(1);
  }

  /** Flutes of 22 mm and a reach of 32: without a simulated board all of it stands. */
  @Test
  void depth_is_compared_with_the_flutes_and_then_with_the_reach() {
    ReachCheck check = new ReachCheck(Bench.KNOWN, Optional.empty());
    assertThat(told(check, bit().feed(9, 9, -22, 19, 9, -22))).isEmpty();
    told(check, bit().feed(9, 9, -22.5, 19, 9, -22.5));
    assertThat(only(FindingCode.DEEPER_THAN_FLUTES)).isCloseTo(0.5, within(1e-9));
    told(check, bit().at(9).feed(9, 9, -33, 19, 9, -33));
    assertThat(log.findings())
        .extracting(Finding::code)
        .containsExactly(FindingCode.DEEPER_THAN_FLUTES, FindingCode.DEEPER_THAN_REACH);
    assertThat(log.findings().get(1).amount().value()).isCloseTo(1, within(1e-9));
    assertThat(log.findings().get(1).message()).contains("33 mm below").contains("out 32 mm");
  }

  private List<Code> ends(EndCheck check, double z) {
    told(check, bit().rapid(9, 9, -1, 9, 9, z));
    check.event(new Executed.End(Moves.line(20)), log);
    return log.findings().stream().map(Finding::code).toList();
  }

  @Test
  void a_program_ends_at_the_clearance_height() {
    EndCheck check = new EndCheck(Bench.KNOWN);
    assertThat(ends(check, -3)).isEmpty();
    told(check, bit().feed(9, 9, -1, 19, 9, -1));
    assertThat(ends(check, 5 - SLACK + JUST)).isEmpty();
    ends(check, 3);
    assertThat(only(FindingCode.ENDS_LOW)).isEqualTo(2);
    assertThat(log.findings().get(0).line()).isEqualTo(20);
  }

  @Test
  void feeding_above_the_board_for_more_than_an_entry_cuts_nothing() {
    EndCheck check = new EndCheck(Bench.KNOWN);
    Passage three = bit().at(3).feed(9, 9, 1, 12, 9, 1);
    Passage cut = bit().at(4).feed(12, 9, -1, 13, 9, -1);
    assertThat(told(check, three, cut, three, bit().feed(9, 9, 0, 99, 9, 0), three)).isEmpty();
    told(check, three);
    assertThat(only(FindingCode.CUTS_NOTHING)).isEqualTo(1);
    check.start("next.nc");
    check.event(new Executed.Torch(true, Moves.line(1)), log);
    assertThat(told(check, three, three, three)).hasSize(1);
  }

  @Test
  void zeros_fit_where_the_travel_holds_the_moves() {
    Extents moves =
        new Extents(
            Optional.of(new Range(-10, 770)),
            Optional.of(new Range(0, 561)),
            Optional.of(new Range(-20, 30)));
    List<ZeroFit> fits = ZeroFits.of(Bench.machine(false), moves);
    assertThat(fits.get(0)).isEqualTo(new ZeroFit("X", 780, 780, Optional.of(new Range(10, 10))));
    assertThat(fits.get(1)).isEqualTo(new ZeroFit("Y", 561, 560, Optional.empty()));
    assertThat(fits.get(2)).isEqualTo(new ZeroFit("Z", 50, 120, Optional.of(new Range(-100, -30))));
    Extents rounded =
        new Extents(
            Optional.of(new Range(0, 780.004)), Optional.empty(), Optional.of(new Range(0, 1)));
    assertThat(ZeroFits.of(Bench.machine(false), rounded)).hasSize(2);
    assertThat(ZeroFits.of(Bench.machine(false), rounded).get(0).zeroMm().orElseThrow().minMm())
        .isCloseTo(-0.002, within(1e-9));
  }

  @Test
  void extents_join_axis_by_axis() {
    Extents x = new Extents(Optional.of(new Range(1, 5)), Optional.empty(), Optional.empty());
    Extents y =
        new Extents(Optional.of(new Range(-2, 3)), Optional.of(new Range(4, 4)), Optional.empty());
    Extents both =
        new Extents(Optional.of(new Range(-2, 5)), Optional.of(new Range(4, 4)), Optional.empty());
    assertThat(x.with(y)).isEqualTo(both);
    assertThat(y.with(x)).isEqualTo(both);
    assertThat(both.get(0)).contains(new Range(-2, 5));
    assertThat(both.get(1)).contains(new Range(4, 4));
    assertThat(both.get(2)).isEmpty();
    assertThat(new Range(-2, 5).sizeMm()).isEqualTo(7);
  }

  @Test
  void numbers_are_told_without_idle_zeros() {
    assertThat(Amount.text(1.5)).isEqualTo("1.5");
    assertThat(Amount.text(100)).isEqualTo("100");
    assertThat(Amount.text(-0.0001)).isEqualTo("0");
    assertThat(Amount.text(0.0625)).isEqualTo("0.063");
    assertThat(new Amount(2.5, "deg")).hasToString("2.5 deg");
    assertThat(Amount.NONE).hasToString("");
  }
}
