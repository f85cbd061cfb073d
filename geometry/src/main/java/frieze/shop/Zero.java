package frieze.shop;

/**
 * Where the operator sets zero on the stock.
 *
 * @param skewRad how far the stock lies turned on the machine, counter-clockwise: the programs are
 *     turned with it, about their zero
 */
public record Zero(AlongX x, AlongY y, AlongZ z, double skewRad) {
  /** A zero on a stock that lies square to the machine. */
  public Zero(AlongX x, AlongY y, AlongZ z) {
    this(x, y, z, 0);
  }

  /** The same on a stock that lies turned. */
  public Zero skewed(double newSkewRad) {
    return new Zero(x, y, z, newSkewRad);
  }

  public static final Zero LEFT_FRONT_TOP = new Zero(AlongX.LEFT, AlongY.FRONT, AlongZ.TOP);

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
