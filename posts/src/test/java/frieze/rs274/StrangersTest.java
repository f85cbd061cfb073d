package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Severity;
import frieze.motion.Executed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes that neither the report nor the dialect has, and what stays of their lines. */
class StrangersTest {
  @Test
  void the_unit_beside_an_unknown_code_stays_in_force() {
    Programs.Run run = Programs.run(Programs.ZEROED, "G20 G90 G8 F10 S900 M3", "G1 X1");
    assertThat(run.only().code()).isEqualTo(ProgramCode.UNKNOWN_G);
    assertThat(run.only().where().column()).isEqualTo(9);
    assertThat(run.only().hint()).contains("nothing after it can be trusted");
    assertThat(run.move(0).path().to().x()).isEqualTo(25.4);
    assertThat(run.move(0).feedMmPerMin()).hasValue(254);
    assertThat(run.all(Executed.SpindleChange.class)).hasSize(1);
  }

  @Test
  void axis_words_beside_an_unknown_g_code_move_nothing_and_leave_the_place_unknown() {
    Programs.Run run = Programs.zeroed("G0 X1 Y1 Z1", "G5 X7 Y8 G1 F60", "G0 X2", "G91 Y1");
    assertThat(run.only().code()).isEqualTo(ProgramCode.UNKNOWN_G);
    assertThat(run.only().where().line()).isEqualTo(3);
    assertThat(run.only().hint()).contains("where the tool stands").contains("trusted");
    assertThat(run.moves()).hasSize(3);
    assertThat(run.move(1).fromKnown().x()).isFalse();
    assertThat(run.move(1).fromKnown().z()).isTrue();
    assertThat(run.move(1).toKnown().x()).isTrue();
    assertThat(run.move(2).toKnown().y()).isFalse();
  }

  /** A probe's surface is a known place; where an unknown code has left the tool is none. */
  @Test
  void zero_set_after_an_unknown_code_does_not_move_the_program_s_frame() {
    Programs.Run run =
        Programs.zeroed(
            "G0 X12 Y1 Z1", "G9 X1", "G92 X0", "G10 L2 P2 X38", "G55 G0 X1", "G92.1", "G54 G0 X3");
    assertThat(run.only().code()).isEqualTo(ProgramCode.UNKNOWN_G);
    assertThat(run.move(1).path().from().x()).isEqualTo(12);
    assertThat(run.move(1).fromKnown().x()).isFalse();
    assertThat(run.move(1).toKnown().x()).isFalse();
    assertThat(run.move(2).toKnown().x()).isTrue();
    assertThat(run.move(2).path().to().x()).isEqualTo(3);
  }

  @Test
  void a_move_beside_an_unknown_m_code_is_done() {
    Programs.Run run = Programs.zeroed("G0 X3 M10 P1");
    assertThat(run.only().code()).isEqualTo(ProgramCode.UNKNOWN_M);
    assertThat(run.only().hint()).contains("the other words of the line are carried out");
    assertThat(run.move(0).path().to().x()).isEqualTo(3);
  }

  @Test
  void each_unknown_code_is_told() {
    assertThat(Programs.zeroed("G5 G6 M10 M11").codes())
        .containsExactly(
            ProgramCode.UNKNOWN_G,
            ProgramCode.UNKNOWN_G,
            ProgramCode.UNKNOWN_M,
            ProgramCode.UNKNOWN_M);
    ReadingRules rules = Programs.ZEROED.but().extraG(5).extraM(10).build();
    assertThat(Programs.run(rules, "G21 G90 G5 G6 M10 M11").codes())
        .containsExactly(ProgramCode.UNKNOWN_G, ProgramCode.UNKNOWN_M);
    assertThat(Programs.run(rules, "G21 G90 G5 M10 P1").errors()).isEmpty();
  }

  @Test
  void arc_centres_from_the_start_are_only_a_warning() {
    Programs.Run run = Programs.run(Programs.ZEROED, "G21 G90 G91.1 F60", "G2 X10 I5");
    assertThat(run.only().code()).isEqualTo(ProgramCode.ARC_CENTRES);
    assertThat(run.only().severity()).isEqualTo(Severity.WARNING);
    assertThat(run.moves()).hasSize(1);
    ReadingRules rules = Programs.ZEROED.but().extraG(91.1).build();
    assertThat(Programs.run(rules, "G21 G90 G91.1").summary().diagnostics()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "G21 G90.1|ARC_CENTRES|5|5|from the start of its arc",
        "M98 P100 L2|SUBPROGRAM|1|3|write its lines out",
        "M99|SUBPROGRAM|1|3|write its lines out",
        "G65 P100 X1|SUBPROGRAM|1|3|write its lines out",
        "G66 P100|SUBPROGRAM|1|3|write its lines out",
        "O100 sub|SUBPROGRAM|1|8|write its lines out",
        "o<leaf> call [1] [2]|SUBPROGRAM|1|12|write its lines out",
        "N10 O7 while [#1 LT 3]|SUBPROGRAM|5|8|write its lines out",
        "O7endwhile|SUBPROGRAM|1|10|write its lines out",
      })
  void what_is_not_followed_is_named(
      String line, ProgramCode code, int column, int length, String hint) {
    ReadingRules numbered = Programs.ZEROED.but().programNumbers(true).build();
    for (ReadingRules rules : new ReadingRules[] {Programs.ZEROED, numbered}) {
      Diagnostic found = Programs.run(rules, "G21 G90", line).only();
      assertThat(found.code()).isEqualTo(code);
      assertThat(found.isError()).isTrue();
      assertThat(found.where().column()).isEqualTo(column);
      assertThat(found.where().length()).isEqualTo(length);
      assertThat(found.hint()).contains(hint);
    }
  }

  @Test
  void a_program_number_before_words_is_no_call() {
    ReadingRules numbered = Programs.ZEROED.but().programNumbers(true).build();
    assertThat(Programs.run(numbered, "O100 G21 G90", "O7 (do not stop)").errors()).isEmpty();
  }

  @Test
  void an_unknown_code_ends_a_reading_that_stops_at_the_first_error() {
    byte[] text = "G5 G21\nG0 X1\n".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
    ProgramSummary summary =
        Interpreter.run(
            "a.nc",
            new java.io.ByteArrayInputStream(text),
            Programs.UNKNOWN,
            Interpreter.ErrorHandling.STOP,
            e -> {});
    assertThat(summary.lines()).isEqualTo(1);
    assertThat(summary.errors()).isEqualTo(1);
  }
}
