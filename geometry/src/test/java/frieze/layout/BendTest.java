package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BendTest {
  private static final long SEED = 20261129;
  private static final double ROUNDING = 1e-9;
  private static final double TOLERANCE = 2e-3;
  private static final Bounds DRAWN = new Bounds(10, 20, 40, 80);

  private static Path rectangle(Bounds b) {
    return Path.polyline(b.corners(), true);
  }

  /** A strip about the axis becomes a piece of a ring: R = 1 / bend, R w theta = w h. */
  @Test
  void a_strip_becomes_a_piece_of_a_ring_of_the_same_area() {
    double perMm = 1 / 90.0;
    Bend bend = Bend.of(DRAWN, perMm);
    Point ring = new Point(25 + 90, 50);
    assertThat(bend.apply(new Point(25, 50))).isEqualTo(new Point(25, 50));
    for (Point p : DRAWN.corners()) {
      double radius = p.x() < 25 ? 90 + 15 : 90 - 15;
      assertThat(bend.apply(p).distance(ring)).isCloseTo(radius, within(ROUNDING));
      double angle = Math.atan2(bend.apply(p).y() - 50, ring.x() - bend.apply(p).x());
      assertThat(angle).isCloseTo((p.y() - 50) / 90, within(ROUNDING));
    }
    Path bent = bend.apply(rectangle(DRAWN), TOLERANCE);
    assertThat(Region.of(List.of(bent), FillRule.NONZERO, TOLERANCE).area())
        .isCloseTo(30 * 60, within(TOLERANCE * 2 * (30 + 60)));
    assertThat(bent.closed()).isTrue();
    for (int i = 0; i < bent.segments().size(); i++) {
      Point middle = bent.segments().get(i).at(0.5);
      double off =
          Math.min(Math.abs(middle.distance(ring) - 75), Math.abs(middle.distance(ring) - 105));
      boolean onEnd = middle.distance(ring) > 75.1 && middle.distance(ring) < 104.9;
      assertThat(onEnd || off <= TOLERANCE).as("chord %d", i).isTrue();
    }
  }

  @Test
  void a_bend_the_other_way_is_the_mirror_image() {
    Point p = new Point(13, 71);
    Point right = Bend.of(DRAWN, 0.01).apply(p);
    Point left = Bend.of(DRAWN, -0.01).apply(new Point(50 - p.x(), p.y()));
    assertThat(left.x()).isCloseTo(50 - right.x(), within(ROUNDING));
    assertThat(left.y()).isCloseTo(right.y(), within(ROUNDING));
  }

  @Test
  void the_bent_hull_holds_all_that_is_bent() {
    SplittableRandom r = Seeds.random(SEED);
    for (int round = 0; round < 40; round++) {
      List<Point> all = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        all.add(new Point(r.nextDouble(30), r.nextDouble(60)));
      }
      Hull drawn = Hull.of(all);
      Bend bend = Bend.of(drawn.bounds(), r.nextDouble(-0.02, 0.02));
      Hull bent = bend.apply(drawn);
      for (Point p : all) {
        assertThat(bent.distance(Hull.of(List.of(bend.apply(p)))))
            .as("seed %d, round %d", Seeds.seed(SEED), round)
            .isLessThan(0.02); // sixteen chords a side
      }
    }
  }

  /** With the bent hulls worked out again from densely bent outlines. */
  @Test
  void bent_motifs_keep_their_space_stay_inside_and_are_the_same_for_the_same_seed() {
    SplittableRandom r = Seeds.random(SEED);
    Hull leaf = Hull.of(List.of(new Point(0, 0), new Point(30, 5), new Point(22, 60)));
    int bends = 0;
    for (int round = 0; round < 20; round++) {
      Panel panel = new Opening(8 * r.nextDouble(31, 40) + 6, 80, 0).panel("p", 0, SPAN);
      List<Placement> before =
          new Arrangement(FriezeGroup.P2, 8, 3).place("leaf", leaf, panel, 0, SPAN);
      double bendRad = r.nextDouble(0.1, 1.2);
      Variation vary = new Variation(0.1, 0.1, 1, bendRad, OptionalDouble.empty());
      long seed = r.nextLong();
      List<Placement> after = vary.apply(before, leaf, new Ground(panel, 3), seed);
      assertThat(after).isEqualTo(vary.apply(before, leaf, new Ground(panel, 3), seed));
      List<Hull> now = after.stream().map(p -> dense(leaf, p)).toList();
      Bounds band = panel.outline().bounds().grown(-3 + 0.05);
      for (int i = 0; i < 8; i++) {
        assertThat(Math.abs(after.get(i).bendPerMm()) * 60).isLessThanOrEqualTo(bendRad);
        bends += after.get(i).bendPerMm() == 0 ? 0 : 1;
        assertThat(band.contains(now.get(i).bounds())).as("round %d", round).isTrue();
        for (int k = 0; k < i; k++) {
          double was = before.get(i).hull(leaf).distance(before.get(k).hull(leaf));
          assertThat(now.get(i).distance(now.get(k)))
              .as("seed %d, round %d, motifs %d and %d", Seeds.seed(SEED), round, i, k)
              .isGreaterThanOrEqualTo(was / 2 - 0.05);
        }
      }
    }
    assertThat(bends).isGreaterThan(80);
  }

  private static final SourceSpan SPAN = SourceSpan.NONE;

  private static Hull dense(Hull drawn, Placement p) {
    List<Point> points = new ArrayList<>();
    Bend bend = Bend.of(drawn.bounds(), p.bendPerMm());
    for (int i = 0; i < drawn.points().size(); i++) {
      Point from = drawn.points().get(i);
      Point to = drawn.points().get((i + 1) % drawn.points().size());
      for (int k = 0; k < 200; k++) {
        points.add(p.map().affine().apply(bend.apply(from.towards(to, k / 200.0))));
      }
    }
    return Hull.of(points);
  }
}
