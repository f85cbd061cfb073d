package frieze.lower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import frieze.motion.Instruction;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.motion.Step;
import frieze.post.Post;
import frieze.post.Posts;
import frieze.shop.Machine;
import java.util.List;
import org.junit.jupiter.api.Test;

class LoweringTest {
  private static List<Program> lower(String postId, Machine machine, Sequence sequence) {
    Post post = Posts.find(postId).orElseThrow();
    return Lowering.lower(
        sequence,
        new Lowering.Request(
            Jobs.setup(machine),
            post.capabilities(),
            List.of("Hall bench"),
            new FileNames(post.capabilities().files())));
  }

  @Test
  void each_tool_has_a_program_of_its_own_without_a_changer() {
    List<Program> programs =
        lower("short-arcs", Jobs.machine(true, false, false), Jobs.leafAndRecess("front apron"));

    assertThat(programs)
        .extracting(Program::fileName)
        .containsExactly("front-apron-01.nc", "front-apron-02.nc");
    assertThat(programs.get(0).tools()).containsExactly(Jobs.FLAT);
    assertThat(programs.get(1).tools()).containsExactly(Jobs.SMALL);
  }

  @Test
  void a_changer_keeps_all_tools_in_one_program() {
    List<Program> programs =
        lower("rs274-full", Jobs.machine(false, true, false), Jobs.leafAndRecess("front apron"));

    assertThat(programs).hasSize(1);
    assertThat(programs.get(0).tools()).containsExactly(Jobs.FLAT, Jobs.SMALL);
  }

  @Test
  void a_controller_with_a_changer_on_a_machine_without_one_gets_separate_programs() {
    assertThat(
            lower(
                "rs274-full", Jobs.machine(false, false, false), Jobs.leafAndRecess("front apron")))
        .hasSize(2);
  }

  @Test
  void a_spindle_by_hand_is_asked_for_before_the_first_cut_of_each_program() {
    for (Program program :
        lower("short-arcs", Jobs.machine(true, false, false), Jobs.leafAndRecess("front apron"))) {
      List<Command> commands = program.entries().stream().map(Program.Entry::command).toList();
      int ask = indexOf(commands, c -> c instanceof Command.Stop s && s.message().contains("DIAL"));
      int cut = indexOf(commands, c -> c instanceof Command.Line || c instanceof Command.Arc);
      assertThat(ask).isNotNegative().isLessThan(cut);
      assertThat(commands).noneMatch(c -> c instanceof Command.SpindleOn);
    }
  }

  @Test
  void a_cut_without_a_tool_is_refused() {
    Sequence bare =
        new Sequence(
            "bare",
            List.of(new Step(new Instruction.Feed(new Position(1, 2, 3), 100), "groove 1")));

    assertThatThrownBy(() -> lower("short-arcs", Jobs.machine(true, false, false), bare))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("groove 1");
  }

  private static int indexOf(List<Command> commands, java.util.function.Predicate<Command> which) {
    for (int i = 0; i < commands.size(); i++) {
      if (which.test(commands.get(i))) {
        return i;
      }
    }
    return -1;
  }
}
