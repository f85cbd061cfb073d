package frieze.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 9013, perpendicularity tolerance; the figures are known by memory. */
class CutSquarenessTest {
  @ParameterizedTest
  @CsvSource({
    "1.5, 0.0545, 0.1605, 0.415, 0.83, 1.2525",
    "3, 0.059, 0.171, 0.43, 0.86, 1.305",
    "12, 0.086, 0.234, 0.52, 1.04, 1.62"
  })
  void each_range_allows_more_the_thicker_the_sheet(
      double thickness, double one, double two, double three, double four, double five) {
    double[] expected = {one, two, three, four, five};
    for (CutSquareness range : CutSquareness.values()) {
      assertThat(range.mostMm(thickness))
          .as("%s at %s mm", range, thickness)
          .isCloseTo(expected[range.ordinal()], within(1e-12));
    }
  }
}
