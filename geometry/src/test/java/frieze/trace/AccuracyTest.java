package frieze.trace;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.trace.Motifs.Motif;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Traced outlines against the shapes that were drawn, at ten pixels to the millimetre. */
class AccuracyTest {
  private static final int FEW = 3;
  private static final int MANY = 100;

  /** Summed over all motifs, against our own arc fitter on the exact outlines. */
  private static final double MOST_PIECES = 1.5;

  private static final double ALL_MM = 0.12;
  private static final double CORNER_MM = 0.2;

  private static double within(Degraded how) {
    return switch (how) {
      case CLEAN -> 0.01;
      case BLURRED_AND_NOISY -> 0.03;
      default -> 0.06;
    };
  }

  private static List<Trial> trials(Degraded how, int icons) {
    List<Motif> motifs = new ArrayList<>(List.of(Motifs.circle(), Motifs.leaf(), Motifs.ginkgo()));
    motifs.addAll(Motifs.icons(icons));
    return motifs.stream().map(how::trial).toList();
  }

  private static double share(List<Trial> trials, double mm) {
    return Agreement.together(trials.stream().map(t -> t.agreement).toList()).share(mm);
  }

  private static double pieces(List<Trial> trials) {
    return (double) trials.stream().mapToInt(t -> t.segments).sum()
        / trials.stream().mapToInt(t -> t.segmentsOfExact).sum();
  }

  @ParameterizedTest
  @EnumSource
  void outlines_corners_and_pieces_are_as_good_as_stated(Degraded how) {
    List<Trial> trials = trials(how, FEW);
    for (Trial trial : trials) {
      String what = how + " " + trial;
      assertThat(trial.agreement.share(within(how))).as(what).isGreaterThanOrEqualTo(0.95);
      assertThat(trial.agreement.worst()).as(what).isLessThanOrEqualTo(ALL_MM);
      assertThat(trial.worstCorner).as(what).isLessThanOrEqualTo(CORNER_MM);
    }
    assertThat(pieces(trials)).as(how + " pieces " + trials).isLessThanOrEqualTo(MOST_PIECES);
  }

  /** Shapes that may leave the outline somewhere: the blocks of JPEG hide the end of a thin tip. */
  private static int mostFar(Degraded how) {
    return how == Degraded.JPEG_60 ? 2 : 0;
  }

  /** A hundred icons. */
  @Tag("corpus")
  @ParameterizedTest
  @EnumSource
  void open_icons_are_traced_as_well(Degraded how) {
    List<Trial> trials = trials(how, MANY);
    long far = trials.stream().filter(t -> t.agreement.worst() > ALL_MM).count();
    long corners = trials.stream().filter(t -> t.worstCorner > CORNER_MM).count();
    String what = how + ": " + far + " beyond 0.12 mm somewhere, " + corners + " at a corner";
    assertThat(share(trials, within(how))).as(what).isGreaterThanOrEqualTo(0.95);
    assertThat(share(trials, ALL_MM)).as(what).isGreaterThanOrEqualTo(0.999);
    assertThat(pieces(trials)).as(what).isLessThanOrEqualTo(MOST_PIECES);
    assertThat(far).as(what).isLessThanOrEqualTo(mostFar(how));
    assertThat(corners).as(what).isLessThanOrEqualTo(mostFar(how) / 2);
  }

  /** A scan without greys hides where in a pixel an edge lies: half a pixel is 0.05 mm. */
  @Test
  void a_picture_in_black_and_white_has_no_staircases() {
    List<Trial> trials = new ArrayList<>();
    for (Motif motif : List.of(Motifs.circle(), Motifs.leaf(), Motifs.ginkgo())) {
      Trial trial = Trial.of(motif, AccuracyTest::blackAndWhite, Trial.scan());
      assertThat(trial.agreement.share(0.06)).as("%s", trial).isGreaterThanOrEqualTo(0.95);
      assertThat(trial.agreement.worst()).as("%s", trial).isLessThanOrEqualTo(ALL_MM);
      assertThat(trial.worstCorner).as("%s", trial).isLessThanOrEqualTo(CORNER_MM);
      trials.add(trial);
    }
    assertThat(pieces(trials)).as("pieces %s", trials).isLessThanOrEqualTo(2);
  }

  private static GreyImage blackAndWhite(Render render) {
    GreyImage grey = render.plain();
    float[] values = grey.values().clone();
    for (int i = 0; i < values.length; i++) {
      values[i] = values[i] < 0.5f ? 0.1f : 0.9f;
    }
    return new GreyImage(grey.width(), grey.height(), values);
  }

  /** Half of the ink at a third of it and at two thirds: the blur moves by what is expected. */
  @Test
  void another_threshold_makes_the_figure_larger_or_smaller() {
    Motif circle = Motifs.circle();
    double low = width(circle, 0.3);
    double high = width(circle, 0.7);
    // A blurred edge of standard deviation s is at the share p where the normal distribution is.
    double sigmaMm = Math.sqrt(1 + 1 / 12.0 + 1) / Trial.PX_PER_MM;
    assertThat(low - high)
        .isCloseTo(2 * 2 * 0.5244 * sigmaMm, org.assertj.core.api.Assertions.within(0.01));
  }

  private static double width(Motif motif, double threshold) {
    TraceSettings settings = Trial.scan().withThreshold(threshold);
    Trial trial = Trial.of(motif, r -> r.blurred(1).plain(), settings);
    return trial.traced.artwork().bounds().width();
  }
}
