package frieze.torch;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.TorchWay;
import frieze.motion.Instruction;
import frieze.motion.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

class TorchSequencerTest {
  /** The switch of a head that gives way by 1.5 mm trips with the tip's place 1.5 mm further on. */
  @Test
  void a_switch_that_trips_late_tells_the_tip_below_the_sheet() {
    TorchPlan plan =
        TorchBench.plan(
            TorchBench.rectangle(0, 0, 150, 100),
            TorchWay.USUAL,
            Path.circle(new Point(60, 50), 10));
    List<Instruction.Probe> probes =
        TorchSequencer.sequence(plan, TorchBench.setup(200, 200, 1.5), "end").steps().stream()
            .map(Step::instruction)
            .filter(Instruction.Probe.class::isInstance)
            .map(Instruction.Probe.class::cast)
            .toList();
    assertThat(probes).hasSize((int) plan.pierces());
    assertThat(probes).allSatisfy(p -> assertThat(p.tripsAtZMm()).isEqualTo(-1.5));
  }
}
