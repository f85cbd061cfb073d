package frieze.artwork;

import frieze.curve.Affine;
import java.util.List;

/**
 * How a line is drawn along its centre.
 *
 * @param width of the pen, in the pen's own units; 0 for a bare line, as in a technical drawing
 * @param miterLimit longest mitre, as a multiple of the width
 * @param dashes lengths of dashes and gaps in turn, in the pen's units; empty for a whole line
 * @param dashOffset where in the pattern the line starts, in the pen's units
 * @param pen from the pen's units to millimetres; a pen that is not a similarity draws thick and
 *     thin
 */
public record Stroke(
    double width,
    Cap cap,
    Join join,
    double miterLimit,
    List<Double> dashes,
    double dashOffset,
    Affine pen) {
  /** What SVG starts with. Source: SVG 1.1, 11.4. */
  private static final double USUAL_MITER_LIMIT = 4;

  /** A line that has a place but no width. */
  public static final Stroke BARE = plain(0);

  public Stroke {
    dashes = List.copyOf(dashes);
  }

  /** How a line ends. */
  public enum Cap {
    BUTT,
    ROUND,
    SQUARE
  }

  /** How a line turns at a corner. */
  public enum Join {
    MITER,
    ROUND,
    BEVEL
  }

  /** A whole line of some width, with flat ends and mitred corners. */
  public static Stroke plain(double widthMm) {
    return new Stroke(
        widthMm, Cap.BUTT, Join.MITER, USUAL_MITER_LIMIT, List.of(), 0, Affine.IDENTITY);
  }

  /** The mean width in millimetres. */
  public double widthMm() {
    return width * pen.scale();
  }

  /** The same stroke after its drawing was mapped. */
  public Stroke transformed(Affine map) {
    Affine linear = new Affine(map.a(), map.b(), map.c(), map.d(), 0, 0);
    return new Stroke(width, cap, join, miterLimit, dashes, dashOffset, pen.then(linear));
  }
}
