package frieze.trace;

import frieze.curve.Point;
import java.util.List;

/** Where the real size of a picture comes from. */
public sealed interface RealSize {
  /** The height of the traced outlines together. */
  record Height(double mm) implements RealSize {
    public Height {
      requirePositive("height", mm);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.height(this);
    }
  }

  /** The width of the traced outlines together. */
  record Width(double mm) implements RealSize {
    public Width {
      requirePositive("width", mm);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.width(this);
    }
  }

  /** The size of a pixel, as a scanner knows it. */
  record Pixel(double mm) implements RealSize {
    public Pixel {
      requirePositive("pixel", mm);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.pixel(this);
    }
  }

  /**
   * A rectangle of known size, such as the sheet of paper, seen at an angle.
   *
   * @param corners upper left, upper right, lower right, lower left; in pixels from the picture's
   *     upper left corner, Y down
   */
  record Sheet(List<Point> corners, double widthMm, double heightMm) implements RealSize {
    public Sheet {
      corners = List.copyOf(corners);
      requirePositive("widthMm", widthMm);
      requirePositive("heightMm", heightMm);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.sheet(this);
    }
  }

  <R> R accept(Visitor<R> visitor);

  /** Answers for each kind. */
  interface Visitor<R> {
    R height(Height height);

    R width(Width width);

    R pixel(Pixel pixel);

    R sheet(Sheet sheet);
  }

  private static void requirePositive(String name, double mm) {
    if (!(mm > 0) || !Double.isFinite(mm)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + mm + " mm");
    }
  }
}
