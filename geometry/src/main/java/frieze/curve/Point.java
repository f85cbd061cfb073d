package frieze.curve;

/** A point of the plane, in millimetres of the frame that its owner names. */
public record Point(double x, double y) {
  public static final Point ORIGIN = new Point(0, 0);

  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("x and y must be finite but were " + x + ", " + y + " mm");
    }
  }

  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /** The z component of the cross product: positive when {@code other} lies counter-clockwise. */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  public double norm() {
    return Math.sqrt(x * x + y * y);
  }

  public double distance(Point other) {
    double dx = x - other.x;
    double dy = y - other.y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The direction from the origin, in (-pi, pi]. */
  public double angleRad() {
    return StrictMath.atan2(y, x);
  }

  /** This point turned about the origin; positive is counter-clockwise. */
  public Point turned(double angleRad) {
    double cos = StrictMath.cos(angleRad);
    double sin = StrictMath.sin(angleRad);
    return new Point(x * cos - y * sin, x * sin + y * cos);
  }

  /** The point at {@code fraction} of the way from this one to {@code other}. */
  public Point towards(Point other, double fraction) {
    return new Point(x + (other.x - x) * fraction, y + (other.y - y) * fraction);
  }

  /** The point at a distance and direction from {@code centre}. */
  public static Point polar(Point centre, double radiusMm, double angleRad) {
    return new Point(
        centre.x + radiusMm * StrictMath.cos(angleRad),
        centre.y + radiusMm * StrictMath.sin(angleRad));
  }
}
