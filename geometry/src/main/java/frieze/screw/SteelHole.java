package frieze.screw;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.BoreWay;
import java.util.List;

/**
 * A hole in the frame for a screw that moves with the wood: all that a round clearance hole covers
 * on its way from the driest to the wettest.
 *
 * @param screw where the screw is set, on the panel as it is cut
 * @param driest where it is at the driest; the screw itself for a round hole
 * @param wettest where it is at the wettest
 * @param widthMm the diameter of the clearance hole
 */
public record SteelHole(Point screw, Point driest, Point wettest, double widthMm) {
  /** A path shorter than this is no slot: a nanometre. */
  private static final double ROUNDING_MM = 1e-6;

  /** How far the screw travels. */
  public double travelMm() {
    return driest.distance(wettest);
  }

  public boolean isSlot() {
    return travelMm() > ROUNDING_MM;
  }

  /** From end to end. */
  public double lengthMm() {
    return widthMm + travelMm();
  }

  /** Its edge: a circle, or two half circles and two straight sides. */
  public Path edge() {
    if (!isSlot()) {
      return Path.circle(screw, widthMm / 2);
    }
    double direction = wettest.minus(driest).angleRad();
    return new BoreWay.Slot(lengthMm(), direction)
        .around(driest.towards(wettest, 0.5), widthMm, widthMm / 2);
  }

  /** The line from the driest to the wettest. */
  public Path middle() {
    return Path.polyline(List.of(driest, wettest), false);
  }
}
