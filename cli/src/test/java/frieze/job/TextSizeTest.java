package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.build.PlannedJob;
import frieze.motion.Executed;
import frieze.post.Post;
import frieze.post.Posts;
import frieze.post.ProgramText;
import frieze.rs274.Interpreter;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How long the programs of the example are, for a metre of cutting, against a plain text that names
 * every point of the flattened path with all its words.
 */
@Tag("corpus")
class TextSizeTest {
  private record Size(String name, long lines, long bytes, double metres) {
    double linesPerMetre() {
      return lines / metres;
    }

    double bytesPerMetre() {
      return bytes / metres;
    }

    void print() {
      System.out.printf(
          Locale.ROOT,
          "%s: %d lines, %d bytes, %.1f m: %.0f lines and %.0f bytes for each metre%n",
          name,
          lines,
          bytes,
          metres,
          linesPerMetre(),
          bytesPerMetre());
    }
  }

  private static List<ProgramText> texts(PlannedJob job, Post post) {
    return Examples.texts(job, job.panels().get(0), post);
  }

  private static Size size(String name, List<ProgramText> texts, Post post) {
    double[] mm = new double[1];
    for (ProgramText text : texts) {
      Interpreter.run(
          text.fileName(),
          text.text(),
          post.reading(),
          event -> {
            if (event instanceof Executed.Move move && move.kind() == Executed.Kind.FEED) {
              mm[0] += move.path().lengthMm();
            }
          });
    }
    long lines = texts.stream().mapToLong(t -> t.origins().size()).sum();
    long bytes = texts.stream().mapToLong(t -> t.bytes().length).sum();
    return new Size(name, lines, bytes, mm[0] / 1000);
  }

  /** Every feed move of the straight programs, in full. */
  private static Size plain(List<ProgramText> texts, Post post) {
    long[] sums = new long[2];
    double[] mm = new double[1];
    for (ProgramText text : texts) {
      Interpreter.run(
          text.fileName(),
          text.text(),
          post.reading(),
          event -> {
            if (event instanceof Executed.Move move && move.kind() == Executed.Kind.FEED) {
              String line =
                  String.format(
                      Locale.ROOT,
                      "G1 X%.3f Y%.3f Z%.3f F%.1f%n",
                      move.path().to().x(),
                      move.path().to().y(),
                      move.path().to().z(),
                      move.feedMmPerMin().orElseThrow());
              sums[0]++;
              sums[1] += line.length();
              mm[0] += move.path().lengthMm();
            }
          });
    }
    return new Size("plain polyline", sums[0], sums[1], mm[0] / 1000);
  }

  @Test
  void arcs_and_words_left_out_make_programs_shorter_than_plain_polylines() {
    PlannedJob planned = Examples.planned("bench.yaml");
    Post straight = Posts.find("straight-only").orElseThrow();
    Size plain = plain(texts(planned, straight), straight);
    plain.print();
    for (String id : List.of("rs274-full", "short-arcs", "iso-blocks", "straight-only")) {
      Post post = Posts.find(id).orElseThrow();
      Size size = size(id, texts(planned, post), post);
      size.print();
      assertThat(size.metres()).isBetween(plain.metres() * 0.999, plain.metres() * 1.001);
      if (post.capabilities().arcs().helices()) {
        assertThat(size.linesPerMetre()).isLessThan(plain.linesPerMetre() / 2);
        assertThat(size.bytesPerMetre()).isLessThan(plain.bytesPerMetre() / 2);
      }
    }
  }
}
