package frieze.field;

/**
 * Where along its way, past a point, a rising tool cuts the point lowest: at {@code max(flankFactor
 * |v|, rootFactor sqrt(rootRadius^2 - v^2))} for a point {@code v} beside the way.
 */
record FreeMinimum(double flankFactor, double rootFactor, double rootRadius) {
  private static final FreeMinimum LEVEL = new FreeMinimum(0, 0, 0);

  static FreeMinimum of(Profile profile, double rise) {
    if (rise == 0) {
      return LEVEL;
    }
    double onBall = rise / Math.sqrt(1 + rise * rise);
    if (profile.ballMm() > 0 && profile.slope() == 0) {
      return new FreeMinimum(0, onBall, profile.ballMm());
    }
    if (rise >= profile.slope()) {
      return new FreeMinimum(0, 1, profile.radiusMm());
    }
    double flank = rise / Math.sqrt(profile.slope() * profile.slope() - rise * rise);
    return profile.ballMm() > 0
        ? new FreeMinimum(flank, onBall, profile.ballMm())
        : new FreeMinimum(flank, 1, profile.kneeMm());
  }
}
