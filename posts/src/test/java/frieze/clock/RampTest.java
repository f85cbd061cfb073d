package frieze.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Uniformly accelerated motion; the values were worked out by hand from the textbook's formulas.
 */
class RampTest {
  private static final double EXACT = 5e-10;

  @ParameterizedTest
  @CsvSource({
    "100, 50, 500, 0, 0, 2.1",
    "2, 50, 500, 0, 0, 0.126491106",
    "5, 50, 500, 0, 0, 0.2",
    "30, 50, 500, 10, 20, 0.65",
    "1, 50, 500, 10, 0, 0.073808315",
    "250, 100, 750, 0, 0, 2.633333333",
  })
  void a_straight_move_takes_the_time_of_the_formula(
      double d, double v, double a, double v0, double v1, double t) {
    assertThat(Ramp.seconds(d, v, a, a, v0, v1)).isCloseTo(t, within(EXACT));
  }

  @Test
  void a_move_that_only_brakes_takes_the_time_of_the_formula() {
    assertThat(Ramp.seconds(0.25, 50, 500, 500, 20, Math.sqrt(150)))
        .isCloseTo(0.015505103, within(EXACT));
  }

  @Test
  void unequal_ramps_take_the_time_of_the_formula() {
    assertThat(Ramp.seconds(100, 60, 400, 800, 0, 0)).isCloseTo(1.779166667, within(EXACT));
  }
}
