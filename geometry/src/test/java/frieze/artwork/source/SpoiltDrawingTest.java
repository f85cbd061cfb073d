package frieze.artwork.source;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.artwork.OpenIcons;
import frieze.artwork.mend.Repair;
import frieze.diagnostic.BadInputException;
import frieze.fixtures.Seeds;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Spoilt SVG files, read, outlined, clipped, scaled and mended: a result or a diagnostic. */
class SpoiltDrawingTest {
  private static final List<String> FEATURES =
      List.of("paths", "transforms", "uses", "styles", "strokes", "dashes", "skewed-pens", "clips");

  private static final String TEXT =
      "<svg xmlns='http://www.w3.org/2000/svg' width='40mm' height='9mm' viewBox='0 0 40 9'>"
          + "<text x='1 9' dy='1em' rotate='5' style='font:bold 7px serif' stroke='red'"
          + " stroke-width='.3'>Ash <tspan text-anchor='end' letter-spacing='1'>&amp; b</tspan>"
          + "</text></svg>";

  private static final byte[] ODD = "-.0e9%zM,\"'<>#()".getBytes(StandardCharsets.ISO_8859_1);

  private static List<byte[]> originals() throws IOException {
    List<byte[]> files = new ArrayList<>();
    for (String name : FEATURES) {
      try (InputStream in =
          SpoiltDrawingTest.class.getResourceAsStream(
              "/frieze/artwork/features/" + name + ".svg")) {
        files.add(in.readAllBytes());
      }
    }
    files.add(TEXT.getBytes(StandardCharsets.UTF_8));
    OpenIcons.all().entrySet().stream()
        .filter(e -> e.getKey().contains("tree") && !OpenIcons.isCollection(e.getKey()))
        .limit(4)
        .forEach(e -> files.add(e.getValue()));
    return files;
  }

  private static void spoil(int drawings, long seed) throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    List<byte[]> files = originals();
    int read = 0;
    for (int n = 0; n < drawings; n++) {
      byte[] spoilt = files.get(random.nextInt(files.size())).clone();
      for (int k = random.nextInt(4); k >= 0; k--) {
        int at = random.nextInt(spoilt.length);
        spoilt[at] =
            random.nextBoolean()
                ? spoilt[random.nextInt(spoilt.length)]
                : ODD[random.nextInt(ODD.length)];
      }
      read += isRead(spoilt, n % 2 == 0, "seed " + seed + ", drawing " + n) ? 1 : 0;
    }
    assertThat(read).isBetween(drawings / 10, drawings * 9 / 10);
  }

  private static boolean isRead(byte[] spoilt, boolean outline, String which) {
    DrawingRequest asked =
        new DrawingRequest(
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.of(50),
            OptionalDouble.empty(),
            Repair.USUAL_GAP_MM,
            0.1,
            outline);
    try {
      DrawingFile.read("t.svg", spoilt, asked);
      return true;
    } catch (BadInputException e) {
      assertThat(e.diagnostics()).isNotEmpty();
      return false;
    } catch (RuntimeException | StackOverflowError e) {
      throw new AssertionError(which + ": " + new String(spoilt, StandardCharsets.UTF_8), e);
    }
  }

  @Test
  void a_spoilt_file_gives_a_result_or_a_diagnostic() throws IOException {
    spoil(100, Seeds.seed(20_260_207));
  }

  @Test
  @Tag("soak")
  void ten_thousand_spoilt_files_give_results_or_diagnostics() throws IOException {
    spoil(10_000, Seeds.seed(20_260_208));
  }
}
