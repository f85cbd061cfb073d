package frieze.motion;

import frieze.curve.Point;

/** A position of the tool's tip, in millimetres of the frame that its owner names. */
public record Position(double x, double y, double z) {
  public Position {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException(
          "x, y and z must be finite but were " + x + ", " + y + ", " + z + " mm");
    }
  }

  public Position(Point point, double z) {
    this(point.x(), point.y(), z);
  }

  public Point xy() {
    return new Point(x, y);
  }

  public Position withZ(double newZ) {
    return new Position(x, y, newZ);
  }

  public Position plus(double dx, double dy, double dz) {
    return new Position(x + dx, y + dy, z + dz);
  }

  public double distance(Position other) {
    double dx = x - other.x;
    double dy = y - other.y;
    double dz = z - other.z;
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  /** The coordinate along an axis: 0 is X, 1 is Y, 2 is Z. */
  public double get(int axis) {
    return switch (axis) {
      case 0 -> x;
      case 1 -> y;
      case 2 -> z;
      default -> throw new IllegalArgumentException("axis must be 0, 1 or 2 but was " + axis);
    };
  }
}
