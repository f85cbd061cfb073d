package frieze.dryrun.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.fixtures.Seeds;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BoxDistanceTest {
  private static final BoxDistance BOX = new BoxDistance(2, 3, 7, 5);

  private static double toSegment(BoxDistance box, double x0, double y0, double x1, double y1) {
    return box.to(new Motion.Straight(new Position(x0, y0, 4), new Position(x1, y1, -2)));
  }

  /** An arc about the origin of the plane, from one angle over another. */
  private static Motion arc(double radius, double startRad, double sweepRad) {
    double end = startRad + sweepRad;
    return new Motion.Turn(
        new Position(radius * Math.cos(startRad), radius * Math.sin(startRad), 0),
        new Position(radius * Math.cos(end), radius * Math.sin(end), 0),
        Plane.XY,
        0,
        0,
        sweepRad);
  }

  private static double toPoint(BoxDistance box, double x, double y) {
    double nearX = Math.min(box.maxX(), Math.max(box.minX(), x));
    double nearY = Math.min(box.maxY(), Math.max(box.minY(), y));
    return Math.sqrt((x - nearX) * (x - nearX) + (y - nearY) * (y - nearY));
  }

  /**
   * The distance to something convex has one valley along a line: it is closed in from both ends.
   */
  private static double byValley(BoxDistance box, double[] line) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < 80; i++) {
      double a = low + (high - low) / 3;
      double b = high - (high - low) / 3;
      if (onLine(box, line, a) <= onLine(box, line, b)) {
        high = b;
      } else {
        low = a;
      }
    }
    return onLine(box, line, (low + high) / 2);
  }

  private static double onLine(BoxDistance box, double[] l, double t) {
    return toPoint(box, l[0] + (l[2] - l[0]) * t, l[1] + (l[3] - l[1]) * t);
  }

  @Test
  void a_segment_is_as_far_as_the_lowest_place_of_its_valley() {
    SplittableRandom random = Seeds.random(501);
    for (int i = 0; i < 300; i++) {
      boolean whole = i % 2 == 0;
      double[] line = new double[4];
      for (int k = 0; k < line.length; k++) {
        line[k] = whole ? random.nextInt(11) : random.nextDouble(0, 10);
      }
      assertThat(toSegment(BOX, line[0], line[1], line[2], line[3]))
          .as("%s, seed %d", java.util.Arrays.toString(line), Seeds.seed(501))
          .isCloseTo(byValley(BOX, line), within(1e-7));
    }
  }

  @Test
  void a_segment_without_length_is_a_point() {
    assertThat(toSegment(BOX, 10, 9, 10, 9)).isEqualTo(5);
    assertThat(toSegment(BOX, -1, 4, -1, 4)).isEqualTo(3);
    assertThat(toSegment(BOX, 3, 4, 3, 4)).isEqualTo(0);
    assertThat(toSegment(BOX, 2, 3, 2, 3)).isEqualTo(0);
  }

  /**
   * The sagitta of a chord is r (1 - cos(angle / 2)); an arc just short of the allowance is one.
   */
  @Test
  void an_arc_has_no_more_and_no_fewer_chords_than_its_error_asks_for() {
    double radius = 100;
    double step = 2 * Math.acos(1 - BoxDistance.CHORD_ERROR_MM / radius);
    BoxDistance ahead = new BoxDistance(103, -1, 110, 1);
    double one = 0.999 * step;
    double sagitta = radius * (1 - Math.cos(one / 2));
    assertThat(ahead.to(arc(radius, -one / 2, one))).isCloseTo(3 + sagitta, within(1e-9));
    assertThat(ahead.to(arc(radius, one / 2, -one))).isCloseTo(3 + sagitta, within(1e-9));
    // Two chords meet on the middle, which then counts in full.
    double two = 1.001 * step;
    assertThat(ahead.to(arc(radius, -two / 2, two))).isCloseTo(3, within(1e-9));
  }

  @Test
  void the_end_of_an_arc_counts() {
    BoxDistance left = new BoxDistance(-30, 2, -14, 3);
    // Half a turn to (-10, 0): 4 mm and 2 mm beside the corner.
    assertThat(left.to(arc(10, 0, -Math.PI))).isCloseTo(Math.sqrt(20), within(1e-9));
  }

  @Test
  void a_full_circle_is_as_far_as_its_centre_less_its_radius() {
    SplittableRandom random = Seeds.random(502);
    for (int i = 0; i < 60; i++) {
      double radius = random.nextDouble(0.02, 60);
      double x = random.nextDouble(-80, 80);
      double y = random.nextDouble(-80, 80);
      BoxDistance box = new BoxDistance(x, y, x + 3, y + 1);
      double near = toPoint(box, 0, 0);
      double far =
          Math.hypot(
              Math.max(Math.abs(x), Math.abs(x + 3)), Math.max(Math.abs(y), Math.abs(y + 1)));
      double expected = Math.max(0, Math.max(near - radius, radius - far));
      assertThat(box.to(arc(radius, random.nextDouble(6), 2 * Math.PI)))
          .as("r %s at %s %s, seed %d", radius, x, y, Seeds.seed(502))
          .isCloseTo(expected, within(BoxDistance.CHORD_ERROR_MM + 1e-9));
    }
  }

  @Test
  void a_speck_of_an_arc_is_still_somewhere() {
    assertThat(BOX.to(arc(0.001, 0, 1))).isCloseTo(Math.sqrt(13), within(0.01));
  }
}
