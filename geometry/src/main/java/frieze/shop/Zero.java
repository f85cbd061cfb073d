package frieze.shop;

/**
 * Where the operator sets zero on the stock.
 *
 * @param skewRad how far the stock lies turned on the machine, counter-clockwise: the programs are
 *     turned with it, about their zero
 * @param pushedMm how far to the right of that place zero lies, because the stock has been pushed
 *     to the left under it since
 */
public record Zero(AlongX x, AlongY y, AlongZ z, double skewRad, double pushedMm) {
  public static final Zero LEFT_FRONT_TOP = new Zero(AlongX.LEFT, AlongY.FRONT, AlongZ.TOP);

  /** A zero on a stock that lies square to the machine and has not been pushed. */
  public Zero(AlongX x, AlongY y, AlongZ z) {
    this(x, y, z, 0, 0);
  }

  /** The same on a stock that lies turned. */
  public Zero skewed(double newSkewRad) {
    return new Zero(x, y, z, newSkewRad, pushedMm);
  }

  /** The same place on the machine, after the stock has been pushed to the left. */
  public Zero pushed(double byMm) {
    return new Zero(x, y, z, skewRad, pushedMm + byMm);
  }

  /** The place along the length. */
  public enum AlongX {
    LEFT,
    CENTRE,
    RIGHT
  }

  /** The place across. */
  public enum AlongY {
    FRONT,
    CENTRE,
    BACK
  }

  /** The height. */
  public enum AlongZ {
    /** On top of the stock. */
    TOP,
    /** On the bed that the stock lies on. */
    BED
  }
}
