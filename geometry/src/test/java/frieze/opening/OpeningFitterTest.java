package frieze.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;

class OpeningFitterTest {
  private static final long SEED = 20261126;

  /** A known opening, and a tape laid in it: written out here, without the fitter's code. */
  private record Truth(double w, double x3, double y3, double x4, double y4, double bow) {
    Measured taped(double radius, double tapeMm, DoubleSupplier error) {
      List<Double> sides =
          List.of(
              w + error.getAsDouble(),
              Math.hypot(x3 - w, y3) + error.getAsDouble(),
              Math.hypot(x3 - x4, y3 - y4) + error.getAsDouble(),
              Math.hypot(x4, y4) + error.getAsDouble());
      List<Double> diagonals =
          List.of(
              Math.hypot(x3, y3) + error.getAsDouble(),
              Math.hypot(x4 - w, y4) + error.getAsDouble());
      List<Measured.Station> heights = new ArrayList<>();
      for (double share : new double[] {0.25, 0.5, 0.75}) {
        double x = x4 + share * (x3 - x4);
        double y = y4 + share * (y3 - y4) + 4 * bow * share * (1 - share);
        heights.add(new Measured.Station(x, y + error.getAsDouble()));
      }
      return new Measured(sides, heights, diagonals, radius, false, tapeMm);
    }
  }

  private static Truth random(SplittableRandom r) {
    double w = r.nextDouble(300, 900);
    double h = r.nextDouble(100, 400);
    return new Truth(
        w,
        w + r.nextDouble(-3, 3),
        h + r.nextDouble(-3, 3),
        r.nextDouble(-3, 3),
        h,
        r.nextDouble(-2, 2));
  }

  @Test
  void a_perfect_tape_gives_the_opening_itself() {
    SplittableRandom r = Seeds.random(SEED);
    for (int i = 0; i < 200; i++) {
      Truth truth = random(r);
      FittedOpening fit = OpeningFitter.fit(truth.taped(5, 0.4, () -> 0), SourceSpan.NONE);
      assertThat(fit.corners().get(2).x()).as("case %d", i).isCloseTo(truth.x3, within(1e-5));
      assertThat(fit.corners().get(2).y()).isCloseTo(truth.y3, within(1e-5));
      assertThat(fit.outOfSquareLeftMm()).isCloseTo(truth.x4, within(1e-5));
      assertThat(fit.corners().get(3).y()).isCloseTo(truth.y4, within(1e-5));
      assertThat(fit.bowMm()).isCloseTo(truth.bow, within(1e-5));
      assertThat(fit.misfitMm()).isLessThan(1e-5);
    }
  }

  /** The error of what is found, in its own stated uncertainties, must have variance 1. */
  @Test
  void a_noisy_tape_gives_it_within_the_stated_uncertainty() {
    SplittableRandom r = Seeds.random(SEED);
    double tape = 0.3;
    double squares = 0;
    double misfits = 0;
    int cases = 1000;
    for (int i = 0; i < cases; i++) {
      Truth truth = random(r);
      Measured measured = truth.taped(0, tape, () -> tape * gauss(r));
      FittedOpening fit =
          OpeningFitter.fit(
              new Measured(
                  measured.sidesMm(),
                  measured.heights(),
                  measured.diagonalsMm(),
                  0,
                  false,
                  tape * 4),
              SourceSpan.NONE);
      double error = (fit.outOfSquareLeftMm() - truth.x4) / (fit.squareUncertaintyMm() / 4);
      squares += error * error;
      misfits += fit.misfitMm() * fit.misfitMm() / (tape * tape);
    }
    // Standard deviations of these means: sqrt(2/1000) = 0.045 and sqrt(2/3000) = 0.026.
    assertThat(squares / cases).as("seed %d", Seeds.seed(SEED)).isCloseTo(1, within(0.18));
    assertThat(misfits / cases).as("seed %d", Seeds.seed(SEED)).isCloseTo(1, within(0.11));
  }

  private static double gauss(SplittableRandom r) {
    return Math.sqrt(-2 * Math.log(1 - r.nextDouble())) * Math.cos(2 * Math.PI * r.nextDouble());
  }

  /** In a square corner a tape stops short by r(sqrt 2 - 1) at each end of a square's diagonal. */
  @Test
  void diagonals_into_the_bead_are_corrected() {
    double taped = 400 * Math.sqrt(2) - 2 * 8 * (Math.sqrt(2) - 1);
    List<Double> sides = List.of(400.0, 400.0, 400.0, 400.0);
    Measured into = new Measured(sides, List.of(), List.of(taped, taped), 8, true, 0.4);
    assertThat(OpeningFitter.fit(into, SourceSpan.NONE).misfitMm()).isLessThan(1e-6);
    Measured ignored = new Measured(sides, List.of(), List.of(taped, taped), 8, false, 0.4);
    assertThatThrownBy(() -> OpeningFitter.fit(ignored, SourceSpan.NONE))
        .isInstanceOf(BadInputException.class);
  }

  @Test
  void a_tape_that_contradicts_itself_is_refused_with_the_measurement() {
    Measured wrong =
        new Measured(
            List.of(727.0, 133.0, 727.0, 133.0),
            List.of(),
            List.of(Math.hypot(727, 133), Math.hypot(727, 133) + 12),
            0,
            false,
            0.4);
    FittedOpening believed =
        OpeningFitter.fit(
            new Measured(wrong.sidesMm(), List.of(), wrong.diagonalsMm(), 0, false, 100),
            SourceSpan.NONE);
    double most =
        believed.residuals().stream()
            .mapToDouble(r -> Math.abs(r.tapeMm() - r.outlineMm()))
            .max()
            .orElseThrow();
    assertThatThrownBy(() -> OpeningFitter.fit(wrong, SourceSpan.NONE))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("contradict")
        .hasMessageContaining("off the best outline by " + Amounts.length(most))
        .hasMessageContaining("the misfit is " + Amounts.length(believed.misfitMm()))
        .hasMessageContaining("up to 1.2 mm");
  }

  /**
   * A rectangle of 400 x 300 with marks 50 mm from the corners: the diagonals are hypot(300, 300).
   */
  @Test
  void diagonals_between_marks_on_the_rails_tell_the_same() {
    double diagonal = Math.hypot(300, 300);
    Measured measured =
        new Measured(
            List.of(400.0, 300.0, 400.0, 300.0),
            List.of(),
            List.of(diagonal, diagonal),
            0,
            false,
            50,
            0.5);
    FittedOpening fit = OpeningFitter.fit(measured, SourceSpan.NONE);
    assertThat(fit.misfitMm()).isLessThan(1e-6);
    assertThat(fit.outOfSquareLeftMm()).isCloseTo(0, within(1e-5));
    // Leaning by 3 over 300: each diagonal between the marks changes by its share.
    double height = Math.sqrt(300 * 300 - 9);
    Measured leaning =
        new Measured(
            List.of(400.0, 300.0, 400.0, 300.0),
            List.of(),
            List.of(Math.hypot(303, height), Math.hypot(297, height)),
            0,
            false,
            50,
            0.5);
    assertThat(OpeningFitter.fit(leaning, SourceSpan.NONE).outOfSquareLeftMm())
        .isCloseTo(3, within(1e-5));
  }
}
