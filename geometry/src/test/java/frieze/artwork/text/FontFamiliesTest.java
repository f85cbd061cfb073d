package frieze.artwork.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FontFamiliesTest {

  /**
   * ISO 32000-1, 9.6.2.2: the widths of letters of the standard fonts, in 1/1000 of their size,
   * with which these fonts are made to agree; the numbers are from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "sans-serif, false, W, 944",
    "sans-serif, false, i, 222",
    "sans-serif, true, a, 556",
    "serif, false, A, 722",
    "serif, false, m, 778",
    "serif, true, m, 833",
    "monospace, false, i, 600"
  })
  void a_letter_is_as_wide_as_in_the_standard_fonts(
      String family, boolean bold, String letter, double width) {
    FontFace face = FontFamilies.BUNDLED.choose(List.of(family), bold, false).face();
    assertThat(1000 * face.advance(face.glyph(letter.codePointAt(0))))
        .isCloseTo(width, within(0.5));
  }

  @ParameterizedTest
  @CsvSource({
    "'', Liberation Sans, true",
    "Serif, Liberation Serif, true",
    "LIBERATION MONO, Liberation Mono, true",
    "Unknown, Liberation Sans, false",
    "Unknown Roman, Liberation Serif, false",
    "Unknown Code, Liberation Mono, false"
  })
  void the_nearest_family_is_chosen(String asked, String chosen, boolean known) {
    List<String> families = asked.isEmpty() ? List.of() : List.of(asked);
    FontFamilies.Choice choice = FontFamilies.BUNDLED.choose(families, false, false);
    assertThat(choice.face().name()).isEqualTo(chosen);
    assertThat(choice.asked()).isEqualTo(known);
    assertThat(choice.bundled()).isTrue();
  }

  @Test
  void a_font_of_the_job_sets_all_text() {
    FontFace own = FontFamilies.BUNDLED.choose(List.of("serif"), true, true).face();
    FontFamilies.Choice choice = FontFamilies.only(own).choose(List.of("monospace"), false, false);
    assertThat(choice.face().name()).isEqualTo("Liberation Serif Bold Italic");
    assertThat(choice.bundled()).isFalse();
  }

  @Test
  void what_is_no_font_is_refused() {
    assertThatThrownBy(() -> FontFace.read(new byte[] {1, 2, 3})).isInstanceOf(IOException.class);
    assertThatThrownBy(() -> FontFace.read(new byte[2000])).isInstanceOf(IOException.class);
  }
}
