package frieze.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ArcLengthTest {
  @Test
  void lines_and_arcs_are_exact() {
    assertThat(ArcLength.lengthMm(Path.circle(new Point(3, 4), 2)))
        .isCloseTo(4 * Math.PI, within(1e-12));
    List<Point> triangle = List.of(Point.ORIGIN, new Point(3, 0), new Point(3, 4));
    assertThat(ArcLength.lengthMm(Path.polyline(triangle, true))).isCloseTo(12, within(1e-12));
    assertThat(ArcLength.lengthMm(Path.polyline(triangle, false))).isCloseTo(7, within(1e-12));
  }

  /** The parabola y = x² / 4 from 0 to 4: its length is a closed form. */
  @Test
  void a_curve_is_measured_to_a_nanometre() {
    Cubic parabola =
        new Cubic(
            Point.ORIGIN, new Point(4 / 3.0, 0), new Point(8 / 3.0, 4 / 3.0), new Point(4, 4));
    double closed = 2 * Math.sqrt(5) + Math.log(2 + Math.sqrt(5));
    Path path = new Path(List.of(parabola), false);
    assertThat(ArcLength.lengthMm(path)).isCloseTo(closed, within(1e-6));
    assertThat(ArcLength.of(path).at(closed).point().distance(new Point(4, 4))).isLessThan(1e-6);
  }

  @Test
  void a_point_has_no_length_and_no_places_along_it() {
    Path point = new Path(List.of(new Line(new Point(1, 2), new Point(1, 2))), false);
    assertThat(ArcLength.lengthMm(point)).isZero();
    assertThatThrownBy(() -> ArcLength.of(point)).isInstanceOf(IllegalArgumentException.class);
  }
}
