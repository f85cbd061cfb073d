package frieze.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.svg.SvgReader;
import frieze.curve.Bounds;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Drawings by other people: two open icon sets, read as their packages bring them. */
class OpenIconsTest {
  /** Of the width of the drawing. */
  private static final double FLATNESS = 3e-5;

  /** Chords within the flatness, along outlines of up to ten times the width. */
  private static final double AREA_AGREEMENT = 1e-4;

  private static final int SAMPLE_STEP = 40;

  private static final Map<String, byte[]> FILES = OpenIcons.all();

  @Test
  void every_icon_is_read_and_every_collection_of_mere_symbols_holds_nothing() {
    assertThat(FILES).hasSize(4099);
    List<String> empty = new ArrayList<>();
    List<String> noted = new ArrayList<>();
    int pieces = 0;
    for (Map.Entry<String, byte[]> file : FILES.entrySet()) {
      try {
        Artwork art = new SvgReader().read(file.getKey(), file.getValue());
        pieces += art.pieces().size();
        art.notes().stream()
            .filter(d -> d.code() != ArtworkCode.SIZE_ASSUMED)
            .filter(d -> d.code() != ArtworkCode.DOUBLED_POINTS && d.code() != ArtworkCode.NO_AREA)
            .forEach(d -> noted.add(d.toString()));
      } catch (BadInputException e) {
        assertThat(e.diagnostics())
            .extracting(Diagnostic::code)
            .contains(ArtworkCode.NOTHING_TO_CUT);
        empty.add(file.getKey());
      }
    }
    assertThat(empty).hasSize(4).allMatch(OpenIcons::isCollection);
    assertThat(noted).isEmpty();
    assertThat(pieces).isEqualTo(5071);
  }

  /**
   * The areas of every fortieth icon, against Batik's path grammar and the area code of Java2D, as
   * parts of the frame around the drawing.
   */
  @Test
  void areas_agree_with_a_second_reader() {
    int checked = 0;
    int number = 0;
    for (Map.Entry<String, byte[]> file : FILES.entrySet()) {
      String text = new String(file.getValue(), StandardCharsets.UTF_8);
      boolean pathsOnly = SecondArea.isKnown(text);
      if (OpenIcons.isCollection(file.getKey()) || number++ % SAMPLE_STEP != 0 || !pathsOnly) {
        continue;
      }
      Artwork art = SvgReader.withScale(1).read(file.getKey(), file.getValue());
      Bounds bounds = art.bounds();
      double frame = bounds.width() * bounds.height();
      double ours = art.filled(bounds.width() * FLATNESS).area();
      assertThat(ours / frame)
          .as(file.getKey())
          .isCloseTo(
              SecondArea.of(text, bounds.width() * FLATNESS) / frame, within(AREA_AGREEMENT));
      checked++;
    }
    assertThat(checked).isEqualTo(103);
  }
}
