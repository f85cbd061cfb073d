package frieze.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class PixelMapTest {
  /** A projective map, written down as such: from millimetres to pixels, Y up. */
  private static Point camera(double x, double y) {
    double w = 0.0011 * x - 0.0007 * y + 1;
    return new Point((7 * x + 0.4 * y + 90) / w, (-0.3 * x + 6.5 * y + 120) / w);
  }

  @Test
  void a_sheet_seen_at_an_angle_is_squared_up_exactly() {
    List<Point> corners = List.of(camera(0, 0), camera(210, 0), camera(210, 297), camera(0, 297));
    PixelMap map = PixelMap.squared(corners, 210, 297);
    for (double x = -20; x <= 230; x += 50) {
      for (double y = -10; y <= 300; y += 62) {
        Point back = map.toMm(camera(x, y));
        assertThat(back.x()).isCloseTo(x, within(1e-9));
        assertThat(back.y()).isCloseTo(y, within(1e-9));
      }
    }
  }

  @Test
  void a_bend_is_taken_out_exactly() {
    GreyImage image = new GreyImage(40, 30, new float[1200]);
    Point centre = new Point(20, 15);
    for (double bend : new double[] {-0.1, 0.02, 0.15}) {
      PixelMap map = PixelMap.straightened(p -> p, bend, image);
      for (double x = 0; x <= 40; x += 8) {
        Point out = new Point(x, 28).minus(centre);
        // The corner of the picture, 25 pixels out, is moved by the bend; nearer, by its cube.
        double seen = 1 + bend * out.dot(out) / (25 * 25);
        Point back = map.toMm(centre.plus(out.times(seen)));
        assertThat(back.distance(new Point(x, 28))).isCloseTo(0, within(1e-6));
      }
    }
  }

  @Test
  void corners_that_cross_are_refused() {
    List<Point> crossed =
        List.of(new Point(0, 0), new Point(9, 9), new Point(9, 0), new Point(0, 9));
    assertThatThrownBy(() -> PixelMap.squared(crossed, 10, 10))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
