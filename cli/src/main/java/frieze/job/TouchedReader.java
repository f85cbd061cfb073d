package frieze.job;

import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.keys.JobCode;
import frieze.keys.Values;
import frieze.shop.Skew;
import frieze.shop.Stock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads how a stock lies from two places on an edge. */
final class TouchedReader {
  private static final double SKEWED_SIDEWAYS_RAD = Math.toRadians(45);

  private final Diagnostics found;

  TouchedReader(Diagnostics found) {
    this.found = found;
  }

  /** Reads the angle; empty after an error. */
  Optional<Skew> read(Values v, Stock stock) {
    List<Point> at =
        v.get(JobKeys.Touched.AT).stream()
            .map(p -> new Point(p.get(JobKeys.Touched.Spot.X), p.get(JobKeys.Touched.Spot.Y)))
            .toList();
    Skew skew = Skew.of(v.get(JobKeys.Touched.EDGE), at.get(0), at.get(1));
    if (skew.apartMm() < Skew.LEAST_APART_MM) {
      found.error(
          JobCode.OUT_OF_RANGE,
          v.where(JobKeys.Touched.AT),
          "the two places are "
              + Amounts.length(skew.apartMm())
              + " apart: "
              + Amounts.length(Skew.TOUCH_MM)
              + " of error in one would be "
              + Amounts.length(skew.errorMm(stock.lengthMm()))
              + " at the far end of the stock",
          "touch the edge near its two ends, "
              + Amounts.length(Skew.LEAST_APART_MM)
              + " apart at least");
      return Optional.empty();
    }
    if (Math.abs(skew.angleRad()) > Skew.MOST_RAD) {
      boolean otherEdge = Math.abs(skew.angleRad()) > SKEWED_SIDEWAYS_RAD;
      found.error(
          JobCode.LIES_TOO_SKEWED,
          v.where(JobKeys.Touched.AT),
          String.format(
              Locale.ROOT,
              "the stock lies turned by %.1f deg; programs are turned by %.0f deg at most",
              Math.toDegrees(skew.angleRad()),
              Math.toDegrees(Skew.MOST_RAD)),
          otherEdge
              ? "these places do not lie along that edge: is \"edge\" right?"
              : "lay it again, straighter by about "
                  + Amounts.length(skew.apartMm() * Math.abs(StrictMath.sin(skew.angleRad())))
                  + " between the two places");
      return Optional.empty();
    }
    return Optional.of(skew);
  }
}
