package frieze.bridge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BridgesTest {
  private static final BridgeRules RULES = BridgeRules.usual(3);

  static Region box(double x0, double y0, double x1, double y1) {
    return Region.ofRing(
        List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
  }

  static Region disc(double x, double y, double radius) {
    return Region.of(List.of(Path.circle(new Point(x, y), radius)), FillRule.NONZERO, 0.01);
  }

  /** A square plate with a square window, and a square island in the middle of it. */
  private static Region plate(double window, double island) {
    return box(-75, -75, 75, 75)
        .minus(box(-window, -window, window, window))
        .union(box(-island, -island, island, island));
  }

  @Test
  void usual_bridges_are_twice_the_thickness_and_at_least_5_mm() {
    assertThat(BridgeRules.usual(3).widthMm()).isEqualTo(6);
    assertThat(BridgeRules.usual(1.5).widthMm()).isEqualTo(5);
  }

  @Test
  void a_plate_without_islands_stays_as_it_is() {
    Region plate = box(0, 0, 100, 100).minus(disc(50, 50, 20));
    Bridged result = Bridges.tie(plate, RULES);
    assertThat(result.material()).isEqualTo(plate);
    assertThat(result.bridges()).isEmpty();
    assertThat(result.isOnePiece()).isTrue();
  }

  @Test
  void a_small_island_gets_one_bridge_and_a_large_one_two_on_opposite_sides() {
    Bridged small = Bridges.tie(plate(12, 6), RULES);
    assertThat(small.bridges()).hasSize(1);
    Bridged large = Bridges.tie(plate(50, 40), RULES);
    assertThat(large.bridges()).hasSize(2);
    Point a = large.bridges().get(0).atIsland();
    Point b = large.bridges().get(1).atIsland();
    assertThat(a.dot(b)).isLessThanOrEqualTo(0);
    assertThat(small.pieces() + large.pieces()).isEqualTo(2);
    assertThat(small.found()).isEmpty();
  }

  /** Two parallel edges 6 mm apart: each bridge adds width times gap, 36 mm2. */
  @Test
  void a_bridge_adds_its_width_times_the_gap() {
    Region plate = plate(12, 6);
    Bridged tied = Bridges.tie(plate, RULES);
    assertThat(tied.bridges().get(0).lengthMm()).isCloseTo(6, within(1e-9));
    assertThat(tied.material().area() - plate.area()).isCloseTo(36, within(1e-6));
  }

  /**
   * A square of 12 mm at one bridge of 6 by 6 mm, 3 mm thick: its modulus is 9 mm3, the longest arm
   * goes from the bridge's far end to an opposite corner.
   */
  @Test
  void the_push_follows_from_the_section_modulus() {
    Bridged.Held held = Bridges.tie(plate(12, 6), RULES).held().get(0);
    Point far = held.bridges().get(0).atHold();
    double arm = 0;
    for (int k = 0; k < 4; k++) {
      Point corner = new Point(k < 2 ? -6 : 6, k % 2 == 0 ? -6 : 6);
      arm = Math.max(arm, far.distance(corner));
    }
    assertThat(held.loadN()).isCloseTo(0.85 * 235 * 9 / arm, within(0.01));
  }

  @Test
  void more_is_asked_for_and_more_bridges_or_a_warning_come() {
    Bridged more = Bridges.tie(plate(12, 6), RULES.withSideLoad(150));
    assertThat(more.bridges()).hasSize(2);
    Bridged weak = Bridges.tie(plate(50, 40), RULES.withSideLoad(5000));
    assertThat(weak.bridges()).hasSize(3);
    assertThat(weak.found()).extracting(d -> d.code()).containsExactly(BridgeCode.WEAK_HOLD);
  }

  @Test
  void a_vein_near_by_is_followed() {
    Path vein = Path.polyline(List.of(new Point(0, 0), new Point(3, 7), new Point(4, 14)), false);
    Bridged tied = Bridges.tie(plate(12, 6), List.of(vein), RULES, SourceSpan.NONE);
    Bridge bridge = tied.bridges().get(0);
    assertThat(bridge.alongVein()).isTrue();
    for (Point p : bridge.line()) {
      double x = p.y() < 7 ? p.y() * 3 / 7 : 3 + (p.y() - 7) / 7;
      assertThat(p.x()).isCloseTo(x, within(0.02));
    }
    assertThat(tied.pieces()).isEqualTo(1);
  }

  @Test
  void an_island_within_an_island_hangs_on_it() {
    Region nested =
        box(-75, -75, 75, 75)
            .minus(disc(0, 0, 60))
            .union(disc(0, 0, 50))
            .minus(disc(0, 0, 25))
            .union(disc(0, 0, 15));
    Bridged tied = Bridges.tie(nested, RULES);
    assertThat(Pieces.count(nested)).isEqualTo(3);
    assertThat(tied.pieces()).isEqualTo(1);
    assertThat(tied.held()).hasSize(2);
  }

  @Test
  void an_island_smaller_than_a_bridge_is_refused() {
    Bridged tied = Bridges.tie(plate(12, 2), RULES);
    assertThat(tied.found()).extracting(d -> d.code()).containsExactly(BridgeCode.ISLAND_TOO_SMALL);
    assertThat(tied.isOnePiece()).isFalse();
  }

  @Test
  void a_sliver_that_no_bridge_can_grip_is_refused() {
    Region sliver = box(0, 0, 100, 100).minus(box(10, 40, 90, 60)).union(box(15, 49.7, 85, 50.3));
    Bridged tied = Bridges.tie(sliver, RULES);
    assertThat(tied.found()).extracting(d -> d.code()).containsExactly(BridgeCode.NO_PLACE);
    assertThat(tied.isOnePiece()).isFalse();
  }

  @Test
  void mirrored_and_repeated_motifs_have_the_same_bridges() {
    Region opening = disc(0, 0, 20).minus(disc(3, 2, 12));
    Affine first = Affine.translation(40, 50);
    Affine mirrored = Affine.scaling(-1, 1).then(Affine.translation(160, 50));
    var cutting = new RepeatedBridges.Cutting("leaf", opening, List.of(), List.of(first, mirrored));
    Bridged tied =
        RepeatedBridges.tie(box(0, 0, 200, 100), List.of(cutting), RULES, SourceSpan.NONE);
    assertThat(tied.pieces()).isEqualTo(1);
    assertThat(tied.held()).hasSize(2);
    List<Bridge> left = tied.held().get(0).bridges();
    List<Bridge> right = tied.held().get(1).bridges();
    assertThat(left).hasSameSizeAs(right).isNotEmpty();
    for (int i = 0; i < left.size(); i++) {
      Point l = left.get(i).atIsland();
      assertThat(right.get(i).atIsland().distance(new Point(200 - l.x(), l.y()))).isLessThan(1e-9);
    }
    Region half = tied.material().intersection(box(0, 0, 100, 100));
    Region other = tied.material().intersection(box(100, 0, 200, 100));
    Region turned = other.transformed(new Affine(-1, 0, 0, 1, 200, 0));
    assertThat(half.minus(turned).area() + turned.minus(half).area()).isLessThan(1e-6);
  }

  /** Random rings with a vein each, turned, mirrored and moved; each is held in the same way. */
  @Test
  void bridges_follow_a_vein_and_move_with_their_motif() {
    SplittableRandom random = Seeds.random(20265);
    int mirrored = 0;
    for (int k = 0; k < 12; k++) {
      String name = "case " + k + " of seed " + Seeds.seed(20265);
      double angle = random.nextDouble(-0.4, 0.4);
      Region opening =
          disc(0, 0, 24).minus(disc(random.nextDouble(-3, 3), random.nextDouble(-3, 3), 14));
      Point reach = new Point(StrictMath.cos(angle), StrictMath.sin(angle)).times(26);
      Path vein = Path.polyline(List.of(reach.times(-1), reach), false);
      List<Affine> maps = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        boolean mirror = random.nextBoolean();
        mirrored += mirror ? 1 : 0;
        maps.add(
            Affine.scaling(mirror ? -1 : 1, 1)
                .then(Affine.rotation(random.nextDouble(2 * Math.PI)))
                .then(Affine.translation(40 + 60 * i, 40)));
      }
      var cutting = new RepeatedBridges.Cutting("leaf", opening, List.of(vein), maps);
      Bridged tied =
          RepeatedBridges.tie(box(0, 0, 200, 80), List.of(cutting), RULES, SourceSpan.NONE);
      assertThat(tied.pieces()).as(name).isEqualTo(1);
      assertThat(tied.held()).as(name).hasSize(3);
      assertThat(tied.bridges()).as(name).hasSize(6).allMatch(Bridge::alongVein);
      for (int i = 0; i < 3; i++) {
        for (int n = 0; n < 2; n++) {
          Bridge bridge = tied.held().get(i).bridges().get(n);
          Bridge first = tied.held().get(0).bridges().get(n);
          Point own = maps.get(i).inverse().apply(bridge.atHold());
          assertThat(own.cross(reach) / 26).as(name).isCloseTo(0, within(1e-9));
          assertThat(own.distance(maps.get(0).inverse().apply(first.atHold())))
              .as(name)
              .isLessThan(1e-9);
        }
      }
    }
    assertThat(mirrored).isBetween(6, 30);
  }

  @Test
  void openings_that_touch_the_outline_or_each_other_are_told() {
    Region opening = disc(0, 0, 20);
    var cutting =
        new RepeatedBridges.Cutting(
            "round",
            opening,
            List.of(),
            List.of(
                Affine.translation(15, 50),
                Affine.translation(80, 50),
                Affine.translation(110, 50)));
    Bridged tied =
        RepeatedBridges.tie(box(0, 0, 200, 100), List.of(cutting), RULES, SourceSpan.NONE);
    assertThat(tied.found())
        .extracting(d -> d.code())
        .containsExactlyInAnyOrder(BridgeCode.TOUCHES_OUTLINE, BridgeCode.OPENINGS_OVERLAP);
  }

  /** A comb of one piece whose level edges are level to rounding only, as turned drawings have. */
  @Test
  void pieces_are_counted_rightly_where_heights_differ_by_rounding() {
    SplittableRandom random = Seeds.random(20264);
    for (int k = 0; k < 50; k++) {
      List<Point> comb = new ArrayList<>();
      for (int tooth = 0; tooth < 6; tooth++) {
        double x = 10.0 * tooth;
        comb.add(new Point(x, 30 + random.nextInt(-3, 4) * 1.8e-15));
        comb.add(new Point(x + 5, 30 + random.nextInt(-3, 4) * 1.8e-15));
        comb.add(new Point(x + 5, 10 + random.nextInt(-3, 4) * 1.8e-15));
        comb.add(new Point(x + 10, 10 + random.nextInt(-3, 4) * 1.8e-15));
      }
      comb.add(new Point(60, 0));
      comb.add(new Point(0, 0));
      assertThat(Pieces.count(Region.ofRing(comb)))
          .as("case %d of seed %d", k, Seeds.seed(20264))
          .isEqualTo(1);
    }
  }

  /** Two squares, one ring: they share half a nanometre of an edge, or a micrometre of it. */
  @Test
  void a_contact_by_rounding_holds_nothing_together() {
    assertThat(Pieces.count(squaresThatShare(5e-7))).isEqualTo(2);
    assertThat(Pieces.count(squaresThatShare(1e-3))).isEqualTo(1);
  }

  private static Region squaresThatShare(double mm) {
    return Region.ofRing(
        List.of(
            new Point(0, 0),
            new Point(10, 0),
            new Point(10, 10),
            new Point(20 - mm, 10),
            new Point(20 - mm, 20),
            new Point(10 - mm, 20),
            new Point(10 - mm, 10),
            new Point(0, 10)));
  }

  @Test
  void pieces_are_counted_as_the_polygon_library_does() {
    SplittableRandom random = Seeds.random(20261);
    for (int k = 0; k < 20; k++) {
      Region region = Region.EMPTY;
      for (int i = 0; i < 14; i++) {
        double x = random.nextDouble(100);
        double y = random.nextDouble(100);
        Region one = disc(x, y, random.nextDouble(3, 14));
        region = random.nextInt(3) == 0 ? region.minus(one) : region.union(one);
      }
      assertThat(Pieces.count(region))
          .as("case %d of seed %d", k, Seeds.seed(20261))
          .isEqualTo(region.parts().size());
    }
    Region corner = box(0, 0, 10, 10).union(box(10, 10, 20, 20));
    assertThat(Pieces.count(corner)).isEqualTo(2);
    assertThat(Pieces.count(Region.EMPTY)).isZero();
  }

  @Test
  void random_panels_become_one_piece_or_say_why_not() {
    SplittableRandom random = Seeds.random(20262);
    int islands = 0;
    int refused = 0;
    for (int k = 0; k < 10; k++) {
      String name = "case " + k + " of seed " + Seeds.seed(20262);
      Region material = box(0, 0, 150, 150).minus(disc(75, 75, 68));
      for (int i = 0; i < 5; i++) {
        double x = 40 + random.nextDouble(70);
        double y = 40 + random.nextDouble(70);
        material = material.union(disc(x, y, random.nextDouble(4, 20)));
      }
      Bridged tied = Bridges.tie(material, RULES);
      long lost = tied.found().stream().filter(d -> d.isError()).count();
      assertThat(tied.pieces()).as(name).isEqualTo(1 + (int) lost);
      assertThat(material.minus(tied.material()).area()).as(name).isLessThan(1e-9);
      assertThat(tied.held().size() + lost).as(name).isEqualTo(Pieces.count(material) - 1);
      islands += tied.held().size();
      refused += (int) lost;
    }
    assertThat(islands).as("tied islands").isGreaterThan(20);
    assertThat(refused).as("refused islands").isLessThan(5);
  }
}
