package frieze.artwork.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Widths against closed forms, and against all pairs of points of the boundary. */
class NarrowestTest {
  private static final double NEAR = 0.005;

  private static Region ring(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return Region.ofRing(points);
  }

  private static Region disc(double x, double y, double radius) {
    return Region.of(List.of(Path.circle(new Point(x, y), radius)), FillRule.NONZERO, 0.001);
  }

  private static double web(Region area) {
    return Narrowest.web(area).orElseThrow().widthMm();
  }

  private static double gap(Region area) {
    return Narrowest.gap(area).orElseThrow().widthMm();
  }

  @Test
  void a_strip_is_as_narrow_as_it_is_wide() {
    Region strip = ring(0, 0, 20, 0, 20, 3, 0, 3);
    assertThat(web(strip)).isCloseTo(3, within(NEAR));
    assertThat(Narrowest.gap(strip)).as("nothing faces its outside").isEmpty();
  }

  @Test
  void a_bar_between_two_discs_is_the_web_and_says_where() {
    Region dumbbell =
        disc(0, 0, 5).union(disc(20, 0, 5)).union(ring(0, -0.6, 20, -0.6, 20, 0.6, 0, 0.6));
    Narrow web = Narrowest.web(dumbbell).orElseThrow();
    assertThat(web.widthMm()).isCloseTo(1.2, within(NEAR));
    assertThat(web.from().distance(web.to())).isCloseTo(1.2, within(NEAR));
    assertThat(web.middle().y()).isCloseTo(0, within(NEAR));
    assertThat(web.middle().x()).isBetween(4.9, 15.1);
  }

  /** Radii 10 and 6, centres 2.5 apart: 10 - 6 - 2.5 at the thinnest; the hole is open by 12. */
  @Test
  void a_hole_off_centre_leaves_the_thinnest_wall_beside_it() {
    Region washer = disc(0, 0, 10).minus(disc(2.5, 0, 6));
    Narrow web = Narrowest.web(washer).orElseThrow();
    assertThat(web.widthMm()).isCloseTo(1.5, within(NEAR));
    assertThat(web.middle().x()).isCloseTo(9.25, within(0.1));
    assertThat(gap(washer)).isCloseTo(12, within(NEAR));
  }

  @Test
  void discs_side_by_side_have_a_gap_between_them() {
    Region pair = disc(0, 0, 3).union(disc(7.3, 0, 3));
    assertThat(gap(pair)).isCloseTo(1.3, within(NEAR));
    assertThat(web(pair)).isCloseTo(6, within(0.05));
  }

  @Test
  void the_smallest_part_counts_by_its_largest_disc() {
    assertThat(web(disc(0, 0, 8).union(disc(20, 0, 0.4)))).isCloseTo(0.8, within(NEAR));
  }

  /** Sides 3, 4, 5: the inscribed circle has a radius of 1. */
  @Test
  void corners_and_points_do_not_count() {
    assertThat(web(ring(0, 0, 4, 0, 0, 3))).isCloseTo(2, within(NEAR));
    Region notched = ring(0, 0, 20, 0, 20, 10, 12, 10, 10, 6, 8, 10, 0, 10);
    assertThat(Narrowest.gap(notched)).as("an open notch").isEmpty();
  }

  @Test
  void two_notches_that_face_each_other_leave_a_web() {
    Region waist = ring(0, 0, 5, 4.65, 10, 0, 10, 10, 5, 5.35, 0, 10);
    assertThat(web(waist)).isCloseTo(0.7, within(NEAR));
  }

  @Test
  void a_slot_is_a_gap() {
    Region slotted = ring(0, 0, 20, 0, 20, 10, 10.4, 10, 10.4, 3, 9.6, 3, 9.6, 10, 0, 10);
    assertThat(gap(slotted)).isCloseTo(0.8, within(NEAR));
  }

  /** Two circles of 100 mm meet 50 mm away: pointed, slim, 4.4 mm wide in the middle. */
  @Test
  void a_slim_pointed_leaf_is_not_as_narrow_as_its_tip() {
    double up = Math.sqrt(100 * 100 - 25 * 25);
    Region leaf = disc(0, up, 100).intersection(disc(0, -up, 100));
    assertThat(web(leaf)).isBetween(1.0, 2 * (100 - up) + NEAR);
  }

  /** A kilometre across, and as quick as a leaf; the discs are polygons within 0.001 of a unit. */
  @Test
  void a_drawing_of_a_kilometre_is_measured_as_well() {
    double km = 1e5;
    Region washer = disc(0, 0, 10).minus(disc(2.5, 0, 6)).transformed(Affine.scaling(km, km));
    Narrow web = Narrowest.web(washer).orElseThrow();
    assertThat(web.widthMm()).isCloseTo(1.5 * km, within(0.003 * km));
    assertThat(web.middle().x()).isCloseTo(9.25 * km, within(0.1 * km));
    assertThat(gap(washer)).isCloseTo(12 * km, within(0.003 * km));
  }

  @Test
  void nothing_has_no_web_and_no_gap() {
    assertThat(Narrowest.web(Region.EMPTY)).isEmpty();
    assertThat(Narrowest.gap(Region.EMPTY)).isEmpty();
  }

  /** Wavy discs with a hole: the least chord between facing walls, over all pairs of points. */
  @Test
  void all_pairs_of_points_find_the_same_widths() {
    for (int k = 3; k <= 7; k += 2) {
      Region wavy = wavy(k);
      assertThat(web(wavy)).as("web of " + k).isCloseTo(FacingPairs.web(wavy), within(0.02));
      assertThat(gap(wavy)).as("gap of " + k).isCloseTo(FacingPairs.gap(wavy), within(0.02));
    }
  }

  private static Region wavy(int waves) {
    List<Point> outer = new ArrayList<>();
    List<Point> inner = new ArrayList<>();
    for (int i = 0; i < 720; i++) {
      double a = Math.toRadians(i / 2.0);
      double r = 10 + 2.6 * Math.cos(waves * a);
      double h = 5 + 1.7 * Math.cos(waves * a + 1) + 0.5 * Math.sin(a);
      outer.add(new Point(r * Math.cos(a), r * Math.sin(a)));
      inner.add(new Point(h * Math.cos(a), h * Math.sin(a)));
    }
    return Region.ofRing(outer).minus(Region.ofRing(inner));
  }

  /** Every pair of points of the boundary whose walls face each other, nothing between them. */
  private static final class FacingPairs {
    private static final double STEP = 0.1;
    private static final double FACING = Math.cos(Math.toRadians(5));

    private final List<Point> at = new ArrayList<>();
    private final List<Point> inward = new ArrayList<>();

    private FacingPairs(Region area, int side) {
      area.rings()
          .forEach(
              ring -> {
                List<Point> p = ring.points();
                for (int i = 0; i < p.size(); i++) {
                  Point a = p.get(i);
                  Point along = p.get((i + 1) % p.size()).minus(a);
                  int n = Math.max(1, (int) Math.ceil(along.norm() / STEP));
                  Point left = new Point(-along.y(), along.x()).times(side / along.norm());
                  for (int k = 0; k < n; k++) {
                    at.add(a.plus(along.times((k + 0.5) / n)));
                    inward.add(left);
                  }
                }
              });
    }

    static double web(Region area) {
      return new FacingPairs(area, 1).least();
    }

    static double gap(Region area) {
      return new FacingPairs(area, -1).least();
    }

    private double least() {
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < at.size(); i++) {
        for (int k = i + 1; k < at.size(); k++) {
          Point across = at.get(k).minus(at.get(i));
          double width = across.norm();
          boolean facing =
              width < least
                  && across.dot(inward.get(i)) >= FACING * width
                  && -across.dot(inward.get(k)) >= FACING * width;
          if (facing && isEmpty(at.get(i).towards(at.get(k), 0.5), 0.99 * width / 2)) {
            least = width;
          }
        }
      }
      return least;
    }

    private boolean isEmpty(Point centre, double radius) {
      return at.stream().allMatch(p -> p.distance(centre) >= radius);
    }
  }

  @Test
  void a_tool_reaches_all_but_the_corners_of_a_square() {
    Region square = ring(0, 0, 10, 0, 10, 10, 0, 10);
    ToolReach reach = ToolReach.within(square, 4);
    assertThat(reach.left()).hasSize(4);
    // Each corner keeps a square of the radius less a quarter of the circle.
    assertThat(reach.leftMm2()).isCloseTo(4 * (4 - Math.PI), within(0.05));
    assertThat(ToolReach.around(square, 4).left()).isEmpty();
    assertThat(ToolReach.within(square, 11).leftMm2()).isCloseTo(100, within(0.01));
  }

  @Test
  void a_tool_too_wide_for_a_slot_leaves_it() {
    Region slotted = ring(0, 0, 20, 0, 20, 10, 10.4, 10, 10.4, 3, 9.6, 3, 9.6, 10, 0, 10);
    double[] left =
        Arrays.stream(new double[] {0.7, 1})
            .map(d -> ToolReach.around(slotted, d).leftMm2())
            .toArray();
    assertThat(left[0]).isLessThan(0.1);
    assertThat(left[1]).isGreaterThan(0.8 * 6.4);
  }
}
