package frieze.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Bounds;
import frieze.curve.FrameMap;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.diagnostic.SourceSpan;
import frieze.layout.Arrangement;
import frieze.layout.Follow;
import frieze.layout.FriezeGroup;
import frieze.layout.Hull;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.layout.Pattern;
import frieze.layout.Placement;
import frieze.layout.Ring;
import frieze.layout.Tiling;
import frieze.layout.WallpaperGroup;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class VariantsTest {
  private static final double FLATTEN = Tolerances.DEFAULT.flattenMm();
  private static final double MARGIN = 4;

  private static Motif motif(Path... paths) {
    Piece piece =
        new Piece(
            "", List.of(), List.of(paths), Optional.of(FillRule.NONZERO), OptionalDouble.empty());
    return new Motif("leaf", new Artwork("own.svg", List.of(piece), "millimetres", List.of()));
  }

  private static Panel panel(double width, double height) {
    return new Opening(width, height, 0).panel("panel", 0, SourceSpan.NONE);
  }

  private static Region window(Panel panel) {
    return Offset.offset(
        Region.of(List.of(panel.outline()), FillRule.NONZERO, FLATTEN), -MARGIN, FLATTEN);
  }

  /** All that is left of a pattern on a panel. */
  private static Region left(Pattern pattern, Motif motif, Panel panel, List<Placement> kept) {
    Variants variants = new Variants(Tolerances.DEFAULT);
    Hull hull = Hull.of(motif.artwork());
    for (Placement p : pattern.reachingOver("leaf", hull, panel, SourceSpan.NONE)) {
      variants.cut(p, motif, window(panel)).ifPresent(kept::add);
    }
    Motif shaped = variants.with(motif);
    Region all = Region.EMPTY;
    for (Placement p : kept) {
      Work.Target on = new Work.Target("leaf", Optional.empty());
      all = all.union(Selection.area(shaped.variant(p.variant()), on, p.map().affine(), FLATTEN));
    }
    return all;
  }

  /** 20 wide every 30 about the middle; cut off above and below: 16 of 20 high are left. */
  @Test
  void a_row_goes_on_to_the_margin_and_is_cut_there() {
    Motif square = motif(Path.polyline(new Bounds(0, 0, 20, 20).corners(), true));
    Pattern row =
        new Arrangement(FriezeGroup.P2, 0, 0, OptionalDouble.empty(), OptionalDouble.of(30));
    List<Placement> kept = new ArrayList<>();
    Region five = left(row, square, panel(148, 24), kept);
    assertThat(kept).hasSize(5);
    assertThat(five.area()).isCloseTo(5 * 20 * 16, within(0.05));
    // The first middle lies at 24.8, the one before it at -5.2: it reaches to 4.8.
    Region more = left(row, square, panel(169.6, 24), new ArrayList<>());
    assertThat(more.area()).isCloseTo((5 * 20 + 2 * 0.8) * 16, within(0.05));
    // 0.1 by 16 is less than a fiftieth of 20 by 20.
    Region tips = left(row, square, panel(168.2, 24), new ArrayList<>());
    assertThat(tips.area()).isCloseTo(5 * 20 * 16, within(0.05));
  }

  @Test
  void a_clipped_pattern_is_still_its_own_image_under_the_panel_s_symmetries() {
    Motif leaf =
        motif(Path.polyline(List.of(new Point(0, 0), new Point(9, 3), new Point(4, 12)), true));
    for (WallpaperGroup group : List.of(WallpaperGroup.P2MM, WallpaperGroup.P4MM)) {
      Panel panel = panel(100, 60);
      Tiling tiling =
          new Tiling(group, 4, OptionalInt.empty(), 0, Optional.of(new Point(0.35, 0.2)), 0);
      Region left = left(tiling, leaf, panel, new ArrayList<>());
      Affine mirror = Affine.scaling(-1, 1).then(Affine.translation(100, 0));
      Affine below = Affine.scaling(1, -1).then(Affine.translation(0, 60));
      assertThat(left.area()).isGreaterThan(500);
      assertThat(left.minus(left.transformed(mirror)).area()).as("%s", group).isLessThan(0.01);
      assertThat(left.minus(left.transformed(below)).area()).as("%s", group).isLessThan(0.01);
      assertThat(left.minus(window(panel)).area()).isLessThan(0.001);
    }
  }

  /** A circle of 10 whose middle lies on the line of the cut: half of it, and its arc stays one. */
  @Test
  void what_is_cut_keeps_its_arcs_and_what_is_whole_its_shape() {
    Motif circle = motif(Path.circle(new Point(10, 10), 10));
    Panel panel = panel(40 + 2 * MARGIN, 60);
    Follow straight =
        new Follow(
            new Follow.Arch(0),
            FriezeGroup.P1,
            0,
            MARGIN,
            OptionalDouble.empty(),
            OptionalDouble.of(20),
            false);
    List<Placement> kept = new ArrayList<>();
    Region left = left(straight, circle, panel, kept);
    assertThat(left.area()).isCloseTo(2 * Math.PI * 100, within(20 * Math.PI * 4 * FLATTEN));
    assertThat(kept).hasSize(3);
    assertThat(kept.get(1).variant()).isZero();
    Variants variants = new Variants(Tolerances.DEFAULT);
    Placement half = variants.cut(kept.get(0).shaped(0), circle, window(panel)).orElseThrow();
    Artwork shape = variants.with(circle).variant(half.variant()).artwork();
    assertThat(shape.pieces().get(0).paths().get(0).segments())
        .filteredOn(Arc.class::isInstance)
        .allSatisfy(a -> assertThat(((Arc) a).radius()).isCloseTo(10, within(1e-6)))
        .isNotEmpty();
  }

  @Test
  void a_ring_may_reach_over_and_what_lies_beyond_is_gone() {
    Motif square = motif(Path.polyline(new Bounds(0, 0, 8, 8).corners(), true));
    Ring ring = new Ring(4, 30, Optional.empty(), 0, false);
    List<Placement> kept = new ArrayList<>();
    // Of the four, those above and below lie beyond the margin of a panel 60 high.
    Region left = left(ring, square, panel(100, 60), kept);
    assertThat(kept).extracting(Placement::number).containsExactly(1, 3);
    assertThat(left.area()).isCloseTo(2 * 64, within(0.01));
  }

  @Test
  void motifs_that_are_bent_alike_share_a_shape() {
    Motif square = motif(Path.polyline(new Bounds(0, 0, 8, 8).corners(), true));
    Variants variants = new Variants(Tolerances.DEFAULT);
    Placement plain = new Placement("leaf", 1, new FrameMap<>(Affine.IDENTITY));
    assertThat(variants.bent(plain, square)).isSameAs(plain);
    Placement one = new Placement("leaf", 2, plain.map(), 0.01, 0);
    Placement two = new Placement("leaf", 3, plain.map(), 0.01, 0);
    Placement other = new Placement("leaf", 4, plain.map(), -0.01, 0);
    assertThat(variants.bent(one, square).variant()).isEqualTo(1);
    assertThat(variants.bent(two, square).variant()).isEqualTo(1);
    assertThat(variants.bent(other, square).variant()).isEqualTo(2);
    assertThat(variants.with(square).variants()).hasSize(2);
  }
}
