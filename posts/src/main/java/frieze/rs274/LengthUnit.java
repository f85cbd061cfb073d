package frieze.rs274;

/** What a bare length in a program means. */
public enum LengthUnit {
  INCH(25.4),
  MILLIMETRE(1);

  private final double mm;

  LengthUnit(double mm) {
    this.mm = mm;
  }

  /** How many millimetres one of these is. */
  public double mm() {
    return mm;
  }
}
