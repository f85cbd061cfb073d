package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.diagnostic.SourceSpan;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Areas are those of a rectangle and of segments of circles. */
class ArchedOutlineTest {
  private static Path path(double width, double height, double top, double bottom) {
    return new ArchedOutline(width, height, top, bottom).path(SourceSpan.NONE);
  }

  private static double area(Path path) {
    return Region.of(List.of(path), FillRule.NONZERO, 1e-4).area();
  }

  /** r^2 (angle - sin angle) / 2, with the radius from chord and rise. */
  private static double segment(double chord, double rise) {
    double radius = (chord * chord / 4 + rise * rise) / (2 * rise);
    double angle = 2 * Math.asin(chord / 2 / radius);
    return radius * radius * (angle - Math.sin(angle)) / 2;
  }

  @Test
  void a_straight_one_is_a_rectangle() {
    assertThat(path(700, 120, 0, 0)).isEqualTo(Opening.outline(700, 120, 0));
  }

  @Test
  void an_upper_arc_adds_a_segment_of_a_circle_above_the_ends() {
    Path path = path(700, 120, 30, 0);
    assertThat(area(path)).isCloseTo(700 * 90 + segment(700, 30), within(0.1));
    Bounds b = path.bounds();
    assertThat(b.maxY()).isCloseTo(120, within(1e-9));
    assertThat(b.minY()).isZero();
  }

  @Test
  void a_lower_arc_takes_one_away_and_both_go_together() {
    assertThat(area(path(700, 120, 0, 25))).isCloseTo(700 * 120 - segment(700, 25), within(0.1));
    assertThat(area(path(700, 120, 30, 25)))
        .isCloseTo(700 * 90 + segment(700, 30) - segment(700, 25), within(0.1));
  }

  @Test
  void half_a_circle_is_the_most() {
    assertThat(area(path(80, 100, 40, 0))).isCloseTo(80 * 60 + Math.PI * 800, within(0.1));
    assertThatThrownBy(() -> path(80, 100, 41, 0))
        .hasMessageContaining("LAY-013")
        .hasMessageContaining("41 mm");
    assertThatThrownBy(() -> path(800, 100, 0, 100)).hasMessageContaining("leave nothing");
    assertThatThrownBy(() -> path(800, 100, 100, 0)).hasMessageContaining("leave nothing");
  }
}
