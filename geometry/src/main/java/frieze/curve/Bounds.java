package frieze.curve;

import java.util.List;

/** An upright rectangle, in millimetres; {@link #EMPTY} holds no point. */
public record Bounds(double minX, double minY, double maxX, double maxY) {
  public static final Bounds EMPTY =
      new Bounds(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  public static Bounds of(Point point) {
    return new Bounds(point.x(), point.y(), point.x(), point.y());
  }

  public boolean isEmpty() {
    return minX > maxX || minY > maxY;
  }

  public double width() {
    return isEmpty() ? 0 : maxX - minX;
  }

  public double height() {
    return isEmpty() ? 0 : maxY - minY;
  }

  public Point centre() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }

  public Bounds with(Point point) {
    return with(of(point));
  }

  public Bounds with(Bounds other) {
    return new Bounds(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  public Bounds grown(double byMm) {
    return new Bounds(minX - byMm, minY - byMm, maxX + byMm, maxY + byMm);
  }

  /** The corners counter-clockwise from the lower left one. */
  public List<Point> corners() {
    return List.of(
        new Point(minX, minY), new Point(maxX, minY), new Point(maxX, maxY), new Point(minX, maxY));
  }

  /** Whether another rectangle, which is not empty, lies inside. */
  public boolean contains(Bounds other) {
    return other.minX >= minX && other.maxX <= maxX && other.minY >= minY && other.maxY <= maxY;
  }

  /** Whether another rectangle, which is not empty, shares a point with this; edges count. */
  public boolean touches(Bounds other) {
    return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
  }

  /**
   * Whether another rectangle, which is not empty, shares an area with this; edges do not count.
   */
  public boolean overlaps(Bounds other) {
    return minX < other.maxX && other.minX < maxX && minY < other.maxY && other.minY < maxY;
  }

  public boolean contains(Point point) {
    return point.x() >= minX && point.x() <= maxX && point.y() >= minY && point.y() <= maxY;
  }
}
