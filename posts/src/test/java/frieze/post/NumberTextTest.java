package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.fixtures.Seeds;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberTextTest {
  private static String text(long ticks, int decimals, boolean pointAlways) {
    StringBuilder out = new StringBuilder();
    NumberText.append(out, ticks, decimals, pointAlways);
    return out.toString();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 3, 0", "12500, 3, 12.5", "-12500, 3, -12.5", "1, 3, 0.001", "-1, 5, -0.00001",
    "1000, 3, 1", "100000, 3, 100", "999999, 3, 999.999", "10, 3, 0.01", "-7, 1, -0.7",
    "123456789012, 6, 123456.789012"
  })
  void writes_the_shortest_text(long ticks, int decimals, String expected) {
    assertThat(text(ticks, decimals, false)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"0, 0.", "12000, 12.", "-5000, -5.", "12500, 12.5"})
  void keeps_the_point_where_it_counts(long ticks, String expected) {
    assertThat(text(ticks, 3, true)).isEqualTo(expected);
  }

  /** Against java.math.BigDecimal, whose plain string of the stripped value is the shortest. */
  @Test
  void agrees_with_big_decimal_on_random_numbers() {
    SplittableRandom random = Seeds.random(41);
    for (int i = 0; i < 200_000; i++) {
      int decimals = 1 + random.nextInt(6);
      long ticks = random.nextLong(-2_000_000_000L, 2_000_000_000L) / (1L << random.nextInt(31));
      BigDecimal exact = BigDecimal.valueOf(ticks, decimals).stripTrailingZeros();
      String expected = exact.signum() == 0 ? "0" : exact.toPlainString();
      assertThat(text(ticks, decimals, false))
          .as("seed %d, %d with %d decimals", Seeds.seed(41), ticks, decimals)
          .isEqualTo(expected);
    }
  }

  @Test
  void does_not_care_about_the_locale() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(text(-1_234_567, 3, false)).isEqualTo("-1234.567");
        assertThat(NumberText.thousandths(0.5, false)).isEqualTo("0.5");
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
