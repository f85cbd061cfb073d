package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.torch.TorchCheck;
import frieze.motion.Executed;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The torch's own check, event by event. */
class TorchHeightTest {
  private final TorchCheck check = new TorchCheck(false);
  private final FindingLog log = Moves.log();

  private void torch(boolean on, int line) {
    check.event(new Executed.Torch(on, Moves.line(line)), log);
  }

  private void dwell(double seconds) {
    Executed.State state =
        new Executed.State(
            Optional.empty(), Executed.Rotation.STOPPED, OptionalDouble.empty(), true);
    check.event(new Executed.Dwell(seconds, state, SourceSpan.NONE), log);
  }

  private void feed(double... ends) {
    check.move(Moves.in(Bench.KNOWN).feed(ends), log);
  }

  private void cutAt(double z) {
    torch(true, 1);
    dwell(0.5);
    feed(0, 0, z, 9, 0, z);
  }

  private Finding only(FindingCode code) {
    assertThat(log.findings()).extracting(Finding::code).containsExactly(code);
    return log.findings().get(0);
  }

  @Test
  void cuts_may_differ_by_half_a_millimetre_in_height() {
    cutAt(1.5);
    cutAt(2);
    cutAt(1);
    assertThat(log.findings()).isEmpty();
    cutAt(2.25);
    assertThat(only(FindingCode.TORCH_HEIGHT).amount().value()).isCloseTo(0.75, within(1e-12));
    assertThat(only(FindingCode.TORCH_HEIGHT).message()).contains("0.75 mm above the height");
  }

  @Test
  void a_lower_cut_is_told_as_lower() {
    cutAt(1.5);
    cutAt(0.75);
    assertThat(only(FindingCode.TORCH_HEIGHT).message()).contains("0.75 mm below the height");
  }

  @Test
  void a_feed_at_cutting_height_needs_a_lit_torch() {
    cutAt(1.5);
    torch(false, 2);
    feed(9, 0, 2.0001, 20, 0, 2.0001);
    feed(20, 0, 1.5, 20, 0, 1);
    assertThat(log.findings()).isEmpty();
    feed(20, 0, 2, 30, 0, 2);
    only(FindingCode.TORCH_OFF);
  }

  @Test
  void before_the_first_cut_no_height_is_a_cutting_height() {
    torch(false, 1);
    feed(0, 0, 1, 9, 0, 1);
    assertThat(log.findings()).isEmpty();
  }

  @Test
  void a_dwell_of_no_time_is_no_pierce() {
    torch(true, 1);
    dwell(0);
    feed(0, 0, 1.5, 9, 0, 1.5);
    only(FindingCode.NO_PIERCE);
    feed(9, 0, 1.5, 20, 0, 1.5);
    assertThat(only(FindingCode.NO_PIERCE).moves()).isEqualTo(1);
  }

  @Test
  void going_down_while_lit_is_no_cut() {
    torch(true, 1);
    feed(0, 0, 3.8, 0, 0, 1.5);
    dwell(0.5);
    feed(0, 0, 1.5, 9, 0, 1.5);
    assertThat(log.findings()).isEmpty();
  }

  @Test
  void a_rapid_is_objected_to_only_while_the_torch_is_lit() {
    check.move(Moves.in(Bench.KNOWN).rapid(0, 0, 9, 9, 0, 9), log);
    torch(true, 1);
    torch(false, 2);
    check.move(Moves.in(Bench.KNOWN).rapid(0, 0, 9, 9, 0, 9), log);
    assertThat(log.findings()).isEmpty();
    torch(true, 3);
    check.move(Moves.in(Bench.KNOWN).rapid(0, 0, 9, 0, 0, 20), log);
    only(FindingCode.TORCH_RAPID);
  }

  @Test
  void a_program_whose_end_puts_the_torch_out_has_left_it_on() {
    check.event(new Executed.End(SourceSpan.NONE), log);
    torch(true, 4);
    torch(false, 6);
    check.event(new Executed.End(Moves.line(7)), log);
    assertThat(log.findings()).isEmpty();
    torch(true, 8);
    torch(false, 9);
    check.event(new Executed.End(Moves.line(9)), log);
    assertThat(only(FindingCode.TORCH_LEFT_ON).line()).isEqualTo(9);
    check.start("next.nc");
    check.event(new Executed.End(Moves.line(9)), log);
    only(FindingCode.TORCH_LEFT_ON);
  }

  @Test
  void it_says_that_edges_need_the_part() {
    assertThat(check.notChecked()).isEmpty();
    torch(true, 1);
    assertThat(check.notChecked())
        .extracting(NotChecked::what)
        .containsExactly("edges, pierces and pieces of the torch");
    TorchCheck known = new TorchCheck(true);
    known.event(new Executed.Torch(true, SourceSpan.NONE), log);
    assertThat(known.notChecked()).isEmpty();
  }
}
