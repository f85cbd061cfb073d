package frieze.dryrun;

import frieze.shop.Machine;
import frieze.shop.Zero;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The clock against a fine integration that takes no speed from it, on whole programs. */
class FineClockTest {
  @ParameterizedTest
  @ValueSource(strings = {"rs274-full", "short-arcs"})
  void the_clock_agrees_within_two_in_a_hundred_on_our_programs(String post) throws Exception {
    Planned planned = Planned.with(post, false, false, Zero.LEFT_FRONT_TOP);
    Machine machine = planned.setup().machine();
    for (ProgramText program : planned.programs()) {
      FineClock.compare(program, machine);
    }
  }

  @Test
  void the_clock_agrees_within_two_in_a_hundred_on_a_program_by_hand() throws Exception {
    FineClock.compare(Bench.program("good.nc", Bench.GOOD), Bench.machine(false));
  }
}
