package frieze.plan.cut;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.plan.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

class EntriesTest {
  @Test
  void a_rectangle_is_entered_in_the_middles_of_its_sides_and_between_on_long_ones() {
    Track loop = new Track(Bench.rectangle(0, 0, 60, 10));
    // 60 mm hold two places 24 mm (8 diameters of 3 mm) apart; the corners lie at 60, 70, 130 and
    // 140.
    assertThat(Entries.of(loop, 3)).containsExactly(65.0, 85.0, 115.0, 135.0, 15.0, 45.0);
  }

  @Test
  void a_circle_has_no_corners_and_is_entered_from_four_sides() {
    Track circle = new Track(Path.circle(Point.ORIGIN, 10));
    List<Point> places = Entries.of(circle, 3).stream().map(circle::pointAt).toList();
    assertThat(places).hasSize(4).allMatch(p -> Math.abs(p.norm() - 10) < 1e-9);
  }

  @Test
  void a_loop_of_short_sides_is_entered_at_its_start() {
    assertThat(Entries.of(new Track(Bench.rectangle(0, 0, 5, 5)), 3)).containsExactly(0.0);
  }
}
