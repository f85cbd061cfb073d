package frieze.shop;

/** The outline of a turning cutter. Diameters in millimetres, angles in radians. */
public sealed interface ToolShape {
  /** The largest diameter that cuts. */
  double diameterMm();

  /** The height above the tip of the cutting surface at a distance from the axis. */
  double heightAtMm(double radiusMm);

  <R> R accept(Visitor<R> visitor);

  /** One case for each shape. */
  interface Visitor<R> {
    R flat(Flat flat);

    R ball(Ball ball);

    R vee(Vee vee);

    R tapered(Tapered tapered);

    R drill(Drill drill);

    R roundOver(RoundOver roundOver);
  }

  /** A straight bit with a flat end. */
  record Flat(double diameterMm) implements ToolShape {
    public Flat {
      requirePositive("diameterMm", diameterMm);
    }

    @Override
    public double heightAtMm(double radiusMm) {
      return 0;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.flat(this);
    }
  }

  /** A round-nosed bit: a half ball below a cylinder. */
  record Ball(double diameterMm) implements ToolShape {
    public Ball {
      requirePositive("diameterMm", diameterMm);
    }

    @Override
    public double heightAtMm(double radiusMm) {
      double r = diameterMm / 2;
      return r - Math.sqrt(Math.max(0, r * r - radiusMm * radiusMm));
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.ball(this);
    }
  }

  /**
   * A V-bit.
   *
   * @param angleRad the full included angle, above 0 and below pi
   * @param tipMm the diameter of the flat at the tip; 0 for a point
   */
  record Vee(double diameterMm, double angleRad, double tipMm) implements ToolShape {
    public Vee {
      requirePositive("diameterMm", diameterMm);
      requireAngle(angleRad);
      if (!(tipMm >= 0 && tipMm < diameterMm)) {
        throw new IllegalArgumentException(
            "tipMm must be >= 0 and below the diameter but was " + tipMm + " mm");
      }
    }

    /** By how much a groove gets wider for each millimetre that the bit goes deeper. */
    public double widensBy() {
      return 2 * StrictMath.tan(angleRad / 2);
    }

    @Override
    public double heightAtMm(double radiusMm) {
      return Math.max(0, radiusMm - tipMm / 2) / StrictMath.tan(angleRad / 2);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.vee(this);
    }
  }

  /**
   * A bit that widens from a ball tip.
   *
   * @param angleRad the full included angle of the taper
   * @param tipMm the diameter of the ball at the tip
   */
  record Tapered(double diameterMm, double angleRad, double tipMm) implements ToolShape {
    public Tapered {
      requirePositive("diameterMm", diameterMm);
      requireAngle(angleRad);
      requirePositive("tipMm", tipMm);
    }

    @Override
    public double heightAtMm(double radiusMm) {
      double r = tipMm / 2;
      double half = angleRad / 2;
      double touch = r * StrictMath.cos(half);
      if (radiusMm <= touch) {
        return r - Math.sqrt(Math.max(0, r * r - radiusMm * radiusMm));
      }
      return r - r * StrictMath.sin(half) + (radiusMm - touch) / StrictMath.tan(half);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.tapered(this);
    }
  }

  /**
   * A twist drill.
   *
   * @param angleRad the full point angle
   */
  record Drill(double diameterMm, double angleRad) implements ToolShape {
    public Drill {
      requirePositive("diameterMm", diameterMm);
      requireAngle(angleRad);
    }

    @Override
    public double heightAtMm(double radiusMm) {
      return radiusMm / StrictMath.tan(angleRad / 2);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.drill(this);
    }
  }

  /**
   * A bit that rounds an edge over: above a flat tip its cutting edges are hollow, a quarter of a
   * circle that begins upright at the tip's rim and ends level.
   *
   * @param tipMm the diameter of the flat at the tip
   * @param cornerMm the radius of the quarter round that it leaves
   */
  record RoundOver(double tipMm, double cornerMm) implements ToolShape {
    public RoundOver {
      requirePositive("tipMm", tipMm);
      requirePositive("cornerMm", cornerMm);
    }

    @Override
    public double diameterMm() {
      return tipMm + 2 * cornerMm;
    }

    @Override
    public double heightAtMm(double radiusMm) {
      double over = Math.max(0, Math.min(radiusMm - tipMm / 2, cornerMm));
      return Math.sqrt(over * (2 * cornerMm - over));
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.roundOver(this);
    }
  }

  private static void requirePositive(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + value + " mm");
    }
  }

  private static void requireAngle(double angleRad) {
    if (!(angleRad > 0 && angleRad <= Math.PI)) {
      throw new IllegalArgumentException("angleRad must be in 0 .. pi but was " + angleRad);
    }
  }
}
