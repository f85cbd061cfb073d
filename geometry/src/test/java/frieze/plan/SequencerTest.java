package frieze.plan;

import static frieze.plan.Bench.FLAT_3;
import static frieze.plan.Bench.FLAT_6;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.motion.Instruction;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.motion.Step;
import frieze.plan.cut.PlanCode;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SequencerTest {
  private static final Zero CENTRE_BED =
      new Zero(Zero.AlongX.CENTRE, Zero.AlongY.CENTRE, Zero.AlongZ.BED);

  static Design everything() {
    Motif leaf = Bench.filled("leaf", Bench.rectangle(0, 0, 40, 30));
    Motif vein =
        Bench.stroked("vein", Path.polyline(List.of(new Point(0, 0), new Point(0, 20)), false));
    return new Design(
        Bench.panel(),
        List.of(leaf, vein),
        List.of(
            Bench.at("leaf", 1, Affine.translation(50, 40)),
            Bench.at("leaf", 2, Affine.scaling(-1, 1).then(Affine.translation(650, 40))),
            Bench.at("vein", 1, Affine.translation(200, 50))),
        List.of(
            new Work.Cutout(
                FLAT_6, Optional.of(new Tabs(6, 6, 3)), Work.Milling.CONVENTIONAL, Bench.WHERE),
            new Work.Bore(
                List.of(new Point(20, 65), new Point(704, 65)),
                5,
                Optional.empty(),
                Bench.DRILL_5,
                Bench.WHERE),
            Bench.groove("vein", FLAT_3, 2),
            Bench.recess("leaf", FLAT_3, 3)));
  }

  private static Sequence sequence(Setup setup) {
    Plan plan = Planner.plan(everything(), setup, Tolerances.DEFAULT);
    return Sequencer.sequence(plan, setup, "front apron");
  }

  @Test
  void recesses_come_first_then_grooves_then_holes_and_the_cutout_last() {
    List<String> kinds =
        sequence(Bench.setup()).steps().stream()
            .map(s -> s.origin().split(" ", -1)[0])
            .filter(k -> !k.isEmpty() && !k.equals("tool"))
            .distinct()
            .toList();
    assertThat(kinds).containsExactly("recess", "groove", "bore", "cutout");
  }

  @Test
  void the_tool_travels_only_at_the_clearance_height() {
    for (Zero zero : List.of(Zero.LEFT_FRONT_TOP, CENTRE_BED)) {
      Setup setup = Bench.setup(Material.Kind.HARDWOOD, false, zero, false);
      double top = zero.z() == Zero.AlongZ.TOP ? 0 : 19.2;
      double z = Double.NaN;
      for (Step step : sequence(setup).steps()) {
        Instruction i = step.instruction();
        if (i instanceof Instruction.RaiseToSafe) {
          z = Double.POSITIVE_INFINITY;
        } else if (i instanceof Instruction.RapidZ rapid) {
          z = rapid.z();
          assertThat(z).isGreaterThanOrEqualTo(top + Sequencer.APPROACH_MM - 1e-12);
        } else if (i instanceof Instruction.Feed feed) {
          z = feed.to().z();
        } else if (i instanceof Instruction.Turn turn) {
          z = turn.to().z();
        } else if (i instanceof Instruction.Drill drill) {
          z = drill.retractZ();
        } else if (i instanceof Instruction.RapidXy) {
          assertThat(z).as(step.origin()).isGreaterThanOrEqualTo(top + 5 - 1e-12);
        }
      }
      assertThat(z).isEqualTo(Double.POSITIVE_INFINITY);
    }
  }

  @Test
  void the_zero_moves_all_positions_by_the_same_amount() {
    List<Position> a = feeds(sequence(Bench.setup()));
    List<Position> b =
        feeds(sequence(Bench.setup(Material.Kind.HARDWOOD, false, CENTRE_BED, false)));
    assertThat(b).hasSameSizeAs(a);
    for (int i = 0; i < a.size(); i++) {
      assertThat(b.get(i).distance(a.get(i).plus(-370, -80, 19.2))).isLessThan(1e-9);
    }
  }

  private static List<Position> feeds(Sequence sequence) {
    List<Position> positions = new ArrayList<>();
    for (Step step : sequence.steps()) {
      if (step.instruction() instanceof Instruction.Feed feed) {
        positions.add(feed.to());
      }
    }
    return positions;
  }

  @Test
  void each_tool_is_called_once_and_its_spindle_runs_before_it_cuts() {
    boolean running = false;
    List<String> tools = new ArrayList<>();
    for (Step step : sequence(Bench.setup()).steps()) {
      Instruction i = step.instruction();
      if (i instanceof Instruction.ToolChange change) {
        tools.add(change.tool().name());
        assertThat(running).isFalse();
      } else if (i instanceof Instruction.Spindle spindle) {
        running = spindle.rpm().isPresent();
      } else if (i instanceof Instruction.Feed || i instanceof Instruction.Drill) {
        assertThat(running).isTrue();
      }
    }
    assertThat(tools).containsExactly("flat 3.0", "drill 5", "flat 6.0");
    assertThat(running).isFalse();
  }

  @Test
  void a_spindle_set_by_hand_is_asked_for_a_speed_of_its_dial() {
    Setup setup = Bench.setup(Material.Kind.HARDWOOD, true, Zero.LEFT_FRONT_TOP, false);
    List<Double> speeds = new ArrayList<>();
    for (Step step : sequence(setup).steps()) {
      if (step.instruction() instanceof Instruction.Spindle spindle) {
        spindle.rpm().ifPresent(speeds::add);
      }
    }
    assertThat(speeds).hasSize(3).isSubsetOf(setup.machine().spindle().dial());
  }

  @Test
  void a_blank_is_not_cut_out() {
    Setup setup = Bench.setup(Material.Kind.HARDWOOD, false, Zero.LEFT_FRONT_TOP, true);
    Plan plan = Planner.plan(everything(), setup, Tolerances.DEFAULT);
    assertThat(plan.cuts()).noneMatch(c -> c.origin().startsWith("cutout"));
    assertThat(plan.notes()).anyMatch(d -> d.code() == PlanCode.BLANK_NOT_CUT_OUT);
    double deepest = plan.cuts().stream().mapToDouble(c -> c.end().z()).min().orElseThrow();
    assertThat(deepest).isCloseTo(-19.7, within(1e-9));
  }
}
