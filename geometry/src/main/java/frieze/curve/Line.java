package frieze.curve;

/** A straight piece. */
public record Line(Point start, Point end) implements Segment {
  public double length() {
    return start.distance(end);
  }

  @Override
  public Point at(double t) {
    return start.towards(end, t);
  }

  @Override
  public Point tangentAt(double t) {
    return end.minus(start);
  }

  @Override
  public Line reversed() {
    return new Line(end, start);
  }

  @Override
  public Line transformed(Affine map) {
    return new Line(map.apply(start), map.apply(end));
  }

  @Override
  public Bounds bounds() {
    return Bounds.of(start).with(end);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.line(this);
  }
}
