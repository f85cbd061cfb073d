package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DryRunTest {
  @Test
  void a_good_program_gives_no_finding() {
    DryRunResult result = Bench.run(Bench.KNOWN, Bench.GOOD);
    assertThat(result.findings()).isEmpty();
    assertThat(result.mayWrite()).isTrue();
  }
}
