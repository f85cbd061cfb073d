package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.motion.Executed;
import frieze.rs274.ProgramSummary.Ending;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** How a program begins and ends: NISTIR 6556, 3.1, 3.6.1 and A.1. */
class FileFrameTest {
  private static Programs.Run run(String... lines) {
    return Programs.run(ReadingRules.REPORT, lines);
  }

  @Test
  void a_program_ends_with_m2_or_m30() {
    for (String end : new String[] {"M2", "M30"}) {
      Programs.Run run = run("G21", end);
      assertThat(run.summary().diagnostics()).isEmpty();
      assertThat(run.summary().ending()).isEqualTo(Ending.END_CODE);
      assertThat(run.all(Executed.End.class)).hasSize(1);
      assertThat(run.all(Executed.End.class).get(0).span().line()).isEqualTo(2);
    }
    assertThat(run("M30").others()).containsExactly("pallet change");
  }

  @Test
  void a_program_between_percent_lines_needs_no_end() {
    Programs.Run run = run("", " % ", "G21", "%\t", "nonsense");
    assertThat(run.summary().diagnostics()).isEmpty();
    assertThat(run.summary().ending()).isEqualTo(Ending.PERCENT);
    assertThat(run.summary().lines()).isEqualTo(4);
    assertThat(run.all(Executed.End.class)).hasSize(1);
  }

  @Test
  void a_program_without_an_end_is_an_error() {
    Programs.Run run = run("G21", "", "");
    assertThat(run.only().code()).isEqualTo(ProgramCode.NO_END);
    assertThat(run.only().where().line()).isEqualTo(2);
    assertThat(run.summary().ending()).isEqualTo(Ending.END_OF_TEXT);
    assertThat(run.all(Executed.End.class)).hasSize(1);
    assertThat(Programs.run(Programs.UNKNOWN, "G21").summary().diagnostics()).isEmpty();
  }

  @Test
  void a_file_with_nothing_in_it_is_an_error_whatever_the_dialect() {
    for (ReadingRules rules : new ReadingRules[] {ReadingRules.REPORT, Programs.UNKNOWN}) {
      Programs.Run empty = Programs.runBytes(rules, new byte[0]);
      assertThat(empty.only().code()).isEqualTo(ProgramCode.EMPTY);
      assertThat(empty.only().message()).isEqualTo("the file is empty");
      Programs.Run blank = Programs.run(rules, "", " \t", "");
      assertThat(blank.only().code()).isEqualTo(ProgramCode.EMPTY);
      assertThat(blank.only().message()).contains("blank lines");
    }
    assertThat(Programs.run(Programs.UNKNOWN, "(nothing)").summary().diagnostics()).isEmpty();
  }

  @Test
  void a_first_percent_line_needs_a_second_one() {
    assertThat(run("%", "G21").only().code()).isEqualTo(ProgramCode.PERCENT_UNCLOSED);
    assertThat(run("%", "G21", "M2").only().code()).isEqualTo(ProgramCode.PERCENT_UNCLOSED);
    assertThat(run("%", "G21", "M2", "", "%", "nonsense").summary().diagnostics()).isEmpty();
    ReadingRules loose = ReadingRules.REPORT.but().percentRules(false).build();
    assertThat(Programs.run(loose, "%", "G21", "M2").summary().diagnostics()).isEmpty();
  }

  @Test
  void a_percent_line_in_a_file_that_did_not_open_with_one_is_an_error() {
    Programs.Run run = run("G21", "%", "M2");
    assertThat(run.only().code()).isEqualTo(ProgramCode.PERCENT_UNEXPECTED);
    assertThat(run.only().where().line()).isEqualTo(2);
    ReadingRules loose = ReadingRules.REPORT.but().percentRules(false).build();
    Programs.Run ended = Programs.run(loose, "G21", "%", "nonsense");
    assertThat(ended.summary().diagnostics()).isEmpty();
    assertThat(ended.summary().ending()).isEqualTo(Ending.PERCENT);
  }

  @Test
  void a_percent_sign_among_words_is_no_percent_line() {
    assertThat(run("G21 %", "M2").only().code()).isEqualTo(ProgramCode.BAD_CHARACTER);
    assertThat(run("G21", "%%", "M2").only().code()).isEqualTo(ProgramCode.BAD_CHARACTER);
  }

  @Test
  void lines_after_the_end_are_not_done_and_told_once() {
    Programs.Run run = run("G21", "M2", "", "G0 X1", "nonsense");
    assertThat(run.moves()).isEmpty();
    assertThat(run.only().code()).isEqualTo(ProgramCode.AFTER_END);
    assertThat(run.only().isError()).isFalse();
    assertThat(run.only().where().line()).isEqualTo(4);
    Programs.Run closed = run("%", "M2", "G0 X1", "G0 X2", "%");
    assertThat(closed.only().code()).isEqualTo(ProgramCode.AFTER_END);
  }

  @Test
  void the_end_stops_what_runs() {
    Programs.Run run = run("G21 S900 M3 M8", "M2");
    assertThat(run.all(Executed.SpindleChange.class))
        .extracting(Executed.SpindleChange::rotation)
        .containsExactly(Executed.Rotation.CLOCKWISE, Executed.Rotation.STOPPED);
    assertThat(run.others()).containsExactly("coolant flood on", "coolant off");
    assertThat(run.events().get(run.events().size() - 1)).isInstanceOf(Executed.End.class);
    assertThat(run("G21", "M2").events()).hasSize(1);
  }

  @Test
  void texts_of_two_bytes_a_character_are_refused() {
    for (var charset :
        new java.nio.charset.Charset[] {
          StandardCharsets.UTF_16, StandardCharsets.UTF_16BE, StandardCharsets.UTF_16LE
        }) {
      Programs.Run run = Programs.runBytes(ReadingRules.REPORT, "G21\nM2\n".getBytes(charset));
      assertThat(run.only().code()).as(charset.name()).isEqualTo(ProgramCode.NOT_PLAIN_TEXT);
      assertThat(run.summary().readable()).isFalse();
      assertThat(run.events()).isEmpty();
      assertThat(run.summary().ending()).isEqualTo(Ending.BROKEN_OFF);
    }
    byte[] marked = "\uFEFFG21\nM2\n".getBytes(StandardCharsets.UTF_8);
    assertThat(Programs.runBytes(ReadingRules.REPORT, marked).summary().diagnostics()).isEmpty();
    assertThat(run("G21", "M2").summary().readable()).isTrue();
  }

  @Test
  void reading_can_end_at_the_first_error() {
    byte[] text = "G21\nG0\nG0 X1\nG5\n".getBytes(StandardCharsets.US_ASCII);
    ProgramSummary summary =
        Interpreter.run(
            "a.nc",
            new ByteArrayInputStream(text),
            ReadingRules.REPORT,
            Interpreter.ErrorHandling.STOP,
            e -> {});
    assertThat(summary.errors()).isEqualTo(1);
    assertThat(summary.ending()).isEqualTo(Ending.BROKEN_OFF);
    assertThat(summary.lines()).isEqualTo(2);
    ProgramSummary all = Interpreter.run("a.nc", text, ReadingRules.REPORT, e -> {});
    assertThat(all.errors()).isEqualTo(3);
    assertThat(all.hasErrors()).isTrue();
  }

  @Test
  void diagnostics_are_capped_and_counted() {
    String text = "G0\n".repeat(500) + "G5\n";
    ProgramSummary summary = Interpreter.run("a.nc", text, Programs.UNKNOWN, e -> {});
    assertThat(summary.count(ProgramCode.NO_AXIS_WORD)).isEqualTo(500);
    assertThat(summary.errors()).isEqualTo(501);
    assertThat(summary.diagnostics()).hasSize(Interpreter.KEPT_PER_CODE + 1);
    assertThat(summary.diagnostics().get(0).where().line()).isEqualTo(1);
  }
}
