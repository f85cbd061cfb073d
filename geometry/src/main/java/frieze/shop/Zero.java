package frieze.shop;

/** Where the operator sets zero on the stock. */
public record Zero(AlongX x, AlongY y, AlongZ z) {
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
