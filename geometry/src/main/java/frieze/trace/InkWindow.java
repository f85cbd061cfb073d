package frieze.trace;

import frieze.curve.Point;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Draws a polygon as a camera sees it, within a window of pixels: by the area that it covers of
 * each, then blurred.
 *
 * <p><i>Guarantees:</i> the areas are exact where the polygon stays within the window from left to
 * right, and elsewhere but for pixels along its left and right border.
 */
final class InkWindow {
  /** A blur below this is none. */
  private static final double LEAST_BLUR_PX = 0.2;

  private final int x0;
  private final int y0;
  private final int width;
  private final int height;
  private final double[] kernel;
  private final double[] cover;
  private final double[] drawn;
  private final double[] half;
  private final int[] wanted;
  private final int[] beside;

  /**
   * @param x0 the first column
   * @param y0 the first row, counted from the bottom
   * @param sigmaPx the blur, without that by the area of a pixel
   * @param wanted the pixels whose ink is asked for, counted row by row from the bottom
   */
  InkWindow(int x0, int y0, int width, int height, double sigmaPx, int[] wanted) {
    this.x0 = x0;
    this.y0 = y0;
    this.width = width;
    this.height = height;
    this.kernel = sigmaPx >= LEAST_BLUR_PX ? Blur.weights(sigmaPx) : new double[] {1};
    this.cover = new double[(width + 2) * height];
    this.drawn = new double[width * height];
    this.half = new double[width * height];
    this.wanted = wanted.clone();
    this.beside = aboveAndBelow();
  }

  /** The pixels from whose rows the ink of the wanted ones comes. */
  private int[] aboveAndBelow() {
    BitSet all = new BitSet(width * height);
    int reach = kernel.length - 1;
    for (int at : wanted) {
      int row = at / width;
      for (int y = Math.max(0, row - reach); y <= Math.min(height - 1, row + reach); y++) {
        all.set(y * width + at % width);
      }
    }
    return all.stream().toArray();
  }

  /** Gives the ink of the wanted pixels, in their order. */
  double[] draw(List<Point> polygon) {
    Arrays.fill(cover, 0);
    for (int i = 0; i < polygon.size(); i++) {
      edge(polygon.get(i), polygon.get((i + 1) % polygon.size()));
    }
    for (int y = 0; y < height; y++) {
      double sum = 0;
      for (int x = 0; x < width; x++) {
        sum += cover[y * (width + 2) + x];
        drawn[y * width + x] = sum;
      }
    }
    for (int at : beside) {
      half[at] = blurred(drawn, at - at % width, at % width, 1, width);
    }
    double[] ink = new double[wanted.length];
    for (int i = 0; i < ink.length; i++) {
      ink[i] = blurred(half, wanted[i] % width, wanted[i] / width, width, height);
    }
    return ink;
  }

  /** Adds the derivative along x of the area to the right of an edge. */
  private void edge(Point a, Point b) {
    double ax = a.x() - x0;
    double ay = a.y() - y0;
    double bx = b.x() - x0;
    double by = b.y() - y0;
    if (ay == by) {
      return;
    }
    double sign = ay < by ? -1 : 1;
    double low = Math.max(0, Math.min(ay, by));
    double high = Math.min(height, Math.max(ay, by));
    double slope = (bx - ax) / (by - ay);
    for (int y = (int) low; y < high; y++) {
      double from = Math.max(low, y);
      double to = Math.min(high, y + 1);
      double left = ax + (from - ay) * slope;
      double right = ax + (to - ay) * slope;
      row(y * (width + 2), Math.min(left, right), Math.max(left, right), sign * (to - from));
    }
  }

  private void row(int at, double least, double most, double area) {
    double left = Math.max(0, Math.min(width, least));
    double right = Math.max(0, Math.min(width, most));
    int last = (int) right;
    for (int x = (int) left; x <= last; x++) {
      double from = Math.max(left, x);
      double to = Math.min(right, x + 1);
      double share = right > left ? (to - from) / (right - left) : 1;
      double beside = x + 1 - (from + to) / 2;
      cover[at + x] += area * share * beside;
      cover[at + x + 1] += area * share * (1 - beside);
    }
  }

  /** One pixel of a line blurred along it; beyond the window its border goes on. */
  private double blurred(double[] in, int start, int i, int stride, int length) {
    int reach = kernel.length - 1;
    int here = start + i * stride;
    double sum = kernel[0] * in[here];
    if (i >= reach && i + reach < length) {
      int by = 0;
      for (int k = 1; k <= reach; k++) {
        by += stride;
        sum += kernel[k] * (in[here - by] + in[here + by]);
      }
      return sum;
    }
    for (int k = 1; k <= reach; k++) {
      int before = Math.max(0, i - k);
      int after = Math.min(length - 1, i + k);
      sum += kernel[k] * (in[start + before * stride] + in[start + after * stride]);
    }
    return sum;
  }
}
