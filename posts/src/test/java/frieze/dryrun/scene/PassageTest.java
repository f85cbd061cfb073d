package frieze.dryrun.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.dryrun.Bench;
import frieze.dryrun.Moves;
import frieze.motion.Box;
import frieze.motion.Executed;
import frieze.motion.Executed.KnownAxes;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PassageTest {
  private static final double INF = Double.POSITIVE_INFINITY;
  private static final KnownAxes XY = new KnownAxes(true, true, false);
  private static final KnownAxes YZ = new KnownAxes(false, true, true);
  private static final KnownAxes ZX = new KnownAxes(true, false, true);

  private static Moves ends(KnownAxes from, KnownAxes to) {
    return Moves.in(Bench.KNOWN).known(from, to);
  }

  @Test
  void a_move_is_placed_if_every_axis_is_known_at_both_ends() {
    assertThat(ends(KnownAxes.ALL, KnownAxes.ALL).feed(1, 2, 3, 4, 5, 6).isPlaced()).isTrue();
    for (KnownAxes lacking : new KnownAxes[] {XY, YZ, ZX}) {
      assertThat(ends(lacking, KnownAxes.ALL).feed(1, 2, 3, 4, 5, 6).isPlaced()).isFalse();
      assertThat(ends(KnownAxes.ALL, lacking).feed(1, 2, 3, 4, 5, 6).isPlaced()).isFalse();
    }
  }

  @Test
  void the_extent_has_only_what_is_known_of_the_ends() {
    assertThat(ends(KnownAxes.ALL, KnownAxes.ALL).feed(1, 5, 3, 4, 2, 6).box())
        .isEqualTo(new Box(1, 2, 3, 4, 5, 6));
    assertThat(ends(XY, KnownAxes.ALL).feed(4, 5, 3, 1, 2, 6).box())
        .isEqualTo(new Box(1, 2, 6, 4, 5, 6));
    assertThat(ends(KnownAxes.ALL, XY).feed(4, 5, 3, 1, 2, 6).box())
        .isEqualTo(new Box(1, 2, 3, 4, 5, 3));
    assertThat(ends(XY, XY).feed(4, 5, 3, 1, 2, 6).box()).isEqualTo(new Box(1, 2, INF, 4, 5, -INF));
    assertThat(ends(XY, XY).feed(4, 5, 3, 1, 2, 6).lowZ()).isEmpty();
    assertThat(ends(XY, KnownAxes.ALL).feed(4, 5, 3, 1, 2, 6).lowZ()).hasValue(6);
  }

  /** A quarter of a circle of 10 mm to the right of its ends' line, at an unknown height. */
  @Test
  void an_arc_counts_whole_along_axes_that_are_known_at_both_ends() {
    double half = 10 * Math.sqrt(0.5);
    Motion arc =
        new Motion.Turn(
            new Position(half, -half, 1), new Position(half, half, 1), Plane.XY, 0, 0, Math.PI / 2);
    Box box = ends(XY, XY).feed(arc).box();
    assertThat(box.maxX()).isCloseTo(10, within(1e-12));
    assertThat(box.minX()).isEqualTo(half);
    assertThat(box.minZ()).isEqualTo(INF);
    Box fromYz = ends(YZ, KnownAxes.ALL).feed(arc).box();
    assertThat(fromYz.maxX()).isEqualTo(half);
    assertThat(fromYz.minX()).isEqualTo(half);
    assertThat(fromYz.maxY()).isEqualTo(half);
  }

  @Test
  void a_feed_from_the_time_is_the_length_over_it() {
    Executed.Move move = ends(KnownAxes.ALL, KnownAxes.ALL).feed(0, 0, 0, 30, 40, 0).move();
    assertThat(feed(move, OptionalDouble.of(120))).hasValue(25);
    assertThat(feed(move, OptionalDouble.of(0))).hasValue(1200);
    assertThat(feed(move, OptionalDouble.empty())).hasValue(1200);
  }

  private static OptionalDouble feed(Executed.Move m, OptionalDouble seconds) {
    Executed.Move timed =
        new Executed.Move(
            m.kind(),
            m.path(),
            m.fromKnown(),
            m.toKnown(),
            m.machineTo(),
            m.feedMmPerMin(),
            seconds,
            m.state(),
            m.span());
    return new Passage(timed, Optional.empty(), Optional.empty(), Optional.empty()).feedMmPerMin();
  }
}
