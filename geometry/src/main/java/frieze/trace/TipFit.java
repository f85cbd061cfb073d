package frieze.trace;

import frieze.curve.Bounds;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Finds the tip that, drawn and blurred as the picture is, agrees best with the ink around it.
 *
 * <p>The line of half ink turns round long before a narrow tip ends, so that it does not tell a
 * blunt tip from a sharp one. All pixels around the tip together do: a sharp one, one cut off
 * square and a rounded one are fitted to them by least squares. A tip is sharp unless another
 * ending explains the ink better by more than noise does.
 *
 * <p><i>Guarantees:</i> none for sides that do not bend evenly; {@link #isGood} tells.
 */
final class TipFit {
  /** So far along the sides pixels are looked at. */
  static final double ALONG_PX = 14;

  /** A tip that is blurred more hardly shows within {@link #ALONG_PX}, and takes long. */
  private static final double MOST_BLUR_PX = 2;

  /** So far beside the outline, in blurs. */
  private static final double BESIDE = 2.5;

  private static final double LEAST_BESIDE_PX = 1.5;

  private static final double MARGIN = 4;
  private static final int MOST_STEPS = 60;
  private static final double SMALL = 1e-3;
  private static final double CLOSE = 1e-4;
  private static final double[] MISSING_PX = {2, 5};

  /** What is left may be so many times the noise. */
  private static final double MOST_LEFT = 1.25;

  /** The least noise: shades, and the rounding of the picture. */
  private static final double LEAST_NOISE = 0.01;

  /** The squares of the deviations, in those of the noise, that another ending must save. */
  private static final double SAVED = 16;

  /** A narrow tip is much longer if it is sharp, so that less has to tell against that. */
  private static final double SAVED_IF_NARROW = 9;

  /** A sharp tip that leaves no more than this is chosen whatever another ending would leave. */
  private static final double LEAST_SAVED = Math.min(SAVED, SAVED_IF_NARROW);

  private static final double NARROW_RAD = Math.toRadians(60);

  /** What a rounded one must save beyond one cut off square. */
  private static final double TELLS = 4;

  /** To leave less than this part of the contrast is good in any picture. */
  private static final double ALWAYS_GOOD = 0.015;

  /** Where a sharp tip leaves so much of the contrast, there is no tip at all. */
  private static final double HOPELESS = 0.2;

  private final GreyImage ink;
  private final double sigma;
  private final double noise;
  private final TipBudget budget;

  /**
   * @param ink the share of ink as it was photographed
   * @param sigmaPx the blur of its edges, with that by the area of a pixel
   * @param noise of its values
   * @param budget of the whole picture
   */
  TipFit(GreyImage ink, double sigmaPx, double noise, TipBudget budget) {
    this.budget = budget;
    this.ink = ink;
    this.sigma = sigmaPx;
    this.noise = Math.max(LEAST_NOISE, noise);
  }

  /** Whether tips can be told from ink that is blurred so much. */
  static boolean isOfUse(double sigmaPx) {
    return sigmaPx <= MOST_BLUR_PX;
  }

  /**
   * A tip and by how much it leaves the ink.
   *
   * @param squares the sum of the squares of what is left, in those of the noise
   * @param pixels how many were looked at
   */
  record Fit(TipShape shape, double squares, int pixels) {
    double unexplained() {
      return squares / pixels;
    }
  }

  /**
   * Fits a tip; nothing where too little is seen of it, or many were fitted before.
   *
   * @param start where its sides seem to meet, their directions away from there and their bends, in
   *     the order of {@link TipShape}
   * @param seen the outline around the tip
   */
  Optional<Fit> fit(double[] start, List<Point> seen) {
    Pixels pixels = pixels(seen);
    if (pixels.count() <= 2 * TipShape.count(TipShape.Ending.CUT) || !budget.take(1)) {
      return Optional.empty();
    }
    List<Fit> fits = new ArrayList<>();
    best(pixels, TipShape.Ending.SHARP, start).ifPresent(fits::add);
    if (fits.stream().allMatch(this::mayBeBlunt)) {
      if (!budget.take(2 * MISSING_PX.length)) {
        return Optional.empty();
      }
      best(pixels, TipShape.Ending.CUT, start).ifPresent(fits::add);
      best(pixels, TipShape.Ending.ROUND, start).ifPresent(fits::add);
    }
    return chosen(fits);
  }

  /** Whether another ending could be chosen before a sharp one, and be good. */
  private boolean mayBeBlunt(Fit sharp) {
    return sharp.squares() > LEAST_SAVED && noise * Math.sqrt(sharp.unexplained()) < HOPELESS;
  }

  /** The simplest that explains the ink as well as any; where none does, noise is what is left. */
  private Optional<Fit> chosen(List<Fit> fits) {
    double least = fits.stream().mapToDouble(Fit::unexplained).min().orElse(1);
    double scale = Math.max(1, least);
    return fits.stream().min(Comparator.comparingDouble(f -> f.squares() / scale + handicap(f)));
  }

  private static double handicap(Fit fit) {
    double saved = fit.shape().angle() < NARROW_RAD ? SAVED_IF_NARROW : SAVED;
    return switch (fit.shape().ending()) {
      case SHARP -> 0;
      case CUT -> saved;
      case ROUND -> saved + TELLS;
    };
  }

  /** Whether a tip leaves no more of the ink than noise may. */
  boolean isGood(Fit fit) {
    return noise * Math.sqrt(fit.unexplained()) <= Math.max(MOST_LEFT * noise, ALWAYS_GOOD);
  }

  /** The pixels near an outline: their ink by the noise, and where they are in a window. */
  private static final class Pixels {
    private final int x0;
    private final int y0;
    private final int width;
    private final int height;
    private final int[] at;
    private final double[] values;

    Pixels(int x0, int y0, int width, int height, int[] at, GreyImage ink, double noise) {
      this.x0 = x0;
      this.y0 = y0;
      this.width = width;
      this.height = height;
      this.at = at;
      this.values = new double[at.length];
      for (int i = 0; i < at.length; i++) {
        int row = at[i] / width;
        values[i] = ink.at(x0 + at[i] % width, ink.height() - 1 - (y0 + row), 0) / noise;
      }
    }

    int count() {
      return at.length;
    }

    double farthest(Point from) {
      double most = 0;
      for (int i : at) {
        int row = i / width;
        most = Math.max(most, from.distance(new Point(x0 + i % width + 0.5, y0 + row + 0.5)));
      }
      return most;
    }
  }

  private Pixels pixels(List<Point> seen) {
    Bounds b = Bounds.EMPTY;
    for (Point p : seen) {
      b = b.with(p);
    }
    double beside = Math.max(LEAST_BESIDE_PX, BESIDE * sigma);
    int margin = (int) Math.ceil(beside + MARGIN * sigma);
    int x0 = (int) Math.floor(b.minX()) - margin;
    int y0 = (int) Math.floor(b.minY()) - margin;
    int width = (int) Math.ceil(b.maxX()) + margin - x0;
    int height = (int) Math.ceil(b.maxY()) + margin - y0;
    List<Integer> near = new ArrayList<>();
    for (int i = 0; i < width * height; i++) {
      int row = i / width;
      Point p = new Point(x0 + i % width + 0.5, y0 + row + 0.5);
      if (seen.stream().anyMatch(s -> s.distance(p) <= beside)) {
        near.add(i);
      }
    }
    int[] at = near.stream().mapToInt(i -> i).toArray();
    return new Pixels(x0, y0, width, height, at, ink, noise);
  }

  private Optional<Fit> best(Pixels pixels, TipShape.Ending ending, double[] start) {
    Optional<Fit> best = Optional.empty();
    for (double missing : MISSING_PX) {
      double[] from = new double[TipShape.count(ending)];
      System.arraycopy(start, 0, from, 0, Math.min(start.length, from.length));
      if (from.length > TipShape.MISSING) {
        from[TipShape.MISSING] = missing;
      } else if (best.isPresent()) {
        break;
      }
      Optional<Fit> fit = solved(pixels, ending, from);
      if (fit.isPresent() && (best.isEmpty() || fit.get().squares() < best.get().squares())) {
        best = fit;
      }
    }
    return best;
  }

  private Optional<Fit> solved(Pixels pixels, TipShape.Ending ending, double[] start) {
    double optics = Math.sqrt(Math.max(0, sigma * sigma - 1 / 12.0));
    InkWindow window =
        new InkWindow(pixels.x0, pixels.y0, pixels.width, pixels.height, optics, pixels.at);
    double reach = pixels.farthest(new Point(start[0], start[1])) + MARGIN * sigma;
    Model model = new Model(ending, window, reach, noise);
    try {
      Optimum found =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(CLOSE)
              .withParameterRelativeTolerance(CLOSE)
              .optimize(
                  new LeastSquaresBuilder()
                      .model(model)
                      .lazyEvaluation(true)
                      .target(pixels.values)
                      .start(start)
                      .maxEvaluations(MOST_STEPS)
                      .maxIterations(MOST_STEPS)
                      .build());
      TipShape shape = new TipShape(ending, found.getPoint().toArray());
      return Optional.of(new Fit(shape, found.getCost() * found.getCost(), pixels.count()));
    } catch (MathRuntimeException e) {
      return Optional.empty(); // No tip of this kind comes near: another is taken.
    }
  }

  /** The ink of a tip at the pixels, in units of the noise. */
  private static final class Model implements ValueAndJacobianFunction {
    private final TipShape.Ending ending;
    private final InkWindow window;
    private final double reach;
    private final double noise;
    private double[] lastNumbers = {};
    private double[] lastValues = {};

    Model(TipShape.Ending ending, InkWindow window, double reach, double noise) {
      this.ending = ending;
      this.window = window;
      this.reach = reach;
      this.noise = noise;
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector point) {
      double[] numbers = point.toArray();
      return Pair.create(computeValue(numbers), computeJacobian(numbers));
    }

    @Override
    public RealVector computeValue(double[] numbers) {
      return new ArrayRealVector(values(numbers), false);
    }

    @Override
    public RealMatrix computeJacobian(double[] numbers) {
      double[] here = Arrays.equals(numbers, lastNumbers) ? lastValues : values(numbers);
      double[][] derivatives = new double[here.length][numbers.length];
      for (int k = 0; k < numbers.length; k++) {
        double[] moved = numbers.clone();
        moved[k] += SMALL;
        double[] there = drawn(moved);
        for (int i = 0; i < here.length; i++) {
          derivatives[i][k] = (there[i] - here[i]) / SMALL;
        }
      }
      return new Array2DRowRealMatrix(derivatives, false);
    }

    /** Kept, because the derivatives are asked for at the place of the last values. */
    private double[] values(double[] numbers) {
      lastNumbers = numbers.clone();
      lastValues = drawn(numbers);
      return lastValues;
    }

    private double[] drawn(double[] numbers) {
      double[] drawn = window.draw(new TipShape(ending, numbers).polygon(reach));
      for (int i = 0; i < drawn.length; i++) {
        drawn[i] /= noise;
      }
      return drawn;
    }
  }
}
