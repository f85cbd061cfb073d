package frieze.torch;

import frieze.curve.Affine;
import frieze.curve.Point;

/**
 * A stub of metal left across the kerf between a piece and what is around it, in the panel frame.
 *
 * @param at its middle, on the way of the torch's axis
 * @param inside a place a kerf away from it, on the side of the piece that it keeps
 * @param outside a place a kerf away on the other side
 * @param widthMm after the cut
 */
public record Joint(Point at, Point inside, Point outside, double widthMm) {
  /** The same elsewhere; the map must keep lengths. */
  Joint transformed(Affine map) {
    return new Joint(map.apply(at), map.apply(inside), map.apply(outside), widthMm);
  }
}
