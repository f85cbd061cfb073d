package frieze.dryrun;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import frieze.diagnostic.Code;
import frieze.dryrun.finding.FindingCode;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Breaks what our own planner and posts wrote, without knowing where anything is in it. */
class PlannedMutationTest {
  private static Planned full;

  @BeforeAll
  static void plan() {
    full = Planned.with("rs274-full", false, false, Zero.LEFT_FRONT_TOP);
  }

  /** A fault, as a change of the last program's text, and the finding that names it. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        // At the end of a ramp, after which the cut goes on sideways.
        "drop a minus sign | Z-([0-9.]+)(\\n[XY][0-9.]+\\n) | Z$1$2 | CUTS_NOTHING",
        "swap G3 and G2 | G3 | G2 | GOUGE",
        "delete a retract | G0 Z6\\n(G0 )?X | G0 X | TRAVEL_IN_STOCK",
        "change the units | G21 | G20 | BEYOND_TRAVEL",
        "drop the feeds | \" F[0-9.]+\" | \"\" | NO_FEED",
        "double the depth | Z-12.4 | Z-24.8 | INTO_SPOILBOARD",
        "delete the spindle start | S[0-9]+ M3 | \"\" | SPINDLE_OFF",
        "turn backwards | M3 | M4 | SPINDLE_BACKWARDS",
        "ten times the speed | S([0-9]+) | S$10 | SPEED_BEYOND_TOOL",
        "ten times the feed | F1800 | F18000 | FEED_BEYOND_TOOL",
        "rapid for feed | G1 Y | G0 Y | RAPID_INTO_MATERIAL",
        "shift a corner | X248.175 | X258.175 | GOUGE",
        "another zero | \\nG4 P3 | \\nG92 Z1\\nG4 P3 | STALE_OFFSET",
      })
  void a_fault_is_named(String name, String find, String replace, String code) throws Exception {
    List<ProgramText> programs = new ArrayList<>(full.programs());
    // The last program cuts in one go; only the first one travels between cuts.
    int last = name.equals("delete a retract") ? 0 : programs.size() - 1;
    String good = new String(programs.get(last).open().readAllBytes(), US_ASCII);
    Matcher matcher = Pattern.compile(find).matcher(good);
    assertThat(matcher.find()).as(good).isTrue();
    String broken = matcher.replaceFirst(replace.replace("\\n", "\n"));
    if (name.startsWith("drop the feeds") || name.startsWith("double")) {
      broken = matcher.replaceAll(replace);
    }
    assertThat(broken).isNotEqualTo(good);
    programs.set(
        last, ProgramText.of("broken.nc", broken.getBytes(US_ASCII), programs.get(last).rules()));
    DryRunResult result = full.run(programs);
    assertThat(result.findings())
        .as(name)
        .anyMatch(f -> nameOf(f.code()).equals(code) && f.program().equals("broken.nc"));
  }

  private static String nameOf(Code code) {
    return code instanceof FindingCode own ? own.name() : code.id();
  }
}
