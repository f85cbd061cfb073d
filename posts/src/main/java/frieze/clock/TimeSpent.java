package frieze.clock;

/**
 * How long it takes, in seconds.
 *
 * @param feedSeconds moving at feed
 * @param rapidSeconds moving at rapid
 * @param waitSeconds dwelling, and the spindle coming up to speed
 * @param handSeconds what the operator is assumed to need for tool changes and stops
 */
public record TimeSpent(
    double feedSeconds, double rapidSeconds, double waitSeconds, double handSeconds) {
  public static final TimeSpent NONE = new TimeSpent(0, 0, 0, 0);

  /** What the machine needs, without the operator. */
  public double machineSeconds() {
    return feedSeconds + rapidSeconds + waitSeconds;
  }

  public double totalSeconds() {
    return machineSeconds() + handSeconds;
  }

  public TimeSpent plus(TimeSpent other) {
    return new TimeSpent(
        feedSeconds + other.feedSeconds,
        rapidSeconds + other.rapidSeconds,
        waitSeconds + other.waitSeconds,
        handSeconds + other.handSeconds);
  }
}
