package frieze.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Shapes;
import frieze.fixtures.Seeds;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BoundaryDistanceTest {
  @Test
  void the_distance_is_that_to_the_nearest_point_of_any_edge() {
    SplittableRandom random = Seeds.random(7401);
    for (int i = 0; i < 40; i++) {
      Path path = Path.polyline(Shapes.star(random, 3 + 5 * i, 50), true);
      Path hole = Path.circle(new Point(9, 4), 6);
      Region region = Region.of(List.of(path, hole), FillRule.EVEN_ODD, 0.01);
      BoundaryDistance index = BoundaryDistance.of(region);
      double[] edges = OffsetChecks.edges(region);
      for (int k = 0; k < 100; k++) {
        Point p = new Point(80 * random.nextDouble() - 40, 80 * random.nextDouble() - 40);
        BoundaryDistance.Nearest near = index.nearest(p);
        String as = "seed " + Seeds.seed(7401) + " at " + p;
        assertThat(near.distanceMm())
            .as(as)
            .isCloseTo(OffsetChecks.distance(p, edges), within(1e-12));
        assertThat(near.foot().distance(p)).as(as).isCloseTo(near.distanceMm(), within(1e-12));
        assertThat(OffsetChecks.distance(near.foot(), edges)).as(as).isLessThan(1e-12);
      }
    }
  }

  @Test
  void the_sign_tells_inside_from_outside() {
    Region ell = Region.of(List.of(Shapes.ell()), FillRule.NONZERO, 0.01);
    BoundaryDistance index = BoundaryDistance.of(ell);
    assertThat(index.signed(new Point(5, 5))).isEqualTo(5);
    assertThat(index.signed(new Point(-3, -4))).isEqualTo(-5);
    assertThat(index.signed(new Point(13, 14))).isEqualTo(-3);
    assertThat(index.distance(new Point(20, 0))).isEqualTo(0);
    assertThat(index.contains(new Point(20, 0))).isTrue();
  }

  @Test
  void an_empty_region_is_refused() {
    assertThatThrownBy(() -> BoundaryDistance.of(Region.EMPTY))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
