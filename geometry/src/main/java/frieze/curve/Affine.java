package frieze.curve;

/**
 * An affine map of the plane: {@code x' = a x + c y + e}, {@code y' = b x + d y + f}.
 *
 * <p>Between packages a map travels inside a {@link FrameMap}, which says from where to where.
 */
public record Affine(double a, double b, double c, double d, double e, double f) {
  public static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

  public static Affine translation(double dxMm, double dyMm) {
    return new Affine(1, 0, 0, 1, dxMm, dyMm);
  }

  public static Affine scaling(double sx, double sy) {
    return new Affine(sx, 0, 0, sy, 0, 0);
  }

  /** A turn about the origin; positive is counter-clockwise. Quarter turns are exact. */
  public static Affine rotation(double angleRad) {
    double quarters = angleRad / (Math.PI / 2);
    if (quarters == Math.rint(quarters)) {
      return switch (Math.floorMod((long) quarters, 4)) {
        case 0 -> IDENTITY;
        case 1 -> new Affine(0, 1, -1, 0, 0, 0);
        case 2 -> new Affine(-1, 0, 0, -1, 0, 0);
        default -> new Affine(0, -1, 1, 0, 0, 0);
      };
    }
    double cos = StrictMath.cos(angleRad);
    double sin = StrictMath.sin(angleRad);
    return new Affine(cos, sin, -sin, cos, 0, 0);
  }

  public Point apply(Point p) {
    return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }

  /** Maps a direction: the translation is left out. */
  public Point applyToDirection(Point p) {
    return new Point(a * p.x() + c * p.y(), b * p.x() + d * p.y());
  }

  /** The map that applies this one first and {@code next} after it. */
  public Affine then(Affine next) {
    return new Affine(
        next.a * a + next.c * b,
        next.b * a + next.d * b,
        next.a * c + next.c * d,
        next.b * c + next.d * d,
        next.a * e + next.c * f + next.e,
        next.b * e + next.d * f + next.f);
  }

  /** Negative when the map mirrors. */
  public double determinant() {
    return a * d - b * c;
  }

  public boolean isMirroring() {
    return determinant() < 0;
  }

  /** The factor by which lengths grow, for a {@linkplain #isSimilarity() similarity}. */
  public double scale() {
    return Math.sqrt(Math.abs(determinant()));
  }

  /** Whether circles stay circles, to 1e-12 of the scale. */
  public boolean isSimilarity() {
    double tolerance = 1e-12 * (a * a + b * b + c * c + d * d);
    return Math.abs(a * c + b * d) <= tolerance
        && Math.abs(a * a + b * b - c * c - d * d) <= tolerance;
  }

  /**
   * The inverse map.
   *
   * @throws IllegalArgumentException if the map flattens the plane
   */
  public Affine inverse() {
    double det = determinant();
    if (det == 0 || !Double.isFinite(1 / det)) {
      throw new IllegalArgumentException("map has no inverse: determinant " + det);
    }
    return new Affine(
        d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det);
  }
}
