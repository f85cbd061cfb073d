package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Pitch, turns, places to keep clear of, and outlines that are no rectangles. */
class PlacesTest {
  private static final double ROUNDING = 1e-6;
  private static final Hull LEAF =
      Hull.of(List.of(new Point(0, 0), new Point(20, 0), new Point(24, 30), new Point(10, 40)));
  private static final Panel PANEL =
      new Panel(
          "p",
          Path.polyline(
              List.of(new Point(0, 0), new Point(300, 0), new Point(300, 60), new Point(0, 60)),
              true));

  private static Arrangement pitched(FriezeGroup group, int count, double pitchMm) {
    return new Arrangement(group, count, 10, OptionalDouble.empty(), OptionalDouble.of(pitchMm));
  }

  private static List<Placement> placed(Pattern pattern, Panel panel, long seed) {
    return pattern.place("leaf", LEAF, panel, seed, SourceSpan.NONE);
  }

  private static Hull hull(Placement p) {
    return LEAF.transformed(p.map().affine());
  }

  /** A band of 280, motifs of 24: 1 + floor((280 - 24) / 30) = 9, and the row is centred. */
  @Test
  void as_many_motifs_as_fit_stand_at_the_pitch_about_the_middle() {
    List<Placement> row = placed(pitched(FriezeGroup.P1, 0, 30), PANEL, 0);
    assertThat(row).hasSize(9);
    for (int i = 0; i < 9; i++) {
      assertThat(hull(row.get(i)).bounds().centre().x())
          .isCloseTo(150 + (i - 4) * 30, within(ROUNDING));
    }
  }

  /** The other end of a bench: another length, the same distance from leaf to leaf. */
  @Test
  void a_panel_of_another_length_has_the_same_pitch() {
    Panel shorter =
        new Panel(
            "q",
            Path.polyline(
                List.of(new Point(0, 0), new Point(200, 0), new Point(200, 60), new Point(0, 60)),
                true));
    List<Placement> row = placed(pitched(FriezeGroup.P2, 0, 30), shorter, 0);
    assertThat(row).hasSize(6);
    for (int i = 1; i < row.size(); i++) {
      double step =
          hull(row.get(i)).bounds().centre().x() - hull(row.get(i - 1)).bounds().centre().x();
      assertThat(step).isCloseTo(30, within(ROUNDING));
    }
  }

  @Test
  void a_pitch_that_the_motif_or_the_band_has_no_room_for_is_refused_with_the_figure() {
    assertThatThrownBy(() -> placed(pitched(FriezeGroup.P1, 0, 20), PANEL, 0))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("4 mm");
    // 11 motifs: 10 * 30 + 24 - 280 = 44.
    assertThatThrownBy(() -> placed(pitched(FriezeGroup.P1, 11, 30), PANEL, 0))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("44 mm");
  }

  @Test
  void motifs_in_the_way_are_left_out_and_the_others_stay_where_they_were() {
    List<Placement> row = placed(pitched(FriezeGroup.P1, 0, 30), PANEL, 0);
    Hull hole = Avoidance.round(hull(row.get(3)).bounds().centre(), 4);
    List<Placement> left =
        new Avoidance(2, 0)
            .within(new Ground(PANEL, 10), row, LEAF, List.of(hole), SourceSpan.NONE);
    assertThat(left).isSubsetOf(row).doesNotContain(row.get(3));
    assertThat(row).filteredOn(p -> hull(p).distance(hole) >= 2).containsExactlyElementsOf(left);
  }

  /** Guarantees, with seeds: clear of the places, in the band, none nearer than half of before. */
  @Test
  void shifted_motifs_are_clear_whole_and_apart() {
    int shifted = 0;
    for (int run = 0; run < 30; run++) {
      long seed = Seeds.seed(run);
      SplittableRandom random = new SplittableRandom(seed);
      List<Placement> row = placed(pitched(FriezeGroup.P2, 0, 45), PANEL, seed);
      List<Hull> places =
          List.of(
              Avoidance.round(new Point(40 + 220 * random.nextDouble(), 10), 3),
              Avoidance.round(new Point(40 + 220 * random.nextDouble(), 50), 3));
      List<Placement> moved;
      try {
        moved =
            new Avoidance(1, 12).within(new Ground(PANEL, 0), row, LEAF, places, SourceSpan.NONE);
      } catch (BadInputException e) {
        assertThat(e).hasMessageContaining("finds no place");
        continue;
      }
      assertThat(moved).as("seed %s", seed).hasSameSizeAs(row);
      for (int i = 0; i < row.size(); i++) {
        Hull now = hull(moved.get(i));
        shifted += moved.get(i).equals(row.get(i)) ? 0 : 1;
        double way = now.bounds().centre().distance(hull(row.get(i)).bounds().centre());
        assertThat(way).as("seed %s", seed).isLessThanOrEqualTo(12 + ROUNDING);
        assertThat(places).allMatch(p -> now.distance(p) >= 1 - ROUNDING);
        assertThat(now.bounds().minX()).isGreaterThanOrEqualTo(-ROUNDING);
        for (int k = 0; k < i; k++) {
          assertThat(now.distance(hull(moved.get(k)))).as("seed %s", seed).isPositive();
        }
      }
    }
    assertThat(shifted).as("motifs shifted in all").isPositive();
  }

  @Test
  void drawings_take_turns_each_by_its_middle_and_stay_in_turn_when_one_is_left_out() {
    Hull seed = Hull.of(List.of(new Point(5, 5), new Point(9, 5), new Point(7, 15)));
    Alternation turns = new Alternation(List.of("leaf", "seed"), List.of(LEAF, seed));
    Pattern pattern = pitched(FriezeGroup.P2MM, 0, 30);
    Panel high =
        new Panel(
            "h",
            Path.polyline(
                List.of(new Point(0, 0), new Point(300, 0), new Point(300, 120), new Point(0, 120)),
                true));
    List<Placement> all = pattern.place("both", turns.together(), high, 0, SourceSpan.NONE);
    List<Placement> dealt = turns.dealt(all.subList(2, all.size()), pattern);
    for (Placement p : dealt) {
      boolean leaf = (p.number() - 1) / 2 % 2 == 0;
      assertThat(p.motif()).isEqualTo(leaf ? "leaf" : "seed");
      Point own = (leaf ? LEAF : seed).bounds().centre();
      Placement before = all.get(p.number() - 1);
      Point middle = turns.together().bounds().centre();
      assertThat(p.map().apply(own).distance(before.map().apply(middle))).isLessThan(ROUNDING);
    }
  }

  /** An apron with an arched lower edge: the arc of radius 260 about (150, -240) cuts into it. */
  @Test
  void scattered_and_repeated_motifs_keep_inside_an_arched_outline() {
    Point centre = new Point(150, -240);
    double radius = 260;
    double half = Math.sqrt(radius * radius - 240 * 240);
    Point from = new Point(150 - half, 0);
    Point to = new Point(150 + half, 0);
    double sweep = -2 * Math.asin(half / radius);
    Path outline =
        new Path(
            List.of(
                new Line(new Point(0, 0), from),
                new Arc(from, to, centre, sweep),
                new Line(to, new Point(300, 0)),
                new Line(new Point(300, 0), new Point(300, 110)),
                new Line(new Point(300, 110), new Point(0, 110)),
                new Line(new Point(0, 110), new Point(0, 0))),
            true);
    Panel arched = new Panel("arched", outline);
    List<Pattern> patterns = new ArrayList<>();
    patterns.add(new Scatter(9, 2, 4, Math.PI));
    patterns.add(
        new Tiling(
            WallpaperGroup.P2, 5, java.util.OptionalInt.of(2), 4, java.util.Optional.empty(), 0));
    for (Pattern pattern : patterns) {
      for (int run = 0; run < 3; run++) {
        long seed = Seeds.seed(run);
        List<Placement> all = placed(pattern, arched, seed);
        assertThat(all).isNotEmpty();
        for (Placement p : all) {
          List<Point> ring = hull(p).points();
          for (int i = 0; i < ring.size(); i++) {
            for (double t = 0; t < 1; t += 0.05) {
              Point q = ring.get(i).towards(ring.get((i + 1) % ring.size()), t);
              assertThat(q.distance(centre))
                  .as("%s, seed %s", pattern, seed)
                  .isGreaterThanOrEqualTo(radius + 4 - 0.006);
              assertThat(q.y()).isBetween(4 - ROUNDING - 1e-4, 106 + 1e-4);
            }
          }
        }
      }
    }
  }
}
