package frieze.trace;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.trace.Motifs.Motif;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Traced outlines against the shapes that were drawn, at ten pixels to the millimetre. */
class AccuracyTest {
  private static final int ICONS = Integer.getInteger("frieze.icons", 6);

  private static List<Motif> motifs() {
    List<Motif> all = new ArrayList<>(List.of(Motifs.circle(), Motifs.leaf(), Motifs.ginkgo()));
    all.addAll(Motifs.icons(ICONS));
    return all;
  }

  private static List<Trial> trials(Function<Render, GreyImage> picture) {
    List<Trial> trials = new ArrayList<>();
    for (Motif motif : motifs()) {
      Trial trial = Trial.of(motif, picture, Trial.scan());
      if (Boolean.getBoolean("frieze.tell")) {
        System.out.println(trial);
      }
      trials.add(trial);
    }
    if (Boolean.getBoolean("frieze.tell")) {
      Agreement all = Agreement.together(trials.stream().map(t -> t.agreement).toList());
      System.out.println(
          "TOTAL 95 % within "
              + all.percentile(0.95)
              + " mm, all within "
              + all.worst()
              + ", segments "
              + trials.stream().mapToInt(t -> t.segments).sum()
              + " exact "
              + trials.stream().mapToInt(t -> t.segmentsOfExact).sum());
    }
    return trials;
  }

  @Test
  void a_clean_picture_gives_the_outline_within_a_hundredth_of_a_millimetre() {
    for (Trial trial : trials(Render::plain)) {
      assertThat(trial.agreement.percentile(0.95)).as(trial.toString()).isLessThanOrEqualTo(0.01);
    }
  }
}
