package frieze.shop;

import frieze.curve.Point;

/**
 * How a stock lies turned, found by touching one of its edges in two places.
 *
 * @param angleRad counter-clockwise
 * @param apartMm how far the two places are from each other
 */
public record Skew(double angleRad, double apartMm) {
  /** A stock that lies worse than this is laid again: common sense, no published value. */
  public static final double MOST_RAD = Math.toRadians(3);

  /** Places nearer to each other than this tell no angle that is worth turning by. */
  public static final double LEAST_APART_MM = 50;

  /** What a touched place may be wrong by; common practice with an edge finder or a pin. */
  public static final double TOUCH_MM = 0.1;

  /** An edge of the stock. */
  public enum Edge {
    FRONT,
    BACK,
    LEFT,
    RIGHT
  }

  /**
   * Finds the angle.
   *
   * @param one a place on the edge, in machine directions
   * @param other another one, on either side of it
   */
  public static Skew of(Edge edge, Point one, Point other) {
    boolean along = edge == Edge.FRONT || edge == Edge.BACK;
    boolean forward = along ? other.x() >= one.x() : other.y() >= one.y();
    Point run = forward ? other.minus(one) : one.minus(other);
    double angle = along ? StrictMath.atan2(run.y(), run.x()) : StrictMath.atan2(-run.x(), run.y());
    return new Skew(angle, run.norm());
  }

  /** How far a place of the stock is off if one of the two was touched wrong. */
  public double errorMm(double fromZeroMm) {
    return TOUCH_MM * fromZeroMm / apartMm;
  }
}
