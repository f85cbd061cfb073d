package frieze.keys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SuggestionTest {
  private static final List<String> WOODS =
      List.of("beech", "mild steel", "oak", "sheet steel", "white ash");

  @Test
  void a_slip_of_the_hand_is_set_right() {
    assertThat(Suggestion.hint("beach", WOODS)).isEqualTo("did you mean \"beech\"?");
  }

  @Test
  void a_part_of_a_name_finds_the_names_that_hold_it() {
    assertThat(Suggestion.hint("Ash", WOODS)).isEqualTo("did you mean \"white ash\"?");
    assertThat(Suggestion.hint("steel", WOODS))
        .isEqualTo("did you mean \"mild steel\" or \"sheet steel\"?");
  }

  @Test
  void a_stranger_is_told_what_is_known() {
    assertThat(Suggestion.hint("granite", WOODS))
        .isEqualTo("known: beech, mild steel, oak, sheet steel, white ash");
    assertThat(Suggestion.hint("hi", WOODS)).startsWith("known: ");
    assertThat(Suggestion.hint("granite", List.of())).isEqualTo("none is known");
  }
}
