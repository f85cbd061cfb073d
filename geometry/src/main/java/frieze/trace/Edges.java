package frieze.trace;

import frieze.curve.Point;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Measures how blurred and how noisy a picture is. */
final class Edges {
  /** More samples than these tell nothing more. */
  private static final int SAMPLES = 200_000;

  /** The median of the absolute value of a normal variable of variance 1. */
  private static final double MEDIAN_OF_NORMAL = 0.6745;

  /**
   * The share of a normal distribution beyond one side, one pixel from its middle, within reason.
   */
  private static final double LEAST_SHARE = 0.55;

  private static final double MOST_SHARE = 0.99;

  private static final NormalDistribution NORMAL = new NormalDistribution();

  private Edges() {}

  /**
   * Estimates the noise as a part of the contrast. Source: the mask of Immerkaer, Fast noise
   * variance estimation, 1996, with a median in place of his mean, so that edges do not count.
   */
  static double noise(GreyImage image) {
    int w = image.width();
    int h = image.height();
    if (w < 3 || h < 3) {
      return 0;
    }
    int step = Math.max(1, (int) ((long) w * h / SAMPLES));
    double[] found = new double[w * h / step + 1];
    int count = 0;
    for (int i = 0; i < w * h; i += step) {
      int x = i % w;
      int y = i / w;
      if (x > 0 && y > 0 && x < w - 1 && y < h - 1) {
        found[count++] = Math.abs(mask(image, x, y)) / 6;
      }
    }
    Arrays.sort(found, 0, count);
    return count == 0 ? 0 : found[count / 2] / MEDIAN_OF_NORMAL;
  }

  private static double mask(GreyImage g, int x, int y) {
    double corners =
        g.at(x - 1, y - 1, 0)
            + g.at(x + 1, y - 1, 0)
            + g.at(x - 1, y + 1, 0)
            + g.at(x + 1, y + 1, 0);
    double sides = g.at(x, y - 1, 0) + g.at(x - 1, y, 0) + g.at(x + 1, y, 0) + g.at(x, y + 1, 0);
    return corners - 2 * sides + 4 * g.at(x, y, 0);
  }

  /**
   * Estimates the standard deviation of the blur across an outline, in pixels, from how much the
   * ink changes within one pixel to both sides of it: the median along the outline.
   */
  static double blurPx(GreyImage ink, List<Point> outline) {
    int n = outline.size();
    double[] shares = new double[n];
    int found = 0;
    for (int i = 0; i < n; i++) {
      Point along = outline.get((i + 2) % n).minus(outline.get(Math.floorMod(i - 2, n)));
      double length = along.norm();
      if (length > 0) {
        Point right = new Point(along.y(), -along.x()).times(1 / length);
        double inside = ink.between(outline.get(i).minus(right));
        double outside = ink.between(outline.get(i).plus(right));
        shares[found++] = 0.5 + (inside - outside) / 2;
      }
    }
    if (found == 0) {
      return 1;
    }
    Arrays.sort(shares, 0, found);
    double share = Math.max(LEAST_SHARE, Math.min(MOST_SHARE, shares[found / 2]));
    return 1 / NORMAL.inverseCumulativeProbability(share);
  }
}
