package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Measures how blurred and how noisy a picture is. */
final class Edges {
  /** More samples than these tell nothing more. */
  private static final int SAMPLES = 200_000;

  /** The median of the absolute value of a normal variable of variance 1. */
  private static final double MEDIAN_OF_NORMAL = 0.6745;

  /** The logistic curve nearest to the normal distribution. */
  private static final double LOGISTIC = 1.702;

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

  /** Estimates the standard deviation of the blur across an outline, in pixels. */
  static double blurPx(GreyImage ink, List<Point> outline) {
    int n = outline.size();
    List<Double> found = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point along = outline.get((i + 2) % n).minus(outline.get(Math.floorMod(i - 2, n)));
      double length = along.norm();
      if (length > 0) {
        Point right = new Point(along.y(), -along.x()).times(1 / length);
        double inside = value(ink, outline.get(i).minus(right));
        double outside = value(ink, outline.get(i).plus(right));
        double p = Math.max(0.55, Math.min(0.99, 0.5 + (inside - outside) / 2));
        found.add(LOGISTIC / StrictMath.log(p / (1 - p)));
      }
    }
    found.sort(Double::compare);
    return found.isEmpty() ? 1 : found.get(found.size() / 2);
  }

  private static double value(GreyImage g, Point p) {
    double x = p.x() - 0.5;
    double y = g.height() - p.y() - 0.5;
    int x0 = (int) Math.floor(x);
    int y0 = (int) Math.floor(y);
    double fx = x - x0;
    double fy = y - y0;
    double top = g.at(x0, y0, 0) * (1 - fx) + g.at(x0 + 1, y0, 0) * fx;
    double bottom = g.at(x0, y0 + 1, 0) * (1 - fx) + g.at(x0 + 1, y0 + 1, 0) * fx;
    return top * (1 - fy) + bottom * fy;
  }
}
