package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.clock.ClockAccount;
import frieze.clock.ClockSettings;
import frieze.clock.MotionClock;
import frieze.motion.Executed;
import frieze.rs274.Interpreter;
import frieze.shop.Machine;
import frieze.shop.Zero;
import java.util.Optional;
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
      compare(program, machine);
    }
  }

  @Test
  void the_clock_agrees_within_two_in_a_hundred_on_a_program_by_hand() throws Exception {
    compare(Bench.program("good.nc", Bench.GOOD), Bench.machine(false));
  }

  private static void compare(ProgramText program, Machine machine) throws Exception {
    MotionClock clock = new MotionClock(Optional.of(machine), ClockSettings.USUAL);
    ClockAccount account = new ClockAccount();
    FineClock fine = new FineClock(machine, ClockSettings.USUAL.deviationMm());
    Interpreter.run(
        program.name(),
        program.open(),
        program.rules(),
        event -> {
          if (event instanceof Executed.Move move) {
            if (new Passage(move, Optional.empty(), Optional.empty(), Optional.empty())
                .isPlaced()) {
              clock.move(move, account);
              fine.move(move);
            }
          } else {
            clock.stop();
            fine.stop();
          }
        });
    double expected = fine.seconds();
    double told = account.spent().totalSeconds();
    assertThat(expected).isGreaterThan(1);
    assertThat(told)
        .as("%s: %s s by the clock, %s s in fine steps", program.name(), told, expected)
        .isCloseTo(expected, within(expected * 0.02));
  }
}
