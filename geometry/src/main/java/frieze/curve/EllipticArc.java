package frieze.curve;

/**
 * A piece of an ellipse: {@code centre + u cos(a) + v sin(a)}, where the angle {@code a} runs from
 * {@code startRad} by {@code sweepRad}.
 *
 * @param u one of two conjugate radii (they need not be perpendicular)
 * @param v the other one
 * @param startRad the parameter at the start, not a direction in the plane
 * @param sweepRad the change of the parameter, at most a full turn
 */
public record EllipticArc(
    Point start, Point end, Point centre, Point u, Point v, double startRad, double sweepRad)
    implements Segment {

  public EllipticArc {
    if (!(Math.abs(sweepRad) <= 2 * Math.PI * (1 + 1e-12)) || sweepRad == 0) {
      throw new IllegalArgumentException("sweepRad must be in 0 .. 2 pi but was " + sweepRad);
    }
  }

  @Override
  public Point at(double t) {
    if (t == 0) {
      return start;
    }
    return t == 1 ? end : atAngle(startRad + sweepRad * t);
  }

  private Point atAngle(double angle) {
    return centre.plus(u.times(StrictMath.cos(angle))).plus(v.times(StrictMath.sin(angle)));
  }

  @Override
  public Point tangentAt(double t) {
    double angle = startRad + sweepRad * t;
    return v.times(StrictMath.cos(angle)).minus(u.times(StrictMath.sin(angle))).times(sweepRad);
  }

  /** Half of the larger axis, in millimetres. */
  public double largestRadius() {
    double sum = u.dot(u) + v.dot(v);
    double difference = u.dot(u) - v.dot(v);
    return Math.sqrt((sum + Math.hypot(difference, 2 * u.dot(v))) / 2);
  }

  @Override
  public EllipticArc reversed() {
    return new EllipticArc(end, start, centre, u, v, startRad + sweepRad, -sweepRad);
  }

  @Override
  public EllipticArc transformed(Affine map) {
    return new EllipticArc(
        map.apply(start),
        map.apply(end),
        map.apply(centre),
        map.applyToDirection(u),
        map.applyToDirection(v),
        startRad,
        sweepRad);
  }

  @Override
  public Bounds bounds() {
    Bounds bounds = Bounds.of(start).with(end);
    bounds = withExtremes(bounds, StrictMath.atan2(v.x(), u.x()));
    return withExtremes(bounds, StrictMath.atan2(v.y(), u.y()));
  }

  /** Adds the points half a turn apart at which one coordinate is at its limit. */
  private Bounds withExtremes(Bounds bounds, double extremeRad) {
    Bounds result = bounds;
    double least = Math.min(startRad, startRad + sweepRad);
    double first = Math.ceil((least - extremeRad) / Math.PI);
    for (int half = 0; half <= 2; half++) {
      double angle = extremeRad + (first + half) * Math.PI;
      double t = (angle - startRad) / sweepRad;
      if (t > 0 && t < 1) {
        result = result.with(atAngle(angle));
      }
    }
    return result;
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.ellipticArc(this);
  }
}
