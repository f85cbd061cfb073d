package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PatternTest {
  private static final long SEED = 20261129;
  private static final double ROUNDING = 1e-6;
  private static final SourceSpan NOWHERE = SourceSpan.NONE;

  /** A shape that is like none of its mirror images or turns. */
  private static final Hull LEAF =
      Hull.of(List.of(new Point(0, 0), new Point(5, 1), new Point(6, 4), new Point(1, 9)));

  private static Panel panel(double width, double height) {
    return new Opening(width, height, 0).panel("panel", 0, NOWHERE);
  }

  private static Tiling tiling(WallpaperGroup group) {
    return new Tiling(group, 4, OptionalInt.of(3), 5, Optional.empty(), 0.3);
  }

  private static boolean same(Affine a, Affine b) {
    return Math.abs(a.a() - b.a()) < ROUNDING
        && Math.abs(a.b() - b.b()) < ROUNDING
        && Math.abs(a.c() - b.c()) < ROUNDING
        && Math.abs(a.d() - b.d()) < ROUNDING
        && Math.abs(a.e() - b.e()) < ROUNDING
        && Math.abs(a.f() - b.f()) < ROUNDING;
  }

  @ParameterizedTest
  @EnumSource
  void every_operation_takes_a_motif_to_a_motif_or_over_the_border(WallpaperGroup group) {
    Panel panel = panel(330, 250);
    Bounds band = panel.outline().bounds().grown(-5);
    Tiling tiling = tiling(group);
    List<Placement> all = tiling.place("leaf", LEAF, panel, 0, NOWHERE);
    Affine basis = tiling.basis(band);
    int met = 0;
    for (PlaneSymmetry s : group.operations()) {
      Affine operation = basis.inverse().then(s.inCell()).then(basis);
      assertThat(operation.isSimilarity()).as("%s %s", group, s).isTrue();
      for (Placement placement : all) {
        Affine image = placement.map().affine().then(operation);
        Bounds b = LEAF.transformed(image).bounds();
        boolean inside =
            band.grown(-ROUNDING).contains(new Point(b.minX(), b.minY()))
                && band.grown(-ROUNDING).contains(new Point(b.maxX(), b.maxY()));
        if (inside) {
          met++;
          assertThat(all).as("%s %s", group, s).anyMatch(p -> same(p.map().affine(), image));
        }
      }
    }
    assertThat(met)
        .as("images that meet a motif, more than the motifs themselves")
        .isGreaterThanOrEqualTo(all.size() + group.operations().size() - 1);
  }

  @ParameterizedTest
  @EnumSource
  void motifs_lie_whole_in_the_band_apart_from_each_other(WallpaperGroup group) {
    Panel panel = panel(330, 250);
    Bounds band = panel.outline().bounds().grown(-5 + ROUNDING);
    List<Placement> all = tiling(group).place("leaf", LEAF, panel, 0, NOWHERE);
    List<Hull> hulls = all.stream().map(p -> LEAF.transformed(p.map().affine())).toList();
    for (int i = 0; i < hulls.size(); i++) {
      Bounds b = hulls.get(i).bounds();
      assertThat(band.contains(new Point(b.minX(), b.minY()))).isTrue();
      assertThat(band.contains(new Point(b.maxX(), b.maxY()))).isTrue();
      for (int k = 0; k < i; k++) {
        assertThat(hulls.get(i).distance(hulls.get(k))).as("%s %d %d", group, i, k).isPositive();
      }
    }
    assertThat(all).extracting(Placement::number).startsWith(1, 2).doesNotHaveDuplicates();
  }

  /**
   * Motifs with their middles in the band: cells times motifs in a cell, none left at the border.
   */
  @Test
  void a_whole_number_of_cells_holds_a_whole_number_of_motifs() {
    Hull dot = Hull.of(List.of(new Point(0, 0), new Point(0.1, 0), new Point(0, 0.1)));
    for (WallpaperGroup group :
        List.of(WallpaperGroup.P1, WallpaperGroup.P2GG, WallpaperGroup.C2MM, WallpaperGroup.PG)) {
      Tiling tiling =
          new Tiling(group, 4, OptionalInt.of(3), 0, Optional.of(new Point(0.13, 0.21)), 0);
      assertThat(tiling.place("dot", dot, panel(400, 300), 0, NOWHERE))
          .as("%s", group)
          .hasSize(4 * 3 * group.operations().size());
    }
  }

  @Test
  void a_ring_is_the_same_after_a_turn_by_one_place() {
    Ring ring = new Ring(7, 60, Optional.of(new Point(120, 100)), 0.4, false);
    List<Placement> all = ring.place("leaf", LEAF, panel(240, 200), 0, NOWHERE);
    Affine turn =
        Affine.translation(-120, -100)
            .then(Affine.rotation(2 * Math.PI / 7))
            .then(Affine.translation(120, 100));
    for (int i = 0; i < 7; i++) {
      Affine next = all.get((i + 1) % 7).map().affine();
      assertThat(same(all.get(i).map().affine().then(turn), next)).as("motif %d", i).isTrue();
    }
    Point middle = all.get(0).map().apply(LEAF.bounds().centre());
    assertThat(middle.x()).isCloseTo(120 + 60 * Math.cos(0.4), within(1e-9));
    assertThat(middle.y()).isCloseTo(100 + 60 * Math.sin(0.4), within(1e-9));
    Point top = all.get(0).map().apply(LEAF.bounds().centre().plus(new Point(0, 1)));
    assertThat(top.distance(new Point(120, 100))).isCloseTo(61, within(1e-9));
  }

  @Test
  void a_mirrored_ring_is_the_same_in_a_mirror_between_two_motifs() {
    Ring ring = new Ring(6, 60, Optional.empty(), 0, true);
    List<Placement> all = ring.place("leaf", LEAF, panel(240, 200), 0, NOWHERE);
    double between = Math.PI / 6;
    Affine mirror =
        Affine.translation(-120, -100)
            .then(Affine.rotation(-between))
            .then(Affine.scaling(1, -1))
            .then(Affine.rotation(between))
            .then(Affine.translation(120, 100));
    assertThat(same(all.get(0).map().affine().then(mirror), all.get(1).map().affine())).isTrue();
    assertThatThrownBy(
            () ->
                new Ring(5, 60, Optional.empty(), 0, true)
                    .place("leaf", LEAF, panel(240, 200), 0, NOWHERE))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("even count, but it is 5");
  }

  @Test
  void scattered_motifs_keep_their_distance_inside_the_band() {
    SplittableRandom r = Seeds.random(SEED);
    for (int round = 0; round < 20; round++) {
      double space = r.nextDouble(0, 6);
      Scatter scatter = new Scatter(r.nextInt(2, 25), space, r.nextDouble(0, 10), Math.PI);
      long seed = r.nextLong();
      Panel panel = panel(260, 160);
      List<Placement> all = scatter.place("leaf", LEAF, panel, seed, NOWHERE);
      String what = "seed " + Seeds.seed(SEED) + ", round " + round;
      assertThat(all).as(what).hasSize(scatter.count());
      assertThat(scatter.place("leaf", LEAF, panel, seed, NOWHERE)).as(what).isEqualTo(all);
      Bounds band = panel.outline().bounds().grown(-scatter.insetMm() + ROUNDING);
      List<Hull> hulls = new ArrayList<>();
      for (Placement placement : all) {
        Hull hull = LEAF.transformed(placement.map().affine());
        Bounds b = hull.bounds();
        assertThat(band.contains(new Point(b.minX(), b.minY()))).as(what).isTrue();
        assertThat(band.contains(new Point(b.maxX(), b.maxY()))).as(what).isTrue();
        hulls.forEach(
            other ->
                assertThat(hull.distance(other)).as(what).isGreaterThanOrEqualTo(space - ROUNDING));
        hulls.add(hull);
      }
    }
  }

  @Test
  void too_many_scattered_motifs_and_too_large_tiles_are_refused() {
    assertThatThrownBy(
            () -> new Scatter(40, 5, 0, 0).place("leaf", LEAF, panel(40, 40), 1, NOWHERE))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("of 40 motifs leaf found a place");
    assertThatThrownBy(
            () -> tiling(WallpaperGroup.P4).place("leaf", LEAF, panel(14, 14), 0, NOWHERE))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("no whole motif");
  }
}
