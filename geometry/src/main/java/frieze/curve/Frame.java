package frieze.curve;

/**
 * The frames of reference in use. They are types only: no frame has a value.
 *
 * <p>All are in millimetres, X right, Y up, Z up.
 */
public interface Frame {
  /** A drawing at its own size and place, Y up. */
  interface Artwork extends Frame {}

  /**
   * A panel: origin at the lower left corner of the bounds of its outline, X along its length, seen
   * from the face that is worked.
   */
  interface Panel extends Frame {}

  /** The stock as it lies on the machine: origin at its left front corner, Z0 on its top. */
  interface Stock extends Frame {}

  /** A program: origin where the operator sets zero. */
  interface Program extends Frame {}

  /** The machine's own coordinates. */
  interface Machine extends Frame {}
}
