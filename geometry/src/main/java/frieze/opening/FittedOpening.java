package frieze.opening;

import frieze.curve.Point;
import java.util.List;

/**
 * The outline that agrees best with what was measured.
 *
 * @param corners lower left (the origin), lower right (on the X axis), upper right, upper left
 * @param bowMm how far the top rail stands above the straight line between its corners in its
 *     middle; below 0 it hangs into the opening. The bow of both rails together: heights can't tell
 *     which of them bows.
 * @param residuals each measurement, what the outline gives, and what the tape said
 * @param misfitMm the root of the residuals' squares over the measurements that are to spare; 0 if
 *     none is
 * @param spare how many measurements are more than needed
 * @param squareUncertaintyMm the standard uncertainty of {@link #outOfSquareLeftMm}
 */
public record FittedOpening(
    List<Point> corners,
    double bowMm,
    List<Residual> residuals,
    double misfitMm,
    int spare,
    double squareUncertaintyMm) {
  /** One measurement. */
  public record Residual(String name, double outlineMm, double tapeMm) {
    /** How much longer the tape said it is. */
    public double differenceMm() {
      return tapeMm - outlineMm;
    }
  }

  public FittedOpening {
    corners = List.copyOf(corners);
    residuals = List.copyOf(residuals);
  }

  /** An opening that is taken for a rectangle because no more of it was measured. */
  public static FittedOpening rectangle(double widthMm, double heightMm) {
    return new FittedOpening(
        List.of(
            Point.ORIGIN,
            new Point(widthMm, 0),
            new Point(widthMm, heightMm),
            new Point(0, heightMm)),
        0,
        List.of(),
        0,
        0,
        0);
  }

  /** Whether more than a width and a height was measured. */
  public boolean measured() {
    return !residuals.isEmpty();
  }

  /** How far the upper left corner leans to the right of the square through the lower one. */
  public double outOfSquareLeftMm() {
    return corners.get(3).x();
  }

  /** The same for the right side. */
  public double outOfSquareRightMm() {
    return corners.get(2).x() - corners.get(1).x();
  }

  /** The width of the largest upright rectangle between the two sides. */
  public double clearWidthMm() {
    return Math.min(corners.get(1).x(), corners.get(2).x())
        - Math.max(corners.get(0).x(), corners.get(3).x());
  }

  /** The height of the largest such rectangle below the top rail and its bow. */
  public double clearHeightMm() {
    return Math.min(corners.get(2).y(), corners.get(3).y()) + Math.min(0, bowMm);
  }

  /** The measurement that disagrees most. */
  public Residual worst() {
    return residuals.stream()
        .max(java.util.Comparator.comparingDouble(r -> Math.abs(r.differenceMm())))
        .orElseThrow();
  }
}
