package frieze.dryrun.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NearLinesTest {
  private static double[] line(SplittableRandom random, double side) {
    double x = random.nextDouble(-20, 20);
    double y = random.nextDouble(-20, 20);
    return new double[] {
      x, y, x + random.nextDouble(-side, side), y + random.nextDouble(-side, side)
    };
  }

  /** From the foot of the perpendicular, or else from the nearer end. */
  private static double distance(double[] l, double x, double y) {
    double length = Math.hypot(l[2] - l[0], l[3] - l[1]);
    double ends = Math.min(Math.hypot(x - l[0], y - l[1]), Math.hypot(x - l[2], y - l[3]));
    if (length == 0) {
      return ends;
    }
    double ux = (l[2] - l[0]) / length;
    double uy = (l[3] - l[1]) / length;
    double along = (x - l[0]) * ux + (y - l[1]) * uy;
    boolean beside = along > 0 && along < length;
    return beside ? Math.abs((x - l[0]) * uy - (y - l[1]) * ux) : ends;
  }

  @Test
  void the_nearest_line_is_the_one_that_trying_all_of_them_finds() {
    SplittableRandom random = Seeds.random(504);
    for (int i = 0; i < 20; i++) {
      double square = random.nextDouble(0.3, 4);
      List<double[]> lines = new ArrayList<>();
      for (int k = 0; k < 12; k++) {
        lines.add(line(random, k % 3 == 0 ? 0.2 : 30));
      }
      NearLines near = new NearLines(lines, square);
      for (int k = 0; k < 20; k++) {
        double x = random.nextDouble(-25, 25);
        double y = random.nextDouble(-25, 25);
        double radius = random.nextDouble(0.1, 5);
        int best = -1;
        double least = radius;
        for (int n = 0; n < lines.size(); n++) {
          double d = distance(lines.get(n), x, y);
          if (d < least) {
            least = d;
            best = n;
          }
        }
        NearLines.Nearest found = near.nearest(x, y, radius);
        assertThat(found.index()).as("seed %d", Seeds.seed(504)).isEqualTo(best);
        assertThat(found.distanceMm()).isCloseTo(least, within(1e-9));
      }
    }
  }

  @Test
  void a_line_at_the_radius_is_not_within_it() {
    NearLines near = new NearLines(List.of(new double[] {0, 0, 10, 0}), 0.5);
    assertThat(near.nearest(5, 2, 2).index()).isEqualTo(-1);
    assertThat(near.nearest(5, 2, 2).distanceMm()).isEqualTo(2);
    assertThat(near.nearest(5, 2, 2.001).index()).isEqualTo(0);
    assertThat(near.nearest(5, 2, 2.001).distanceMm()).isEqualTo(2);
  }

  @Test
  void a_line_without_length_is_a_point() {
    double[] point = {3, 4, 3, 4};
    assertThat(NearLines.distance(point, 0, 0)).isEqualTo(5);
    assertThat(new NearLines(List.of(point), 1).nearest(3, 5, 2)).isEqualTo(nearest(1, 0));
  }

  /** Every place within the radius of a long line in small squares is seen, at any slope. */
  @Test
  void no_place_beside_a_long_line_is_missed() {
    for (int degrees = 0; degrees < 180; degrees += 17) {
      double c = Math.cos(Math.toRadians(degrees));
      double s = Math.sin(Math.toRadians(degrees));
      NearLines near = new NearLines(List.of(new double[] {0, 0, 50 * c, 50 * s}), 0.1);
      for (double at = 0.05; at < 50; at += 1.7) {
        double x = at * c - 0.099 * s;
        double y = at * s + 0.099 * c;
        assertThat(near.nearest(x, y, 0.1).distanceMm()).isCloseTo(0.099, within(1e-9));
      }
    }
  }

  private static NearLines.Nearest nearest(double distanceMm, int index) {
    return new NearLines.Nearest(distanceMm, index);
  }
}
