package frieze.lower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Tolerances;
import frieze.lower.Capabilities.ArcFormat;
import frieze.lower.Capabilities.Arcs;
import frieze.motion.Instruction;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.motion.Step;
import frieze.post.Posts;
import frieze.shop.Machine;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PassesTest {
  private static final Arcs ALL =
      new Arcs(ArcFormat.CENTRE, EnumSet.allOf(Plane.class), true, true, 0.01, 10_000);
  private static final Arcs HALVES =
      new Arcs(ArcFormat.CENTRE, Set.of(Plane.XY), true, false, 0.1, 1_000);
  private static final Arcs RADIUS =
      new Arcs(ArcFormat.RADIUS, Set.of(Plane.XY), false, false, 0.1, 1_000);

  private static List<Step> from(double x, double y, double z, Instruction... then) {
    List<Step> steps = new ArrayList<>();
    steps.add(new Step(new Instruction.RapidXy(x, y), "start"));
    steps.add(new Step(new Instruction.RapidZ(z), "start"));
    for (Instruction instruction : then) {
      steps.add(new Step(instruction, "work"));
    }
    return steps;
  }

  private static List<Instruction.Turn> turns(List<Step> steps) {
    return steps.stream()
        .map(Step::instruction)
        .filter(i -> i instanceof Instruction.Turn)
        .map(i -> (Instruction.Turn) i)
        .toList();
  }

  private static Instruction.Turn turn(double toX, double toY, double toZ, double sweepRad) {
    return new Instruction.Turn(new Position(toX, toY, toZ), Plane.XY, 0, 0, sweepRad, 500);
  }

  @Test
  void several_turns_become_single_ones_over_the_same_place() {
    List<Step> out = new TurnSplit(ALL).apply(from(10, 0, 0, turn(10, 0, -3, 6 * Math.PI)));

    assertThat(turns(out)).hasSize(3);
    assertThat(turns(out)).allSatisfy(t -> assertThat(t.to().xy().x()).isEqualTo(10));
    assertThat(turns(out)).allSatisfy(t -> assertThat(t.to().xy().y()).isEqualTo(0));
    assertThat(turns(out)).extracting(t -> t.to().z()).containsExactly(-1.0, -2.0, -3.0);
    assertThat(out).extracting(Step::origin).contains("work");
  }

  @Test
  void a_full_circle_becomes_two_halves_where_none_is_understood() {
    List<Step> out = new TurnSplit(HALVES).apply(from(10, 0, 0, turn(10, 0, 0, 2 * Math.PI)));

    assertThat(turns(out)).hasSize(2);
    assertThat(turns(out)).allSatisfy(t -> assertThat(t.sweepRad()).isEqualTo(Math.PI));
  }

  @Test
  void a_nearly_full_circle_is_never_one_arc() {
    double sweep = 2 * Math.PI - 1e-4;
    Instruction.Turn nearly =
        turn(10 * StrictMath.cos(sweep), 10 * StrictMath.sin(sweep), 0, sweep);

    assertThat(turns(new TurnSplit(ALL).apply(from(10, 0, 0, nearly)))).hasSize(2);
  }

  /** NISTIR 6556, 3.5.3.1: arcs of 165 to 195 degrees, and above 345, are not for this format. */
  @Test
  void the_radius_format_gets_short_arcs_only() {
    for (double degrees = 10; degrees < 720; degrees += 7) {
      double sweep = Math.toRadians(degrees);
      Instruction.Turn t = turn(10 * StrictMath.cos(sweep), 10 * StrictMath.sin(sweep), 0, sweep);
      assertThat(turns(new TurnSplit(RADIUS).apply(from(10, 0, 0, t))))
          .allSatisfy(piece -> assertThat(piece.sweepRad()).isLessThan(Math.toRadians(165)));
    }
  }

  @Test
  void lines_for_an_arc_keep_within_the_tolerance() {
    Instruction.Turn t = turn(-25, 0, -1, Math.PI);
    Motion.Turn path = new Motion.Turn(new Position(25, 0, 0), t.to(), Plane.XY, 0, 0, Math.PI);
    double tolerance = Tolerances.DEFAULT.flattenMm();
    List<Step> out = new ArcsToLines(Arcs.NONE, Tolerances.DEFAULT).apply(from(25, 0, 0, t));

    Position before = path.from();
    for (Step step : out.subList(2, out.size())) {
      Position to = ((Instruction.Feed) step.instruction()).to();
      assertThat(Math.hypot(to.x(), to.y())).isEqualTo(25, within(1e-9));
      double middle = Math.hypot((before.x() + to.x()) / 2, (before.y() + to.y()) / 2);
      assertThat(25 - middle).isBetween(0.0, tolerance * (1 + 1e-9));
      before = to;
    }
    assertThat(before).isEqualTo(t.to());
  }

  @Test
  void an_arc_beyond_the_radius_limits_becomes_lines() {
    Arcs narrow = new Arcs(ArcFormat.CENTRE, Set.of(Plane.XY), true, true, 5, 20);
    for (double radius : new double[] {4.9, 20.1}) {
      Instruction.Turn t =
          new Instruction.Turn(new Position(-radius, 0, 0), Plane.XY, 0, 0, Math.PI, 500);
      assertThat(turns(new ArcsToLines(narrow, Tolerances.DEFAULT).apply(from(radius, 0, 0, t))))
          .isEmpty();
    }
    assertThat(
            turns(
                new ArcsToLines(narrow, Tolerances.DEFAULT)
                    .apply(from(10, 0, 0, turn(-10, 0, 0, Math.PI)))))
        .hasSize(1);
  }

  @Test
  void a_helix_becomes_lines_where_arcs_are_flat() {
    assertThat(
            turns(
                new ArcsToLines(RADIUS, Tolerances.DEFAULT)
                    .apply(from(10, 0, 0, turn(-10, 0, -1, Math.PI)))))
        .isEmpty();
  }

  /** NISTIR 6556, 3.5.16.4: down by Q, up to clear, down to the bottom reached, until Z. */
  @Test
  void pecking_is_written_out_as_the_cycle_would_do_it() {
    Capabilities none = Posts.find("short-arcs").orElseThrow().capabilities();
    List<Step> out =
        new DrillsToMoves(none)
            .apply(from(1, 2, 5, new Instruction.Drill(1, 2, 2, -10, 5, 0, 100)));

    assertThat(out.subList(2, out.size()))
        .extracting(Step::instruction)
        .containsExactly(
            new Instruction.RapidZ(2),
            new Instruction.Feed(new Position(1, 2, -3), 100),
            new Instruction.RapidZ(2),
            new Instruction.RapidZ(-2.5),
            new Instruction.Feed(new Position(1, 2, -8), 100),
            new Instruction.RapidZ(2),
            new Instruction.RapidZ(-7.5),
            new Instruction.Feed(new Position(1, 2, -10), 100),
            new Instruction.RapidZ(2));
  }

  @Test
  void the_dial_mark_never_turns_faster_than_asked() {
    Machine.Spindle spindle = Jobs.machine(true, false, false).spindle();

    assertThat(ByHand.speedSetting(spindle, 18_000)).contains("DIAL AT 3 ").contains("18000 RPM");
    assertThat(ByHand.speedSetting(spindle, 19_500)).contains("DIAL AT 3.5 ");
    assertThat(ByHand.speedSetting(spindle, 22_000)).contains("DIAL AT 4 ");
    assertThat(ByHand.speedSetting(spindle, 90_000)).contains("DIAL AT 6 ");
    assertThat(ByHand.speedSetting(spindle, 5_000)).contains("DIAL AT 1 ");
  }

  @Test
  void feeds_are_rounded_down_and_places_to_the_nearest() {
    Grid mm = new Grid(false, 3);
    Grid inch = new Grid(true, 5);

    assertThat(mm.ticks(1.2345)).isIn(1234L, 1235L);
    assertThat(mm.ticks(-0.0004)).isZero();
    assertThat(inch.ticks(25.4)).isEqualTo(100_000);
    assertThat(new Grid(false, 1).ticksBelow(1800.59)).isEqualTo(18_005);
    assertThat(new Grid(true, 2).ticksBelow(508)).isEqualTo(2_000);
  }
}
