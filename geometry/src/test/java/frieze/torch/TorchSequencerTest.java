package frieze.torch;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.TorchWay;
import frieze.fixtures.Seeds;
import frieze.motion.Instruction;
import frieze.motion.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
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

  /**
   * Round openings at random: travel goes 20 mm higher where the straight way meets a slug, told by
   * the distance of its centre, and nowhere else.
   */
  @Test
  void travel_is_raised_over_pieces_that_lie_loose_and_nowhere_else() {
    long seed = Seeds.seed(20261130);
    SplittableRandom random = new SplittableRandom(seed);
    List<Path> openings = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      Point at = new Point(25 + 42 * (i % 5), 25 + 38 * (i / 5));
      Point jitter = new Point(8 * random.nextDouble(), 8 * random.nextDouble());
      openings.add(Path.circle(at.plus(jitter), 5 + 5 * random.nextDouble()));
    }
    TorchPlan plan =
        TorchBench.plan(
            TorchBench.rectangle(0, 0, 240, 180), TorchWay.USUAL, openings.toArray(Path[]::new));
    List<Instruction> steps =
        TorchSequencer.sequence(plan, TorchBench.setup(300, 240), "end").steps().stream()
            .map(Step::instruction)
            .toList();
    List<Path> loose = new ArrayList<>();
    int raised = 0;
    int cut = 0;
    for (int i = 0; i + 1 < plan.paths().size(); i++) {
      TorchPath path = plan.paths().get(i);
      loose.add(around(openings, path.pierce()));
      double height = heightOfTravel(steps, ++cut);
      double deepest = Double.POSITIVE_INFINITY;
      for (Path hole : loose) {
        Point centre = hole.bounds().centre();
        double reach = hole.bounds().width() / 2 - 0.75;
        Point next = plan.paths().get(i + 1).pierce();
        deepest = Math.min(deepest, fromSegment(centre, path.end(), next) - reach);
      }
      if (Math.abs(deepest) > 0.3) {
        assertThat(height)
            .as("seed %d, after %s, %s mm from a slug", seed, path.origin(), deepest)
            .isEqualTo(deepest < 0 ? 40 : 20);
        raised += deepest < 0 ? 1 : 0;
      }
    }
    assertThat(raised).as("seed %d", seed).isGreaterThan(5);
  }

  private static Path around(List<Path> openings, Point pierce) {
    return openings.stream()
        .filter(o -> o.bounds().centre().distance(pierce) < o.bounds().width() / 2)
        .findFirst()
        .orElseThrow();
  }

  /** How high the torch goes after the arc has gone out for the n-th time. */
  private static double heightOfTravel(List<Instruction> steps, int nth) {
    int out = 0;
    for (Instruction step : steps) {
      out += step instanceof Instruction.Torch torch && !torch.on() ? 1 : 0;
      if (out == nth && step instanceof Instruction.RapidZ up) {
        return up.z();
      }
    }
    throw new AssertionError("no rise after cut " + nth);
  }

  private static double fromSegment(Point p, Point a, Point b) {
    Point ab = b.minus(a);
    double t = Math.max(0, Math.min(1, p.minus(a).dot(ab) / ab.dot(ab)));
    return p.distance(a.towards(b, t));
  }
}
