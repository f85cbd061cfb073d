package frieze.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.Track;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Ways down into material, against closed forms. */
class EntryMovesTest {
  private static final Feeds FEEDS =
      new Feeds(12_000, OptionalInt.empty(), 1000, 300, 0.05, List.of());

  private static List<Motion> sinking(Cut cut) {
    return cut.moves().stream()
        .map(Cut.Move::path)
        .filter(m -> m.from().z() - m.to().z() > 1e-9)
        .toList();
  }

  private static double lengthMm(List<Motion> path) {
    return path.stream().mapToDouble(Motion::lengthMm).sum();
  }

  /**
   * Closed form, a helix of radius 4 and pitch 1, 6 deep: six times the root of (8 pi)^2 + 1, at an
   * angle whose tangent is 1 / (8 pi).
   */
  @Test
  void six_turns_of_a_helix_are_150_92_mm_long_and_slope_by_2_28_degrees() {
    Track circle = new Track(Path.circle(new Point(30, 40), 4));
    MoveBuilder moves = new MoveBuilder(Bench.FLAT_6, FEEDS, new Position(circle.start(), 0));
    moves.helix(circle, 0, -6, 1);
    List<Motion> down = sinking(moves.cut("bore"));
    assertThat(lengthMm(down)).isCloseTo(150.915766, within(1e-6));
    for (Motion turn : down) {
      double drop = turn.from().z() - turn.to().z();
      assertThat(Math.toDegrees(Math.asin(drop / turn.lengthMm())))
          .isCloseTo(2.278525, within(1e-6));
    }
    assertThat(moves.at().z()).isEqualTo(-6);
  }

  /** Closed form, 3 deep at 3 degrees: 3 / tan 3, here to and fro in two legs. */
  @Test
  void a_ramp_3_deep_at_3_degrees_covers_57_24_mm() {
    Track line = new Track(Path.polyline(List.of(new Point(0, 0), new Point(90, 0)), false));
    MoveBuilder moves = new MoveBuilder(Bench.FLAT_6, FEEDS, new Position(line.start(), 0));
    moves.enter(line, -3);
    List<Motion> down = sinking(moves.cut("groove"));
    double covered = down.stream().mapToDouble(m -> Math.abs(m.to().x() - m.from().x())).sum();
    assertThat(covered).isCloseTo(57.243410, within(1e-6));
    assertThat(lengthMm(down)).isCloseTo(Math.hypot(57.243410, 3), within(1e-6));
  }

  /** A piece of half a micrometre may be written as an upright step of a micrometre. */
  @Test
  void a_piece_that_rounding_may_stand_upright_is_no_faster_than_a_plunge() {
    List<Point> points = List.of(new Point(0, 0), new Point(0.0005, 0), new Point(90, 0));
    Track line = new Track(Path.polyline(points, false));
    MoveBuilder moves = new MoveBuilder(Bench.FLAT_6, FEEDS, new Position(line.start(), 0));
    moves.enter(line, -3);
    List<Cut.Move> made = moves.cut("groove").moves();
    assertThat(made).anyMatch(m -> m.path().lengthMm() < 0.001);
    for (Cut.Move move : made) {
      double upright = move.path().lengthMm() < 0.001 ? FEEDS.plungeMmPerMin() : 1000;
      assertThat(move.feedMmPerMin()).isLessThanOrEqualTo(upright + 1e-9);
    }
  }
}
