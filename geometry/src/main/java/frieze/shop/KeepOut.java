package frieze.shop;

/**
 * A box on the machine that nothing may touch: a clamp, a screw. In the stock frame, from the bed
 * up to {@code topMm} above the stock's top.
 */
public record KeepOut(
    String name, double minXMm, double minYMm, double maxXMm, double maxYMm, double topMm) {
  public KeepOut {
    if (!(minXMm < maxXMm && minYMm < maxYMm)) {
      throw new IllegalArgumentException("keep-out " + name + " must have a size above 0 mm");
    }
  }
}
