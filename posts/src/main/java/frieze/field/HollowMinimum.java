package frieze.field;

/**
 * How low a rising tool with a hollow cuts a point beside its way.
 *
 * <p>A hollow's height is concave in the radius: it is the least of its tangents. Each tangent is a
 * cone, whose lowest place along the way is that of a {@link FreeMinimum}; the lowest of the
 * heights that the hollow itself has at these places, at the tip's rim and at the ends is taken.
 *
 * <p><b>Approximation:</b> above the exact height by less than a micrometre for hollows up to 20
 * mm; exact on level ways.
 */
final class HollowMinimum {
  private static final int TANGENTS = 24;

  private final Profile profile;
  private final double rise;
  private final double[] slopes;
  private final double[] knees;

  private HollowMinimum(Profile profile, double rise, int tangents) {
    this.profile = profile;
    this.rise = rise;
    this.slopes = new double[tangents];
    this.knees = new double[tangents];
    for (int i = 0; i < tangents; i++) {
      double angle = Math.PI / 2 * (i + 0.5) / tangents;
      double r = profile.kneeMm() + profile.hollowMm() * (1 - StrictMath.cos(angle));
      double height = profile.hollowMm() * StrictMath.sin(angle);
      slopes[i] = 1 / StrictMath.tan(angle);
      knees[i] = r - height / slopes[i];
    }
  }

  /** What a level way, or a tool without a hollow, needs no tangents for. */
  static HollowMinimum of(Profile profile, double rise) {
    return new HollowMinimum(profile, rise, profile.hollowMm() > 0 && rise > 0 ? TANGENTS : 0);
  }

  /**
   * The lowest height at a point, against that of the tip when its axis is abreast of the point.
   *
   * @param v the distance of the point from the way
   * @param least how far behind the point the axis may be, below 0, or how far past it at least
   * @param most how far past the point it may be
   */
  double lowestMm(double v, double least, double most) {
    double nearest = Math.max(least, Math.min(0, most));
    double lowest = Math.min(at(nearest, v), Math.min(at(least, v), at(most, v)));
    double knee = profile.kneeMm();
    if (rise > 0 && Math.abs(v) < knee) {
      lowest = Math.min(lowest, at(clamp(Math.sqrt(knee * knee - v * v), least, most), v));
    }
    for (int i = 0; i < slopes.length && slopes[i] > rise; i++) {
      double flank = rise / Math.sqrt(slopes[i] * slopes[i] - rise * rise) * Math.abs(v);
      double onKnee = knees[i] > 0 ? Math.sqrt(Math.max(0, knees[i] * knees[i] - v * v)) : 0;
      lowest = Math.min(lowest, at(clamp(Math.max(flank, onKnee), least, most), v));
    }
    return lowest;
  }

  private double at(double a, double v) {
    return profile.heightAtMm(Math.sqrt(a * a + v * v)) - rise * a;
  }

  private static double clamp(double a, double least, double most) {
    return Math.max(least, Math.min(a, most));
  }
}
