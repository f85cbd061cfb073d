package frieze.torch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.TorchWay;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** 3 mm sheet, a kerf of 1.5 mm; zero 20 mm from the panel's corner along X and Y. */
class RelightTest {
  private static final Path PANEL = TorchBench.rectangle(0, 0, 150, 100);
  private static final Setup SETUP = TorchBench.setup(600, 400);
  private static final int BITS = 200;
  private static final Point CENTRE = new Point(60, 50);

  /** What of the first path is done, and where and whither the next piece of it goes. */
  private record Break(List<Motion> done, Point at, Point ahead) {
    static Break of(TorchPlan plan, int pieces) {
      List<Motion> all = new ArrayList<>();
      for (TorchPath.Piece piece : plan.paths().get(0).pieces()) {
        for (int i = 0; i < BITS; i++) {
          all.add(
              new Motion.Straight(
                  program(piece.path().at((double) i / BITS)),
                  program(piece.path().at((i + 1.0) / BITS))));
        }
      }
      Motion next = all.get(pieces);
      return new Break(
          all.subList(0, pieces), next.from().xy(), next.to().xy().minus(next.from().xy()));
    }

    private static Position program(Point panel) {
      return new Position(SETUP.programFromPanel().affine().apply(panel), 1.5);
    }
  }

  private static Relight relight(TorchPlan plan) {
    return new Relight(plan, TorchWay.USUAL, SETUP);
  }

  /** 5 mm from the edge are good at 3 mm: on the radius of 5, as far round as the kerf's end. */
  @Test
  void in_a_hole_of_20_mm_it_is_lit_half_way_to_the_middle() {
    TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, Path.circle(CENTRE, 10));
    Break broken = Break.of(plan, 5 * BITS / 2);
    Point middle = SETUP.programFromPanel().affine().apply(CENTRE);
    Point pierce = relight(plan).pierce(broken.at(), broken.ahead(), broken.done()).orElseThrow();
    assertThat(pierce.distance(middle)).isCloseTo(5, within(0.05));
    Point out = broken.at().minus(middle);
    assertThat(pierce.minus(middle).cross(out) / out.norm() / 5).isCloseTo(0, within(0.1));
  }

  @Test
  void in_a_slot_of_4_and_a_half_mm_there_is_no_room() {
    TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, TorchBench.rectangle(30, 45, 60, 4.5));
    Break broken = Break.of(plan, 3 * BITS / 2);
    assertThat(relight(plan).pierce(broken.at(), broken.ahead(), broken.done())).isEmpty();
  }

  /** Coming round to where it was lit, the torch finds its own kerf in the way. */
  @Test
  void an_open_kerf_is_no_place_to_light_it() {
    TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, Path.circle(CENTRE, 10));
    Break broken = Break.of(plan, 3 * BITS / 2);
    Point free = relight(plan).pierce(broken.at(), broken.ahead(), List.of()).orElseThrow();
    List<Motion> through = new ArrayList<>(broken.done());
    Point aside = broken.at().minus(free);
    Point from = free.plus(new Point(-aside.y(), aside.x()));
    Point to = free.minus(new Point(-aside.y(), aside.x()));
    through.add(new Motion.Straight(new Position(from, 1.5), new Position(to, 1.5)));
    assertThat(relight(plan).pierce(broken.at(), broken.ahead(), through))
        .as("other angles would do, were they clear of the cut")
        .satisfies(p -> assertThat(p.filter(q -> q.distance(free) < 1.5)).isEmpty());
  }

  @Test
  void a_slug_that_lies_loose_is_no_place_to_light_it() {
    TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, Path.circle(CENTRE, 10));
    Break broken = Break.of(plan, 3 * BITS / 2);
    Break whole = Break.of(plan, plan.paths().get(0).pieces().size() * BITS - 1);
    List<Motion> all = new ArrayList<>(whole.done());
    Point end = SETUP.programFromPanel().affine().apply(plan.paths().get(0).end());
    all.add(new Motion.Straight(new Position(whole.at(), 1.5), new Position(end, 1.5)));
    assertThat(relight(plan).pierce(broken.at(), broken.ahead(), all)).isEmpty();
  }
}
