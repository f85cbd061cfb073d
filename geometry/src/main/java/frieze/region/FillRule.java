package frieze.region;

/** Which points lie inside a set of closed paths. Source: SVG 1.1, 11.3. */
public enum FillRule {
  /** The winding number is not 0. */
  NONZERO,
  /** A ray to infinity crosses the paths an odd number of times. */
  EVEN_ODD
}
