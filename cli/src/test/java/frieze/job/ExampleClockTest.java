package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.build.PlannedJob;
import frieze.build.PlannedPanel;
import frieze.dryrun.FineClock;
import frieze.dryrun.ProgramText;
import frieze.post.Post;
import frieze.post.Posts;
import java.io.IOException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The clock, on the programs that the pages' examples give, within two in a hundred of an
 * integration in fine steps that takes no speed from it.
 */
class ExampleClockTest {
  @Test
  void the_clock_is_right_on_an_apron_for_several_benches() throws Exception {
    PlannedJob job = Examples.planned("many.yaml");
    Post post = Posts.find("rs274-full").orElseThrow();
    assertThat(compared(job, job.panels().get(0), post)).isGreaterThan(60);
  }

  @Tag("corpus")
  @ParameterizedTest
  @CsvSource({
    "many.yaml, rs274-full",
    "bench.yaml, rs274-full",
    "bench.yaml, short-arcs",
    "bench.yaml, straight-only",
    "curves.yaml, iso-blocks",
    "measured.yaml, rs274-full",
    "leaf-photo.yaml, straight-only",
    "ends.yaml, plasma-touch"
  })
  void the_clock_is_right_on_all_examples(String file, String post) throws Exception {
    assertThat(compared(file, post)).isGreaterThan(60);
  }

  /** Compares every program of a job; tells for how many seconds they move in all. */
  private static double compared(String file, String id) throws IOException {
    PlannedJob job = Examples.planned(file);
    double seconds = 0;
    for (PlannedPanel panel : job.panels()) {
      seconds += compared(job, panel, Posts.find(id).orElseThrow());
    }
    return seconds;
  }

  private static double compared(PlannedJob job, PlannedPanel panel, Post post) throws IOException {
    double seconds = 0;
    for (frieze.post.ProgramText text : Examples.texts(job, panel, post)) {
      ProgramText program = ProgramText.of(text.fileName(), text.bytes(), post.reading());
      seconds += FineClock.compare(program, panel.setup().machine());
    }
    return seconds;
  }
}
