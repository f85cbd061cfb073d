package frieze.trace;

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

  float[] values() {
    return values;
  }
}
