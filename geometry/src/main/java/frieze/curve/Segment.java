package frieze.curve;

/**
 * One smooth piece of a {@link Path}, exact as it was drawn.
 *
 * <p>Parameter {@code t} runs from 0 at the start to 1 at the end; it is the arc length fraction
 * only for lines and circular arcs.
 */
public sealed interface Segment permits Line, Arc, Cubic, EllipticArc {
  Point start();

  Point end();

  /** The point at parameter {@code t} in 0..1. */
  Point at(double t);

  /** The derivative by {@code t}; not of unit length. */
  Point tangentAt(double t);

  /** The same points, from end to start. */
  Segment reversed();

  /** The image under a map. Arcs stay {@link Arc}s under a similarity. */
  Segment transformed(Affine map);

  /** The exact bounds (for a cubic, to rounding). */
  Bounds bounds();

  <R> R accept(Visitor<R> visitor);

  /** One case for each kind of segment. */
  interface Visitor<R> {
    R line(Line line);

    R arc(Arc arc);

    R cubic(Cubic cubic);

    R ellipticArc(EllipticArc arc);
  }
}
