package frieze.trace;

import frieze.curve.Point;

/**
 * A picture in shades of grey; rows count from the top.
 *
 * <p>The array is not copied: a large picture is large.
 */
public final class GreyImage {
  /** More pixels than these are refused: a picture that fits into a plain heap with its copies. */
  public static final long MAX_PIXELS = 50_000_000L;

  private final int width;
  private final int height;
  private final float[] values;

  /**
   * Wraps a picture.
   *
   * @param values row by row, 0 for black and 1 for white
   */
  public GreyImage(int width, int height, float[] values) {
    if (width < 1 || height < 1 || (long) width * height > MAX_PIXELS) {
      throw new IllegalArgumentException(
          "width and height must be 1 .. "
              + MAX_PIXELS
              + " pixels but were "
              + width
              + ", "
              + height);
    }
    if (values.length != width * height) {
      throw new IllegalArgumentException(
          "values must be " + width * height + " but were " + values.length);
    }
    this.width = width;
    this.height = height;
    this.values = values;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** The grey value of a pixel; {@code outside} beyond the picture. */
  float at(int x, int y, float outside) {
    return x < 0 || y < 0 || x >= width || y >= height ? outside : values[y * width + x];
  }

  /** The grey value of a pixel, counted row by row from the top. */
  public float value(int index) {
    return values[index];
  }

  /**
   * The grey value between the pixels, by cubics; the origin at the lower left corner of the
   * picture, Y up. Source: Catmull and Rom, 1974.
   */
  double between(Point p) {
    double x = p.x() - 0.5;
    double y = height - p.y() - 0.5;
    int x0 = (int) Math.floor(x);
    int y0 = (int) Math.floor(y);
    double sum = 0;
    for (int k = -1; k <= 2; k++) {
      double row = 0;
      for (int i = -1; i <= 2; i++) {
        row += weight(x - x0 - i) * at(x0 + i, y0 + k, 0);
      }
      sum += weight(y - y0 - k) * row;
    }
    return sum;
  }

  private static double weight(double t) {
    double a = Math.abs(t);
    return a <= 1 ? 1 + a * a * (1.5 * a - 2.5) : 2 - a * (4 - a * (2.5 - 0.5 * a));
  }

  /** Whether it has no shades between a dark and a light one, as a scan in black and white. */
  boolean hasTwoShades() {
    float one = values[0];
    float other = one;
    for (float value : values) {
      if (value != one && value != other) {
        if (other != one) {
          return false;
        }
        other = value;
      }
    }
    return other != one;
  }

  float[] values() {
    return values;
  }
}
