package frieze.artwork.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import frieze.artwork.ArtworkCode;
import frieze.artwork.mend.Repair;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small drawings that would be long work: refused before it is begun, with what there is of it. */
class EffortTest {
  private static final DrawingRequest OUTLINED =
      new DrawingRequest(
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Repair.USUAL_GAP_MM,
          0,
          true);

  private static Diagnostic refused(String body) {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm'"
            + " viewBox='0 0 100 100'>"
            + body
            + "</svg>";
    BadInputException e =
        catchThrowableOfType(
            BadInputException.class,
            () -> DrawingFile.read("t.svg", svg.getBytes(StandardCharsets.UTF_8), OUTLINED));
    assertThat(e).as(body.substring(0, Math.min(200, body.length()))).isNotNull();
    return e.diagnostics().stream().filter(Diagnostic::isError).findFirst().orElseThrow();
  }

  /** Two straight lines through a square at random cross once in 4.3 times; here 2,000. */
  @Test
  void an_outline_that_crosses_itself_everywhere_is_refused() {
    SplittableRandom random = new SplittableRandom(20_261_126);
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < 2_000; i++) {
      points.append(random.nextInt(100_000) / 1e3).append(' ');
      points.append(random.nextInt(100_000) / 1e3).append(' ');
    }
    for (String shape :
        new String[] {
          "<polygon points='" + points + "'/>",
          "<polyline fill='none' stroke='red' stroke-width='.01' points='" + points + "'/>",
          "<clipPath id='c'><polygon points='"
              + points
              + "'/></clipPath><rect width='90' height='90' clip-path='url(#c)'/>"
        }) {
      Diagnostic error = refused(shape);
      assertThat(error.code()).isEqualTo(ArtworkCode.TOO_BIG);
      assertThat(error.message()).contains("cross in more than 30000 places");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<path d='M0 0C1e5 1e5 -1e5 1e5 1 1'/>|600|ART-006|more than 1000000 points",
        "<circle cx='50' cy='50' r='49' fill='none' stroke='red' stroke-dasharray='.02'/>|3|"
            + "ART-006|more than 20000 dashes together",
        "<path transform='scale(1 1e-7)' fill='none' stroke='red' d='M0 0C1 1e8 50 -1e8 100 0'/>|1|"
            + "ART-006|more than 100000 points together",
        "<path stroke='red' stroke-width='9' stroke-miterlimit='1e9' d='M0 0H99L0 1e-5'/>|1|ART-011|"
            + "with the width of its lines",
      })
  void what_grows_without_bound_is_refused(String shape, int times, String code, String said) {
    Diagnostic error = refused(shape.repeat(times));
    assertThat(error.code().id()).isEqualTo(code);
    assertThat(error.message()).contains(said);
  }

  @Test
  void a_long_chain_of_clips_is_refused() {
    StringBuilder chain = new StringBuilder("<clipPath id='c0'><rect width='9' height='9'/>");
    for (int i = 1; i < 3_000; i++) {
      chain.append("</clipPath><clipPath id='c").append(i).append("' clip-path='url(#c");
      chain.append(i - 1).append(")'><rect width='9' height='9'/>");
    }
    Diagnostic error =
        refused(chain + "</clipPath><rect width='9' height='9' clip-path='url(#c2999)'/>");
    assertThat(error.code()).isEqualTo(ArtworkCode.TOO_BIG);
    assertThat(error.message()).contains("256 levels");
  }

  @Test
  void a_fine_clip_of_many_pieces_is_refused() {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < 20_000; i++) {
      double turn = 2 * Math.PI * i / 20_000;
      points.append(50 + 40 * StrictMath.cos(turn)).append(' ');
      points.append(50 + 40 * StrictMath.sin(turn)).append(' ');
    }
    StringBuilder pieces = new StringBuilder("<clipPath id='c'><polygon points='");
    pieces.append(points).append("'/></clipPath><g clip-path='url(#c)'>");
    for (int i = 0; i < 100; i++) {
      pieces.append("<rect x='").append(i * 0.8 + 10).append("' width='.5' height='99'/>");
    }
    Diagnostic error = refused(pieces + "</g>");
    assertThat(error.code()).isEqualTo(ArtworkCode.TOO_BIG);
    assertThat(error.message()).contains("compared with more than 1000000 points");
  }
}
