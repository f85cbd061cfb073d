package frieze.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.opening.Bead;
import frieze.opening.FittedOpening;
import frieze.opening.InsertFitter;
import frieze.opening.InsertRequest;
import frieze.opening.Lug;
import frieze.opening.Notch;
import frieze.opening.Sitting;
import frieze.wood.Allowances;
import frieze.wood.Moisture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every number of the table and its sentences, read back from the text. */
class SittingTableTest {
  private static final double ROUNDED = 0.005 + 1e-9;

  /** It leans by 1.25 at the left and 3.5 at the right, and its rails bow in by 0.8. */
  private static final FittedOpening OPENING =
      new FittedOpening(
          List.of(Point.ORIGIN, new Point(700, 0), new Point(703.5, 130), new Point(1.25, 131)),
          -0.8,
          List.of(new FittedOpening.Residual("bottom", 700, 700.1)),
          0.21,
          3,
          0.44);

  private static Sitting sitting(double coating, double sanded, Moisture moisture) {
    Lug lug = new Lug("lug 1", Lug.Side.TOP, 80, 25, 15, OptionalDouble.of(2), SourceSpan.NONE);
    InsertRequest asked =
        new InsertRequest(
            Optional.empty(), 0.7, 0.002 / 30, 0.00274, moisture, new Allowances(coating, sanded));
    return InsertFitter.fit(
        "apron",
        new InsertFitter.Welded(OPENING, new Bead(Bead.Shape.ROUND, 5), List.of(lug), 0.4),
        asked,
        SourceSpan.NONE);
  }

  private static String text(Sitting sitting, boolean inches) {
    Markup out = new Markup();
    new SittingTable(sitting, new Measures(inches), out).write();
    return out.toString().replaceAll("<[^>]*>", "|").replaceAll("\\|+", "|");
  }

  /** The millimetres in a text, in order. */
  private static List<Double> millimetres(String text) {
    List<Double> all = new ArrayList<>();
    for (MatchResult m : Pattern.compile("(-?[0-9.]+) mm").matcher(text).results().toList()) {
      all.add(Double.parseDouble(m.group(1)));
    }
    return all;
  }

  @Test
  void every_number_is_the_one_that_was_computed() {
    Moisture moisture = new Moisture(8.5, 5, 12);
    Sitting sitting = sitting(0.15, 0.3, moisture);
    List<Double> expected = new ArrayList<>(List.of(0.21, 0.4, 1.2, 1.25, 3.5, 0.44, 0.8));
    for (Sitting.Gap gap : sitting.allGaps()) {
      expected.addAll(List.of(gap.nowMm(), gap.driestMm(), gap.wettestMm()));
    }
    expected.addAll(List.of(0.15, 0.3));
    Sitting.Gap tight = sitting.tightestCorner();
    expected.addAll(List.of(tight.wettestMm(), Math.abs(tight.wettestMm() - 0.4)));
    Notch notch = sitting.notches().get(0);
    expected.addAll(List.of(notch.fromMm(), notch.widthMm(), notch.depthMm(), notch.clearanceMm()));
    String text = text(sitting, false);
    List<Double> told = millimetres(text);
    assertThat(told).hasSameSizeAs(expected);
    for (int i = 0; i < told.size(); i++) {
      assertThat(told.get(i))
          .as("number %d of %s", i + 1, text)
          .isCloseTo(expected.get(i), within(ROUNDED));
    }
    assertThat(text)
        .contains("left side leans 1.25 mm to the right over the height, the right side 3.5 mm to")
        .contains("rails bow 0.8 mm into the opening; the panel is that much lower")
        .contains("moisture 8.5 % when cut, 5 % to 12 % in use")
        .contains("published for 6 to 14 %, beyond that it is an extrapolation")
        .contains("Tightest corner: " + tight.place());
  }

  @Test
  void in_inches_the_lean_is_told_as_a_fraction_over_the_height() {
    String text = text(sitting(0, 0, new Moisture(8, 6, 10)), true);
    // 1.25 mm is 0.0492 in, near 3/64; 3.5 mm is 0.1378 in, near 9/64.
    assertThat(text)
        .contains("leans 0.049 in (about 3/64) to the right over the height")
        .contains("right side 0.138 in (about 9/64)")
        .doesNotContain("extrapolation", "coating", "sanded off");
  }

  @Test
  void steel_has_no_seasons() {
    InsertRequest asked =
        new InsertRequest(
            Optional.of(List.of(1.0, 1.5, 2.0, 2.5)),
            0,
            0,
            0,
            new Moisture(8, 6, 10),
            new Allowances(0.2, 0));
    Sitting steel =
        InsertFitter.fit("end", OPENING, new Bead(Bead.Shape.ROUND, 5), 0, asked, SourceSpan.NONE);
    String text = text(steel, false);
    assertThat(text)
        .doesNotContain("driest", "wettest", "moisture")
        .contains("|bottom|0.8 mm|", "|right|1.3 mm|", "|top|1.8 mm|", "|left|2.3 mm|");
  }
}
