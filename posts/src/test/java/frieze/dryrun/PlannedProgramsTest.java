package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.shop.Zero;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What our own planner and posts make gives no finding. */
class PlannedProgramsTest {
  @ParameterizedTest
  @CsvSource({
    "rs274-full, false, false, TOP",
    "rs274-full, true, true, BED",
    "short-arcs, true, false, TOP",
    "short-arcs, false, true, BED",
  })
  void our_own_programs_have_no_finding(
      String post, boolean byHand, boolean inches, Zero.AlongZ z) {
    Zero zero = new Zero(Zero.AlongX.LEFT, Zero.AlongY.CENTRE, z);
    Planned planned = Planned.with(post, byHand, inches, zero);
    DryRunResult result = planned.run();
    assertThat(result.findings()).isEmpty();
    assertThat(result.readable()).isTrue();
    assertThat(result.zeroFits()).hasSize(3).allMatch(ZeroFit::fits);
    assertThat(result.time().feedSeconds()).isPositive();
  }
}
