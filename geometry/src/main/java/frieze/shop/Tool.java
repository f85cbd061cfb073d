package frieze.shop;

import java.util.OptionalDouble;

/**
 * A cutter as it is held in the spindle.
 *
 * @param name what the shop calls it, such as {@code flat 1/4}
 * @param number the T number
 * @param fluteLengthMm how deep it can cut
 * @param reachMm how far it sticks out of the collet
 * @param cutsAtCentre whether it may plunge straight down
 * @param passDepthMm the most it takes in one pass; empty leaves it to the material
 * @param chipLoadMm advance for each flute and turn, as the shop found good; empty leaves it to the
 *     material's table
 * @param maxFeedMmPerMin never faster than this
 * @param maxPlungeMmPerMin never faster than this straight down
 * @param engagementRad the largest part of its rim that may stand in material while it feeds along;
 *     empty leaves it to common practice
 */
public record Tool(
    String name,
    int number,
    ToolShape shape,
    int flutes,
    double fluteLengthMm,
    double reachMm,
    boolean cutsAtCentre,
    OptionalDouble passDepthMm,
    OptionalDouble chipLoadMm,
    double maxRpm,
    double maxFeedMmPerMin,
    double maxPlungeMmPerMin,
    OptionalDouble engagementRad) {

  public Tool {
    if (flutes < 1) {
      throw new IllegalArgumentException("flutes must be >= 1 but was " + flutes);
    }
    requirePositive("fluteLengthMm", fluteLengthMm, "mm");
    requirePositive("reachMm", reachMm, "mm");
    requirePositive("maxRpm", maxRpm, "rpm");
    requirePositive("maxFeedMmPerMin", maxFeedMmPerMin, "mm/min");
    requirePositive("maxPlungeMmPerMin", maxPlungeMmPerMin, "mm/min");
    double engaged = engagementRad.orElse(Math.PI);
    if (!(engaged > 0 && engaged <= Math.PI)) {
      throw new IllegalArgumentException(
          "engagementRad must be > 0 and <= pi but was " + engaged + " rad");
    }
  }

  /** A tool whose engagement is left to common practice. */
  public Tool(
      String name,
      int number,
      ToolShape shape,
      int flutes,
      double fluteLengthMm,
      double reachMm,
      boolean cutsAtCentre,
      OptionalDouble passDepthMm,
      OptionalDouble chipLoadMm,
      double maxRpm,
      double maxFeedMmPerMin,
      double maxPlungeMmPerMin) {
    this(
        name,
        number,
        shape,
        flutes,
        fluteLengthMm,
        reachMm,
        cutsAtCentre,
        passDepthMm,
        chipLoadMm,
        maxRpm,
        maxFeedMmPerMin,
        maxPlungeMmPerMin,
        OptionalDouble.empty());
  }

  private static void requirePositive(String name, double value, String unit) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + value + " " + unit);
    }
  }

  public double diameterMm() {
    return shape.diameterMm();
  }

  public double radiusMm() {
    return shape.diameterMm() / 2;
  }

  /** This tool under another T number. */
  public Tool withNumber(int newNumber) {
    return with(newNumber, engagementRad);
  }

  /** This tool with a limit of engagement, in radians. */
  public Tool withEngagement(double limitRad) {
    return with(number, OptionalDouble.of(limitRad));
  }

  private Tool with(int newNumber, OptionalDouble newEngagementRad) {
    return new Tool(
        name,
        newNumber,
        shape,
        flutes,
        fluteLengthMm,
        reachMm,
        cutsAtCentre,
        passDepthMm,
        chipLoadMm,
        maxRpm,
        maxFeedMmPerMin,
        maxPlungeMmPerMin,
        newEngagementRad);
  }
}
