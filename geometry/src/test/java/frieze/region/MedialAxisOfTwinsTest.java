package frieze.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.curve.Shapes;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A symmetric leaf joined with its own mirror image, as a mirrored repeat lays it: the same leaf
 * but for rounding, so that vertices lie a few femtometres apart. Against the closed form of the
 * leaf's axis: the radius at height y is R - sqrt(c^2 + y^2).
 */
class MedialAxisOfTwinsTest {
  private static final double FLATTEN_MM = 0.001;
  private static final double MICROMETRE = 0.001;
  private static final double SAME_MM = 1e-6;
  private static final double RADIUS_MM = 10;
  private static final double HALF_APART_MM = 6;
  private static final double TIP_MM = 8;
  private static final int TURNS = 12;

  @Test
  void the_axis_runs_unbroken_from_tip_to_tip() {
    Region leaf =
        Region.of(List.of(Shapes.leaf(RADIUS_MM, 2 * HALF_APART_MM)), FillRule.NONZERO, FLATTEN_MM);
    int withTwins = 0;
    for (int turn = 0; turn < TURNS; turn++) {
      Affine place =
          Affine.rotation(2 * Math.PI * turn / TURNS)
              .then(Affine.translation(11.25 * (2 * turn + 1), 20.1 * (turn % 5)));
      Region both =
          leaf.transformed(place)
              .union(leaf.transformed(Affine.scaling(-1, 1).then(place)))
              .union(leaf.transformed(Affine.scaling(1, -1).then(place)));
      withTwins += hasTwins(both) ? 1 : 0;
      assertWhole(MedialAxis.of(both, 2 * FLATTEN_MM), place.inverse(), turn);
    }
    assertThat(withTwins).as("leaves with vertices that rounding has doubled").isPositive();
  }

  private static boolean hasTwins(Region region) {
    List<Point> p = region.rings().get(0).points();
    for (int i = 0; i < p.size(); i++) {
      if (p.get(i).distance(p.get((i + 1) % p.size())) < SAME_MM) {
        return true;
      }
    }
    return false;
  }

  private static void assertWhole(MedialAxis axis, Affine back, int turn) {
    assertThat(axis.branches()).as("turn %d", turn).hasSize(1);
    List<Point> centres = new ArrayList<>();
    for (Disc disc : axis.branches().get(0).discs()) {
      Point c = back.apply(disc.centre());
      double radius = RADIUS_MM - Math.hypot(HALF_APART_MM, c.y());
      assertThat(c.x()).as("turn %d, %s", turn, c).isCloseTo(0, within(MICROMETRE));
      assertThat(disc.radiusMm())
          .as("turn %d, %s", turn, c)
          .isCloseTo(radius, within(FLATTEN_MM + MICROMETRE));
      centres.add(c);
    }
    double ends = centres.get(0).y() - centres.get(centres.size() - 1).y();
    assertThat(Math.abs(ends)).as("turn %d", turn).isCloseTo(2 * TIP_MM, within(MICROMETRE));
  }
}
