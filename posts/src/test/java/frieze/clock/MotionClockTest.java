package frieze.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.fixtures.Seeds;
import frieze.shop.Machine;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MotionClockTest {
  private static final ClockSettings EXACT_STOP = new ClockSettings(0, 0, 0, 0);
  private static final ClockSettings COARSE = new ClockSettings(0.05, 0, 0, 0);

  /** No axis is ever the limit: what is left is constant speed. */
  private static final double UNLIMITED = 1e9;

  private static Moves rectangle() {
    return new Moves(0, 0, -3)
        .feed(100, 0, -3, 3000)
        .feed(100, 50, -3, 3000)
        .feed(0, 50, -3, 3000)
        .feed(0, 0, -3, 3000);
  }

  /** Sums of closed forms: 8 mm and 13 mm of rapid, a plunge, and a rectangle. */
  @Test
  void a_small_program_with_stops_takes_the_sum_of_its_moves() {
    Moves program =
        new Moves(0, 0, 10)
            .rapid(0, 0, 2)
            .feed(0, 0, -3, 600)
            .feed(100, 0, -3, 3000)
            .feed(100, 50, -3, 3000)
            .feed(0, 50, -3, 3000)
            .feed(0, 0, -3, 3000)
            .rapid(0, 0, 10);
    Machine machine = Moves.machine(100, 100, 500);
    assertThat(program.seconds(machine, EXACT_STOP)).isCloseTo(7.495472523, within(1e-8));
    assertThat(program.seconds(Moves.machine(100, 100, UNLIMITED), EXACT_STOP))
        .isCloseTo(6.71, within(1e-5));
  }

  @Test
  void a_rectangle_slows_down_at_its_corners() {
    Machine machine = Moves.machine(100, 100, 500);
    assertThat(rectangle().seconds(machine, EXACT_STOP)).isCloseTo(6.4, within(1e-9));
    assertThat(rectangle().seconds(Moves.machine(100, 100, UNLIMITED), EXACT_STOP))
        .isCloseTo(6.0, within(1e-5));
  }

  /** Three inner corners at 7.768870 mm/s. */
  @Test
  void the_corner_rule_lies_between_stopping_and_constant_speed() {
    assertThat(rectangle().seconds(Moves.machine(100, 100, 500), COARSE))
        .isCloseTo(6.314016, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"2, 31.623", "5, 50", "10, 70.711"})
  void an_arc_is_limited_by_its_radius(double radius, double speed) {
    // 40 turns: the ramps at the ends hardly matter, and are subtracted.
    Moves circles = new Moves(radius, 0, 0).turn(0, 0, 80 * Math.PI, 600_000);
    double length = 80 * Math.PI * radius;
    double ramps = speed / 500;
    assertThat(circles.seconds(Moves.machine(100, 10_000, 500), EXACT_STOP))
        .isCloseTo(length / speed + ramps, within(1e-3));
  }

  @Test
  void fine_facets_take_the_time_of_the_circle() {
    Moves circle = new Moves(10, 0, 0).turn(0, 0, 20 * Math.PI, 600_000);
    Moves facets = new Moves(10, 0, 0);
    for (int i = 1; i <= 3600; i++) {
      double angle = i * Math.PI / 180;
      facets.feed(10 * Math.cos(angle), 10 * Math.sin(angle), 0, 600_000);
    }
    Machine machine = Moves.machine(100, 10_000, 500);
    double expected = circle.seconds(machine, COARSE);
    assertThat(facets.seconds(machine, COARSE)).isCloseTo(expected, within(expected * 0.02));
  }

  @Test
  void axis_limits_bound_speed_and_acceleration_along_a_slant() {
    // Direction (3, 4)/5, vx 100, vy 50, ax 500, ay 300: v 62.5, a 375.
    Machine machine =
        Moves.machine(
            new Machine.Axis(6000, 6000, 500),
            new Machine.Axis(3000, 3000, 300),
            new Machine.Axis(3000, 3000, 300));
    Moves slant = new Moves(0, 0, 0).rapid(60, 80, 0);
    assertThat(slant.seconds(machine, EXACT_STOP)).isCloseTo(100 / 62.5 + 62.5 / 375, within(1e-9));
  }

  @Test
  void order_of_models_holds_on_random_paths() {
    SplittableRandom random = Seeds.random(6121);
    for (int run = 0; run < 200; run++) {
      Moves path = new Moves(0, 0, 0);
      double length = 0;
      for (int i = 0; i < 60; i++) {
        double x = random.nextDouble(100);
        double y = random.nextDouble(100);
        path.feed(x, y, 0, 3000);
        length += path.all().get(i).path().lengthMm();
      }
      Machine machine = Moves.machine(100, 100, 500);
      double stop = path.seconds(machine, EXACT_STOP);
      double corner = path.seconds(machine, COARSE);
      double constant = path.seconds(Moves.machine(100, 100, UNLIMITED), COARSE);
      String seed = "seed " + Seeds.seed(6121) + ", run " + run;
      assertThat(stop).as(seed).isGreaterThanOrEqualTo(corner);
      assertThat(corner).as(seed).isGreaterThanOrEqualTo(constant);
      assertThat(constant).as(seed).isGreaterThanOrEqualTo(length / 50 * (1 - 1e-6));
    }
  }

  @Test
  void a_bounded_look_ahead_costs_little_time() {
    // Far more moves than are looked ahead, on a long gentle curve.
    Moves path = new Moves(1000, 0, 0);
    for (int i = 1; i <= 20_000; i++) {
      double angle = i * 1e-4;
      path.feed(1000 * Math.cos(angle), 1000 * Math.sin(angle), 0, 6000);
    }
    double seconds = path.seconds(Moves.machine(100, 100, 500), COARSE);
    double ideal = 2000 / 100.0 + 100 / 500.0;
    assertThat(seconds).isBetween(ideal * 0.999, ideal * 1.005);
  }
}
