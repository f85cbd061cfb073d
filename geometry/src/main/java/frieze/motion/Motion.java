package frieze.motion;

/** The path of one move: a straight line, or an arc that may climb along its axis (a helix). */
public sealed interface Motion {
  Position from();

  Position to();

  /** The length of the path in space. */
  double lengthMm();

  /** The position at a fraction 0..1 of the length. */
  Position at(double fraction);

  /** The exact extent of the path. */
  Box box();

  <R> R accept(Visitor<R> visitor);

  /** One case for each kind of path. */
  interface Visitor<R> {
    R straight(Straight straight);

    R turn(Turn turn);
  }

  /** A straight line. */
  record Straight(Position from, Position to) implements Motion {
    @Override
    public double lengthMm() {
      return from.distance(to);
    }

    @Override
    public Position at(double fraction) {
      return new Position(
          from.x() + (to.x() - from.x()) * fraction,
          from.y() + (to.y() - from.y()) * fraction,
          from.z() + (to.z() - from.z()) * fraction);
    }

    @Override
    public Box box() {
      return Box.of(from).with(to);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.straight(this);
    }
  }

  /**
   * An arc or a helix.
   *
   * @param centreU the centre along the plane's first axis
   * @param centreV the centre along the plane's second axis
   * @param sweepRad the angle travelled, positive counter-clockwise; more than a full turn is
   *     several turns
   */
  record Turn(
      Position from, Position to, Plane plane, double centreU, double centreV, double sweepRad)
      implements Motion {

    public Turn {
      if (!Double.isFinite(sweepRad) || sweepRad == 0) {
        throw new IllegalArgumentException("sweepRad must be finite and not 0 but was " + sweepRad);
      }
    }

    /** The mean of the radii at start and end. */
    public double radiusMm() {
      return (startRadiusMm() + endRadiusMm()) / 2;
    }

    public double startRadiusMm() {
      return radiusAt(from);
    }

    public double endRadiusMm() {
      return radiusAt(to);
    }

    private double radiusAt(Position p) {
      double u = p.get(plane.first()) - centreU;
      double v = p.get(plane.second()) - centreV;
      return Math.sqrt(u * u + v * v);
    }

    public double startAngleRad() {
      return StrictMath.atan2(
          from.get(plane.second()) - centreV, from.get(plane.first()) - centreU);
    }

    @Override
    public double lengthMm() {
      double along = to.get(plane.normal()) - from.get(plane.normal());
      double around = radiusMm() * sweepRad;
      return Math.sqrt(around * around + along * along);
    }

    @Override
    public Position at(double fraction) {
      if (fraction == 0) {
        return from;
      }
      if (fraction == 1) {
        return to;
      }
      double r = startRadiusMm() + (endRadiusMm() - startRadiusMm()) * fraction;
      double angle = startAngleRad() + sweepRad * fraction;
      double w0 = from.get(plane.normal());
      double w = w0 + (to.get(plane.normal()) - w0) * fraction;
      return plane.position(
          centreU + r * StrictMath.cos(angle), centreV + r * StrictMath.sin(angle), w);
    }

    @Override
    public Box box() {
      Box box = Box.of(from).with(to);
      double start = startAngleRad();
      double low = Math.min(start, start + sweepRad);
      double high = Math.max(start, start + sweepRad);
      long firstQuarter = (long) Math.ceil(low / (Math.PI / 2));
      for (long q = firstQuarter; q < firstQuarter + 4 && q * (Math.PI / 2) < high; q++) {
        box = box.with(quarterPoint((int) Math.floorMod(q, 4L)));
      }
      return box;
    }

    private Position quarterPoint(int quarter) {
      double r = radiusMm();
      double w = from.get(plane.normal());
      return switch (quarter) {
        case 0 -> plane.position(centreU + r, centreV, w);
        case 1 -> plane.position(centreU, centreV + r, w);
        case 2 -> plane.position(centreU - r, centreV, w);
        default -> plane.position(centreU, centreV - r, w);
      };
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.turn(this);
    }
  }
}
