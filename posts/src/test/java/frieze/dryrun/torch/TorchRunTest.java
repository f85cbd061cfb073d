package frieze.dryrun.torch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.Moves;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import org.junit.jupiter.api.Test;

class TorchRunTest {
  private static final double RADIUS = 100;

  /** An arc whose chord leaves it by a thousandth of a millimetre turns by this. */
  private static final double STEP_RAD = 2 * Math.acos(1 - 0.001 / RADIUS);

  private static TorchRun after(Motion path) {
    TorchRun run = new TorchRun(0, SourceSpan.NONE, new Point(0, 0));
    run.add(path, Moves.line(7));
    assertThat(run.spans).hasSameSizeAs(run.chords).allMatch(s -> s.line() == 7);
    return run;
  }

  private static Motion arc(double radius, double sweepRad) {
    return new Motion.Turn(
        new Position(radius, 0, 1.5),
        new Position(radius * Math.cos(sweepRad), radius * Math.sin(sweepRad), 1.5),
        Plane.XY,
        0,
        0,
        sweepRad);
  }

  @Test
  void a_line_is_one_piece() {
    assertThat(after(Moves.straight(1, 2, 3, 4, 5, 6)).chords.get(0)).containsExactly(1, 2, 4, 5);
    assertThat(after(Moves.straight(1, 2, 3, 4, 5, 6)).chords).hasSize(1);
  }

  @Test
  void an_arc_has_as_many_chords_as_its_departure_asks_for() {
    assertThat(after(arc(RADIUS, 0.999 * STEP_RAD)).chords).hasSize(1);
    assertThat(after(arc(RADIUS, -1.001 * STEP_RAD)).chords).hasSize(2);
    assertThat(after(arc(RADIUS, 9.5 * STEP_RAD)).chords).hasSize(10);
    assertThat(after(arc(1e-4, 1)).chords).hasSize(1);
  }

  @Test
  void chords_follow_each_other_on_the_circle() {
    TorchRun run = after(arc(RADIUS, -2));
    double[] last = {RADIUS, 0, RADIUS, 0};
    for (double[] chord : run.chords) {
      assertThat(chord[0]).isEqualTo(last[2]);
      assertThat(chord[1]).isEqualTo(last[3]);
      assertThat(Math.hypot(chord[2], chord[3])).isCloseTo(RADIUS, within(1e-9));
      last = chord;
    }
    assertThat(Math.atan2(last[3], last[2])).isCloseTo(-2, within(1e-12));
  }
}
