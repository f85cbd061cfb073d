package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.FindingCode;
import frieze.dryrun.Surroundings;
import frieze.lower.FileNames;
import frieze.lower.Jobs;
import frieze.rs274.ReadingRules;
import frieze.shop.Setup;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlasmaTouchTest extends PostContractTest {
  private static final Setup SETUP = Jobs.setup(Jobs.machine(true, false, false));

  @Override
  protected Post post() {
    return builtIn("plasma-touch");
  }

  private static String text(Post post) {
    return Posting.write(
            Jobs.torchHoles("end panel"),
            SETUP,
            post,
            List.of(),
            new FileNames(post.capabilities().files()))
        .get(0)
        .text();
  }

  private static DryRunResult dryRun(String text, Post post) {
    ReadingRules reading = post.reading();
    ReadingRules rules = reading.but().start(reading.start().withTool(Jobs.FLAT.number())).build();
    return DryRun.in(Surroundings.of(SETUP))
        .run(
            List.of(
                frieze.dryrun.ProgramText.of(
                    "t.nc", text.getBytes(StandardCharsets.US_ASCII), rules)));
  }

  /** The order is common practice of plasma tables; no published source. */
  @Test
  void each_cut_is_felt_for_pierced_followed_held_and_left() {
    assertThat(text(post()))
        .contains(
            String.join(
                "\n",
                List.of(
                    "X100 Y40",
                    "G38.2 Z-5 F400",
                    "G92 Z-1.2",
                    "G0 Z3.8",
                    "M9",
                    "M3",
                    "G4 P0.6",
                    "G1 X100 Y40 Z1.5 F1000",
                    "M8",
                    "G1 X150 Y40.5 Z1.5 F2000",
                    "M9",
                    "M5",
                    "G4 P1.5",
                    "G0 Z12")));
  }

  @Test
  void no_shift_is_left_over_before_or_after() {
    List<String> lines = text(post()).lines().toList();
    int first = lines.indexOf("G92.1");
    assertThat(lines.subList(0, first)).noneMatch(l -> l.startsWith("G0") || l.startsWith("X"));
    assertThat(lines.subList(lines.size() - 2, lines.size())).containsExactly("G92.1", "M2");
  }

  @Test
  void the_dry_run_has_nothing_against_it() {
    DryRunResult result = dryRun(text(post()), post());
    assertThat(result.findings()).isEmpty();
    assertThat(result.stock().orElseThrow().removedVolumeMm3()).isZero();
  }

  @Test
  void cutting_at_another_height_than_before_is_seen_through_the_touch_off() {
    String text = text(post());
    int second = text.lastIndexOf("Z1.5 F1000");
    String wrong = text.substring(0, second) + text.substring(second).replace("Z1.5", "Z4.5");
    assertThat(dryRun(wrong, post()).findings())
        .extracting(f -> (Object) f.code())
        .contains(FindingCode.TORCH_HEIGHT);
  }
}
