package frieze.curve;

/**
 * A piece of a circle.
 *
 * <p>Start and end are kept as given, so that neighbours join exactly; the radius is the mean of
 * their distances from the centre.
 *
 * @param sweepRad the angle travelled, positive counter-clockwise; at most a full turn
 */
public record Arc(Point start, Point end, Point centre, double sweepRad) implements Segment {
  /** A start and an end may disagree about the radius by this fraction of it, plus a picometre. */
  private static final double RADIUS_AGREEMENT = 1e-6;

  public Arc {
    if (!(Math.abs(sweepRad) <= 2 * Math.PI * (1 + 1e-12)) || sweepRad == 0) {
      throw new IllegalArgumentException("sweepRad must be in 0 .. 2 pi but was " + sweepRad);
    }
    double toStart = centre.distance(start);
    double toEnd = centre.distance(end);
    if (Math.abs(toStart - toEnd) > RADIUS_AGREEMENT * (toStart + toEnd) + 1e-9) {
      throw new IllegalArgumentException(
          "start and end radius must agree but were " + toStart + ", " + toEnd + " mm");
    }
  }

  /** An arc from its polar form. A full turn ends exactly where it starts. */
  public static Arc polar(Point centre, double radiusMm, double startRad, double sweepRad) {
    Point start = Point.polar(centre, radiusMm, startRad);
    boolean full = Math.abs(sweepRad) >= 2 * Math.PI * (1 - 1e-15);
    Point end = full ? start : Point.polar(centre, radiusMm, startRad + sweepRad);
    return new Arc(start, end, centre, sweepRad);
  }

  public double radius() {
    return (centre.distance(start) + centre.distance(end)) / 2;
  }

  public double length() {
    return radius() * Math.abs(sweepRad);
  }

  public boolean counterClockwise() {
    return sweepRad > 0;
  }

  public double startAngleRad() {
    return start.minus(centre).angleRad();
  }

  @Override
  public Point at(double t) {
    if (t == 0) {
      return start;
    }
    if (t == 1) {
      return end;
    }
    return Point.polar(centre, radius(), startAngleRad() + sweepRad * t);
  }

  @Override
  public Point tangentAt(double t) {
    Point outward = at(t).minus(centre);
    return new Point(-outward.y() * sweepRad, outward.x() * sweepRad);
  }

  @Override
  public Arc reversed() {
    return new Arc(end, start, centre, -sweepRad);
  }

  @Override
  public Segment transformed(Affine map) {
    if (map.isSimilarity()) {
      return new Arc(
          map.apply(start),
          map.apply(end),
          map.apply(centre),
          map.isMirroring() ? -sweepRad : sweepRad);
    }
    return new EllipticArc(
            start,
            end,
            centre,
            new Point(radius(), 0),
            new Point(0, radius()),
            startAngleRad(),
            sweepRad)
        .transformed(map);
  }

  @Override
  public Bounds bounds() {
    Bounds bounds = Bounds.of(start).with(end);
    double from = startAngleRad();
    for (int quarter = -6; quarter <= 6; quarter++) {
      double t = (quarter * Math.PI / 2 - from) / sweepRad;
      if (t > 0 && t < 1) {
        bounds = bounds.with(quarterPoint(quarter));
      }
    }
    return bounds;
  }

  private Point quarterPoint(int quarter) {
    double r = radius();
    return switch (Math.floorMod(quarter, 4)) {
      case 0 -> new Point(centre.x() + r, centre.y());
      case 1 -> new Point(centre.x(), centre.y() + r);
      case 2 -> new Point(centre.x() - r, centre.y());
      default -> new Point(centre.x(), centre.y() - r);
    };
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.arc(this);
  }
}
