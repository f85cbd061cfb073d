package frieze.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Tips drawn by the area that they cover, blurred by direct summation, with noise. */
class TipProfileTest {
  private static final double HALF_RAD = Math.toRadians(12);
  private static final int WIDTH = 90;
  private static final int HEIGHT = 50;

  /** Where the sides meet; neither between pixels nor in the middle of one. */
  private static final Point APEX = new Point(70.3, 25.2);

  /** A drawing blurred by one pixel, and what is left of noise of 5 % after another blur by one. */
  private static final double NOISE = 0.05 / (2 * Math.sqrt(Math.PI));

  private static final double SIGMA = Math.sqrt(1 + 1 + 1 / 12.0);

  /** A wedge that points to the right, of which a length is cut off square. */
  private static Render tip(double cutPx) {
    double tangent = Math.tan(HALF_RAD);
    List<Point> ring = new ArrayList<>();
    for (double at : new double[] {60, cutPx}) {
      ring.add(new Point(APEX.x() - at, APEX.y() - at * tangent));
    }
    ring.add(new Point(APEX.x() - cutPx, APEX.y() + cutPx * tangent));
    ring.add(new Point(APEX.x() - 60, APEX.y() + 60 * tangent));
    return Render.of(List.of(ring), WIDTH, HEIGHT, p -> new Point(p.x(), HEIGHT - p.y()));
  }

  private static GreyImage inked(GreyImage picture) {
    float[] values = picture.values().clone();
    for (int i = 0; i < values.length; i++) {
      values[i] = 1 - values[i];
    }
    return Blur.gaussian(new GreyImage(WIDTH, HEIGHT, values), 1);
  }

  private static TipProfile.Fit fit(double cutPx, double offPx, SplittableRandom random) {
    GreyImage soft = inked(tip(cutPx).blurred(1).noisy(1, 0, 0.05, random));
    TipProfile profile = new TipProfile(soft, SIGMA, NOISE);
    Point met = APEX.plus(new Point(offPx, 0));
    TipProfile.Fit fit = profile.blunt(met, new Point(1, 0), new Wedge(HALF_RAD), 0.5);
    assertThat(profile.isGood(fit)).as("%s", fit).isTrue();
    return fit;
  }

  /** The tips end 1.4 pixels wide, 3.3 before their sides would meet, which is 0.3 off. */
  @Test
  void a_blunt_tip_gives_back_its_cut_in_spite_of_noise() {
    long seed = Seeds.seed(3);
    SplittableRandom random = new SplittableRandom(seed);
    double sum = 0;
    for (int i = 0; i < 20; i++) {
      TipProfile.Fit fit = fit(3.3, 0.3, random);
      double end = SIGMA * (fit.apex() + Math.sqrt(fit.shape())) - 0.3;
      assertThat(end).as("seed %d", seed).isCloseTo(3.3, within(0.8));
      assertThat(fit.shape()).as("seed %d", seed).isGreaterThan(3 * fit.deviation());
      sum += end;
    }
    assertThat(sum / 20).as("seed %d", seed).isCloseTo(3.3, within(0.2));
  }

  @Test
  void a_sharp_tip_is_seldom_called_blunt() {
    long seed = Seeds.seed(4);
    SplittableRandom random = new SplittableRandom(seed);
    int blunt = 0;
    for (int i = 0; i < 20; i++) {
      TipProfile.Fit fit = fit(0, -0.3, random);
      blunt += fit.shape() > 2 * fit.deviation() ? 1 : 0;
    }
    assertThat(blunt).as("seed %d", seed).isLessThanOrEqualTo(3);
  }

  /** Without noise a tip of another angle than was thought is found too. */
  @Test
  void the_angle_of_a_sharp_tip_is_read_from_its_ink() {
    GreyImage soft = inked(tip(0).blurred(1).plain());
    TipProfile profile = new TipProfile(soft, SIGMA, 0.005);
    Wedge wrong = new Wedge(HALF_RAD + 0.07);
    TipProfile.Fit fit = profile.sharp(APEX.minus(new Point(1, 0)), new Point(1, 0), wrong, SIGMA);
    assertThat(profile.isGood(fit)).isTrue();
    assertThat(fit.shape()).isCloseTo(Math.tan(HALF_RAD), within(0.01));
    assertThat(fit.apex() * SIGMA).isCloseTo(-1, within(0.15));
  }
}
