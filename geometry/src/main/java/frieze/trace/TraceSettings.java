package frieze.trace;

/**
 * How a picture is to be traced.
 *
 * @param threshold the share of ink at which the outline lies; 0.5 for the middle
 * @param smallestMm what is smaller in both directions is a speck and left out
 * @param toleranceMm by how much the lines and arcs may leave the smoothed outline; 0 to choose it
 *     from the picture
 * @param paperOnInk whether the figure is light and the ground is dark
 * @param lensBend by which part the lens moves the corner of the picture outwards; 0 for none
 * @param linesUpToMm strokes of a pen no wider than this become lines; 0 for outlines only
 */
public record TraceSettings(
    RealSize size,
    double threshold,
    double smallestMm,
    double toleranceMm,
    boolean paperOnInk,
    double lensBend,
    double linesUpToMm) {
  /** The smallest feature unless a caller has a reason: finer than most bits can cut. */
  public static final double SMALLEST_MM = 0.5;

  public TraceSettings {
    if (!(smallestMm >= 0) || !(toleranceMm >= 0)) {
      throw new IllegalArgumentException(
          "smallestMm and toleranceMm must be >= 0 but were "
              + smallestMm
              + ", "
              + toleranceMm
              + " mm");
    }
    if (!(linesUpToMm >= 0)) {
      throw new IllegalArgumentException("linesUpToMm must be >= 0 but was " + linesUpToMm + " mm");
    }
    if (!(threshold > 0 && threshold < 1)) {
      throw new IllegalArgumentException("threshold must be within 0 .. 1 but was " + threshold);
    }
    if (!(Math.abs(lensBend) <= 0.2)) {
      throw new IllegalArgumentException("lensBend must be within 0.2 but was " + lensBend);
    }
  }

  /** Dark ink on plain light paper. */
  public static TraceSettings of(RealSize size) {
    return new TraceSettings(size, 0.5, SMALLEST_MM, 0, false, 0, 0);
  }

  public TraceSettings withThreshold(double share) {
    return new TraceSettings(
        size, share, smallestMm, toleranceMm, paperOnInk, lensBend, linesUpToMm);
  }

  public TraceSettings withSmallest(double mm) {
    return new TraceSettings(size, threshold, mm, toleranceMm, paperOnInk, lensBend, linesUpToMm);
  }

  public TraceSettings withTolerance(double mm) {
    return new TraceSettings(size, threshold, smallestMm, mm, paperOnInk, lensBend, linesUpToMm);
  }

  public TraceSettings withPaperOnInk(boolean light) {
    return new TraceSettings(
        size, threshold, smallestMm, toleranceMm, light, lensBend, linesUpToMm);
  }

  public TraceSettings withLensBend(double bend) {
    return new TraceSettings(
        size, threshold, smallestMm, toleranceMm, paperOnInk, bend, linesUpToMm);
  }

  public TraceSettings withLinesUpTo(double mm) {
    return new TraceSettings(size, threshold, smallestMm, toleranceMm, paperOnInk, lensBend, mm);
  }
}
