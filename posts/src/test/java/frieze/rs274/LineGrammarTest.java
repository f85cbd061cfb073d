package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.diagnostic.Diagnostic;
import frieze.motion.Executed;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines, places and dialects: NISTIR 6556, 3.1, 3.3 and appendix E. */
class LineGrammarTest {
  private static Diagnostic only(String... lines) {
    return Programs.run(Programs.ZEROED, lines).only();
  }

  /** Each line is wrong; column and length are those of the part that is wrong. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "G21 G90 G0 X1.2.3|NUMBER|13|4",
        "G21 G90 G0 X1 X2|WORD_REPEATED|15|2",
        "G21 G90 G0 G1 X2 F9|GROUP_G|12|2",
        "G21 G90 G0 X 1 2 E4|NOT_A_WORD|18|1",
        "G21 M3 M5 S9|GROUP_M|8|2",
        "G21 (open|COMMENT_OPEN|5|5",
        "G21 (a (b)|COMMENT_NESTED|8|1",
        "G21 G90 G0 X#5400|PARAMETER_NUMBER|13|5",
        "G21 G90 G0 X[1/0]|ARITHMETIC|15|2",
        "G21 F-1|FEED_NEGATIVE|5|3",
        "G21 F - 1  S5|FEED_NEGATIVE|5|5",
        "G21 G5|UNKNOWN_G|5|2",
        "G21 M10|UNKNOWN_M|5|3",
        "G21 D1|WORD_UNUSED|5|2",
        "G0 X-|NUMBER|5|1",
        "G0 X- Y2|NUMBER|5|1",
        "G0 X-SIN[1]|SIGN|5|2",
        "G0 X-#1|SIGN|5|2",
        "N1 N2 G21|LINE_NUMBER|4|1",
        "N100000 G21|LINE_NUMBER|1|7",
        "N1.5 G21|LINE_NUMBER|1|3",
        "G21 X5000000000000|OUT_OF_RANGE|5|14",
        "T1.5|SLOT|1|4",
      })
  void the_place_of_an_error_is_the_word_that_is_wrong(
      String line, ProgramCode code, int column, int length) {
    Diagnostic found =
        Programs.run(Programs.ZEROED, "G21 G90", line).errors().stream().findFirst().orElseThrow();
    assertThat(found.code()).isEqualTo(code);
    assertThat(found.where().source()).isEqualTo("test.nc");
    assertThat(found.where().line()).isEqualTo(2);
    assertThat(found.where().column()).as(found.toString()).isEqualTo(column);
    assertThat(found.where().length()).as(found.toString()).isEqualTo(length);
  }

  @Test
  void columns_count_utf_16_units_behind_other_letters() {
    // One unit each for o with dots and the euro sign, two for the leaf.
    Diagnostic found = only("(ö€\uD83C\uDF43) G21 F-1");
    assertThat(found.where().column()).isEqualTo(12);
    assertThat(found.code()).isEqualTo(ProgramCode.FEED_NEGATIVE);
  }

  @Test
  void a_line_may_have_256_characters() {
    String full = "G21 (" + "x".repeat(250) + ")";
    assertThat(full).hasSize(256);
    assertThat(Programs.run(Programs.ZEROED, full).errors()).isEmpty();
    String accents = "G21 (" + "é".repeat(250) + ")";
    assertThat(Programs.run(Programs.ZEROED, accents).errors()).isEmpty();
    Diagnostic found = only(full + " ");
    assertThat(found.code()).isEqualTo(ProgramCode.LINE_TOO_LONG);
    assertThat(found.where().column()).isEqualTo(257);
    assertThat(found.message()).contains("257").contains("256");
    ReadingRules eighty = Programs.ZEROED.but().maxLineLength(80).build();
    assertThat(Programs.run(eighty, full).only().code()).isEqualTo(ProgramCode.LINE_TOO_LONG);
    assertThat(Programs.run(eighty, full.substring(0, 79) + ")").errors()).isEmpty();
  }

  @Test
  void semicolon_comments_are_for_dialects_that_have_them() {
    assertThat(only("G21 ; (old)").code()).isEqualTo(ProgramCode.BAD_CHARACTER);
    ReadingRules rules = Programs.ZEROED.but().semicolonComments(true).build();
    Programs.Run run = Programs.run(rules, "G21 G90 G0 X1 ; Y2 (open", "M0 ; turn the panel");
    assertThat(run.errors()).isEmpty();
    assertThat(run.move(0).path().to().y()).isZero();
    assertThat(run.all(Executed.Stop.class).get(0).message()).isEqualTo("turn the panel");
  }

  @Test
  void a_message_may_take_several_lines_of_comments() {
    ReadingRules rules = Programs.ZEROED.but().semicolonComments(true).build();
    Programs.Run run =
        Programs.run(
            rules, "; made in the hall", "G21", "; turn the panel", "(and clamp it)", "M0", "M0");
    assertThat(run.all(Executed.Stop.class))
        .extracting(Executed.Stop::message)
        .containsExactly("turn the panel and clamp it", "");
  }

  @Test
  void program_numbers_are_for_dialects_that_have_them() {
    assertThat(only("O1234").code()).isEqualTo(ProgramCode.NOT_A_WORD);
    ReadingRules rules = Programs.ZEROED.but().programNumbers(true).build();
    assertThat(Programs.run(rules, "O1234 (bench)", ":0002", "G21 G90 G0 X1").errors()).isEmpty();
    assertThat(Programs.run(rules, "G21 O1234").only().code()).isEqualTo(ProgramCode.NOT_A_WORD);
  }

  @Test
  void longer_line_numbers_are_for_dialects_that_have_them() {
    ReadingRules rules = Programs.ZEROED.but().lineNumberDigits(8).build();
    assertThat(Programs.run(rules, "N12345678 G21").errors()).isEmpty();
    assertThat(Programs.run(rules, "N123456789 G21").only().code())
        .isEqualTo(ProgramCode.LINE_NUMBER);
  }

  @Test
  void extra_letters_are_for_dialects_that_have_them() {
    ReadingRules rules = Programs.ZEROED.but().extraLetters("E").extraM(67).build();
    Programs.Run run = Programs.run(rules, "M67 E0 Q50", "G21");
    assertThat(run.errors()).isEmpty();
    assertThat(run.others()).containsExactly("m67");
    assertThat(Programs.run(rules, "G21 E1").only().code()).isEqualTo(ProgramCode.WORD_UNUSED);
  }

  @Test
  void a_line_with_a_slash_is_read_but_not_done_while_block_delete_is_on() {
    String[] lines = {"G21 G90", "/ N5 G0 X1", "G0 Y1"};
    assertThat(Programs.run(Programs.ZEROED, lines).moves()).hasSize(2);
    ReadingRules on = Programs.ZEROED.but().blockDelete(true).build();
    assertThat(Programs.run(on, lines).moves()).hasSize(1);
    // Reading errors are told all the same (A.1); errors of doing are not.
    assertThat(Programs.run(on, "/G0 X.").only().code()).isEqualTo(ProgramCode.NUMBER);
    assertThat(Programs.run(on, "/G0").summary().diagnostics()).isEmpty();
    assertThat(Programs.run(on, "/#1=5").parameters().get(1)).isZero();
  }

  @Test
  void of_several_comments_the_last_one_counts() {
    Programs.Run run = Programs.run(Programs.ZEROED, "(one) M0 (two)", "(three)", "M1", "M60");
    assertThat(run.all(Executed.Stop.class))
        .extracting(Executed.Stop::message)
        .containsExactly("two", "three", "");
    assertThat(run.all(Executed.Stop.class))
        .extracting(Executed.Stop::optional)
        .containsExactly(false, true, false);
    assertThat(run.others()).containsExactly("pallet change");
  }

  @Test
  void a_message_is_shown_without_its_mark() {
    Programs.Run run = Programs.run(Programs.ZEROED, "M0 ( m s G , turn the panel )");
    assertThat(run.all(Executed.Stop.class).get(0).message()).isEqualTo("turn the panel");
  }

  @Test
  void control_characters_are_refused_even_in_comments() {
    assertThat(only("G21 (a\u0007b)").code()).isEqualTo(ProgramCode.BAD_CHARACTER);
    assertThat(only("G21 (a\u007fb)").code()).isEqualTo(ProgramCode.BAD_CHARACTER);
    assertThat(Programs.run(Programs.ZEROED, "G21 (a\tb)").errors()).isEmpty();
    assertThat(only("G21 \u0007").message()).contains("07");
    assertThat(only("G21\u0000").message()).contains("byte 0");
    assertThat(only("G21 $").message()).contains("$");
  }

  @Test
  void a_block_tells_its_words_as_they_are_written() {
    BlockReader reader = new BlockReader(ReadingRules.REPORT, new Parameters());
    byte[] text = "\nn10 g0x +0. 12 M3 y[1+1] (é) S9".getBytes(StandardCharsets.UTF_8);
    LineSource source = new LineSource(new ByteArrayInputStream(text));
    source.next();
    source.next();
    Block block = new Block();
    reader.read(source, block);
    assertThat(block.line()).isEqualTo(2);
    assertThat(block.text()).isEqualTo("n10 g0x +0. 12 M3 y[1+1] (é) S9");
    assertThat(block.words())
        .containsExactly(
            new Word('G', 0, 5, "g0"),
            new Word('M', 3, 16, "M3"),
            new Word('S', 9, 30, "S9"),
            new Word('X', 0.12, 7, "x +0. 12"),
            new Word('Y', 2, 19, "y[1+1]"));
  }

  @Test
  void a_line_of_very_many_codes_is_refused() {
    ReadingRules wide = Programs.ZEROED.but().maxLineLength(0).build();
    assertThat(Programs.run(wide, "G4".repeat(1000)).only().code()).isEqualTo(ProgramCode.GROUP_G);
    assertThat(Programs.run(wide, "M3".repeat(1000)).only().code())
        .isEqualTo(ProgramCode.TOO_MANY_M);
  }
}
