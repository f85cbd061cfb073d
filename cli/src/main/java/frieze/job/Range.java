package frieze.job;

/**
 * The numbers that a key accepts, in the inner unit of its kind.
 *
 * @param words the rule as a person would say it, such as {@code more than 0}; empty for any
 */
record Range(double low, boolean lowIncluded, double high, String words) {
  static final Range ANY = new Range(-Double.MAX_VALUE, true, Double.MAX_VALUE, "");
  static final Range POSITIVE = new Range(0, false, Double.MAX_VALUE, "more than 0");
  static final Range NOT_NEGATIVE = new Range(0, true, Double.MAX_VALUE, "0 or more");

  /** A height to travel at: a board is seldom flat to a millimetre. */
  static final Range CLEARANCE = new Range(1, true, Double.MAX_VALUE, "1 mm or more");

  static final Range SHARE = new Range(0, false, 1, "more than 0 and at most 100%");

  /** An angle of a pointed tool. */
  static final Range TOOL_ANGLE =
      new Range(0, false, Math.toRadians(179.9), "more than 0 and below 180 deg");

  /** A part of a tool's rim. */
  static final Range RIM_ANGLE = new Range(0, false, Math.PI, "more than 0 and at most 180 deg");

  /** A share strictly between nothing and all. */
  static final Range MIDDLE = new Range(0.05, true, 0.95, "5% to 95%");

  /** By how much a lens bends a picture. */
  static final Range BEND = new Range(-0.2, true, 0.2, "-20% to 20%");

  boolean contains(double value) {
    return (lowIncluded ? value >= low : value > low) && value <= high;
  }
}
