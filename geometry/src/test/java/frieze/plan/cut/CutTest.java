package frieze.plan.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.plan.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

class CutTest {
  private static final Position START = new Position(10, 0, -1);
  private static final Position TOP = new Position(0, 10, -2);

  private static Cut cut(Motion first) {
    Motion second = new Motion.Straight(first.to(), new Position(0, 20, -2));
    return new Cut(
        "here",
        Bench.FLAT_3,
        18_000,
        List.of(new Cut.Move(first, 900), new Cut.Move(second, 1200)));
  }

  @Test
  void a_moved_cut_is_turned_about_the_origin_and_keeps_its_depths_and_feeds() {
    Cut here = cut(new Motion.Turn(START, TOP, Plane.XY, 0, 0, Math.PI / 2));
    Cut there = here.moved("there", Affine.rotation(Math.PI / 2).then(Affine.translation(100, 50)));
    assertThat(there.origin()).isEqualTo("there");
    assertThat(there.start().distance(new Position(100, 60, -1))).isLessThan(1e-12);
    assertThat(there.end().distance(new Position(80, 50, -2))).isLessThan(1e-12);
    Motion.Turn turn = (Motion.Turn) there.moves().get(0).path();
    assertThat(turn.centreU()).isCloseTo(100, within(1e-12));
    assertThat(turn.centreV()).isCloseTo(50, within(1e-12));
    assertThat(turn.sweepRad()).isEqualTo(Math.PI / 2);
    assertThat(there.moves().get(1).path().from()).isEqualTo(turn.to());
    assertThat(there.moves()).extracting(Cut.Move::feedMmPerMin).containsExactly(900.0, 1200.0);
  }

  @Test
  void an_arc_that_stands_upright_is_not_moved() {
    Motion upright = new Motion.Turn(START, new Position(0, 0, -1), Plane.ZX, -1, 5, Math.PI);
    assertThatThrownBy(() -> cut(upright).moved("there", Affine.IDENTITY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("ZX");
  }
}
