package frieze.torch;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.TorchWay;
import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TorchOrderTest {
  private static final Path PANEL = TorchBench.rectangle(0, 0, 280, 180);

  private static List<TorchPath> inside(TorchPlan plan) {
    return plan.paths().stream().filter(p -> p.kind() != TorchPath.Kind.OUTLINE).toList();
  }

  /** Targets of five and of three rings at random places: radii say how deep a pierce lies. */
  @Test
  void what_was_drawn_within_is_cut_first_at_every_depth() {
    long seed = Seeds.seed(20261126);
    SplittableRandom random = new SplittableRandom(seed);
    Point large = new Point(85 + 5 * random.nextDouble(), 85 + 10 * random.nextDouble());
    Point small = new Point(190 + 10 * random.nextDouble(), 60 + 50 * random.nextDouble());
    List<Path> rings = new ArrayList<>();
    for (int ring = 0; ring < 5; ring++) {
      rings.add(Path.circle(large, 8 + 9.5 * ring));
    }
    for (int ring = 0; ring < 3; ring++) {
      rings.add(Path.circle(small, 8 + 9.5 * ring));
    }
    TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, rings.toArray(Path[]::new));
    assertThat(depths(plan, large)).as("seed %d", seed).isSorted().contains(0, 2, 4);
    assertThat(depths(plan, small)).as("seed %d", seed).isSorted().contains(0, 2);
    TorchPath last = plan.paths().get(plan.paths().size() - 1);
    assertThat(last.kind()).isEqualTo(TorchPath.Kind.OUTLINE);
  }

  /** How many rings of a target lie within each pierce, in the order of cutting. */
  private static List<Integer> depths(TorchPlan plan, Point centre) {
    return inside(plan).stream()
        .map(p -> p.pierce().distance(centre))
        .filter(d -> d < 48)
        .map(d -> (int) Math.ceil((d - 8) / 9.5))
        .toList();
  }

  /** The stated rule, checked with pairs of boxes: 15 mm apart at 3 mm, unless all are nearer. */
  @Test
  void a_neighbour_is_cut_next_only_if_nothing_else_is_left() {
    long seed = Seeds.seed(20261127);
    SplittableRandom random = new SplittableRandom(seed);
    int hot = 0;
    int cool = 0;
    for (int round = 0; round < 2; round++) {
      List<Path> openings = new ArrayList<>();
      for (int i = 0; i < 24; i++) {
        Point at = new Point(25 + 32 * (i % 8), 30 + 50 * (i / 8));
        double r = 4 + 7 * random.nextDouble();
        openings.add(Path.circle(at.plus(new Point(4 * random.nextDouble(), 0)), r));
      }
      List<TorchPath> paths =
          inside(TorchBench.plan(PANEL, TorchWay.USUAL, openings.toArray(Path[]::new)));
      assertThat(paths).hasSize(24);
      for (int i = 0; i + 1 < paths.size(); i++) {
        Bounds last = box(paths.get(i));
        if (gap(last, box(paths.get(i + 1))) >= 15) {
          cool++;
          continue;
        }
        hot++;
        assertThat(paths.subList(i + 1, paths.size()))
            .as("seed %d, round %d, after %d", seed, round, i)
            .allMatch(p -> gap(last, box(p)) < 15);
      }
    }
    assertThat(cool).isGreaterThan(36);
    assertThat(hot).isLessThan(10);
  }

  private static Bounds box(TorchPath path) {
    Bounds bounds = Bounds.of(path.pierce());
    for (TorchPath.Piece piece : path.pieces()) {
      bounds = bounds.with(piece.path().bounds());
    }
    return bounds;
  }

  private static double gap(Bounds a, Bounds b) {
    double dx = Math.max(0, Math.max(a.minX() - b.maxX(), b.minX() - a.maxX()));
    double dy = Math.max(0, Math.max(a.minY() - b.maxY(), b.minY() - a.maxY()));
    return Math.hypot(dx, dy);
  }
}
