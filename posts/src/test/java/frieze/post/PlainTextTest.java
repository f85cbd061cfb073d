package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.fixtures.Seeds;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "front apron | front apron",
        "apron (left) | apron left",
        "Mär-Stück 3×5 | Mar-Stuck 3x5",
        "a)M3(b | a M3 b",
        "50 % off; now! | 50 off now",
        "flat 1/4\" | flat 1/4"
      })
  void keeps_letters_digits_and_harmless_signs(String text, String expected) {
    assertThat(PlainText.of(text)).isEqualTo(expected);
  }

  @Test
  void nothing_can_leave_a_comment() {
    SplittableRandom random = Seeds.random(42);
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      int length = random.nextInt(40);
      for (int k = 0; k < length; k++) {
        text.appendCodePoint(random.nextInt(4) == 0 ? random.nextInt(0x300) : random.nextInt(128));
      }
      assertThat(PlainText.of(text.toString()))
          .as("seed %d, text %s", Seeds.seed(42), text)
          .matches("[A-Za-z0-9.,:+\\-/=_ ]*")
          .doesNotStartWith(" ")
          .doesNotContain("  ");
    }
  }

  @Test
  void emoji_and_line_ends_are_gaps() {
    assertThat(PlainText.of("hall\r\nbench \uD83C\uDF3F\uD83D\uDE80 no 3"))
        .isEqualTo("hall bench no 3");
  }

  @Test
  void wraps_between_words_and_through_long_ones() {
    assertThat(PlainText.wrap("one two three", 7)).isEqualTo(List.of("one two", "three"));
    assertThat(PlainText.wrap("abcdefghij", 4)).isEqualTo(List.of("abcd", "efgh", "ij"));
    assertThat(PlainText.wrap("", 4)).isEmpty();
  }

  @Test
  void a_message_sign_is_seen_through_blanks() {
    assertThat(PlainText.looksLikeMessage("m s g, hello")).isTrue();
    assertThat(PlainText.looksLikeMessage("massage")).isFalse();
  }
}
