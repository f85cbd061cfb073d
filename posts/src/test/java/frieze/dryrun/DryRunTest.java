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

  @Test
  void a_stop_that_tells_the_operator_to_change_the_tool_changes_it() {
    String byStop = Bench.GOOD.replace("T2 M6", "(CHANGE TO TOOL 2, drill 5.)\n(THEN START)\nM0");
    DryRunResult result = Bench.run(Bench.KNOWN, byStop);
    assertThat(result.findings()).isEmpty();
    assertThat(result.tools()).extracting(t -> t.toolNumber().orElse(0)).containsExactly(1, 2);
    // Without the comment the holes are taken to be bored with the flat tool.
    String silent = Bench.GOOD.replace("T2 M6", "(THEN START)\nM0");
    assertThat(Bench.run(Bench.KNOWN, silent).tools()).hasSize(1);
  }
}
