package frieze.design;

/** What becomes of the corner between a panel's face and its edge. Lengths in millimetres. */
public sealed interface EdgeShape {
  /** How far in from the edge the face is cut. */
  double widthMm();

  /** How far down from the face the edge is cut. */
  double downMm();

  /**
   * How deep it is below the face.
   *
   * @param insideMm the distance from the edge, 0 at the edge itself
   */
  double depthMm(double insideMm);

  /** A flat slope. */
  record Chamfer(double widthMm, double downMm) implements EdgeShape {
    public Chamfer {
      requirePositive("widthMm", widthMm);
      requirePositive("downMm", downMm);
    }

    @Override
    public double depthMm(double insideMm) {
      return Math.max(0, downMm * (1 - insideMm / widthMm));
    }
  }

  /** A quarter of a circle, which the face and the edge touch. */
  record Round(double radiusMm) implements EdgeShape {
    public Round {
      requirePositive("radiusMm", radiusMm);
    }

    @Override
    public double widthMm() {
      return radiusMm;
    }

    @Override
    public double downMm() {
      return radiusMm;
    }

    @Override
    public double depthMm(double insideMm) {
      double left = Math.max(0, radiusMm - insideMm);
      return radiusMm - Math.sqrt(Math.max(0, radiusMm * radiusMm - left * left));
    }
  }

  private static void requirePositive(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + value + " mm");
    }
  }
}
