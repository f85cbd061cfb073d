package frieze.artwork.svg;

import frieze.curve.Arc;
import frieze.curve.EllipticArc;
import frieze.curve.Line;
import frieze.curve.Point;
import frieze.curve.Segment;

/**
 * An elliptical arc as path data give it.
 *
 * @param rx first radius, of any sign
 * @param ry second radius, of any sign
 * @param turnRad from the x axis to the first radius
 * @param large whether the arc of more than half a turn is meant
 * @param increasing whether angles increase along it (the "sweep" flag)
 */
record EndpointArc(double rx, double ry, double turnRad, boolean large, boolean increasing) {
  /** Arcs that turn by less are straight to a double's precision. */
  private static final double STRAIGHT_RAD = 1e-10;

  /**
   * Draws the arc from one point to another, which must differ.
   *
   * <p>Source: SVG 1.1, F.6.5 and F.6.6, written for the unit circle that the ellipse is the image
   * of.
   *
   * @return a line if a radius is 0, an {@link Arc} if both are equal, else an {@link EllipticArc}
   */
  Segment between(Point start, Point end) {
    double a = Math.abs(rx);
    double b = Math.abs(ry);
    if (a == 0 || b == 0) {
      return new Line(start, end);
    }
    Point half = start.minus(end).times(0.5).turned(-turnRad);
    Point unit = new Point(half.x() / a, half.y() / b);
    double lambda = unit.dot(unit);
    double grown = lambda > 1 ? Math.sqrt(lambda) : 1;
    Point from = unit.times(1 / grown);
    double k = lambda >= 1 ? 0 : Math.sqrt((1 - lambda) / lambda);
    double signed = large == increasing ? -k : k;
    Point centre = new Point(from.y() * signed, -from.x() * signed);
    double startRad = from.minus(centre).angleRad();
    double sweepRad = sweep(startRad, from.times(-1).minus(centre).angleRad());
    if (Math.abs(sweepRad) < STRAIGHT_RAD) {
      return new Line(start, end);
    }
    return segment(start, end, centre, startRad, sweepRad, grown);
  }

  private Segment segment(
      Point start, Point end, Point unitCentre, double startRad, double sweepRad, double grown) {
    double a = Math.abs(rx) * grown;
    double b = Math.abs(ry) * grown;
    Point middle = start.towards(end, 0.5);
    Point centre = new Point(unitCentre.x() * a, unitCentre.y() * b).turned(turnRad).plus(middle);
    if (a == b) {
      return new Arc(start, end, centre, sweepRad);
    }
    Point u = new Point(a, 0).turned(turnRad);
    Point v = new Point(0, b).turned(turnRad);
    return new EllipticArc(start, end, centre, u, v, startRad, sweepRad);
  }

  private double sweep(double startRad, double endRad) {
    double sweep = endRad - startRad;
    if (increasing && sweep <= 0) {
      return sweep + 2 * Math.PI;
    }
    return !increasing && sweep >= 0 ? sweep - 2 * Math.PI : sweep;
  }
}
