package frieze.dryrun.scene;

/** How far a text may be off before a check objects: what rounding to its last digit explains. */
public final class Slack {
  /** Lengths: half of the last digit of inches with four decimals is 0.0013 mm. */
  public static final double LENGTH_MM = 0.005;

  /** Feeds and speeds: the relative rounding of whole millimetres or of tenths of inches. */
  public static final double RELATIVE = 2e-3;

  /** Feeds: half of the last digit of inches per minute with one decimal is 1.27 mm/min. */
  public static final double FEED_MM_PER_MIN = 1.3;

  /** Less material than this is what rounding leaves standing. */
  public static final double STANDING_MM = 0.02;

  private Slack() {}
}
