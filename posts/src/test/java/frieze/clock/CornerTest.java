package frieze.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Closed forms of a circle that touches both legs of a corner at a given deviation. */
class CornerTest {
  private static final double EXACT = 1e-6;

  @ParameterizedTest
  @CsvSource({
    "170, 80.899820, 62.664731",
    "150, 26.621298, 20.620769",
    "135, 17.419150, 13.492815",
    "120, 12.712299, 9.846904",
    "90, 7.768870, 6.017741",
    "60, 5, 3.872983",
    "45, 3.936732, 3.049380",
    "30, 2.954650, 2.288662",
    "10, 1.544969, 1.196728",
    "0, 0, 0",
  })
  void a_corner_is_passed_on_the_circle_of_its_deviation(
      double angleDeg, double coarse, double fine) {
    double cosTurn = -Math.cos(Math.toRadians(angleDeg));
    assertThat(Corner.speedMmPerS(cosTurn, 0.05, 500)).isCloseTo(coarse, within(EXACT));
    assertThat(Corner.speedMmPerS(cosTurn, 0.02, 750)).isCloseTo(fine, within(EXACT));
  }

  @Test
  void straight_on_has_no_limit() {
    assertThat(Corner.speedMmPerS(1, 0.05, 500)).isInfinite();
    assertThat(Corner.facetSpeedMmPerS(1, 1, 1, 500)).isInfinite();
  }

  /** The corner rule alone, on a circle of radius 10 mm cut as chords. */
  @ParameterizedTest
  @CsvSource({"16, 35.72", "32, 71.88", "64, 143.98", "128, 288.07", "360, 810.27"})
  void the_corner_rule_alone_overrates_fine_facets(int chords, double speed) {
    double cosTurn = Math.cos(2 * Math.PI / chords);
    assertThat(Corner.speedMmPerS(cosTurn, 0.05, 500)).isCloseTo(speed, within(0.005));
  }

  @ParameterizedTest
  @CsvSource({"16", "32", "64", "128", "360"})
  void facets_of_a_circle_are_limited_as_the_circle_is(int chords) {
    double turn = 2 * Math.PI / chords;
    double leg = 2 * 10 * Math.sin(turn / 2);
    assertThat(Corner.facetSpeedMmPerS(Math.cos(turn), leg, leg, 500))
        .isCloseTo(70.710678, within(EXACT));
  }
}
