package frieze.dryrun.scene;

/** From a least to a greatest value, in millimetres. */
public record Range(double minMm, double maxMm) {
  public Range {
    if (!(minMm <= maxMm)) {
      throw new IllegalArgumentException(
          "minMm must be <= maxMm but was " + minMm + ", " + maxMm + " mm");
    }
  }

  public double sizeMm() {
    return maxMm - minMm;
  }
}
