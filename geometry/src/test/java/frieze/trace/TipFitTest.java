package frieze.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Tips drawn by the area that they cover, blurred by direct summation, with noise. */
class TipFitTest {
  private static final double HALF_RAD = Math.toRadians(12);
  private static final int WIDTH = 90;
  private static final int HEIGHT = 50;

  /** Where the sides meet; neither between pixels nor in the middle of one. */
  private static final Point APEX = new Point(70.3, 25.2);

  /** With the area of a pixel. */
  private static final double SIGMA = Math.sqrt(1 + 1 / 12.0);

  private static final double NOISE = 0.05;

  /** A wedge that points to the right, of which a length is cut off square. */
  private static Render tip(double cutPx) {
    double tangent = Math.tan(HALF_RAD);
    List<Point> ring = new ArrayList<>();
    for (double at : new double[] {60, cutPx}) {
      ring.add(new Point(APEX.x() - at, APEX.y() - at * tangent));
    }
    ring.add(new Point(APEX.x() - cutPx, APEX.y() + cutPx * tangent));
    ring.add(new Point(APEX.x() - 60, APEX.y() + 60 * tangent));
    return drawn(ring);
  }

  private static Render drawn(List<Point> ring) {
    return Render.of(List.of(ring), WIDTH, HEIGHT, p -> new Point(p.x(), HEIGHT - p.y()));
  }

  private static GreyImage ink(Render render, SplittableRandom random) {
    GreyImage picture = render.blurred(1).noisy(1, 0, NOISE, random);
    float[] values = picture.values().clone();
    for (int i = 0; i < values.length; i++) {
      values[i] = 1 - values[i];
    }
    return new GreyImage(WIDTH, HEIGHT, values);
  }

  /** Starts half a pixel and 3 degrees away, and looks along 14 pixels of both sides. */
  private static TipFit.Fit fit(
      Render render, Function<Double, Point> below, SplittableRandom random) {
    TipFit fitter = new TipFit(ink(render, random), SIGMA, NOISE, new TipBudget());
    List<Point> seen = new ArrayList<>();
    for (double at = -16; at <= 16; at += 0.7) {
      Point p = below.apply(Math.abs(at));
      seen.add(at < 0 ? new Point(p.x(), 2 * APEX.y() - p.y()) : p);
    }
    double[] start = {
      APEX.x() + 0.5, APEX.y(), Math.PI - HALF_RAD - 0.05, Math.PI + HALF_RAD, 0, 0
    };
    // Ink on the left: along the upper side to the right would have it on the right.
    double[] turned = {start[0], start[1], start[3], start[2], 0, 0};
    TipFit.Fit found = fitter.fit(turned, seen).orElseThrow();
    assertThat(fitter.isGood(found)).as("%s", found).isTrue();
    return found;
  }

  private static Point below(double at) {
    return new Point(APEX.x() - at, APEX.y() - at * Math.tan(HALF_RAD));
  }

  /** The tips end 1.4 pixels wide, 3.3 before their sides would meet. */
  @Test
  void a_blunt_tip_gives_back_its_cut_in_spite_of_noise() {
    long seed = Seeds.seed(3);
    SplittableRandom random = new SplittableRandom(seed);
    double sum = 0;
    int sharp = 0;
    for (int i = 0; i < 4; i++) {
      TipShape shape = fit(tip(3.3), TipFitTest::below, random).shape();
      sharp += shape.ending() == TipShape.Ending.SHARP ? 1 : 0;
      double end = shape.tip().stream().mapToDouble(Point::x).max().orElseThrow();
      assertThat(end).as("seed %d", seed).isCloseTo(APEX.x() - 3.3, within(1.2));
      sum += end;
    }
    assertThat(sum / 4).as("seed %d", seed).isCloseTo(APEX.x() - 3.3, within(0.6));
    assertThat(sharp).as("seed %d", seed).isLessThanOrEqualTo(2);
  }

  @Test
  void a_sharp_tip_is_never_called_blunt() {
    long seed = Seeds.seed(4);
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 4; i++) {
      TipShape shape = fit(tip(0), TipFitTest::below, random).shape();
      assertThat(shape.ending()).as("seed %d", seed).isEqualTo(TipShape.Ending.SHARP);
      assertThat(shape.apex().distance(APEX)).as("seed %d", seed).isLessThan(1);
    }
  }
}
