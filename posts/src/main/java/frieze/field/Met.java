package frieze.field;

import frieze.curve.Point;

/**
 * The material that a move meets, or has taken.
 *
 * @param deepestMm the greatest thickness of it, straight down; 0 when nothing is met
 * @param place where that is, in the stock frame
 * @param standingMm the greatest height of it before the move, against the stock's top
 * @param volumeMm3 all of it
 */
public record Met(double deepestMm, Point place, double standingMm, double volumeMm3) {
  public static final Met NOTHING = new Met(0, Point.ORIGIN, Double.NEGATIVE_INFINITY, 0);

  public boolean isNothing() {
    return deepestMm == 0;
  }
}
