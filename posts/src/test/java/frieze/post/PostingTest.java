package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import frieze.diagnostic.BadInputException;
import frieze.lower.FileNames;
import frieze.lower.Jobs;
import frieze.motion.Instruction;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.motion.Step;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PostingTest {
  private static final int LARGEST_KIB = 2;

  private static Post small() {
    String text =
        Posts.dialectFile("straight-only")
            .orElseThrow()
            .replace("largest kib: 4096", "largest kib: 2");
    return DialectFile.read("small.yaml", text);
  }

  private static Sequence grooves(int count, int points) {
    List<Step> steps = new ArrayList<>();
    steps.add(new Step(new Instruction.ToolChange(Jobs.FLAT), ""));
    steps.add(new Step(new Instruction.Spindle(Optional.of(18_000.0)), ""));
    for (int i = 0; i < count; i++) {
      steps.add(new Step(new Instruction.RapidXy(i, 0), "groove " + i));
      steps.add(new Step(new Instruction.RapidZ(1), "groove " + i));
      for (int k = 0; k < points; k++) {
        steps.add(new Step(new Instruction.Feed(new Position(i, k, -1), 500), "groove " + i));
      }
      steps.add(new Step(new Instruction.RapidZ(Jobs.CLEARANCE_MM), "groove " + i));
    }
    return new Sequence("front apron", steps);
  }

  private static List<ProgramText> write(Post post, Sequence sequence) {
    Setup setup = Jobs.setup(Jobs.machine(true, false, false));
    return Posting.write(
        sequence, setup, post, List.of(), new FileNames(post.capabilities().files()));
  }

  @Test
  void a_program_too_large_is_split_where_the_tool_travels() {
    List<ProgramText> texts = write(small(), grooves(40, 6));

    assertThat(texts).hasSizeGreaterThan(3);
    assertThat(texts)
        .allSatisfy(
            t -> {
              assertThat(t.bytes().length).isLessThanOrEqualTo(LARGEST_KIB * 1024);
              assertThat(t.tools()).containsExactly(Jobs.FLAT);
              assertThat(t.text()).contains("SPINDLE ON");
            });
    long cuts =
        texts.stream().flatMap(t -> t.text().lines()).filter(l -> l.startsWith("G1")).count();
    assertThat(cuts).isEqualTo(40 * 6);
    assertThat(texts.get(0).fileName()).isEqualTo("FRONTA01.NC");
    assertThat(texts.get(1).fileName()).isEqualTo("FRONTA02.NC");
  }

  @Test
  void one_cut_larger_than_the_largest_file_is_refused() {
    assertThatThrownBy(() -> write(small(), grooves(1, 500)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("POST-009");
  }

  @Test
  void what_fits_is_not_split() {
    assertThat(write(small(), grooves(2, 3))).hasSize(1);
  }
}
