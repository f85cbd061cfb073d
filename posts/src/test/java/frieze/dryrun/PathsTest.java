package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.dryrun.check.CornerCheck;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Surroundings;
import frieze.fixtures.Seeds;
import frieze.motion.Executed;
import frieze.motion.Executed.KnownAxes;
import frieze.motion.Executed.MachinePosition;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.rs274.ReadingRules.Paths;
import frieze.rs274.ReadingRules.Rapids;
import frieze.shop.KeepOut;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** How machines move between the points that they are told. */
class PathsTest {
  private static final String START = "G17 G21 G40 G90 G94\nG53 G0 Z0\nT1 M6\nS16000 M3\nG4 P3\n";
  private static final Paths EACH_AXIS = new Paths(Rapids.EACH_AXIS, OptionalDouble.of(0));
  private static final Paths STRAIGHT = new Paths(Rapids.STRAIGHT, OptionalDouble.of(0));
  private static final Paths UNSAID = new Paths(Rapids.UNSAID, OptionalDouble.empty());

  /** Beside the straight line from (10, 10) to (200, 130), on the way by (130, 130). */
  private static final Surroundings WITH_CLAMP =
      Bench.KNOWN.withKeepOuts(List.of(new KeepOut("rear clamp", 100, 115, 120, 140, 20)));

  private static final String PAST_THE_CLAMP =
      START + "G0 Z8\nG0 X10 Y10\nG0 X200 Y130\nG0 X230 Y100\nM2\n";

  private static List<FindingCode> codes(DryRunResult result) {
    return result.findings().stream().map(f -> (FindingCode) f.code()).toList();
  }

  @Test
  void axes_that_do_not_wait_run_into_a_clamp_that_the_straight_line_misses() {
    assertThat(codes(Bench.run(WITH_CLAMP, STRAIGHT, PAST_THE_CLAMP))).isEmpty();
    assertThat(codes(Bench.run(WITH_CLAMP, UNSAID, PAST_THE_CLAMP)))
        .containsExactly(FindingCode.DOGLEG_MAY_HIT);
    DryRunResult bent = Bench.run(WITH_CLAMP, EACH_AXIS, PAST_THE_CLAMP);
    assertThat(codes(bent)).containsExactly(FindingCode.HITS_KEEP_OUT);
    assertThat(bent.findings().get(0).text()).isEqualTo("G0 X200 Y130");
    assertThat(bent.mayWrite()).isFalse();
  }

  @Test
  void a_clamp_in_the_corner_that_the_bent_path_does_not_touch_is_no_worry() {
    Surroundings corner =
        Bench.KNOWN.withKeepOuts(List.of(new KeepOut("corner clamp", 0, 100, 30, 150, 20)));
    assertThat(codes(Bench.run(corner, UNSAID, PAST_THE_CLAMP)))
        .containsExactly(FindingCode.DOGLEG_MAY_HIT);
    assertThat(codes(Bench.run(corner, EACH_AXIS, PAST_THE_CLAMP))).isEmpty();
  }

  @Test
  void legs_follow_each_axis_at_its_own_speed() {
    SplittableRandom random = Seeds.random(413);
    for (int i = 0; i < 200; i++) {
      Position from = position(random);
      Position to = position(random);
      List<Executed.Move> legs = Dogleg.legs(rapid(from, to), Bench.KNOWN.machine());
      Position at = from;
      double seconds = 0;
      for (Executed.Move leg : legs) {
        assertThat(leg.path().from()).isEqualTo(at);
        double longest = 0;
        for (int axis = 0; axis < 3; axis++) {
          longest = Math.max(longest, seconds(axis, leg.path().from(), leg.path().to()));
        }
        for (int axis = 0; axis < 3; axis++) {
          double own = seconds(axis, leg.path().from(), leg.path().to());
          boolean arrived = leg.path().to().get(axis) == to.get(axis);
          assertThat(arrived || Math.abs(own - longest) < 1e-9)
              .as("axis %d of %s, seed %d", axis, leg.path(), Seeds.seed(413))
              .isTrue();
          assertThat(leg.machineTo().get(axis).orElseThrow())
              .isCloseTo(leg.path().to().get(axis) + 7, within(1e-9));
        }
        seconds += longest;
        at = leg.path().to();
      }
      assertThat(at).isEqualTo(to);
      double slowest = 0;
      for (int axis = 0; axis < 3; axis++) {
        slowest = Math.max(slowest, seconds(axis, from, to));
      }
      assertThat(seconds).isCloseTo(slowest, within(1e-9));
    }
  }

  private static double seconds(int axis, Position from, Position to) {
    double speed = Bench.KNOWN.machine().orElseThrow().axis(axis).rapidMmPerMin() / 60;
    return Math.abs(to.get(axis) - from.get(axis)) / speed;
  }

  private static Position position(SplittableRandom random) {
    return new Position(
        random.nextInt(5) * 40, random.nextDouble(0, 100), random.nextInt(3) * 5 - 5);
  }

  private static Executed.Move rapid(Position from, Position to) {
    return new Executed.Move(
        Executed.Kind.RAPID,
        new Motion.Straight(from, to),
        KnownAxes.ALL,
        KnownAxes.ALL,
        new MachinePosition(
            OptionalDouble.of(to.x() + 7),
            OptionalDouble.of(to.y() + 7),
            OptionalDouble.of(to.z() + 7)),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        new Executed.State(
            Optional.empty(), Executed.Rotation.CLOCKWISE, OptionalDouble.empty(), false),
        frieze.diagnostic.SourceSpan.NONE);
  }

  private static final String SQUARE =
      START
          + "G0 Z8\nG0 X50 Y50\nG1 Z0 F400\nG1 X90 Z-1 F800\nG1 Y80\nG1 X50\n"
          + "G1 Z2\nG0 Z8\nM2\n";

  @Test
  void corners_that_the_controller_rounds_are_told_with_their_amount() {
    Paths rounding = new Paths(Rapids.STRAIGHT, OptionalDouble.of(0.2));
    DryRunResult rounded = Bench.run(Bench.KNOWN, rounding, SQUARE);
    assertThat(codes(rounded)).containsOnly(FindingCode.ROUNDED_CORNER);
    assertThat(rounded.findings().get(0).amount().value()).isCloseTo(0.2, within(1e-9));
    Paths fine = new Paths(Rapids.STRAIGHT, OptionalDouble.of(0.05));
    assertThat(codes(Bench.run(Bench.KNOWN, fine, SQUARE))).isEmpty();
    String exact = SQUARE.replace("S16000", "G61 S16000");
    assertThat(codes(Bench.run(Bench.KNOWN, rounding, exact))).isEmpty();
    String again = exact.replace("G1 Z0 F400", "G64\nG1 Z0 F400");
    assertThat(codes(Bench.run(Bench.KNOWN, rounding, again)))
        .containsOnly(FindingCode.ROUNDED_CORNER);
  }

  @Test
  void corners_whose_rounding_nobody_knows_are_said_to_be_unchecked() {
    DryRunResult result = Bench.run(Bench.KNOWN, UNSAID, SQUARE);
    assertThat(codes(result)).isEmpty();
    assertThat(result.notChecked()).anyMatch(n -> n.what().equals("how far corners are rounded"));
    String exact = SQUARE.replace("S16000", "G61 S16000");
    assertThat(Bench.run(Bench.KNOWN, UNSAID, exact).notChecked())
        .noneMatch(n -> n.what().equals("how far corners are rounded"));
  }

  @Test
  void a_corner_is_passed_at_the_distance_of_the_circle_that_touches_both_legs() {
    SplittableRandom random = Seeds.random(414);
    for (int i = 0; i < 100; i++) {
      double turn = Math.toRadians(random.nextDouble(6, 170));
      double leg = random.nextDouble(1, 50);
      Position corner = new Position(0, 0, 0);
      Motion first = new Motion.Straight(new Position(-leg, 0, 0), corner);
      Motion second =
          new Motion.Straight(corner, new Position(80 * Math.cos(turn), 80 * Math.sin(turn), 0));
      double half = (Math.PI - turn) / 2;
      double radius = Math.min(leg, 80) / 2 * Math.tan(half);
      assertThat(CornerCheck.passesMm(first, second, 1e9))
          .as("turn %s, seed %d", turn, Seeds.seed(414))
          .isCloseTo(radius / Math.sin(half) - radius, within(1e-9 * (1 + radius)));
    }
  }
}
