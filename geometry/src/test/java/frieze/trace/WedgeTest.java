package frieze.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.region.Region;
import frieze.trace.Motifs.Motif;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Blurred corners against closed forms, a plain sum over the plane, and traced pictures. */
class WedgeTest {
  /** The blurred quadrant is a product of two normal distributions: each is the root of a half. */
  @Test
  void a_right_angle_is_seen_where_the_product_of_two_normals_is_a_half() {
    double quantile = 0.54495; // of the normal distribution at 0.70711
    assertThat(new Wedge(Math.PI / 4).sharpSeenAt())
        .isCloseTo(quantile * Math.sqrt(2), within(1e-3));
  }

  @Test
  void a_cut_through_a_very_wide_wedge_is_a_straight_edge() {
    assertThat(new Wedge(Math.toRadians(89.9)).cutFor(1.5)).isCloseTo(1.5, within(0.01));
  }

  @Test
  void a_blunt_tip_gives_back_its_cut() {
    double half = Math.toRadians(20);
    assertThat(new Wedge(half).cutFor(seenAt(half, 2.2))).isCloseTo(2.2, within(0.02));
    assertThat(new Wedge(half).sharpSeenAt()).isCloseTo(seenAt(half, 0), within(0.02));
  }

  /** By a sum over small squares of the plane. */
  private static double seenAt(double half, double cut) {
    double low = 0;
    double high = 12;
    while (high - low > 1e-4) {
      double middle = (low + high) / 2;
      boolean outside = ink(middle, half, cut) < 0.5;
      low = outside ? middle : low;
      high = outside ? high : middle;
    }
    return low;
  }

  private static double ink(double at, double half, double cut) {
    double step = 0.05;
    double sum = 0;
    for (double x = Math.max(cut, at - 6) + step / 2; x < at + 6; x += step) {
      for (double y = step / 2; y < Math.min(6, x * Math.tan(half)); y += step) {
        double part = Math.min(1, (x * Math.tan(half) - y) / step + 0.5);
        sum += 2 * part * Math.exp(-((x - at) * (x - at) + y * y) / 2);
      }
    }
    return sum * step * step / (2 * Math.PI);
  }

  /** A tip of 33 degrees, cut off askew 0.25 mm wide: two corners 2.5 pixels apart. */
  @Test
  void two_corners_of_a_blunt_tip_closer_than_three_pixels_are_both_found() {
    Region blunt =
        Region.ofRing(
            List.of(new Point(0, 0), new Point(20, 1.2), new Point(20.06, 1.43), new Point(3, 7)));
    Motif motif = Motif.of("blunt", blunt);
    for (Degraded how : List.of(Degraded.CLEAN, Degraded.SHADOWED)) {
      Trial trial = how.trial(motif);
      assertThat(trial.worstCorner).as(how + " " + trial).isLessThanOrEqualTo(0.1);
      assertThat(trial.agreement.worst()).as(how + " " + trial).isLessThanOrEqualTo(0.1);
    }
  }
}
