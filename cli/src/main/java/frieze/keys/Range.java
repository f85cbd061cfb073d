package frieze.keys;

/**
 * The numbers that a key accepts, in the inner unit of its kind.
 *
 * @param words the rule as a person would say it, such as {@code more than 0}; empty for any
 * @param code what is said about a number outside
 * @param hint what is usual, where that helps; else empty
 */
public record Range(
    double low, boolean lowIncluded, double high, String words, JobCode code, String hint) {
  public static final Range ANY = new Range(-Double.MAX_VALUE, true, Double.MAX_VALUE, "");
  public static final Range POSITIVE = new Range(0, false, Double.MAX_VALUE, "more than 0");
  public static final Range NOT_NEGATIVE = new Range(0, true, Double.MAX_VALUE, "0 or more");

  /** A height to travel at: a board is seldom flat to a millimetre. */
  public static final Range CLEARANCE = new Range(1, true, Double.MAX_VALUE, "1 mm or more");

  public static final Range SHARE = new Range(0, false, 1, "more than 0 and at most 100%");

  /** How deep something is cut. */
  public static final Range DEPTH =
      new Range(
          0,
          false,
          Double.MAX_VALUE,
          "more than 0",
          JobCode.NO_DEPTH,
          "depths are counted downward from the stock's top, without a sign");

  /** The most that a tool may do. */
  public static final Range LIMIT =
      new Range(
          0,
          false,
          Double.MAX_VALUE,
          "more than 0",
          JobCode.NO_LIMIT,
          "write the most that the tool may do; its maker's table tells");

  /** An angle of a pointed tool. */
  public static final Range TOOL_ANGLE =
      new Range(
          0,
          false,
          Math.toRadians(179.9),
          "more than 0 and below 180 deg",
          JobCode.NO_SUCH_ANGLE,
          "the full angle between the sides counts: 60 and 90 deg are usual for a V-bit");

  /** A part of a tool's rim. */
  public static final Range RIM_ANGLE =
      new Range(0, false, Math.PI, "more than 0 and at most 180 deg");

  /** A share strictly between nothing and all. */
  public static final Range MIDDLE = new Range(0.05, true, 0.95, "5% to 95%");

  /** By how much a lens bends a picture. */
  public static final Range BEND = new Range(-0.2, true, 0.2, "-20% to 20%");

  /** Numbers outside of which nothing else is said than that they are out of range. */
  public Range(double low, boolean lowIncluded, double high, String words) {
    this(low, lowIncluded, high, words, JobCode.OUT_OF_RANGE, "");
  }

  boolean contains(double value) {
    return (lowIncluded ? value >= low : value > low) && value <= high;
  }
}
