package frieze.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.mend.Repair;
import frieze.artwork.source.DrawingFile;
import frieze.artwork.source.DrawingRequest;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Diagnostic;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What is put in order when a picture is traced: a square with a hole, a speck and a pinhole. */
class TracedRepairTest {
  private static List<Point> square(double x, double y, double size, boolean hole) {
    Point a = new Point(x, y);
    Point b = new Point(x + size, y);
    Point c = new Point(x + size, y + size);
    Point d = new Point(x, y + size);
    return hole ? List.of(a, d, c, b) : List.of(a, b, c, d);
  }

  private static Traced traced(double noise) {
    List<List<Point>> rings =
        List.of(
            square(5, 5, 20, false),
            square(10, 10, 8, true),
            square(21, 7, 0.4, true),
            square(29, 12, 0.4, false));
    Render render = Render.of(rings, 350, 300, p -> new Point(10 * p.x(), 300 - 10 * p.y()));
    GreyImage picture =
        noise == 0 ? render.plain() : render.noisy(0.9, 0.1, noise, new SplittableRandom(4));
    TraceSettings settings = TraceSettings.of(new RealSize.Pixel(0.1)).withSmallest(0.8);
    return Tracer.trace("p.png", picture, settings);
  }

  @Test
  void specks_are_counted_and_placed_and_outlines_turned() {
    Repair mended = DrawingFile.shaped(traced(0).artwork(), DrawingRequest.AS_DRAWN);
    assertThat(mended.artwork().notes())
        .extracting(Diagnostic::message)
        .singleElement()
        .asString()
        .startsWith("2 specks and pinholes smaller than 0.8 mm")
        .contains("24.2, 7.2 (0.38)", "16.2, 2.2 (0.38)");
    List<Path> paths = mended.artwork().pieces().get(0).paths();
    assertThat(paths).hasSize(2).allMatch(Path::closed);
    assertThat(mended.mends()).as("tracing leaves nothing to mend").isEmpty();
    assertThat(mended.artwork().filled(0.001).area()).isCloseTo(400 - 64, within(0.5));
  }

  /** Grain as strong as a fifth of the contrast gives no spurious pieces. */
  @Test
  void noise_gives_no_pieces_of_its_own() {
    Repair mended = DrawingFile.shaped(traced(0.2).artwork(), DrawingRequest.AS_DRAWN);
    assertThat(mended.artwork().pieces()).hasSize(1);
    assertThat(mended.artwork().pieces().get(0).paths()).hasSize(2);
    assertThat(mended.mends()).isEmpty();
  }
}
