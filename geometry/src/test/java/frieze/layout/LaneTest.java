package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import java.util.List;
import org.junit.jupiter.api.Test;

class LaneTest {
  private static final SourceSpan NOWHERE = SourceSpan.NONE;
  private static final Hull SQUARE =
      Hull.of(List.of(new Point(0, 0), new Point(20, 0), new Point(20, 20), new Point(0, 20)));

  private static Panel panel(Point... corners) {
    return new Panel("panel", Path.polyline(List.of(corners), true));
  }

  private static List<Placement> nine(Panel panel, double insetMm) {
    return new Arrangement(FriezeGroup.P2, 9, insetMm).place("leaf", SQUARE, panel, 0, NOWHERE);
  }

  @Test
  void a_row_on_an_upright_panel_is_not_turned() {
    Panel panel = new Opening(400, 100, 12).panel("panel", 0, NOWHERE);
    assertThat(Lane.of(panel, 5).leans()).isFalse();
    assertThat(Lane.of(panel, 5).band()).isEqualTo(panel.outline().bounds().grown(-5));
  }

  @Test
  void a_row_on_a_panel_whose_edges_climb_climbs_with_them() {
    // A parallelogram: both edges climb 8 mm over 400 mm, both ends stand upright.
    Panel panel = panel(new Point(0, 0), new Point(400, 8), new Point(400, 108), new Point(0, 100));
    List<Placement> all = nine(panel, 0);
    for (int i = 0; i < 9; i++) {
      Point middle = all.get(i).map().affine().apply(new Point(10, 10));
      double x = 400 * (i + 0.5) / 9;
      assertThat(middle.distance(new Point(x, 50 + x / 50))).isCloseTo(0, within(1e-9));
      Point along = all.get(i).map().affine().applyToDirection(new Point(1, 0));
      assertThat(Math.abs(along.y() / along.x())).isCloseTo(0.02, within(1e-12));
    }
  }

  @Test
  void a_row_between_leaning_ends_is_in_their_middle() {
    // Both ends lean to the right by 10 mm over the height: the row goes from 5 to 405.
    Panel panel = panel(new Point(0, 0), new Point(400, 0), new Point(410, 80), new Point(10, 80));
    List<Placement> all = nine(panel, 0);
    for (int i = 0; i < 9; i++) {
      Point middle = all.get(i).map().affine().apply(new Point(10, 10));
      assertThat(middle.distance(new Point(5 + 400 * (i + 0.5) / 9, 40)))
          .isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void a_motif_too_near_to_a_leaning_side_is_an_error() {
    Panel panel = panel(new Point(0, 0), new Point(400, 0), new Point(380, 30), new Point(20, 30));
    assertThatThrownBy(
            () -> new Arrangement(FriezeGroup.P1, 18, 0).place("leaf", SQUARE, panel, 0, NOWHERE))
        .hasMessageContaining("LAY-007")
        .hasMessageContaining("motif leaf 1 comes nearer");
  }
}
