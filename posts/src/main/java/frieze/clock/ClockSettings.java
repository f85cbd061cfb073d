package frieze.clock;

/**
 * What the clock assumes beyond the machine's own limits. The times by hand are guesses, no
 * published values: they are told apart in every report.
 *
 * @param deviationMm how far the tool may pass from a corner; 0 stops at every corner
 * @param toolChangeByHandSeconds with touching off the new tool
 * @param toolChangeSeconds by a changer
 * @param stopSeconds what the operator needs at a stop
 */
public record ClockSettings(
    double deviationMm,
    double toolChangeByHandSeconds,
    double toolChangeSeconds,
    double stopSeconds) {
  public static final ClockSettings USUAL = new ClockSettings(0.02, 180, 15, 30);

  public ClockSettings {
    if (!(deviationMm >= 0)) {
      throw new IllegalArgumentException("deviationMm must be >= 0 but was " + deviationMm + " mm");
    }
  }
}
