package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import frieze.motion.Executed;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Text that is out to break a reader: a clear diagnostic or a right answer, in bounded time. */
class PathologicalTextTest {
  private static final Duration SOON = Duration.ofSeconds(20);

  private static final ReadingRules WIDE = Programs.ZEROED.but().maxLineLength(0).build();

  private static ProgramSummary run(ReadingRules rules, long pieces, String piece) {
    return assertTimeout(
        SOON,
        () -> Interpreter.run("long.nc", new GeneratedText(pieces, i -> piece), rules, e -> {}));
  }

  @Test
  void one_line_of_fifty_megabytes_is_too_long() {
    for (ReadingRules rules : new ReadingRules[] {Programs.UNKNOWN, WIDE}) {
      ProgramSummary summary = run(rules, 5_000_000, "G1 X1.25 Y");
      assertThat(summary.count(ProgramCode.LINE_TOO_LONG)).isEqualTo(1);
      assertThat(summary.lines()).isEqualTo(1);
      assertThat(summary.diagnostics().get(0).message()).contains("50000000");
      assertThat(summary.diagnostics().get(0).where().line()).isEqualTo(1);
    }
  }

  @Test
  void ten_thousand_brackets_are_too_deep() {
    String line = "G0 X" + "[".repeat(10_000) + "1" + "]".repeat(10_000);
    assertThat(Programs.run(WIDE, line).codes()).containsExactly(ProgramCode.TOO_DEEP);
    assertThat(Programs.run(Programs.UNKNOWN, line).codes())
        .containsExactly(ProgramCode.LINE_TOO_LONG);
    assertThat(Programs.run(WIDE, "#1=" + "#".repeat(10_000) + "1").codes())
        .containsExactly(ProgramCode.TOO_DEEP);
    assertThat(Programs.run(WIDE, "#1=" + "ABS[".repeat(10_000)).codes())
        .containsExactly(ProgramCode.TOO_DEEP);
  }

  @Test
  void coordinates_of_1e308_are_out_of_range() {
    String huge = "1" + "0".repeat(308);
    assertThat(Programs.run(WIDE, "G21 G90 G0 X" + huge).codes())
        .containsExactly(ProgramCode.OUT_OF_RANGE);
    assertThat(Programs.run(WIDE, "G20 G91 G0 X" + huge).codes())
        .containsExactly(ProgramCode.OUT_OF_RANGE);
    assertThat(Programs.run(WIDE, "G21 G90 G0 X" + huge + "0").codes())
        .containsExactly(ProgramCode.OUT_OF_RANGE);
    assertThat(Programs.run(Programs.UNKNOWN, "G21 G90 G0 X1E308").codes())
        .containsExactly(ProgramCode.NUMBER);
    // However large the parameters, no position gets out of range.
    for (String line :
        new String[] {
          "G54 G0 X1",
          "G92.3 G0 X1",
          "G28",
          "G30",
          "G0 X#5221",
          "G92 X#5221",
          "G10 L2 P1 X#5221",
          "F1 G2 X1 I#5221",
          "F1 G2 X1 R#5221",
          "F#5221",
          "S#5221",
          "G4 P#5221",
          "F1 G83 X1 Z#5221 R1 Q#5221",
          "F1 G87 X1 Z-1 R1 I#5221 J1 K1"
        }) {
      String set = "#5161=" + huge + " #5181=" + huge + " #5211=-" + huge + " #5221=" + huge;
      assertThat(Programs.run(WIDE, "G20 G90", set, line).errors())
          .as(line)
          .extracting(d -> (Object) d.code())
          .containsExactly(ProgramCode.OUT_OF_RANGE);
    }
  }

  @Test
  void bytes_of_nothing_are_told() {
    assertThat(Programs.run(Programs.UNKNOWN, "G21\u0000").codes())
        .containsExactly(ProgramCode.BAD_CHARACTER);
    assertThat(Programs.run(Programs.UNKNOWN, "G21 (\u0000)").codes())
        .containsExactly(ProgramCode.BAD_CHARACTER);
    ProgramSummary zeros = run(Programs.UNKNOWN, 1000, "\u0000".repeat(1000));
    assertThat(zeros.errors()).isEqualTo(1);
    assertThat(zeros.count(ProgramCode.LINE_TOO_LONG)).isEqualTo(1);
  }

  @Test
  void lines_that_end_with_cr_only_are_lines() {
    byte[] text = "G21 G90\rG0 X1\r\rG0 Y2\rM2\r".getBytes(StandardCharsets.US_ASCII);
    Programs.Run run = Programs.runBytes(ReadingRules.REPORT, text);
    assertThat(run.summary().diagnostics()).isEmpty();
    assertThat(run.move(1).span().line()).isEqualTo(4);
  }

  @Test
  void random_bytes_give_diagnostics() {
    SplittableRandom random = frieze.fixtures.Seeds.random(20260104);
    for (int round = 0; round < 100; round++) {
      byte[] text = new byte[2000];
      random.nextBytes(text);
      Programs.Run run = Programs.runBytes(Programs.UNKNOWN, text);
      assertThat(run.summary().errors()).isPositive();
      assertThat(run.moves()).isEmpty();
    }
  }

  @Test
  void a_hundred_thousand_errors_are_counted_and_few_are_kept() {
    ProgramSummary summary = run(Programs.UNKNOWN, 100_000, "G0 X\n");
    assertThat(summary.count(ProgramCode.NUMBER)).isEqualTo(100_000);
    assertThat(summary.diagnostics()).hasSize(Interpreter.KEPT_PER_CODE);
  }

  @Test
  @Tag("soak")
  void a_million_repeats_of_a_cycle_are_streamed() {
    long[] moves = new long[1];
    ProgramSummary summary =
        assertTimeout(
            SOON,
            () ->
                Interpreter.run(
                    "cycle.nc",
                    "G21 G91 F60\nG81 X0.001 Z-1 R1 L1000000\nM2",
                    ReadingRules.REPORT,
                    e -> moves[0] += e instanceof Executed.Move ? 1 : 0));
    assertThat(summary.errors()).isZero();
    assertThat(moves[0]).isEqualTo(1 + 3L * 1_000_000);
  }

  /** The sum of the drift is known in closed form. */
  @Test
  @Tag("soak")
  void a_million_increments_add_up_without_drift() {
    double[] last = new double[1];
    Interpreter.run(
        "drift.nc",
        new GeneratedText(
            1_000_002, i -> i == 0 ? "G21 G91 F60\n" : i == 1_000_001 ? "M2\n" : "G1 X0.1\n"),
        ReadingRules.REPORT,
        e -> last[0] = e instanceof Executed.Move m ? m.path().to().x() : last[0]);
    assertThat(last[0]).isEqualTo(100_000, within(1e-9));
  }

  /** Run with -Xmx256m to see that memory does not grow with the text. */
  @Test
  @Tag("soak")
  void five_million_lines_are_streamed() {
    long lines = 5_000_000;
    double[] length = new double[1];
    long before = used();
    ProgramSummary summary =
        Interpreter.run(
            "long.nc",
            new GeneratedText(
                lines + 2,
                i -> i == 0 ? "G21 G90 F60\n" : i == lines + 1 ? "M2\n" : "G1 X" + i % 2 + "\n"),
            ReadingRules.REPORT,
            e -> length[0] += e instanceof Executed.Move m ? m.path().lengthMm() : 0);
    assertThat(summary.errors()).isZero();
    assertThat(summary.lines()).isEqualTo((int) lines + 2);
    assertThat(length[0]).isEqualTo((double) lines);
    assertThat(used() - before).isLessThan(64L << 20);
  }

  private static long used() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
