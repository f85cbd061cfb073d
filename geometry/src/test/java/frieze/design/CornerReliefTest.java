package frieze.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CornerReliefTest {
  private static final double R = 3;
  private static final double EXACT = 1e-9;

  private static Region region(double... xy) {
    List<Point> points =
        Stream.iterate(0, i -> i < xy.length, i -> i + 2)
            .map(i -> new Point(xy[i], xy[i + 1]))
            .toList();
    return Region.of(List.of(Path.polyline(points, true)), FillRule.NONZERO, 1e-4);
  }

  private static final Region WINDOW = region(0, 0, 40, 0, 40, 20, 0, 20);

  private static CornerRelief.Place at(Region area, Work.Side side, Corners kind, Point p) {
    return CornerRelief.of(area, side, kind, R, 0).places().stream()
        .filter(place -> place.corner().distance(p) < EXACT)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void an_ear_goes_along_the_bisector_until_the_edge_touches_the_corner() {
    CornerRelief.Place place = at(WINDOW, Work.Side.INSIDE, Corners.EAR, new Point(40, 20));
    assertThat(place.from().distance(new Point(37, 17))).isLessThan(EXACT);
    double c = R / Math.sqrt(2);
    assertThat(place.to().distance(new Point(40 - c, 20 - c))).isLessThan(EXACT);
  }

  @Test
  void along_the_side_means_the_longer_one() {
    for (Point corner : List.of(new Point(0, 0), new Point(40, 20))) {
      CornerRelief.Place place = at(WINDOW, Work.Side.INSIDE, Corners.ALONG_SIDE, corner);
      double y = corner.y() == 0 ? R : 20 - R;
      assertThat(place.to().distance(new Point(corner.x(), y))).isLessThan(EXACT);
    }
  }

  /** The lap before the last leaves something on the walls of the relief as well. */
  @Test
  void what_is_left_on_the_wall_is_left_in_the_relief() {
    double left = 0.4;
    for (Corners kind : List.of(Corners.EAR, Corners.ALONG_SIDE)) {
      Region last = WINDOW;
      Region first = Region.EMPTY;
      for (CornerRelief.Place p : CornerRelief.of(WINDOW, Work.Side.INSIDE, kind, R, 0).places()) {
        last = last.union(p.swept(R, 1e-4));
      }
      for (CornerRelief.Place p :
          CornerRelief.of(WINDOW, Work.Side.INSIDE, kind, R, left).places()) {
        first = first.union(p.swept(R, 1e-4));
      }
      assertThat(first.minus(last).area()).as("%s", kind).isLessThan(0.001);
    }
  }

  /** Of an L, only the notch is an inside corner of a part that is kept. */
  @Test
  void outside_a_part_its_notches_are_relieved() {
    Region ell = region(0, 0, 40, 0, 40, 15, 20, 15, 20, 40, 0, 40);
    CornerRelief.Result result = CornerRelief.of(ell, Work.Side.OUTSIDE, Corners.EAR, R, 0);
    assertThat(result.places()).hasSize(1);
    CornerRelief.Place place = result.places().get(0);
    assertThat(place.corner()).isEqualTo(new Point(20, 15));
    double c = R / Math.sqrt(2);
    assertThat(place.to().distance(new Point(20 + c, 15 + c))).isLessThan(EXACT);
  }

  /**
   * Beyond both sides of a square corner an ear cuts two segments of its circle, each with its
   * chord a quarter circle wide: r^2 (pi/2 - 1) together. Along a side it is half a disc.
   */
  @Test
  void what_is_cut_beyond_the_corners_has_the_closed_form() {
    double flat = 1e-4;
    double ears = 0;
    double halves = 0;
    for (CornerRelief.Place p :
        CornerRelief.of(WINDOW, Work.Side.INSIDE, Corners.EAR, R, 0).places()) {
      ears += p.swept(R, flat).minus(WINDOW).area();
    }
    for (CornerRelief.Place p :
        CornerRelief.of(WINDOW, Work.Side.INSIDE, Corners.ALONG_SIDE, R, 0).places()) {
      halves += p.swept(R, flat).minus(WINDOW).area();
    }
    assertThat(ears).isCloseTo(4 * R * R * (Math.PI / 2 - 1), within(0.01));
    assertThat(halves).isCloseTo(4 * R * R * Math.PI / 2, within(0.01));
  }

  @Test
  void blunt_corners_have_none_and_sharp_ones_and_short_sides_are_told() {
    Region blunt = region(0, 0, 20, 0, 30, 8, 20, 16, 0, 16, -10, 8);
    assertThat(CornerRelief.of(blunt, Work.Side.INSIDE, Corners.EAR, 1, 0).leftRound()).isEmpty();
    Region wedge = region(0, 0, 40, 0, 0, 20);
    CornerRelief.Result result = CornerRelief.of(wedge, Work.Side.INSIDE, Corners.EAR, 1, 0);
    assertThat(result.places()).hasSize(2);
    assertThat(result.leftRound()).containsExactly(new Point(40, 0));
    Region slot = region(0, 0, 40, 0, 40, 5, 0, 5);
    assertThat(CornerRelief.of(slot, Work.Side.INSIDE, Corners.EAR, 5.5, 0).leftRound()).hasSize(4);
  }
}
