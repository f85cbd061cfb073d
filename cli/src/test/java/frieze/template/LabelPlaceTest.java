package frieze.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.List;
import org.junit.jupiter.api.Test;

class LabelPlaceTest {
  private static final double SIZE_MM = 2.8;

  private static Path polygon(double... xy) {
    Point[] points = new Point[xy.length / 2];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Point(xy[2 * i], xy[2 * i + 1]);
    }
    return Path.polyline(List.of(points), true);
  }

  /** The letters, 2 x 0.78 of their size wide at most in a grotesque face, lie on the paper. */
  private static void assertInside(Path outline) {
    Point at = LabelPlace.inside(outline, "GO", SIZE_MM);
    Region region = Region.of(List.of(outline), FillRule.NONZERO, 0.01);
    for (double x : new double[] {0, 0.78, 1.56}) {
      for (double y : new double[] {0, 0.5, 1}) {
        assertThat(region.contains(at.plus(new Point(x * SIZE_MM, y * SIZE_MM)))).isTrue();
      }
    }
  }

  @Test
  void a_word_stands_in_the_panel_and_not_in_a_notch_or_beside_a_point() {
    assertInside(polygon(0, 0, 200, 0, 200, 60, 0, 60));
    assertInside(polygon(0, 0, 200, 0, 200, 60, 115, 60, 115, 40, 85, 40, 85, 60, 0, 60));
    assertInside(polygon(0, 0, 200, 0, 100, 60));
    assertInside(polygon(0, 0, 200, 0, 200, 60, 102, 4, 98, 4, 0, 60));
    assertInside(Path.circle(new Point(40, 40), 30));
  }

  @Test
  void a_word_above_stands_over_the_highest_place() {
    assertThat(LabelPlace.above(polygon(0, 0, 200, 0, 120, 60), 1))
        .satisfies(p -> assertThat(p.x()).isCloseTo(120, within(2.0)))
        .satisfies(p -> assertThat(p.y()).isEqualTo(61));
    assertThat(LabelPlace.above(polygon(0, 0, 200, 0, 200, 60, 0, 60), 1))
        .isEqualTo(new Point(0, 61));
  }

  @Test
  void where_there_is_no_room_it_stands_above() {
    assertThat(LabelPlace.inside(polygon(0, 0, 200, 0, 200, 2, 0, 2), "GO", SIZE_MM).y())
        .isGreaterThan(2);
  }
}
