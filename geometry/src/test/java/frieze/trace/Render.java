package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;

/**
 * Draws polygons by the exact area that they cover of each pixel, in 256 shades.
 *
 * <p>Rings must not overlap, and must have the area on one side throughout. Shares no code with the
 * tracer.
 */
final class Render {
  final int width;
  final int height;

  /** The share of ink. */
  final double[] ink;

  private Render(int width, int height) {
    this.width = width;
    this.height = height;
    this.ink = new double[width * height];
  }

  /** Draws rings in millimetres, Y up, with their lower left corner a margin from the border. */
  static Render of(List<List<Point>> rings, int width, int height, UnaryOperator<Point> toPixels) {
    Render render = new Render(width, height);
    double[] cover = new double[(width + 1) * height];
    for (List<Point> ring : rings) {
      List<Point> px = new ArrayList<>();
      ring.forEach(p -> px.add(toPixels.apply(p)));
      for (int i = 0; i < px.size(); i++) {
        edge(cover, width, height, px.get(i), px.get((i + 1) % px.size()));
      }
    }
    for (int y = 0; y < height; y++) {
      double sum = 0;
      for (int x = 0; x < width; x++) {
        sum += cover[y * (width + 1) + x];
        render.ink[y * width + x] = Math.min(1, Math.abs(sum));
      }
    }
    return render;
  }

  /** Adds the derivative along x of the area to the right of an edge. */
  private static void edge(double[] cover, int w, int h, Point a, Point b) {
    if (a.y() == b.y()) {
      return;
    }
    double sign = a.y() < b.y() ? 1 : -1;
    Point low = sign > 0 ? a : b;
    Point high = sign > 0 ? b : a;
    double slope = (high.x() - low.x()) / (high.y() - low.y());
    for (int y = Math.max(0, (int) Math.floor(low.y())); y < Math.min(h, high.y()); y++) {
      double y0 = Math.max(low.y(), y);
      double y1 = Math.min(high.y(), y + 1);
      double x0 = low.x() + (y0 - low.y()) * slope;
      double x1 = low.x() + (y1 - low.y()) * slope;
      row(cover, y * (w + 1), Math.min(x0, x1), Math.max(x0, x1), sign * (y1 - y0));
    }
  }

  private static void row(double[] cover, int at, double x0, double x1, double area) {
    int first = (int) Math.floor(x0);
    int last = (int) Math.floor(x1);
    for (int x = first; x <= last; x++) {
      double from = Math.max(x0, x);
      double to = Math.min(x1, x + 1);
      double share = x1 > x0 ? (to - from) / (x1 - x0) : 1;
      double right = x + 1 - (from + to) / 2;
      cover[at + x] += area * share * right;
      cover[at + x + 1] += area * share * (1 - right);
    }
  }

  /** Black on white, in 256 shades. */
  GreyImage plain() {
    return shades(i -> 1 - ink[i]);
  }

  interface Shade {
    double at(int index);
  }

  GreyImage shades(Shade shade) {
    float[] values = new float[ink.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = (float) (Math.max(0, Math.min(255, Math.rint(shade.at(i) * 255))) / 255);
    }
    return new GreyImage(width, height, values);
  }

  /** Blurred by a Gaussian, by direct summation. */
  Render blurred(double sigma) {
    Render half = new Render(width, height);
    Render full = new Render(width, height);
    int reach = (int) Math.ceil(5 * sigma);
    double[] kernel = new double[2 * reach + 1];
    double sum = 0;
    for (int k = -reach; k <= reach; k++) {
      kernel[k + reach] = Math.exp(-k * k / (2 * sigma * sigma));
      sum += kernel[k + reach];
    }
    for (int i = 0; i < ink.length; i++) {
      for (int k = -reach; k <= reach; k++) {
        int x = i % width + k;
        half.ink[i] += x < 0 || x >= width ? 0 : ink[i + k] * kernel[k + reach] / sum;
      }
    }
    for (int i = 0; i < ink.length; i++) {
      for (int k = -reach; k <= reach; k++) {
        int y = i / width + k;
        full.ink[i] += y < 0 || y >= height ? 0 : half.ink[i + k * width] * kernel[k + reach] / sum;
      }
    }
    return full;
  }

  /** Grey on grey with noise; {@code noise} is a part of the contrast. */
  GreyImage noisy(double paper, double dark, double noise, SplittableRandom random) {
    return shades(i -> paper - (paper - dark) * (ink[i] + noise * random.nextGaussian()));
  }
}
