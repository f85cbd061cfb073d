package frieze.artwork.look;

import frieze.curve.Point;

/**
 * A place where two walls are near each other.
 *
 * @param from on one wall
 * @param to on the other; the disc between them touches both and crosses no wall
 * @param widthMm of that disc
 */
public record Narrow(Point from, Point to, double widthMm) {
  /** The same in a drawing that is larger by a factor about the origin. */
  Narrow times(double factor) {
    return new Narrow(from.times(factor), to.times(factor), widthMm * factor);
  }

  public Point middle() {
    return from.towards(to, 0.5);
  }
}
