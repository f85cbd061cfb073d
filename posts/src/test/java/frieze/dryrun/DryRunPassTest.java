package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.clock.TimeSpent;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Surroundings;
import frieze.rs274.ReadingRules;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What each kind of event does, seen on times that can be worked out by hand: 50 mm/s with 500
 * mm/s2 costs 0.1 s more than the way for each start and stop together.
 */
class DryRunPassTest {
  private static final Surroundings KNOWN =
      Surroundings.UNKNOWN
          .withMachine(Bench.machine(false))
          .withTools(List.of(Bench.FLAT, Bench.DRILL));

  /** 120 mm in two moves: 2.4 s and 0.1 s. */
  private static final String WAY = "G21 G90 G94 F3000\nG1 X0\nG1 X60\nG1 X120\n";

  private static final double THROUGH = 2.5;
  private static final double HALTED = 2.6;

  private static DryRunResult run(ReadingRules rules, String... texts) {
    List<ProgramText> programs = new ArrayList<>();
    for (String text : texts) {
      programs.add(
          ProgramText.of(
              "p" + programs.size() + ".nc", text.getBytes(StandardCharsets.US_ASCII), rules));
    }
    return DryRun.in(KNOWN).run(programs);
  }

  private static DryRunResult run(String... texts) {
    return run(ReadingRules.REPORT, texts);
  }

  private static double feedSeconds(String between) {
    return run(WAY.replace("G1 X120", between + "\nG1 X120") + "M2\n").time().feedSeconds();
  }

  private static TimeSpent idle(String... texts) {
    TimeSpent time = run(texts).time();
    return new TimeSpent(0, 0, time.waitSeconds(), time.handSeconds());
  }

  private static TimeSpent waits(double seconds) {
    return new TimeSpent(0, 0, seconds, 0);
  }

  @Test
  void two_moves_in_line_are_one_way_unless_something_halts_the_tool() {
    assertThat(feedSeconds("G21")).isCloseTo(THROUGH, within(1e-9));
    assertThat(feedSeconds("G4 P0")).isCloseTo(HALTED, within(1e-9));
    assertThat(feedSeconds("M0")).isCloseTo(HALTED, within(1e-9));
    assertThat(feedSeconds("T2 M6")).isCloseTo(HALTED, within(1e-9));
    assertThat(feedSeconds("S9000 M3")).isCloseTo(HALTED, within(1e-9));
    assertThat(feedSeconds("M1")).isCloseTo(THROUGH, within(1e-9));
  }

  @Test
  void a_torch_is_switched_at_rest() {
    ReadingRules torch = ReadingRules.REPORT.but().torch(3, 5).build();
    String text = WAY.replace("G1 X120", "M3\nG1 X120") + "M5\nM2\n";
    assertThat(run(torch, text).time().feedSeconds()).isCloseTo(HALTED, within(1e-9));
  }

  @Test
  void exact_stops_are_made_as_long_as_they_are_asked_for() {
    assertThat(feedSeconds("G61.1")).isCloseTo(HALTED, within(1e-9));
    assertThat(feedSeconds("G61.1\nG61")).isCloseTo(THROUGH, within(1e-9));
    assertThat(feedSeconds("G61.1\nG64")).isCloseTo(THROUGH, within(1e-9));
    DryRunResult two = run(WAY + "G61.1\nM2\n", WAY + "M2\n");
    assertThat(two.programs().get(1).time().feedSeconds()).isCloseTo(THROUGH, within(1e-9));
  }

  @Test
  void each_program_has_its_own_page_and_ends_at_rest() {
    DryRunResult two = run(WAY, WAY + "G1 X100\nM2\n");
    assertThat(two.programs().get(0).time().feedSeconds()).isCloseTo(THROUGH, within(1e-9));
    assertThat(two.programs().get(0).feedMm()).isEqualTo(120);
    assertThat(two.programs().get(1).feedMm()).isEqualTo(140);
    assertThat(two.findings()).filteredOn(f -> f.code() == FindingCode.NOTHING_MOVES).isEmpty();
  }

  @Test
  void a_changer_takes_its_time_for_another_tool_only() {
    assertThat(idle("T1 M6\n" + WAY)).isEqualTo(waits(15));
    assertThat(idle("T1 M6\nT1 M6\n" + WAY)).isEqualTo(waits(15));
    assertThat(idle("T1 M6\nT2 M6\n" + WAY)).isEqualTo(waits(30));
    assertThat(idle("T1 M6\n(change to tool 2)\nM0\n" + WAY)).isEqualTo(waits(30));
  }

  @Test
  void a_tool_that_is_put_in_before_a_program_takes_its_time_once() {
    ReadingRules one =
        ReadingRules.REPORT.but().start(ReadingRules.REPORT.start().withTool(1)).build();
    assertThat(run(one, WAY).time().waitSeconds()).isEqualTo(15);
    assertThat(run(one, WAY, WAY).time().waitSeconds()).isEqualTo(15);
    assertThat(run(one, WAY + "T2 M6\n", WAY).time().waitSeconds()).isEqualTo(45);
    assertThat(run(WAY, WAY).time().waitSeconds()).isEqualTo(0);
  }

  @Test
  void a_spindle_comes_up_to_speed_when_it_starts_or_turns_the_other_way() {
    assertThat(idle("S9000 M3\n" + WAY)).isEqualTo(waits(3));
    assertThat(idle("S9000 M3\n" + WAY + "M3\n")).isEqualTo(waits(3));
    assertThat(idle("S9000 M3\n" + WAY + "M4\n")).isEqualTo(waits(6));
    assertThat(idle("S9000 M3\n" + WAY + "M5\n")).isEqualTo(waits(3));
    assertThat(idle("S9000 M3\n" + WAY + "M5\nM3\n")).isEqualTo(waits(6));
    assertThat(idle("S9000 M3\n" + WAY, "S9000 M3\n" + WAY)).isEqualTo(waits(6));
  }

  @Test
  void the_operator_takes_time_at_stops_that_are_not_optional() {
    assertThat(idle(WAY + "M0\n")).isEqualTo(new TimeSpent(0, 0, 0, 30));
    assertThat(idle(WAY + "M1\n")).isEqualTo(TimeSpent.NONE);
    assertThat(idle(WAY + "G4 P2.5\n")).isEqualTo(waits(2.5));
  }

  /** Each kind of event is what one of the checks waits for. */
  @Test
  void checks_see_every_event() {
    assertThat(codes(run("S9000 M3\n" + WAY))).containsExactly(FindingCode.SPINDLE_LEFT_ON);
    assertThat(codes(run("S9000 M3\n" + WAY + "M5\n"))).isEmpty();
    String offset = "S9000 M3\nG92 X5\n" + WAY + "M5\n";
    assertThat(codes(run(offset))).containsExactly(FindingCode.STALE_OFFSET);
    assertThat(run(offset).findings().get(0).line()).isEqualTo(2);
    ReadingRules torch = ReadingRules.REPORT.but().torch(3, 5).build();
    assertThat(codes(run(torch, "M3\nG4 P1\n" + WAY + "M5\nM2\n"))).isEmpty();
    assertThat(codes(run(torch, "M3\n" + WAY + "M5\nM2\n"))).containsExactly(FindingCode.NO_PIERCE);
    assertThat(codes(run(torch, "M3\nG4 P1\n" + WAY + "M2\n")))
        .containsExactly(FindingCode.TORCH_LEFT_ON);
  }

  @Test
  void a_program_starts_with_nothing_known_of_the_one_before() {
    String travel = "G21 G90\nG0 X5\nG0 X9\nM2\n";
    assertThat(run(travel, travel).findings())
        .filteredOn(f -> f.code() == FindingCode.TRAVEL_AT_UNKNOWN_HEIGHT)
        .extracting(Finding::program)
        .containsExactly("p0.nc", "p1.nc");
  }

  private static List<FindingCode> codes(DryRunResult result) {
    // How the text itself is written is none of the checks' business.
    return result.findings().stream()
        .map(Finding::code)
        .filter(FindingCode.class::isInstance)
        .map(FindingCode.class::cast)
        .toList();
  }
}
