package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expressions and parameters: NISTIR 6556, 3.3.2.2 to 3.3.3, and the program of C.2. */
class ExpressionTest {
  /** The values of C.2 are given to six decimals. */
  private static final double DIGITS = 5e-7;

  private static double value(String text) {
    Programs.Run run = Programs.run(Programs.ZEROED, "#1 = 0.375", "#2 = 1", "#7 = " + text);
    assertThat(run.errors()).as(text).isEmpty();
    return run.parameters().get(7);
  }

  private static ProgramCode error(String text) {
    return (ProgramCode) Programs.run(Programs.ZEROED, "#7 = " + text).only().code();
  }

  /** C.2 of the report, n0020 to n0460. */
  @ParameterizedTest
  @CsvSource({
    "[1 + 2], 3",
    "[1 - 2], -1",
    "[1 --3], 4",
    "[2/5], 0.4",
    "[3.0 * 5], 15",
    "[0 OR 0], 0",
    "[0 OR 1], 1",
    "[2 or 2], 1",
    "[0 AND 0], 0",
    "[0 AND 1], 0",
    "[2 and 2], 1",
    "[0 XOR 0], 0",
    "[0 XOR 1], 1",
    "[2 xor 2], 0",
    "[15 MOD 4.0], 3",
    "[1 + 2 * 3 - 4 / 5], 6.2",
    "sin[30], 0.5",
    "cos[0.0], 1",
    "tan[60.0], 1.732051",
    "sqrt[3], 1.732051",
    "atan[1.7321]/[1.0], 60.000705",
    "asin[1.0], 90",
    "acos[0.707107], 44.999982",
    "abs[20.0], 20",
    "abs[-1.23], 1.23",
    "round[-0.499], 0",
    "round[-0.5001], -1",
    "round[2.444], 2",
    "round[9.975], 10",
    "fix[-0.499], -1",
    "fix[-0.5001], -1",
    "fix[2.444], 2",
    "fix[9.975], 9",
    "fup[-0.499], 0",
    "fup[-0.5001], 0",
    "fup[2.444], 3",
    "fup[9.975], 10",
    "exp[2.3026], 10.000149",
    "ln[10.0], 2.302585",
    "sqrt[3**2 + 4**2], 5",
    "[2 + asin[1/2.1+-0.345] / [atan[fix[4.4] * 2.1 * sqrt[16.8]] /[-18]]**2], 2.000545"
  })
  void the_expressions_of_the_report_have_its_values(String text, double expected) {
    assertThat(value(text)).isEqualTo(expected, within(DIGITS));
  }

  /** From the grammar: equal strength goes left to right; logic is as weak as addition. */
  @ParameterizedTest
  @CsvSource({
    "[2**3**2], 64",
    "[-2**2], 4",
    "[1 OR 0 AND 0], 0",
    "[2 * 3 ** 2], 18",
    "[8 / 4 / 2], 1",
    "[10 - 4 - 3], 3",
    "[7 MOD 4 * 2], 6",
    "[1 + 1 AND 0], 0",
    "[3 - 1 OR 0], 1",
    "[#1 + 2], 2.375",
    "#[1 + 1], 1",
    "##2, 0.375",
    "[[[4]]], 4",
    "[ 1 0 + 1 ], 11",
    "s i n [ 9 0 ], 1",
    "[5 m o d 3], 2"
  })
  void operations_have_the_strength_of_the_grammar(String text, double expected) {
    assertThat(value(text)).isEqualTo(expected, within(1e-12));
  }

  /** What the report leaves open; docs/reference/reading-rs274.md states what is chosen. */
  @ParameterizedTest
  @CsvSource({
    "round[0.5], 1", "round[-0.5], -1", "round[2.5], 3", "[-1 MOD 3], 2", "[-1 MOD -3], 2",
    "[1 MOD -3], 1", "atan[1]/[-1], 135", "atan[-1]/[-1], -135", "atan[-1]/[1], -45", "[0**0], 1"
  })
  void open_points_are_decided_as_the_reference_says(String text, double expected) {
    assertThat(value(text)).isEqualTo(expected, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "[1/0], ARITHMETIC",
    "[1 MOD 0], ARITHMETIC",
    "[-8 ** 0.5], ARITHMETIC",
    "sqrt[-1], ARITHMETIC",
    "acos[1.001], ARITHMETIC",
    "asin[-2], ARITHMETIC",
    "ln[-1], ARITHMETIC",
    "exp[1000], ARITHMETIC",
    "[1+], EXPRESSION",
    "[], EXPRESSION",
    "[1 FOO 2], EXPRESSION",
    "[1 + 2, EXPRESSION",
    "atan[1]/2, EXPRESSION",
    "atan[1][2], EXPRESSION",
    "sin30, EXPRESSION",
    "foo[1], NUMBER",
    "+[1], SIGN",
    "-sin[30], SIGN",
    "-#1, SIGN",
    "#, EXPRESSION",
    "#5400, PARAMETER_NUMBER",
    "#0, PARAMETER_NUMBER",
    "#-1, PARAMETER_NUMBER",
    "#1.001, NOT_WHOLE",
    "[1]], BAD_CHARACTER"
  })
  void wrong_expressions_are_refused(String text, ProgramCode code) {
    assertThat(error(text)).isEqualTo(code);
  }

  @Test
  void a_parameter_number_may_be_a_ten_thousandth_off() {
    assertThat(value("#1.0001")).isEqualTo(0.375);
    assertThat(value("#[2 - 0.0001]")).isEqualTo(1);
    assertThat(error("#1.00011")).isEqualTo(ProgramCode.NOT_WHOLE);
  }

  @Test
  void a_hundred_brackets_are_read_and_one_more_is_refused() {
    ReadingRules wide = Programs.ZEROED.but().maxLineLength(0).build();
    int most = LineScanner.DEEPEST;
    String right = "[".repeat(most) + "1" + "]".repeat(most);
    assertThat(Programs.run(wide, "#7=" + right).errors()).isEmpty();
    assertThat(Programs.run(wide, "#7=[" + right + "]").only().code())
        .isEqualTo(ProgramCode.TOO_DEEP);
    // Brackets side by side are not nested.
    String row = "[1" + "+[1]".repeat(3 * most) + "]";
    assertThat(Programs.run(wide, "#7=" + row).parameters().get(7)).isEqualTo(1 + 3 * most);
  }

  @Test
  void settings_of_a_line_that_is_refused_take_no_effect() {
    Programs.Run run = Programs.run(Programs.ZEROED, "#3=1", "#3=2 G0 G1 X1");
    assertThat(run.parameters().get(3)).isEqualTo(1);
  }

  @Test
  void many_settings_on_one_line_are_kept() {
    ReadingRules wide = Programs.ZEROED.but().maxLineLength(0).build();
    StringBuilder line = new StringBuilder();
    for (int i = 1; i <= 40; i++) {
      line.append('#').append(i).append('=').append(i * i);
    }
    Programs.Run run = Programs.run(wide, line.toString());
    for (int i = 1; i <= 40; i++) {
      assertThat(run.parameters().get(i)).isEqualTo((double) i * i);
    }
  }

  @Test
  void lengths_that_the_machine_keeps_follow_the_unit_of_the_program() {
    Programs.Run run =
        Programs.run(
            Programs.ZEROED,
            "G21 G10 L2 P1 X50.8 A7",
            "G20",
            "#1=#5221 #2=#5224",
            "#5222=2",
            "G54");
    assertThat(run.parameters().get(1)).isEqualTo(2, within(1e-12));
    assertThat(run.parameters().get(2)).isEqualTo(7);
    assertThat(run.summary().position().y().orElseThrow()).isEqualTo(-50.8, within(1e-12));
  }
}
