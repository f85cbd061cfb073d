package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.TorchFacts;
import frieze.dryrun.torch.TorchEdgesTest;
import frieze.dryrun.torch.TorchPartCheck;
import frieze.motion.Executed;
import frieze.region.Region;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * A part of 20 x 10 mm in a kerf of 1.6 mm: pierced 3 mm beside it at least, for half a second, and
 * travelled over at Z20.
 */
class TorchRunsTest {
  private static final Region PART = TorchEdgesTest.box(0, 0, 20, 10);

  private TorchFacts facts = new TorchFacts(List.of(PART), List.of(), 1.6, 3, 0.5, 20);
  private TorchPartCheck check = new TorchPartCheck(facts);
  private FindingLog log = Moves.log();

  private void facts(TorchFacts other) {
    facts = other;
    check = new TorchPartCheck(facts);
    log = Moves.log();
  }

  private void rapid(double... ends) {
    check.move(Moves.in(Bench.KNOWN).rapid(ends), log);
  }

  private void feed(double... ends) {
    check.move(Moves.in(Bench.KNOWN).feed(ends), log);
  }

  private void light(int line, double x, double y) {
    rapid(x, y, 20, x, y, 3.8);
    check.event(new Executed.Torch(true, Moves.line(line)), log);
  }

  private void dwell(double seconds) {
    Executed.State state =
        new Executed.State(
            Optional.empty(), Executed.Rotation.STOPPED, OptionalDouble.empty(), true);
    check.event(new Executed.Dwell(seconds, state, SourceSpan.NONE), log);
  }

  private void putOut() {
    check.event(new Executed.Torch(false, SourceSpan.NONE), log);
  }

  private Finding only(FindingCode code) {
    assertThat(log.findings()).extracting(Finding::code).containsExactly(code);
    return log.findings().get(0);
  }

  /** What is said of pierces after a run along the bottom edge. */
  private List<Finding> pierced(double x, double y) {
    light(7, x, y);
    dwell(0.5);
    feed(x, y, 1.5, x + 0.5, y, 1.5);
    check.finish(log);
    return log.findings().stream()
        .filter(f -> f.code() == FindingCode.PIERCE_ON_PART || f.code() == FindingCode.LIT_IN_KERF)
        .toList();
  }

  @Test
  void the_pierce_delay_may_be_a_thousandth_of_a_second_short() {
    light(1, -5, 5);
    dwell(0.3);
    dwell(0.19901);
    feed(-5, 5, 1.5, -4, 5, 1.5);
    assertThat(log.findings()).isEmpty();
    putOut();
    light(2, -5, 5);
    dwell(0.25);
    feed(-5, 5, 1.5, -4, 5, 1.5);
    dwell(9);
    feed(-4, 5, 1.5, -3, 5, 1.5);
    Finding finding = only(FindingCode.PIERCE_CUT_SHORT);
    assertThat(finding.amount()).isEqualTo(new Amount(0.25, "s"));
    assertThat(finding.message()).isEqualTo("moves off after 0.25 s, but the pierce takes 0.5 s");
    assertThat(finding.moves()).isEqualTo(1);
  }

  @Test
  void going_down_while_lit_is_not_moving_off() {
    light(1, -5, 5);
    feed(-5, 5, 3.8, -5, 5, 1.5);
    dwell(0.5);
    feed(-5, 5, 1.5, -4, 5, 1.5);
    assertThat(log.findings()).isEmpty();
  }

  @Test
  void unlit_travel_may_be_as_low_as_rounding_makes_it() {
    rapid(0, 0, 20 - Slack.LENGTH_MM, 9, 0, 20 - Slack.LENGTH_MM);
    rapid(9, 0, 20, 9, 0, 1);
    assertThat(log.findings()).isEmpty();
    rapid(0, 0, 17, 9, 0, 17.5);
    Finding finding = only(FindingCode.TORCH_TRAVELS_LOW);
    assertThat(finding.amount()).isEqualTo(Amount.mm(3));
    assertThat(finding.message()).isEqualTo("travels unlit 3 mm below the clear height");
  }

  @Test
  void a_pierce_keeps_its_distance_from_the_part() {
    assertThat(pierced(10, -3)).isEmpty();
    facts(facts);
    assertThat(pierced(10, -2.996)).isEmpty();
    facts(facts);
    Finding near = pierced(10, -2).get(0);
    assertThat(near.line()).isEqualTo(7);
    assertThat(near.amount()).isEqualTo(Amount.mm(2));
    assertThat(near.message()).isEqualTo("pierces 2 mm from the part, but 3 mm are needed");
    facts(facts);
    assertThat(pierced(10, 5).get(0).message()).isEqualTo("pierces the part");
  }

  @Test
  void a_place_where_the_part_is_pierced_on_purpose_is_marked_only() {
    TorchFacts drilled = new TorchFacts(List.of(PART), List.of(new Point(10, 5)), 1.6, 3, 0.5, 20);
    for (double off : new double[] {0, 0.0999, 0.12}) {
      facts(drilled);
      light(7, 10 + off, 5);
      dwell(0.5);
      putOut();
      check.finish(log);
      assertThat(log.findings().stream().anyMatch(f -> f.code() == FindingCode.PIERCE_ON_PART))
          .isEqualTo(off > 0.1);
    }
    // Cutting on from there is no mark.
    facts(drilled);
    assertThat(pierced(10, 5)).hasSize(1);
  }

  @Test
  void a_torch_lit_in_a_kerf_on_purpose_is_told_as_that() {
    TorchFacts again = facts.withRelit(List.of(new Point(10, -0.8)));
    facts(again);
    Finding lit = pierced(10, -0.8).get(0);
    assertThat(lit.code()).isEqualTo(FindingCode.LIT_IN_KERF);
    assertThat(lit.amount().value()).isCloseTo(0.8, within(1e-12));
    facts(again);
    assertThat(pierced(10.2, -0.8).get(0).code()).isEqualTo(FindingCode.PIERCE_ON_PART);
    facts(facts.withRelit(List.of(new Point(10, -4))));
    assertThat(pierced(10, -4)).isEmpty();
  }

  /** Two cuts that leave 0.5 mm and a kerf between their ends, at a joint of 0.5 mm. */
  @Test
  void the_width_of_a_joint_is_measured_between_the_cuts() {
    for (double gap : new double[] {0.5, 0.47, 0.4}) {
      facts(
          new TorchFacts(
              List.of(PART),
              List.of(),
              1.6,
              3,
              0.5,
              20,
              List.of(
                  new TorchFacts.Joint(
                      new Point(10, -0.8), new Point(10, 1), new Point(10, -3), 0.5)),
              List.of()));
      double end = (gap + 1.6) / 2;
      light(1, -5, -0.8);
      dwell(0.5);
      feed(-5, -0.8, 1.5, 10 - end, -0.8, 1.5);
      putOut();
      light(2, 25, -0.8);
      dwell(0.5);
      feed(25, -0.8, 1.5, 10 + end, -0.8, 1.5);
      check.finish(log);
      List<Finding> burnt =
          log.findings().stream()
              .filter(f -> f.message().startsWith("the micro-joint at X10 Y-0.8"))
              .toList();
      assertThat(burnt).hasSize(gap < 0.48 ? 1 : 0);
      if (gap == 0.4) {
        assertThat(burnt.get(0).amount().value()).isCloseTo(0.4, within(1e-9));
        assertThat(burnt.get(0).message()).endsWith("is 0.4 mm wide, but 0.5 mm are asked for");
      }
    }
  }

  /** Edges and pieces are looked at too: one line along the bottom frees nothing. */
  @Test
  void at_the_end_edges_and_pieces_are_judged() {
    light(1, -5, -0.8);
    dwell(0.5);
    feed(-5, -0.8, 1.5, 25, -0.8, 1.5);
    check.finish(log);
    assertThat(log.findings())
        .extracting(Finding::code)
        .containsExactlyInAnyOrder(FindingCode.EDGE_LEFT, FindingCode.NOT_FREE);
  }

  @Test
  void without_a_part_or_a_run_there_is_nothing_to_compare() {
    facts(new TorchFacts(List.of(), List.of(), 1.6, 3, 0.5, 20));
    assertThat(pierced(10, 5)).isEmpty();
    facts(new TorchFacts(List.of(PART), List.of(), 1.6, 3, 0.5, 20));
    check.finish(log);
    assertThat(log.findings()).isEmpty();
  }
}
