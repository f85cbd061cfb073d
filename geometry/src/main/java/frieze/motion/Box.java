package frieze.motion;

/** An upright box in space, in millimetres; {@link #EMPTY} holds no position. */
public record Box(double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {
  public static final Box EMPTY =
      new Box(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  public static Box of(Position p) {
    return new Box(p.x(), p.y(), p.z(), p.x(), p.y(), p.z());
  }

  public boolean isEmpty() {
    return minX > maxX || minY > maxY || minZ > maxZ;
  }

  public Box with(Position p) {
    return with(of(p));
  }

  public Box with(Box other) {
    return new Box(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.min(minZ, other.minZ),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY),
        Math.max(maxZ, other.maxZ));
  }

  /** The lower limit along an axis: 0 is X, 1 is Y, 2 is Z. */
  public double min(int axis) {
    return axis == 0 ? minX : axis == 1 ? minY : minZ;
  }

  /** The upper limit along an axis: 0 is X, 1 is Y, 2 is Z. */
  public double max(int axis) {
    return axis == 0 ? maxX : axis == 1 ? maxY : maxZ;
  }
}
