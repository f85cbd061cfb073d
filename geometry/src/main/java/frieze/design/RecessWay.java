package frieze.design;

/**
 * How an area is cleared.
 *
 * @param lines whether the tool goes to and fro along the grain, instead of in offsets of the
 *     border
 * @param leaveMm what is left on the wall and taken last; 0 for no such pass
 */
public record RecessWay(boolean lines, double leaveMm) {
  /** In offsets of the border, at once to size. */
  public static final RecessWay PLAIN = new RecessWay(false, 0);
}
