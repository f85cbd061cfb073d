package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Range;
import frieze.dryrun.scene.Surroundings;
import frieze.rs274.ProgramCode;
import frieze.shop.Zero;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a dry run makes of texts as a whole. */
class DryRunReadingTest {
  private static final String FINE = "G21 G90\nG0 Z5\nG0 X5 Y5\nM2\n";

  @Test
  void every_text_must_be_readable() {
    assertThat(Bench.run(Surroundings.UNKNOWN, FINE, FINE).readable()).isTrue();
    assertThat(Bench.run(Surroundings.UNKNOWN, FINE, "G21 G90\nG0 X\n").readable()).isFalse();
    assertThat(Bench.run(Surroundings.UNKNOWN, "G21 G90\nG0 X\n", FINE).readable()).isFalse();
  }

  /** A radius that is too short: a program all the same. */
  @Test
  void a_line_that_cannot_be_carried_out_is_a_finding_and_no_lack_of_language() {
    DryRunResult arc =
        Bench.run(Surroundings.UNKNOWN, "G21 G90 G17 F100\nG0 Z5\nG0 X0 Y0\nG2 X10 Y0 R1\nM2\n");
    assertThat(arc.findings()).anyMatch(f -> f.isError() && f.code() instanceof ProgramCode);
    assertThat(arc.readable()).isTrue();
  }

  @Test
  void what_a_check_says_better_is_said_once() {
    DryRunResult result = Bench.run(Surroundings.UNKNOWN, "G21 G90 S900 M3\nG0 Z5\nG1 X5 Y5\nM2\n");
    assertThat(result.findings())
        .filteredOn(f -> f.line() == 3)
        .extracting(Finding::code)
        .containsExactly(FindingCode.NO_FEED);
  }

  /** 500 mm to the right in one place, 500 mm to the left in the other: 1000 mm from one zero. */
  @Test
  void programs_of_a_stock_that_is_moved_share_their_zero() {
    Surroundings known = Surroundings.UNKNOWN.withMachine(Bench.machine(false));
    List<DryRunResult> results =
        DryRun.in(known)
            .runMoved(
                List.of(
                    new Clamping(known, List.of(Bench.program("right.nc", way(500)))),
                    new Clamping(known, List.of(Bench.program("left.nc", way(-500))))));
    assertThat(results).hasSize(2);
    assertThat(results.get(0).findings()).isEmpty();
    assertThat(results.get(0).zeroFits().get(0).fits()).isFalse();
    assertThat(results.get(1).findings()).hasSize(1);
    Finding finding = results.get(1).findings().get(0);
    assertThat(finding.code()).isEqualTo(FindingCode.BEYOND_TRAVEL);
    assertThat(finding.amount()).isEqualTo(Amount.mm(220));
    assertThat(finding.message()).startsWith("X needs 1000 mm over all steps from one zero");
    List<DryRunResult> near =
        DryRun.in(known)
            .runMoved(
                List.of(
                    new Clamping(known, List.of(Bench.program("right.nc", way(400)))),
                    new Clamping(known, List.of(Bench.program("left.nc", way(-300))))));
    assertThat(near.get(1).findings()).isEmpty();
    assertThat(near.get(0).zeroFits().get(0).zeroMm()).contains(new Range(300, 380));
  }

  private static String way(double x) {
    return "G21 G90\nG0 Z5\nG0 X0 Y0\nG0 X" + x + "\nM2\n";
  }

  /** On a stock that lies turned by a right angle the text's X is the stock's Y. */
  @Test
  void travel_is_judged_by_the_text_where_the_stock_lies_turned() {
    Surroundings turned =
        Surroundings.UNKNOWN
            .withMachine(Bench.machine(false))
            .withStock(Bench.STOCK, Zero.LEFT_FRONT_TOP.skewed(Math.PI / 2));
    DryRunResult fits = Bench.run(turned, way(700).replace("M2", "G0 X0\nM2"));
    assertThat(fits.findings()).filteredOn(f -> f.code() == FindingCode.BEYOND_TRAVEL).isEmpty();
    DryRunResult beyond = Bench.run(turned, way(800).replace("M2", "G0 X0\nM2"));
    assertThat(beyond.findings())
        .filteredOn(f -> f.code() == FindingCode.BEYOND_TRAVEL)
        .extracting(f -> f.amount())
        .containsExactly(Amount.mm(20));
    assertThat(beyond.program().all().x()).contains(new Range(0, 800));
  }
}
