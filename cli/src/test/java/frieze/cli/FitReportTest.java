package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.diagnostic.SourceSpan;
import frieze.opening.Bead;
import frieze.opening.FittedOpening;
import frieze.opening.InsertFitter;
import frieze.opening.InsertRequest;
import frieze.opening.Lug;
import frieze.opening.Measured;
import frieze.opening.Notch;
import frieze.opening.OpeningFitter;
import frieze.opening.Sitting;
import frieze.wood.Allowances;
import frieze.wood.Moisture;
import frieze.wood.SideFit;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every number of the report, read back from its text. */
class FitReportTest {
  private static final double ROUNDED = 0.005 + 1e-9;
  private static final double INCH = 25.4;

  /** A frame that leans, with a tape that is off here and there. */
  private static final Measured MEASURED =
      new Measured(
          List.of(727.3, 133.1, 727.0, 132.8),
          List.of(
              new Measured.Station(180, 132.6),
              new Measured.Station(360, 132.1),
              new Measured.Station(540, 132.7)),
          List.of(740.1, 738.2),
          5,
          false,
          0.5);

  private static String said(boolean inches, Consumer<FitReport> says) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    says.accept(new FitReport(out, inches));
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private static List<Double> told(String text, String unit) {
    List<Double> all = new ArrayList<>();
    for (MatchResult m :
        Pattern.compile("(-?[0-9]+\\.[0-9]+) " + unit).matcher(text).results().toList()) {
      all.add(Double.parseDouble(m.group(1)));
    }
    return all;
  }

  private static void assertTold(String text, List<Double> expectedMm) {
    List<Double> told = told(text, "mm");
    assertThat(told).as(text).hasSameSizeAs(expectedMm);
    for (int i = 0; i < told.size(); i++) {
      assertThat(told.get(i))
          .as("number %d of %s", i + 1, text)
          .isCloseTo(expectedMm.get(i), within(ROUNDED));
    }
  }

  @Test
  void the_opening() {
    FittedOpening fitted = OpeningFitter.fit(MEASURED, SourceSpan.NONE);
    List<Double> expected = new ArrayList<>();
    double squares = 0;
    for (FittedOpening.Residual r : fitted.residuals()) {
      expected.addAll(List.of(r.tapeMm(), r.outlineMm(), r.tapeMm() - r.outlineMm()));
      squares += Math.pow(r.tapeMm() - r.outlineMm(), 2);
    }
    assertThat(fitted.residuals()).hasSize(9);
    expected.add(Math.sqrt(squares / fitted.spare()));
    expected.addAll(List.of(0.5, 1.5));
    double left = fitted.corners().get(3).x();
    double right = fitted.corners().get(2).x() - fitted.corners().get(1).x();
    expected.addAll(List.of(Math.abs(left), Math.abs(right), fitted.squareUncertaintyMm()));
    expected.add(Math.abs(fitted.bowMm()));
    double low = Math.min(fitted.corners().get(2).y(), fitted.corners().get(3).y());
    double from = Math.max(0, left);
    double to = fitted.corners().get(1).x() + Math.min(0, right);
    expected.addAll(List.of(to - from, low + Math.min(0, fitted.bowMm())));
    String text = said(false, r -> r.opening(fitted, MEASURED));
    assertTold(text, expected);
    assertThat(left).isPositive();
    assertThat(fitted.bowMm()).isNegative();
    assertThat(text).contains("to the right over the height", "into the opening");
  }

  @Test
  void how_the_panel_will_sit() {
    FittedOpening fitted = OpeningFitter.fit(MEASURED, SourceSpan.NONE);
    Lug lug = new Lug("lug 1", Lug.Side.LEFT, 40, 20, 15, OptionalDouble.of(2), SourceSpan.NONE);
    Sitting sitting =
        InsertFitter.fit(
            "panel",
            new InsertFitter.Welded(fitted, new Bead(Bead.Shape.ROUND, 5), List.of(lug), 0.5),
            new InsertRequest(
                Optional.empty(),
                0.8,
                0.002 / 30,
                0.00274,
                new Moisture(8, 6, 11),
                new Allowances(0.1, 0.2)),
            SourceSpan.NONE);
    List<Double> expected = new ArrayList<>();
    for (Sitting.Gap gap : sitting.allGaps()) {
      expected.addAll(List.of(gap.nowMm(), gap.driestMm(), gap.wettestMm()));
    }
    Notch notch = sitting.notches().get(0);
    expected.addAll(List.of(notch.fromMm(), notch.widthMm(), notch.depthMm(), notch.clearanceMm()));
    double tight =
        sitting.corners().stream().mapToDouble(Sitting.Gap::wettestMm).min().orElseThrow();
    expected.addAll(List.of(tight, tight - 0.5));
    assertTold(said(false, r -> r.sitting(sitting)), expected);
  }

  /** Half of what is left of 133 after swelling by 3 % of moisture, and the corner's radius. */
  @Test
  void the_size_to_cut() {
    SideFit width = SideFit.ofCut(727, 0, new Moisture(8, 6, 11), 725, Allowances.NONE);
    SideFit height = SideFit.ofCut(133, 0.00274, new Moisture(8, 6, 11), 131, Allowances.NONE);
    String text = said(false, r -> r.panel(width, height, 5));
    assertTold(
        text,
        List.of(
            725.0,
            1.0,
            1.0,
            1.0,
            1.0,
            131.0,
            1.0,
            1.0,
            1 + 131 * 0.00274,
            1 - 131 * 0.00274 * 1.5,
            4.0));
    List<Double> inches = told(said(true, r -> r.panel(width, height, 5)), "in");
    assertThat(inches.get(0)).isCloseTo(725 / INCH, within(0.0005 + 1e-9));
    assertThat(inches.get(8)).isCloseTo((1 + 131 * 0.00274) / INCH, within(0.0005 + 1e-9));
  }

  @Test
  void an_inch_has_the_nearest_64th_beside_it() {
    FitReport report = new FitReport(new PrintStream(new ByteArrayOutputStream()), true);
    assertThat(report.text(1.5875)).isEqualTo("0.063 in (1/16)");
    assertThat(report.text(-0.4)).isEqualTo("-0.016 in (-1/64)");
    assertThat(report.text(133.35)).isEqualTo("5.250 in (5-1/4)");
    assertThat(report.text(-0.001)).isEqualTo("0.000 in (0)");
  }
}
