package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.FrameMap;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class VariationTest {
  private static final long SEED = 20261128;
  private static final double ROUNDING = 1e-6;

  private static final Hull LEAF =
      Hull.of(
          List.of(
              new Point(0, 0),
              new Point(12, 4),
              new Point(30, 18),
              new Point(25, 40),
              new Point(9, 38)));

  private static List<Placement> band(FriezeGroup group, int count, Panel panel) {
    return new Arrangement(group, count, 5).place("leaf", LEAF.bounds(), panel, SourceSpan.NONE);
  }

  private static Panel panel(double width) {
    return new Opening(width, 130, 0).panel("apron", 0, SourceSpan.NONE);
  }

  private static Hull at(Placement placement) {
    return LEAF.transformed(placement.map().affine());
  }

  @Test
  void the_same_seed_gives_the_same_placements_and_another_one_others() {
    Variation vary = new Variation(0.1, 0.1, 2, OptionalDouble.empty());
    List<Placement> before = band(FriezeGroup.P2MG, 9, panel(700));
    List<Placement> seven = vary.apply(before, LEAF, new Ground(panel(700), 5), 7);
    assertThat(seven).isEqualTo(vary.apply(before, LEAF, new Ground(panel(700), 5), 7));
    assertThat(seven).isNotEqualTo(vary.apply(before, LEAF, new Ground(panel(700), 5), 8));
  }

  @Test
  void no_difference_is_larger_than_asked_and_some_are_large() {
    Variation vary = new Variation(0.08, 0.05, 1.5, OptionalDouble.of(0));
    List<Placement> before = band(FriezeGroup.P1, 12, panel(1200));
    double mostTurn = 0;
    double mostSize = 0;
    for (long seed = 1; seed <= 30; seed++) {
      List<Placement> after = vary.apply(before, LEAF, new Ground(panel(1200), 5), seed);
      for (int i = 0; i < after.size(); i++) {
        Affine a = after.get(i).map().affine();
        double turn = Math.abs(Math.atan2(a.b(), a.a()));
        double size = Math.abs(a.scale() - 1);
        mostTurn = Math.max(mostTurn, turn);
        mostSize = Math.max(mostSize, size);
        Point was = at(before.get(i)).bounds().centre();
        Point is = a.apply(before.get(i).map().affine().inverse().apply(was));
        assertThat(turn).as("seed %d, motif %d", seed, i).isLessThanOrEqualTo(0.08 + ROUNDING);
        assertThat(size).as("seed %d, motif %d", seed, i).isLessThanOrEqualTo(0.05 + ROUNDING);
        assertThat(Math.abs(is.x() - was.x())).isLessThanOrEqualTo(1.5 + ROUNDING);
        assertThat(Math.abs(is.y() - was.y())).isLessThanOrEqualTo(1.5 + ROUNDING);
      }
    }
    assertThat(mostTurn).isGreaterThan(0.06);
    assertThat(mostSize).isGreaterThan(0.04);
  }

  /** Also where motifs stand so close that most differences have to be made smaller. */
  @Test
  void motifs_keep_their_space_and_stay_in_the_band() {
    SplittableRandom r = Seeds.random(SEED);
    for (int round = 0; round < 60; round++) {
      FriezeGroup group = List.of(FriezeGroup.values()).get(r.nextInt(7));
      int count = 2 * r.nextInt(2, 7);
      int columns = count / group.rows();
      Panel panel = panel(columns * r.nextDouble(31, 45) + 10);
      double space = r.nextDouble(0, 3);
      Variation vary =
          new Variation(
              r.nextDouble(0.5),
              r.nextDouble(0.3),
              r.nextDouble(6),
              r.nextBoolean() ? OptionalDouble.of(space) : OptionalDouble.empty());
      List<Placement> before = band(group, count, panel);
      Bounds band = panel.outline().bounds().grown(-5);
      List<Placement> after = vary.apply(before, LEAF, new Ground(panel, 5), r.nextLong());
      String what = "seed " + Seeds.seed(SEED) + ", round " + round;
      for (int i = 0; i < count; i++) {
        Bounds b = at(after.get(i)).bounds();
        assertThat(band.grown(ROUNDING).contains(new Point(b.minX(), b.minY()))).as(what).isTrue();
        assertThat(band.grown(ROUNDING).contains(new Point(b.maxX(), b.maxY()))).as(what).isTrue();
        for (int k = 0; k < i; k++) {
          double was = at(before.get(i)).distance(at(before.get(k)));
          double least = Math.min(was, vary.spaceMm().orElse(was / 2));
          assertThat(at(after.get(i)).distance(at(after.get(k))))
              .as("%s, motifs %d and %d", what, i, k)
              .isGreaterThanOrEqualTo(least - ROUNDING);
        }
      }
    }
  }

  @Test
  void the_two_halves_of_a_mirrored_band_differ_a_little() {
    Variation vary = new Variation(0.07, 0.05, 1, OptionalDouble.empty());
    List<Placement> after =
        vary.apply(band(FriezeGroup.P1M1, 2, panel(120)), LEAF, new Ground(panel(120), 5), 3);
    Bounds left = at(after.get(0)).bounds();
    Bounds right = at(after.get(1)).bounds();
    assertThat(left.minX() - 0).isNotCloseTo(120 - right.maxX(), within(1e-3));
    assertThat(left.width()).isNotCloseTo(right.width(), within(1e-3));
  }

  @Test
  void nothing_asked_changes_nothing() {
    List<Placement> before = band(FriezeGroup.P2, 6, panel(700));
    Variation none = new Variation(0, 0, 0, OptionalDouble.empty());
    List<Placement> after = none.apply(before, LEAF, new Ground(panel(700), 5), 1);
    for (int i = 0; i < 6; i++) {
      Point corner = new Point(30, 18);
      assertThat(after.get(i).map().apply(corner).distance(before.get(i).map().apply(corner)))
          .isLessThan(1e-9);
    }
  }

  /** The distance of two boxes in closed form, turned by the same angle. */
  @Test
  void distances_of_hulls_are_exact() {
    SplittableRandom r = Seeds.random(SEED);
    for (int i = 0; i < 300; i++) {
      double w = r.nextDouble(1, 9);
      double h = r.nextDouble(1, 9);
      double dx = r.nextDouble(-20, 20);
      double dy = r.nextDouble(-20, 20);
      Affine turn = Affine.rotation(r.nextDouble(-3, 3));
      List<Point> box =
          new ArrayList<>(
              List.of(new Point(0, 0), new Point(w, 0), new Point(w, h), new Point(0, h)));
      box.add(new Point(w / 2, h / 2));
      Hull one = Hull.of(box).transformed(turn);
      Hull two = Hull.of(box).transformed(Affine.translation(dx, dy).then(turn));
      double gap = Math.hypot(Math.max(0, Math.abs(dx) - w), Math.max(0, Math.abs(dy) - h));
      assertThat(one.distance(two)).as("case %d", i).isCloseTo(gap, within(1e-9));
    }
  }

  @Test
  void a_mirrored_placement_keeps_its_hand() {
    Placement mirrored =
        new Placement(
            "leaf", 1, new FrameMap<>(Affine.scaling(-1, 1).then(Affine.translation(60, 60))));
    List<Placement> after =
        new Variation(0.1, 0.1, 1, OptionalDouble.empty())
            .apply(List.of(mirrored), LEAF, new Ground(panel(200), 0), 5);
    assertThat(after.get(0).map().isMirroring()).isTrue();
    assertThat(after.get(0).map().affine().isSimilarity()).isTrue();
  }
}
