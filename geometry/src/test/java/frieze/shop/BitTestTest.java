package frieze.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class BitTestTest {
  private static final double EXACT = 1e-12;

  /** The closed form: tan(angle / 2) is half of what the width grows by for each millimetre. */
  @Test
  void two_widths_give_angle_and_tip() {
    BitTest test = BitTest.of(List.of(groove(2, 2.41), groove(4, 4.72)));
    assertThat(Math.tan(test.angleRad() / 2)).isCloseTo((4.72 - 2.41) / 2 / 2, within(EXACT));
    assertThat(test.tipMm()).isCloseTo(2 * 2.41 - 4.72, within(EXACT));
    assertThat(test.worstMm()).isCloseTo(0, within(EXACT));
  }

  @Test
  void widths_of_a_known_bit_give_that_bit() {
    for (double degrees : new double[] {20, 60, 90, 120}) {
      double growth = 2 * Math.tan(Math.toRadians(degrees / 2));
      BitTest test =
          BitTest.of(
              List.of(
                  groove(4, 0.3 + 4 * growth),
                  groove(1, 0.3 + growth),
                  groove(2, 0.3 + 2 * growth)));
      assertThat(Math.toDegrees(test.angleRad())).isCloseTo(degrees, within(1e-9));
      assertThat(test.tipMm()).isCloseTo(0.3, within(EXACT));
    }
  }

  /** By hand: slope ((-1)(-1.5) + (1)(2)) / 2 = 1.75 about the mean (2, 3.5). */
  @Test
  void more_widths_give_the_least_squares() {
    BitTest test = BitTest.of(List.of(groove(1, 2), groove(2, 3), groove(3, 5.5)));
    assertThat(2 * Math.tan(test.angleRad() / 2)).isCloseTo(1.75, within(EXACT));
    assertThat(test.tipMm()).isCloseTo(3.5 - 2 * 1.75, within(EXACT));
    assertThat(test.worst()).isEqualTo(groove(2, 3));
    assertThat(test.worstMm()).isCloseTo(-0.5, within(EXACT));
  }

  /** The line through the point with the least squares: sum of d w over sum of d d. */
  @Test
  void a_tip_is_never_below_nothing() {
    BitTest test = BitTest.of(List.of(groove(2, 2), groove(4, 4.4)));
    assertThat(test.tipMm()).isZero();
    assertThat(2 * Math.tan(test.angleRad() / 2))
        .isCloseTo((2 * 2 + 4 * 4.4) / (4 + 16), within(EXACT));
    assertThat(test.worst()).isEqualTo(groove(2, 2));
    assertThat(test.worstMm()).isCloseTo(-0.16, within(EXACT));
  }

  @Test
  void grooves_that_tell_nothing_are_refused() {
    assertThatThrownBy(() -> BitTest.of(List.of(groove(2, 2.3), groove(2, 2.4))))
        .hasMessageContaining("two different depths");
    assertThatThrownBy(() -> BitTest.of(List.of(groove(2, 2.3), groove(4, 2.2))))
        .hasMessageContaining("widen by -0.0");
    assertThatThrownBy(() -> groove(0, 2)).hasMessageContaining("depthMm");
  }

  private static BitTest.Groove groove(double depthMm, double widthMm) {
    return new BitTest.Groove(depthMm, widthMm);
  }
}
