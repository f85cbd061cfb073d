package frieze.motion;

/**
 * The plane that an arc turns in, with its axes in the order that makes a turn from the first to
 * the second counter-clockwise as seen from the positive end of the third.
 *
 * <p>Source: NISTIR 6556, 3.5.3 and 4.3.6.1 (in XZ the first axis is Z).
 */
public enum Plane {
  XY(0, 1, 2),
  ZX(2, 0, 1),
  YZ(1, 2, 0);

  private final int first;
  private final int second;
  private final int normal;

  Plane(int first, int second, int normal) {
    this.first = first;
    this.second = second;
    this.normal = normal;
  }

  /** The index of the first axis: 0 is X, 1 is Y, 2 is Z. */
  public int first() {
    return first;
  }

  public int second() {
    return second;
  }

  /** The index of the axis at right angles to the plane. */
  public int normal() {
    return normal;
  }

  /** The position with the given coordinates along first, second and normal axis. */
  public Position position(double u, double v, double w) {
    return switch (this) {
      case XY -> new Position(u, v, w);
      case ZX -> new Position(v, w, u);
      case YZ -> new Position(w, u, v);
    };
  }
}
