package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.diagnostic.Code;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.rs274.ProgramCode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Breaks a good program in one place; the finding that names the fault must tell of it there. */
class MutationTest {
  /**
   * One way to break a program.
   *
   * @param find a piece of the good text, which must be there
   * @param replace what stands there instead
   * @param code the finding that names the fault
   * @param at the beginning of the line that it must be told at
   */
  record Mutation(String name, String find, String replace, Code code, String at) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Mutation> mutations() {
    return Stream.of(
        new Mutation(
            "drop a minus sign", "X90 Z-3", "X90 Z3", FindingCode.CUTS_NOTHING, "G1 X90 Z3"),
        new Mutation(
            "swap G2 and G3",
            "Z-6 F800\nG1 X150 F1200\nG3",
            "Z-6 F800\nG1 X150 F1200\nG2",
            FindingCode.PASS_TOO_DEEP,
            "G2 X160"),
        new Mutation(
            "delete a retract",
            "G1 X200\nG0 Z5\nM5",
            "G1 X200\nM5",
            FindingCode.TRAVEL_IN_STOCK,
            "G0 X260 Y40"),
        new Mutation(
            "delete a retract within the stock",
            "G1 X130\nG0 Z5\n",
            "G1 X130\n",
            FindingCode.RAPID_INTO_MATERIAL,
            "G0 X200 Y100"),
        new Mutation(
            "change the units", "G17 G21", "G17 G20", FindingCode.BEYOND_TRAVEL, "G0 X260 Y40"),
        new Mutation(
            "drop the first feed",
            "G1 Z0 F400\nG1 X90 Z-3 F800",
            "G1 Z0\nG1 X90 Z-3",
            FindingCode.NO_FEED,
            "G1 Z0"),
        new Mutation(
            "double a depth", "X90 Z-3", "X90 Z-6", FindingCode.PASS_TOO_DEEP, "G1 X90 Z-6"),
        new Mutation(
            "double the depth of a hole",
            "G1 Z-19.3 F300\nG0 Z5\nM5",
            "G1 Z-38.6 F300\nG0 Z5\nM5",
            FindingCode.INTO_SPOILBOARD,
            "G1 Z-38.6"),
        new Mutation(
            "delete the spindle start", "S16000 M3\n", "", FindingCode.SPINDLE_OFF, "G1 X90 Z-3"),
        new Mutation(
            "turn the spindle backwards",
            "S16000 M3",
            "S16000 M4",
            FindingCode.SPINDLE_BACKWARDS,
            "G1 X90 Z-3"),
        new Mutation(
            "too fast a speed for the tool",
            "S16000",
            "S26000",
            FindingCode.SPEED_BEYOND_TOOL,
            "G1 Z0 F400"),
        new Mutation(
            "too fast a speed for the machine",
            "S16000",
            "S26000",
            FindingCode.SPEED_BEYOND_MACHINE,
            "G1 Z0 F400"),
        new Mutation(
            "ten times the feed",
            "F1200\n"
                + "G3 X160 Y50 I0 J10\n"
                + "G1 Y90\n"
                + "G3 X150 Y100 I-10 J0\n"
                + "G1 X50\n"
                + "G3 X40 Y90 I0 J-10\n"
                + "G1 Y50\n"
                + "G3 X50 Y40 I10 J0\n"
                + "G1 X90",
            "F12000\n"
                + "G3 X160 Y50 I0 J10\n"
                + "G1 Y90\n"
                + "G3 X150 Y100 I-10 J0\n"
                + "G1 X50\n"
                + "G3 X40 Y90 I0 J-10\n"
                + "G1 Y50\n"
                + "G3 X50 Y40 I10 J0\n"
                + "G1 X90",
            FindingCode.FEED_BEYOND_TOOL,
            "G1 X150 F12000"),
        new Mutation(
            "a feed that the machine cannot reach",
            "G1 X240 Z-2 F800",
            "G1 X240 Z-2 F4000",
            FindingCode.FEED_BEYOND_MACHINE,
            "G1 X240 Z-2 F4000"),
        new Mutation("no speed", "S16000 M3", "M3", FindingCode.NO_SPEED, "G1 Z0 F400"),
        new Mutation(
            "a rapid for a feed",
            "G1 X200\n",
            "G0 X180\n",
            FindingCode.RAPID_INTO_MATERIAL,
            "G0 X180"),
        new Mutation(
            "a plunge for a ramp",
            "G1 X90 Z-3 F800",
            "G1 Z-3 F300",
            FindingCode.PLUNGE_OFF_CENTRE,
            "G1 Z-3 F300"),
        new Mutation(
            "a short ramp",
            "G1 X90 Z-3 F800",
            "G1 X70 Z-3 F800",
            FindingCode.RAMP_TOO_STEEP,
            "G1 X70 Z-3"),
        new Mutation(
            "a plunge at the feed of the cut",
            "G1 Z-19.3 F300\nG0 Z5\nG0 X260 Y110",
            "G1 Z-19.3 F900\nG0 Z5\nG0 X260 Y110",
            FindingCode.PLUNGE_TOO_FAST,
            "G1 Z-19.3 F900"),
        new Mutation(
            "another tool's number", "T1 M6", "T2 M6", FindingCode.DRILL_SIDEWAYS, "G1 X90 Z-3"),
        new Mutation(
            "a tool that is not there", "T1 M6", "T7 M6", FindingCode.UNKNOWN_TOOL, "G1 Z0 F400"),
        new Mutation(
            "a digit too many",
            "G0 X260 Y110",
            "G0 X2600 Y110",
            FindingCode.CUT_OFF_STOCK,
            "G1 Z-19.3 F300\nG0 Z5\nM5"),
        new Mutation(
            "an arc's centre off",
            "G3 X160 Y50 I0 J10",
            "G3 X160 Y50 I0 J11",
            ProgramCode.ARC_RADII_DIFFER,
            "G3 X160 Y50 I0 J11"),
        new Mutation(
            "no raise at the end",
            "G1 Z-19.3 F300\nG0 Z5\nM5\nG53 G0 Z0\nM2",
            "G1 Z-19.3 F300\nM5\nM2",
            FindingCode.ENDS_LOW,
            "M2"),
        new Mutation(
            "a text cut short",
            "G0 X260 Y110\nG1 Z-19.3 F300\nG0 Z5\nM5\nG53 G0 Z0\nM2\n",
            "",
            FindingCode.SPINDLE_LEFT_ON,
            "S9000 M3"),
        new Mutation(
            "a zero left shifted",
            "G4 P3\nG0 X50",
            "G92 X50\nG4 P3\nG0 X50",
            FindingCode.STALE_OFFSET,
            "G92 X50"),
        new Mutation(
            "a low travel",
            "G1 X130\nG0 Z5",
            "G1 X130\nG0 Z2",
            FindingCode.LOW_TRAVEL,
            "G0 X200 Y100"),
        new Mutation(
            "a travel through a clamp",
            "G0 X200 Y100",
            "G0 X10 Y70",
            FindingCode.HITS_KEEP_OUT,
            "G0 X10 Y70"));
  }

  @ParameterizedTest
  @MethodSource("mutations")
  void each_fault_is_named_where_it_is(Mutation m) {
    assertThat(Bench.GOOD).contains(m.find());
    String broken = Bench.GOOD.replace(m.find(), m.replace());
    assertThat(broken).isNotEqualTo(Bench.GOOD);
    int start = broken.indexOf(m.at());
    assertThat(start).isNotNegative();
    int line = (int) broken.substring(0, start).lines().count() + 1;
    List<Finding> findings = Bench.run(Bench.KNOWN, broken).findings();
    assertThat(findings)
        .as(() -> String.join("\n", findings.stream().map(Finding::toString).toList()))
        .anyMatch(
            f ->
                f.code() == m.code()
                    && f.firstLine() <= line
                    && line <= f.lastLine()
                    && !f.text().isEmpty());
  }

  @Test
  void the_good_program_has_no_finding() {
    assertThat(Bench.run(Bench.KNOWN, Bench.GOOD).findings()).isEmpty();
  }
}
