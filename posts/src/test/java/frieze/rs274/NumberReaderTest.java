package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import frieze.fixtures.Seeds;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers as NISTIR 6556, 3.3.2.1 writes them; the oracle is {@link BigDecimal}. */
class NumberReaderTest {
  private static final long SEED = 20260101;

  private final NumberReader reader = new NumberReader();

  private double read(String text) {
    byte[] b = text.getBytes(StandardCharsets.US_ASCII);
    return reader.read(b, 0, b.length);
  }

  @ParameterizedTest
  @CsvSource({
    "5, 5",
    "5., 5",
    ".5, 0.5",
    "-05.0, -5",
    "+0. 12 34, 0.1234",
    "00.50, 0.5",
    "-.25, -0.25",
    "0.1234567890123456789, 0.1234567890123456789",
    "123456789012345678901234, 1.2345678901234568E23",
    "0.00000000000000000000000000001, 1E-29",
    "9007199254740993, 9007199254740992"
  })
  void reads_what_the_grammar_allows(String text, double value) {
    assertThat(read(text)).isEqualTo(value);
    assertThat(reader.end()).isEqualTo(text.length());
  }

  @Test
  void the_sign_of_zero_is_kept() {
    assertThat(1 / read("-0")).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void stops_at_the_first_byte_that_belongs_to_no_number() {
    assertThat(read("12.5Y7")).isEqualTo(12.5);
    assertThat(reader.end()).isEqualTo(4);
    assertThat(read("12,5")).isEqualTo(12);
    assertThat(read("1-2")).isEqualTo(1);
    assertThat(reader.end()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {".", "-", "+.", "- ", "1.2.3", "..5"})
  void refuses_numbers_without_a_digit_or_with_two_points(String text) {
    assertThatThrownBy(() -> read(text))
        .isInstanceOfSatisfying(
            Refusal.class, r -> assertThat(r.code()).isEqualTo(ProgramCode.NUMBER));
  }

  @Test
  void refuses_numbers_that_no_double_holds() {
    assertThatThrownBy(() -> read("9".repeat(400)))
        .isInstanceOfSatisfying(
            Refusal.class, r -> assertThat(r.code()).isEqualTo(ProgramCode.OUT_OF_RANGE));
  }

  @Test
  void gives_the_double_nearest_to_any_decimal() {
    SplittableRandom random = Seeds.random(SEED);
    for (int i = 0; i < 20_000; i++) {
      String text = decimal(random);
      assertThat(read(text))
          .as("seed " + Seeds.seed(SEED) + ": " + text)
          .isEqualTo(new BigDecimal(text.replace(" ", "")).doubleValue());
    }
  }

  private static String decimal(SplittableRandom random) {
    StringBuilder text = new StringBuilder();
    text.append(new String[] {"", "-", "+"}[random.nextInt(3)]);
    int whole = random.nextInt(12);
    int decimals = random.nextInt(whole == 0 ? 1 : 0, 30);
    for (int i = 0; i < whole; i++) {
      text.append((char) ('0' + random.nextInt(10)));
      text.append(random.nextInt(10) == 0 ? " " : "");
    }
    if (decimals > 0) {
      text.append('.');
      for (int i = 0; i < decimals; i++) {
        text.append((char) ('0' + random.nextInt(10)));
      }
    }
    return text.toString();
  }
}
