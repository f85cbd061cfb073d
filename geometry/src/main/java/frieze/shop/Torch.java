package frieze.shop;

import java.util.OptionalDouble;

/**
 * A torch set up for one sheet.
 *
 * @param name the name of the cut chart
 * @param row what the chart says at the sheet's thickness
 * @param afterFlowSeconds how long the torch stays where it went out
 */
public record Torch(String name, CutChart.Row row, double afterFlowSeconds) {
  /** A torch cuts through whatever its chart lists. */
  private static final double ANY_DEPTH_MM = 1000;

  public double kerfMm() {
    return row.kerfMm();
  }

  public double thicknessMm() {
    return row.thicknessMm();
  }

  /** The same, with a kerf that was measured on a coupon. */
  public Torch withKerf(double measuredMm) {
    return new Torch(
        name,
        new CutChart.Row(
            row.thicknessMm(),
            measuredMm,
            row.feedMmPerMin(),
            row.pierceHeightMm(),
            row.cutHeightMm(),
            row.pierceSeconds(),
            row.smallestHoleMm()),
        afterFlowSeconds);
  }

  /**
   * How far a pierce should be from the edge of a part: the thickness and 2 mm, and at least two
   * kerfs; common practice.
   */
  public double goodPierceMm() {
    return Math.max(2 * kerfMm(), thicknessMm() + 2);
  }

  /**
   * How near to the edge of a part a pierce may be at all: the molten puddle is at least two kerfs
   * wide; common practice.
   */
  public double leastPierceMm() {
    return kerfMm();
  }

  /** The arc as a round tool as wide as the kerf, for whatever speaks of tools. */
  public Tool asTool() {
    return new Tool(
        name,
        1,
        new ToolShape.Flat(kerfMm()),
        1,
        ANY_DEPTH_MM,
        ANY_DEPTH_MM,
        true,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        1,
        row.feedMmPerMin(),
        row.feedMmPerMin());
  }
}
