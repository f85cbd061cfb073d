package frieze.opening;

import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;

/**
 * Finds the outline that agrees best with what was measured, by least squares.
 *
 * <p><em>Approximation:</em> sides are straight but for the top, a parabola; a rail's length is its
 * chord.
 */
public final class OpeningFitter {
  /** A tape that disagrees by more than this many of its uncertainties contradicts itself. */
  public static final double CONTRADICTION = 3;

  private static final int MOST_STEPS = 200;
  private static final double STEP_MM = 1e-4;
  private static final double SINGULAR = 1e-12;

  private final Measured measured;
  private final int unknowns;
  private final List<String> names = new ArrayList<>(List.of("bottom", "right", "top", "left"));
  private final double[] tape;

  private OpeningFitter(Measured measured) {
    this.measured = measured;
    this.unknowns = measured.heights().isEmpty() ? 5 : 6;
    List<Double> values = new ArrayList<>(measured.sidesMm());
    names.addAll(List.of("diagonal from lower left", "diagonal from lower right"));
    values.addAll(measured.diagonalsMm());
    for (Measured.Station station : measured.heights()) {
      names.add("height " + (names.size() - 5));
      values.add(station.heightMm());
    }
    this.tape = values.stream().mapToDouble(v -> v).toArray();
  }

  /**
   * Fits.
   *
   * @throws frieze.diagnostic.BadInputException if the tape contradicts itself, naming the
   *     measurement and by how much
   */
  public static FittedOpening fit(Measured measured, SourceSpan where) {
    FittedOpening fitted = new OpeningFitter(measured).solve();
    double limitMm = CONTRADICTION * measured.tapeMm();
    if (fitted.misfitMm() > limitMm || Math.abs(fitted.worst().differenceMm()) > limitMm) {
      Diagnostics found = new Diagnostics();
      found.error(
          OpeningCode.CONTRADICTION,
          where,
          "the measurements contradict each other: the "
              + fitted.worst().name()
              + " is off the best outline by "
              + Amounts.length(Math.abs(fitted.worst().differenceMm()))
              + ", the misfit is "
              + Amounts.length(fitted.misfitMm())
              + "; with this tape up to "
              + Amounts.length(limitMm)
              + " is believed",
          "measure that one again, then both diagonals");
      found.throwIfErrors();
    }
    return fitted;
  }

  private FittedOpening solve() {
    List<Double> sides = measured.sidesMm();
    double[] start = new double[unknowns];
    start[0] = sides.get(0);
    start[1] = sides.get(0);
    start[2] = sides.get(1);
    start[4] = sides.get(3);
    Optimum best =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .model(this::predicted, this::jacobian)
                    .target(tape)
                    .start(start)
                    .maxEvaluations(MOST_STEPS)
                    .maxIterations(MOST_STEPS)
                    .build());
    double[] p = best.getPoint().toArray();
    double[] outline = predicted(p);
    List<FittedOpening.Residual> residuals = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < tape.length; i++) {
      residuals.add(new FittedOpening.Residual(names.get(i), outline[i], tape[i]));
      sum += (tape[i] - outline[i]) * (tape[i] - outline[i]);
    }
    int spare = tape.length - unknowns;
    RealMatrix covariance = best.getCovariances(SINGULAR);
    return new FittedOpening(
        corners(p),
        bow(p),
        residuals,
        spare > 0 ? Math.sqrt(sum / spare) : 0,
        spare,
        measured.tapeMm() * Math.sqrt(covariance.getEntry(3, 3)));
  }

  private static List<Point> corners(double[] p) {
    return List.of(
        new Point(0, 0), new Point(p[0], 0), new Point(p[1], p[2]), new Point(p[3], p[4]));
  }

  private static double bow(double[] p) {
    return p.length > 5 ? p[5] : 0;
  }

  /** What a perfect tape would say, in the order of the names. */
  private double[] predicted(double[] p) {
    List<Point> c = corners(p);
    double[] result = new double[tape.length];
    for (int side = 0; side < 4; side++) {
      result[side] = distance(c.get(side), c.get((side + 1) % 4));
    }
    result[4] = diagonal(c, 0);
    result[5] = diagonal(c, 1);
    for (int i = 6; i < result.length; i++) {
      double x = measured.heights().get(i - 6).fromLeftMm();
      double t = (x - p[3]) / (p[1] - p[3]);
      result[i] = p[4] + t * (p[2] - p[4]) + 4 * bow(p) * t * (1 - t);
    }
    return result;
  }

  private double diagonal(List<Point> c, int from) {
    if (measured.marksMm() > 0) {
      return distance(mark(c, from), mark(c, from + 2));
    }
    double radius = measured.diagonalsIntoBead() ? measured.beadRadiusMm() : 0;
    return distance(centre(c, from, radius), centre(c, from + 2, radius)) + 2 * radius;
  }

  /** The mark near a corner, on the bottom or the top rail. */
  private Point mark(List<Point> c, int corner) {
    Point other = c.get(corner < 2 ? 1 - corner : 5 - corner);
    double length = distance(c.get(corner), other);
    return c.get(corner).towards(other, measured.marksMm() / length);
  }

  /** The centre of the bead in a corner: its radius away from both sides. */
  private static Point centre(List<Point> c, int corner, double radius) {
    Point at = c.get(corner);
    Point next = c.get((corner + 1) % 4);
    Point last = c.get((corner + 3) % 4);
    double a = distance(at, next);
    double b = distance(at, last);
    double ux = (next.x() - at.x()) / a;
    double uy = (next.y() - at.y()) / a;
    double vx = (last.x() - at.x()) / b;
    double vy = (last.y() - at.y()) / b;
    double k = radius / (ux * vy - uy * vx);
    return new Point(at.x() + k * (ux + vx), at.y() + k * (uy + vy));
  }

  private double[][] jacobian(double[] p) {
    double[][] rows = new double[tape.length][p.length];
    for (int j = 0; j < p.length; j++) {
      double[] more = p.clone();
      double[] less = p.clone();
      more[j] += STEP_MM;
      less[j] -= STEP_MM;
      double[] high = predicted(more);
      double[] low = predicted(less);
      for (int i = 0; i < tape.length; i++) {
        rows[i][j] = (high[i] - low[i]) / (2 * STEP_MM);
      }
    }
    return rows;
  }

  private static double distance(Point a, Point b) {
    return Math.hypot(b.x() - a.x(), b.y() - a.y());
  }
}
