package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Point;
import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Surroundings;
import frieze.lower.FileNames;
import frieze.lower.Jobs;
import frieze.lower.RelightSpot;
import frieze.motion.Instruction;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.motion.Step;
import frieze.rs274.ReadingRules;
import frieze.shop.Setup;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  /** A slot that goes on from X150 Y40.5 to Y60, broken off there; the scrap is on its right. */
  private static String rescue(RelightSpot relight) {
    Post post = builtIn("plasma-touch");
    List<Step> steps = new ArrayList<>(Jobs.torchHoles("end panel").steps());
    int slot = 0;
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).instruction() instanceof Instruction.Feed) {
        slot = i;
      }
    }
    Position corner = new Position(150, 60, 1.5);
    steps.add(slot + 1, new Step(new Instruction.Feed(corner, 2_000), "torchcut slot 1"));
    FileNames names = new FileNames(post.capabilities().files());
    Rescuer rescuer = new Rescuer(new Sequence("end panel", steps), SETUP, post, List.of(), names);
    List<String> lines = rescuer.programs().get(0).text().lines().toList();
    return rescuer.from(0, lines.indexOf("Y60") + 1, List.of(), relight).get(0).text();
  }

  @Test
  void a_torch_is_lit_again_in_the_scrap_and_comes_in_from_there() {
    String text =
        rescue(
            (at, ahead, done) -> {
              assertThat(done).as("two halves of a circle, and the slot so far").hasSize(3);
              assertThat(ahead.x()).isZero();
              return Optional.of(at.plus(new Point(4, 1)));
            });
    assertThat(text)
        .doesNotContain("NO ROOM")
        .contains(
            String.join(
                "\n",
                List.of(
                    "X154 Y41.5",
                    "G38.2 Z-5 F400",
                    "G92 Z-1.2",
                    "G0 Z3.8",
                    "M9",
                    "M3",
                    "G4 P0.6",
                    "G1 X154 Y41.5 Z1.5 F1000",
                    "M8",
                    "G1 X150 Y40.5 Z1.5 F2000",
                    "Y60",
                    "M9",
                    "M5")));
  }

  @Test
  void a_torch_that_finds_no_room_is_lit_in_the_kerf_and_the_operator_is_told() {
    String text = rescue(RelightSpot.NONE);
    assertThat(text.replace(")\n(", " "))
        .contains(
            "NO ROOM IN THE SCRAP: THE ARC IS LIT IN THE KERF AT X 150 Y 40.5 AND MAY MARK THE"
                + " EDGE");
    assertThat(text).contains("G1 X150 Y40.5 Z1.5 F1000\nM8\nG1 X150 Y60 Z1.5 F2000");
  }
}
