package frieze.clock;

/**
 * The time of one straight move at limited acceleration: speeding up, cruising, braking.
 *
 * <p><em>Source:</em> uniformly accelerated motion; any textbook of mechanics.
 */
final class Ramp {
  private Ramp() {}

  /**
   * The least time for a distance.
   *
   * @param distanceMm above 0
   * @param cruiseMmPerS the speed that is not exceeded
   * @param upMmPerS2 the acceleration; may be infinite
   * @param downMmPerS2 the braking; may be infinite
   * @param entryMmPerS the speed at the start, not above the cruise speed
   * @param exitMmPerS the speed at the end, not above the cruise speed
   */
  static double seconds(
      double distanceMm,
      double cruiseMmPerS,
      double upMmPerS2,
      double downMmPerS2,
      double entryMmPerS,
      double exitMmPerS) {
    double entry2 = entryMmPerS * entryMmPerS;
    double exit2 = exitMmPerS * exitMmPerS;
    double peak2 =
        (2 * distanceMm + entry2 / upMmPerS2 + exit2 / downMmPerS2)
            / (1 / upMmPerS2 + 1 / downMmPerS2);
    if (peak2 < cruiseMmPerS * cruiseMmPerS) {
      double peak = Math.max(Math.sqrt(peak2), Math.max(entryMmPerS, exitMmPerS));
      return (peak - entryMmPerS) / upMmPerS2 + (peak - exitMmPerS) / downMmPerS2;
    }
    double cruise2 = cruiseMmPerS * cruiseMmPerS;
    double ramps = (cruise2 - entry2) / (2 * upMmPerS2) + (cruise2 - exit2) / (2 * downMmPerS2);
    return (cruiseMmPerS - entryMmPerS) / upMmPerS2
        + (cruiseMmPerS - exitMmPerS) / downMmPerS2
        + Math.max(0, distanceMm - ramps) / cruiseMmPerS;
  }

  /** The speed that can be reached over a distance from another one. */
  static double reachableMmPerS(double speedMmPerS, double accelerationMmPerS2, double distanceMm) {
    return Math.sqrt(speedMmPerS * speedMmPerS + 2 * accelerationMmPerS2 * distanceMm);
  }
}
