package frieze.bridge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.bridge.KerfLimits.Kind;
import frieze.bridge.KerfLimits.Trouble;
import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import frieze.region.BoundaryDistance;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class KerfLimitsTest {
  private static final double KERF = 1.6;
  private static final Region SHEET = BridgesTest.box(0, 0, 60, 60);

  private static List<Trouble> find(Region opening) {
    return KerfLimits.find(SHEET, SHEET.minus(opening), KERF, 3);
  }

  @Test
  void wide_openings_far_apart_are_no_trouble() {
    assertThat(find(BridgesTest.box(10, 10, 30, 30).union(BridgesTest.disc(45, 45, 8)))).isEmpty();
  }

  /**
   * A slot 1 mm wide and 12 mm long between two windows: discs outside it, at its mouths, pass the
   * limit where the corner is half a kerf away.
   */
  @Test
  void a_narrow_slot_is_told_with_its_width_and_length() {
    Region opening =
        BridgesTest.box(10, 10, 20, 30)
            .union(BridgesTest.box(20, 19.5, 32, 20.5))
            .union(BridgesTest.box(32, 10, 42, 30));
    List<Trouble> found = find(opening);
    assertThat(found).extracting(Trouble::kind).containsExactly(Kind.SLOT_NARROW);
    assertThat(found.get(0).widthMm()).isCloseTo(1, within(1e-6));
    assertThat(found.get(0).place().y()).isCloseTo(20, within(1e-6));
    assertThat(found.get(0).lengthMm())
        .isCloseTo(12 + 2 * Math.sqrt(0.8 * 0.8 - 0.5 * 0.5), within(0.005));
  }

  /** A web 2 mm wide and 20 mm long between two windows; 3 mm are the least. */
  @Test
  void a_thin_web_is_told_with_its_width() {
    Region opening = BridgesTest.box(10, 10, 20, 30).union(BridgesTest.box(22, 10, 40, 30));
    List<Trouble> found = find(opening);
    assertThat(found).extracting(Trouble::kind).containsExactly(Kind.WEB_THIN);
    assertThat(found.get(0).widthMm()).isCloseTo(2, within(1e-6));
    assertThat(found.get(0).place().x()).isCloseTo(21, within(1e-6));
    assertThat(found.get(0).lengthMm()).isBetween(19.0, 24.0);
  }

  /** A point of angle a ends early by r (1 / sin(a/2) - 1): here a is 2 atan(1/4). */
  @Test
  void a_lost_point_ends_early_by_the_closed_form() {
    Region triangle =
        Region.ofRing(List.of(new Point(10, 10), new Point(20, 10), new Point(15, 30)));
    List<Trouble> found = find(triangle);
    assertThat(found).extracting(Trouble::kind).containsExactly(Kind.POINT_LOST);
    assertThat(found.get(0).place().distance(new Point(15, 30))).isLessThan(1e-6);
    double lost = 0.8 * (1 / Math.sin(Math.atan(0.25)) - 1);
    assertThat(found.get(0).lengthMm()).isCloseTo(lost, within(0.001));
  }

  @Test
  void an_opening_narrower_than_the_kerf_everywhere_is_lost() {
    List<Trouble> found = find(BridgesTest.box(10, 10, 40, 11.4));
    assertThat(found).extracting(Trouble::kind).containsExactly(Kind.ALL_LOST);
    assertThat(found.get(0).widthMm()).isCloseTo(1.4, within(1e-6));
    var told = KerfLimits.diagnostics(found, true, SourceSpan.NONE);
    assertThat(told.get(0).isError()).isTrue();
    assertThat(KerfLimits.diagnostics(found, false, SourceSpan.NONE).get(0).isError()).isFalse();
  }

  /** A grid of jets that fit, against random unions of bars: what none comes near is told. */
  @Test
  void what_no_jet_on_a_grid_comes_near_is_told() {
    SplittableRandom random = Seeds.random(20263);
    int lost = 0;
    int told = 0;
    for (int k = 0; k < 8; k++) {
      Region opening = Region.EMPTY;
      for (int i = 0; i < 4; i++) {
        double half = random.nextDouble(0.3, 1.8);
        double length = random.nextDouble(8, 14);
        Affine turn = Affine.rotation(random.nextDouble(Math.PI)).then(Affine.translation(30, 30));
        opening = opening.union(BridgesTest.box(-2, -half, length, half).transformed(turn));
      }
      String name = "case " + k + " of seed " + Seeds.seed(20263);
      List<Trouble> found = new ArrayList<>(find(opening));
      found.removeIf(t -> t.kind() == Kind.WEB_THIN);
      BoundaryDistance distance = BoundaryDistance.of(opening);
      List<Point> unreached = unreached(distance);
      for (Point p : unreached) {
        assertThat(found)
            .as("%s at %s", name, p)
            .anyMatch(t -> t.place().distance(p) <= t.lengthMm() + 1.5 * KERF);
      }
      for (Trouble t : found) {
        double width = 2 * distance.distance(t.place());
        assertThat(t.widthMm()).as(name).isCloseTo(width, within(1e-6)).isLessThan(KERF);
      }
      lost += unreached.size();
      told += found.size();
    }
    assertThat(lost).as("unreached places").isGreaterThan(100);
    assertThat(told).as("troubles").isGreaterThan(8);
  }

  private static List<Point> unreached(BoundaryDistance distance) {
    double step = 0.25;
    List<Point> jets = new ArrayList<>();
    List<Point> inside = new ArrayList<>();
    for (double x = 12; x < 48; x += step) {
      for (double y = 12; y < 48; y += step) {
        Point p = new Point(x, y);
        double d = distance.signed(p);
        if (d >= 0) {
          inside.add(p);
        }
        if (d >= KERF / 2) {
          jets.add(p);
        }
      }
    }
    inside.removeIf(p -> jets.stream().anyMatch(j -> j.distance(p) < KERF + step));
    return inside;
  }
}
