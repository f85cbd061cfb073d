package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.FrameMap;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import java.util.List;
import java.util.OptionalDouble;
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
  void differences_and_shifts_keep_motifs_within_leaning_ends() {
    // Each end leans inwards by 20 mm; the squares at the ends stand 3 mm from them.
    Panel panel = panel(new Point(0, 0), new Point(400, 0), new Point(380, 40), new Point(20, 40));
    Band band = Band.of(panel, 0);
    List<Placement> all =
        List.of(new Placement("leaf", 1, new FrameMap<>(Affine.translation(18, 10))));
    assertThat(band.holds(SQUARE.transformed(all.get(0).map().affine()))).isTrue();
    Panel upright = new Panel("bounds", Path.polyline(panel.outline().bounds().corners(), true));
    int left = 0;
    Variation vary = new Variation(0, 0, 6, OptionalDouble.of(0));
    for (long seed = 0; seed < 40; seed++) {
      Affine free = vary.apply(all, SQUARE, new Ground(upright, 0), seed).get(0).map().affine();
      Affine kept = vary.apply(all, SQUARE, new Ground(panel, 0), seed).get(0).map().affine();
      left += band.holds(SQUARE.transformed(free)) ? 0 : 1;
      assertThat(band.holds(SQUARE.transformed(kept))).as("seed " + seed).isTrue();
    }
    assertThat(left).as("seeds that the bounds alone would let out").isPositive();
    // A hole on the right edge of the motif: the least shift to the left would leave the panel.
    Hull hole = Avoidance.round(new Point(40, 20), 2);
    Affine shifted =
        new Avoidance(1, 12)
            .within(new Ground(panel, 0), all, SQUARE, List.of(hole), SourceSpan.NONE)
            .get(0)
            .map()
            .affine();
    assertThat(band.holds(SQUARE.transformed(shifted))).isTrue();
    assertThat(SQUARE.transformed(shifted).distance(hole)).isGreaterThanOrEqualTo(1 - 1e-9);
  }

  @Test
  void a_motif_too_near_to_a_leaning_side_is_an_error() {
    Panel panel = panel(new Point(0, 0), new Point(400, 0), new Point(380, 30), new Point(20, 30));
    assertThatThrownBy(
            () -> new Arrangement(FriezeGroup.P1, 18, 0).place("leaf", SQUARE, panel, 0, NOWHERE))
        .hasMessageContaining("LAY-007")
        .hasMessageContaining("motif leaf 1 at x 20.6, y 15 mm reaches beyond the panel");
  }
}
