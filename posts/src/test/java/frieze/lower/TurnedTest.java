package frieze.lower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.motion.Instruction;
import frieze.motion.Motion;
import frieze.motion.Motions;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.motion.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Closed forms: sin 30 deg is a half. */
class TurnedTest {
  private static final double ROUNDING = 1e-12;
  private static final double ANGLE = Math.toRadians(30);
  private static final double COS = Math.sqrt(3) / 2;

  private static Instruction turned(Instruction instruction) {
    List<Step> steps = List.of(new Step(instruction, "leaf"));
    Step only = new Turned(ANGLE).apply(steps).get(0);
    assertThat(only.origin()).isEqualTo("leaf");
    return only.instruction();
  }

  @Test
  void every_place_is_turned_about_zero_and_heights_stay() {
    Instruction.RapidXy rapid = (Instruction.RapidXy) turned(new Instruction.RapidXy(10, 20));
    assertThat(rapid.x()).isCloseTo(10 * COS - 10, within(ROUNDING));
    assertThat(rapid.y()).isCloseTo(5 + 20 * COS, within(ROUNDING));
    Instruction.Feed feed =
        (Instruction.Feed) turned(new Instruction.Feed(new Position(10, 0, -3), 600));
    same(feed.to(), 10 * COS, 5, -3);
    assertThat(feed.feedMmPerMin()).isEqualTo(600);
    Instruction.Drill drill =
        (Instruction.Drill) turned(new Instruction.Drill(0, 10, 1, -5, 2, 0, 100));
    assertThat(drill.x()).isCloseTo(-5, within(ROUNDING));
    assertThat(drill.y()).isCloseTo(10 * COS, within(ROUNDING));
    assertThat(drill.bottomZ()).isEqualTo(-5);
    Instruction.Probe probe =
        (Instruction.Probe) turned(new Instruction.Probe(new Position(10, 0, -9), 100, -1));
    same(probe.to(), 10 * COS, 5, -9);
  }

  @Test
  void the_centre_of_an_arc_turns_and_its_sweep_stays() {
    Instruction.Turn arc =
        (Instruction.Turn)
            turned(new Instruction.Turn(new Position(20, 0, -1), Plane.XY, 10, 0, -Math.PI, 300));
    same(arc.to(), 20 * COS, 10, -1);
    assertThat(arc.centreU()).isCloseTo(10 * COS, within(ROUNDING));
    assertThat(arc.centreV()).isCloseTo(5, within(ROUNDING));
    assertThat(arc.sweepRad()).isEqualTo(-Math.PI);
  }

  @Test
  void what_is_turned_back_lies_where_it_was() {
    Motion.Turn arc =
        new Motion.Turn(new Position(3, 4, 0), new Position(3, 4, -1), Plane.XY, 7, 4, 2 * Math.PI);
    Motion again = Motions.turned(Motions.turned(arc, ANGLE), -ANGLE);
    for (double t : new double[] {0, 0.2, 0.5, 1}) {
      assertThat(again.at(t).distance(arc.at(t))).isLessThan(1e-11);
    }
  }

  private static void same(Position p, double x, double y, double z) {
    assertThat(p.distance(new Position(x, y, z))).isLessThan(ROUNDING);
  }
}
