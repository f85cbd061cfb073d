package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Arc;
import frieze.curve.Path;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.List;
import org.junit.jupiter.api.Test;

class OpeningTest {
  private static final SourceSpan WHERE = new SourceSpan("bench.yaml", 7, 3, 0);

  @Test
  void a_gap_shortens_each_side_twice_and_the_corner_radius_once() {
    Panel panel = new Opening(727, 133, 5).panel("front apron", 1.5, WHERE);
    assertThat(panel.lengthMm()).isEqualTo(724);
    assertThat(panel.heightMm()).isEqualTo(130);
    List<Arc> corners =
        panel.outline().segments().stream()
            .filter(Arc.class::isInstance)
            .map(Arc.class::cast)
            .toList();
    assertThat(corners).hasSize(4).allMatch(a -> Math.abs(a.radius() - 3.5) < 1e-12);
    // Closed form: a rectangle less what four round corners leave out.
    double expected = 724 * 130 - (4 - Math.PI) * 3.5 * 3.5;
    assertThat(area(panel.outline())).isCloseTo(expected, within(0.01));
  }

  @Test
  void a_gap_of_the_radius_or_more_makes_square_corners() {
    Panel panel = new Opening(100, 50, 2).panel("end", 3, WHERE);
    assertThat(panel.outline().segments()).hasSize(4);
    assertThat(area(panel.outline())).isCloseTo(94 * 44, within(1e-9));
  }

  @Test
  void a_round_opening_gives_a_round_insert() {
    Panel panel = new Opening(40, 40, 20).panel("disc", 1, WHERE);
    assertThat(panel.outline().segments()).hasSize(4).allMatch(Arc.class::isInstance);
  }

  @Test
  void a_gap_that_leaves_nothing_is_an_error_at_its_place() {
    assertThatThrownBy(() -> new Opening(100, 50, 0).panel("end", 25, WHERE))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("bench.yaml:7:3: error[LAY-001]")
        .hasMessageContaining("25 mm (0.984 in)");
  }

  @Test
  void a_corner_beyond_half_the_opening_says_by_how_much() {
    assertThatThrownBy(() -> new Opening(100, 50, 27).panel("end", 1, WHERE))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("LAY-002")
        .hasMessageContaining("is 2 mm (0.079 in) more");
  }

  private static double area(Path outline) {
    return Region.of(List.of(outline), FillRule.NONZERO, 1e-5).area();
  }
}
