package frieze.artwork;

import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Path;
import frieze.curve.Point;
import java.util.List;
import java.util.Optional;

/**
 * How a line is drawn along its centre.
 *
 * @param width of the pen, in the pen's own units; 0 for a bare line, as in a technical drawing
 * @param miterLimit longest mitre, as a multiple of the width
 * @param dashes lengths of dashes and gaps in turn, in the pen's units; empty for a whole line
 * @param dashOffset where in the pattern the line starts, in the pen's units
 * @param pen from the pen's units to millimetres; a pen that is not a similarity draws thick and
 *     thin
 * @param parts of the width, at even steps along the one line of its piece, for a line drawn thick
 *     and thin; empty where it is as wide all along
 */
public record Stroke(
    double width,
    Cap cap,
    Join join,
    double miterLimit,
    List<Double> dashes,
    double dashOffset,
    Affine pen,
    List<Double> parts) {
  /** What SVG starts with. Source: SVG 1.1, 11.4. */
  private static final double USUAL_MITER_LIMIT = 4;

  /** A line that has a place but no width. */
  public static final Stroke BARE = plain(0);

  public Stroke {
    dashes = List.copyOf(dashes);
    parts = List.copyOf(parts);
    if (parts.size() == 1 || parts.stream().anyMatch(p -> !(p >= 0 && p <= 1))) {
      throw new IllegalArgumentException("parts must be two or more of 0..1 but were " + parts);
    }
  }

  /** A line as wide all along. */
  public Stroke(
      double width,
      Cap cap,
      Join join,
      double miterLimit,
      List<Double> dashes,
      double dashOffset,
      Affine pen) {
    this(width, cap, join, miterLimit, dashes, dashOffset, pen, List.of());
  }

  /** This line drawn thick and thin. */
  public Stroke varying(List<Double> partsOfWidth) {
    return new Stroke(width, cap, join, miterLimit, dashes, dashOffset, pen, partsOfWidth);
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

  /**
   * What a line without length leaves: a disc or a square along the pen's X, nothing where the line
   * ends flat. <i>Source:</i> SVG 2, 13.5.
   *
   * @param at in millimetres
   */
  public Optional<Path> dot(Point at) {
    double half = width / 2;
    Affine place = pen.then(Affine.translation(at.x(), at.y()));
    return switch (half > 0 ? cap : Cap.BUTT) {
      case BUTT -> Optional.empty();
      case ROUND -> {
        Arc turn = Arc.polar(Point.ORIGIN, half, 0, 2 * Math.PI);
        yield Optional.of(new Path(List.of(turn), true).transformed(place));
      }
      case SQUARE -> {
        List<Point> corners =
            List.of(
                new Point(-half, -half),
                new Point(half, -half),
                new Point(half, half),
                new Point(-half, half));
        yield Optional.of(Path.polyline(corners, true).transformed(place));
      }
    };
  }

  /** The mean width in millimetres. */
  public double widthMm() {
    return width * pen.scale();
  }

  /** The same stroke after its drawing was mapped. */
  public Stroke transformed(Affine map) {
    Affine linear = new Affine(map.a(), map.b(), map.c(), map.d(), 0, 0);
    return new Stroke(width, cap, join, miterLimit, dashes, dashOffset, pen.then(linear), parts);
  }
}
