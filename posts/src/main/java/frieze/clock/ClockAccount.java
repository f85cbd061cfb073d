package frieze.clock;

/** Where the clock writes down time: one account for each tool in each program. */
public final class ClockAccount {
  private double feed;
  private double rapid;
  private double wait;
  private double hand;

  void addMove(boolean isRapid, double seconds) {
    if (isRapid) {
      rapid += seconds;
    } else {
      feed += seconds;
    }
  }

  void addWait(double seconds) {
    wait += seconds;
  }

  void addHand(double seconds) {
    hand += seconds;
  }

  public TimeSpent spent() {
    return new TimeSpent(feed, rapid, wait, hand);
  }
}
