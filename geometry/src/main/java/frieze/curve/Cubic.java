package frieze.curve;

/** A cubic Bezier curve. Quadratic ones are raised to it, which is exact. */
public record Cubic(Point start, Point control1, Point control2, Point end) implements Segment {

  /** Raises a quadratic curve. Source: SVG 2, appendix on quadratic to cubic conversion. */
  public static Cubic fromQuadratic(Point start, Point control, Point end) {
    return new Cubic(start, start.towards(control, 2.0 / 3), end.towards(control, 2.0 / 3), end);
  }

  @Override
  public Point at(double t) {
    if (t == 0) {
      return start;
    }
    if (t == 1) {
      return end;
    }
    double s = 1 - t;
    double b0 = s * s * s;
    double b1 = 3 * s * s * t;
    double b2 = 3 * s * t * t;
    double b3 = t * t * t;
    return new Point(
        b0 * start.x() + b1 * control1.x() + b2 * control2.x() + b3 * end.x(),
        b0 * start.y() + b1 * control1.y() + b2 * control2.y() + b3 * end.y());
  }

  @Override
  public Point tangentAt(double t) {
    double s = 1 - t;
    Point d0 = control1.minus(start).times(3 * s * s);
    Point d1 = control2.minus(control1).times(6 * s * t);
    Point d2 = end.minus(control2).times(3 * t * t);
    return d0.plus(d1).plus(d2);
  }

  @Override
  public Cubic reversed() {
    return new Cubic(end, control2, control1, start);
  }

  @Override
  public Cubic transformed(Affine map) {
    return new Cubic(map.apply(start), map.apply(control1), map.apply(control2), map.apply(end));
  }

  @Override
  public Bounds bounds() {
    Bounds bounds = Bounds.of(start).with(end);
    bounds = withExtremes(bounds, start.x(), control1.x(), control2.x(), end.x());
    return withExtremes(bounds, start.y(), control1.y(), control2.y(), end.y());
  }

  /** Adds the points where one coordinate's derivative vanishes. */
  private Bounds withExtremes(Bounds bounds, double p0, double p1, double p2, double p3) {
    double a = p3 - 3 * p2 + 3 * p1 - p0;
    double b = 2 * (p2 - 2 * p1 + p0);
    double c = p1 - p0;
    double q = -0.5 * (b + Math.copySign(Math.sqrt(Math.max(0, b * b - 4 * a * c)), b));
    return withIfInside(withIfInside(bounds, q / a), c / q);
  }

  private Bounds withIfInside(Bounds bounds, double t) {
    return t > 0 && t < 1 ? bounds.with(at(t)) : bounds;
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.cubic(this);
  }
}
