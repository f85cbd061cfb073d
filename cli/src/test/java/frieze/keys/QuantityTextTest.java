package frieze.keys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.keys.QuantityText.NotAQuantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The inch is 25.4 mm by definition (international yard and pound agreement of 1959). */
class QuantityTextTest {
  private static final double ROUNDING = 1e-9;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "19 mm | 19",
        "19mm | 19",
        "1.9 cm | 19",
        "0.019 m | 19",
        "3/4 in | 19.05",
        "3/4\" | 19.05",
        "3/4″ | 19.05",
        "0.75 inch | 19.05",
        ".75 in | 19.05",
        "5-1/4 in | 133.35",
        "5 1/4 in | 133.35",
        "5 - 1/4 in | 133.35",
        "5¼ in | 133.35",
        "5 ¼ in | 133.35",
        "½ in | 12.7",
        "2 ft 4-5/8 in | 727.075",
        "2' 4-5/8\" | 727.075",
        "-1/2 in | -12.7",
        "+1/2 in | 12.7",
        "1e1 mm | 10",
        "1 IN | 25.4"
      })
  void a_length_is_read_as_people_write_it(String text, double mm) throws NotAQuantity {
    assertThat(QuantityText.read(text.strip(), UnitKind.LENGTH, false))
        .isCloseTo(mm, within(ROUNDING));
  }

  @ParameterizedTest
  @CsvSource({"5-1/4, 133.35, 5.25", "0.748, 18.9992, 0.748", "2, 50.8, 2"})
  void a_bare_number_has_the_unit_of_the_file(String text, double inInches, double inMm)
      throws NotAQuantity {
    assertThat(QuantityText.read(text, UnitKind.LENGTH, true))
        .isCloseTo(inInches, within(ROUNDING));
    assertThat(QuantityText.read(text, UnitKind.LENGTH, false)).isCloseTo(inMm, within(ROUNDING));
  }

  @ParameterizedTest
  @CsvSource({
    "FORCE, 40 N, 40",
    "FORCE, 15 lbf, 66.723324228",
    "FORCE, 4 kgf, 39.2266",
    "FEED, 48 in/min, 1219.2",
    "FEED, 48 ipm, 1219.2",
    "FEED, 1.2 m/min, 1200",
    "FEED, 20 mm/s, 1200",
    "ACCELERATION, 300 mm/s2, 300",
    "ACCELERATION, 0.3 m/s^2, 300",
    "ANGLE, 180 deg, 3.14159265358979",
    "ANGLE, 60°, 1.04719755119660",
    "ANGLE, 1 rad, 1",
    "SPEED, 18000 rpm, 18000",
    "SPEED, 18000, 18000",
    "TIME, 1500 ms, 1.5",
    "TIME, 2 min, 120",
    "SHARE, 40%, 0.4",
    "SHARE, 40 %, 0.4",
    "SHARE, 0.4, 0.4"
  })
  void other_quantities_have_units_of_their_own(UnitKind kind, String text, double expected)
      throws NotAQuantity {
    assertThat(QuantityText.read(text, kind, false)).isCloseTo(expected, within(ROUNDING));
  }

  @ParameterizedTest
  @ValueSource(strings = {".nan", "NaN", "nan mm", ".inf", "-.inf", "Infinity", "inf in", "1e999"})
  void a_number_that_is_not_finite_is_refused(String text) {
    assertThat(failure(text, UnitKind.LENGTH).code()).isEqualTo(JobCode.OUT_OF_RANGE);
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 5 kg",
    "LENGTH, 5 mm/min",
    "LENGTH, 12 deg",
    "FEED, 5 mm",
    "ANGLE, 60 mm",
    "SPEED, 5 mm",
    "TIME, 3 mm",
    "SHARE, 40 mm"
  })
  void a_wrong_unit_is_refused_with_an_example(UnitKind kind, String text) {
    NotAQuantity failure = failure(text, kind);
    assertThat(failure.code()).isEqualTo(JobCode.WRONG_UNIT);
    assertThat(failure.hint()).startsWith("write a");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "mm",
        "abc",
        "1/2/3 in",
        "1-2-3",
        "5 5",
        "--5",
        "1/0 in",
        "5 in 3",
        "0x10",
        "1/2 1/4",
        "3 in mm",
        "1.2.3"
      })
  void what_is_not_a_number_is_refused(String text) {
    assertThatThrownBy(() -> QuantityText.read(text, UnitKind.LENGTH, true))
        .isInstanceOf(NotAQuantity.class);
  }

  @Test
  void a_decimal_comma_is_refused_with_the_right_spelling() {
    NotAQuantity failure = failure("19,5 mm", UnitKind.LENGTH);
    assertThat(failure.text()).contains("comma");
    assertThat(failure.hint()).isEqualTo("write 19.5 mm");
  }

  private static NotAQuantity failure(String text, UnitKind kind) {
    try {
      double value = QuantityText.read(text, kind, false);
      throw new AssertionError(text + " was read as " + value);
    } catch (NotAQuantity e) {
      return e;
    }
  }
}
