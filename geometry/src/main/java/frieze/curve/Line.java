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

  /** Where the point nearest to a place lies: 0 for the start, 1 for the end; 0 on a point. */
  public double nearestAt(Point place) {
    Point along = end.minus(start);
    double square = along.dot(along);
    return square == 0 ? 0 : Math.max(0, Math.min(1, place.minus(start).dot(along) / square));
  }

  /** The distance of a place from the nearest point. */
  public double distance(Point place) {
    return place.distance(at(nearestAt(place)));
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
