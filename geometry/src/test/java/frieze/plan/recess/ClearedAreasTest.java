package frieze.plan.recess;

import static frieze.plan.Bench.FLAT_6;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.plan.Bench;
import frieze.plan.Planner;
import frieze.plan.cut.Cut;
import frieze.plan.cut.MoveBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Grooves in the floor of a recess: a square of 40 mm, and a line across it. */
class ClearedAreasTest {
  private static final double RECESS = 4;

  private static Motif leaf(double fromX, double toX) {
    Motif square =
        Bench.filled(
            "leaf",
            Path.polyline(
                List.of(new Point(0, 0), new Point(40, 0), new Point(40, 40), new Point(0, 40)),
                true));
    Motif vein =
        Bench.stroked(
            "leaf", Path.polyline(List.of(new Point(fromX, 20), new Point(toX, 20)), false));
    return new Motif(
        "leaf",
        new Artwork(
            "leaf",
            List.of(square.artwork().pieces().get(0), vein.artwork().pieces().get(0)),
            "",
            List.of()));
  }

  private static List<Cut> grooves(double fromX, double toX, double depthMm) {
    Design design =
        Bench.design(
            leaf(fromX, toX),
            Affine.rotation(Math.PI / 2).then(Affine.translation(90, 40)),
            Bench.recess("leaf", FLAT_6, RECESS),
            Bench.groove("leaf", FLAT_6, depthMm));
    return Planner.plan(design, Bench.setup(), Tolerances.DEFAULT).cuts().stream()
        .filter(c -> c.origin().startsWith("groove"))
        .toList();
  }

  @Test
  void a_groove_in_a_recess_begins_on_its_floor() {
    Cut groove = grooves(10, 30, 6).get(0);
    assertThat(groove.start().z()).isCloseTo(MoveBuilder.AIR_MM - RECESS, within(1e-12));
    double highest =
        groove.moves().stream().mapToDouble(m -> m.path().box().maxZ()).max().orElseThrow();
    assertThat(highest).isCloseTo(MoveBuilder.AIR_MM - RECESS, within(1e-12));
    assertThat(groove.moves().stream().mapToDouble(m -> m.path().box().minZ()).min())
        .hasValueCloseTo(-6.0, within(1e-12));
    // What the same groove takes in one pass where nothing was cleared takes two.
    assertThat(groove.moves().size()).isLessThan(grooves(-10, 10, 6).get(0).moves().size());
  }

  @Test
  void a_groove_that_leaves_the_recess_is_cut_in_passes_from_the_top() {
    Cut groove = grooves(20, 50, 6).get(0);
    assertThat(groove.start().z()).isCloseTo(MoveBuilder.AIR_MM - 3, within(1e-12));
    List<Double> levels =
        groove.moves().stream()
            .map(m -> m.path())
            .filter(p -> p.from().z() == p.to().z())
            .map(p -> p.to().z())
            .distinct()
            .toList();
    assertThat(levels).containsExactly(-3.0, -6.0);
  }

  @Test
  void near_the_wall_of_the_recess_nothing_counts_as_cleared() {
    Cut groove = grooves(2.9, 30, 6).get(0);
    assertThat(groove.start().z()).isEqualTo(MoveBuilder.AIR_MM);
    assertThat(grooves(3.1, 30, 6).get(0).start().z())
        .isCloseTo(MoveBuilder.AIR_MM - RECESS, within(1e-12));
  }
}
