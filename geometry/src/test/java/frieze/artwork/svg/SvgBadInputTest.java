package frieze.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.artwork.ArtworkCode;
import frieze.artwork.Drawings;
import frieze.diagnostic.Diagnostic;
import frieze.fixtures.Seeds;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgBadInputTest {
  private static final String OPEN =
      "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'>\n";

  @ParameterizedTest(name = "{1} {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "<svg xmlns='http://www.w3.org/2000/svg'>%n<g></svg>|ART-001|t.svg:2:6",
        "hello|ART-001|t.svg:1:1",
        "<html/>|ART-002|t.svg:1:1",
        "OPEN<image href='leaf.png'/></svg>|ART-004|t.svg:2:1",
        "OPEN<image xlink:href='file:///etc/passwd'/></svg>|ART-004|t.svg:2:1",
        "OPEN<use href='http://example.org/a.svg#b'/></svg>|ART-004|t.svg:2:1",
        "OPEN<g id='a'>%n<use href='#a'/></g></svg>|ART-007|t.svg:3:1",
        "OPEN<rect width='NaN' height='4'/></svg>|ART-011|t.svg:2:14",
        "OPEN<rect width='1e99' height='4'/></svg>|ART-011|t.svg:2:14",
        "OPEN<rect width='4 apples' height='4'/></svg>|ART-010|t.svg:2:16",
        "OPEN<path d='M0 0L NaN 4z'/></svg>|ART-011|t.svg:2:16",
        "OPEN<path d='M0 0L 1e999 4z'/></svg>|ART-011|t.svg:2:16",
        "OPEN<g transform='turn(4)'><rect width='9' height='9'/></g></svg>|ART-010|t.svg:2:22",
        "OPEN<rect width='9' height='9' transform='matrix(1 2)'/></svg>|ART-010|t.svg:2:50",
        "OPEN<rect width='50%' height='9'/></svg>|ART-010|t.svg:2:14",
        "<svg width='-3mm'><rect width='9' height='9'/></svg>|ART-010|t.svg:1:13",
        "<svg viewBox='0 0 9'><rect width='9' height='9'/></svg>|ART-010|t.svg:1:20",
        "<svg viewBox='0 0 1e9 1e9'><rect width='1e9' height='9'/></svg>|ART-011|t.svg:1:1",
        "OPEN<path d='M0 0H9' stroke='red' data-width-parts='1 2'/></svg>|ART-010|t.svg:2:52",
        "OPEN</svg>|ART-012|t.svg:1:1",
        "OPEN<text>&#x2003; </text></svg>|ART-012|t.svg:1:1",
        "OPEN<path d='L5 5'/></svg>|ART-012|t.svg:1:1",
      })
  void bad_input_is_refused_with_its_place(String svg, String code, String place) {
    List<Diagnostic> said = Drawings.refused(svg.replace("OPEN", OPEN).replace("%n", "\n"));
    assertThat(said).filteredOn(Diagnostic::isError).hasSize(1);
    Diagnostic error = said.stream().filter(Diagnostic::isError).findFirst().orElseThrow();
    assertThat(error.code().id()).isEqualTo(code);
    assertThat(error.where()).hasToString(place);
  }

  @Test
  void bytes_that_are_no_text_are_refused() {
    assertThat(
            Drawings.refused(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}).get(0).code())
        .isEqualTo(ArtworkCode.NOT_XML);
    assertThat(Drawings.refused(new byte[] {0x1f, (byte) 0x8b, 8, 0}).get(0).message())
        .contains("compressed");
    assertThat(Drawings.refused(new byte[0]).get(0).code()).isEqualTo(ArtworkCode.NOT_XML);
  }

  @Test
  void declared_entities_are_refused_before_they_grow() {
    String bomb =
        "<!DOCTYPE svg [\n<!ENTITY a 'aaaaaaaaaa'>\n<!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;&a;'>]>\n"
            + "<svg>&b;</svg>";
    String outside = "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/passwd'>]>\n<svg>&x;</svg>";
    String parameter = "<!DOCTYPE svg [<!ENTITY % p SYSTEM 'http://example.org/x'> %p;]>\n<svg/>";
    for (String svg : List.of(bomb, outside, parameter)) {
      assertThat(Drawings.refused(svg))
          .singleElement()
          .satisfies(d -> assertThat(d.code()).isEqualTo(ArtworkCode.ENTITY_DECLARED));
    }
  }

  /** Refused within 10 s of this thread's own time, however busy the machine is. */
  private static void refusedSoon(Supplier<String> svg, ArtworkCode code) {
    String text = svg.get();
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long start = clock.getCurrentThreadCpuTime();
    assertThat(Drawings.refused(text)).extracting(Diagnostic::code).contains(code);
    assertThat(clock.getCurrentThreadCpuTime() - start).isLessThan(10_000_000_000L);
  }

  @Test
  void use_that_doubles_at_each_level_is_refused() {
    StringBuilder svg = new StringBuilder(OPEN + "<rect id='u0' width='1' height='1'/>");
    for (int i = 1; i < 40; i++) {
      String below = "<use href='#u" + (i - 1) + "'/>";
      svg.append("<g id='u").append(i).append("'>").append(below).append(below).append("</g>");
    }
    refusedSoon(() -> svg + "</svg>", ArtworkCode.TOO_BIG);
  }

  @Test
  void a_million_elements_are_refused() {
    refusedSoon(
        () -> OPEN + "<rect width='1' height='1'/>".repeat(1_000_000) + "</svg>",
        ArtworkCode.TOO_BIG);
  }

  @Test
  void a_big_outline_used_many_times_is_refused() {
    String outline = "<path id='p' d='M0 0" + "l1 1".repeat(100_000) + "'/>";
    refusedSoon(
        () -> OPEN + outline + "<use href='#p'/>".repeat(10_000) + "</svg>", ArtworkCode.TOO_BIG);
  }

  @Test
  void a_book_of_letters_is_refused() {
    refusedSoon(
        () -> OPEN + "<text>" + "a book ".repeat(1_000_000) + "</text></svg>", ArtworkCode.TOO_BIG);
    refusedSoon(
        () ->
            OPEN
                + "<text id='t'>a line of some letters</text>"
                + "<use href='#t'/>".repeat(50_000)
                + "</svg>",
        ArtworkCode.TOO_BIG);
  }

  @Test
  void deep_nesting_is_refused() {
    refusedSoon(() -> OPEN + "<g>".repeat(100_000), ArtworkCode.TOO_BIG);
  }

  @Test
  void style_sheets_that_take_too_long_are_refused() {
    String rules = "g g g g g rect + rect {fill:red}\n".repeat(4_000);
    refusedSoon(
        () ->
            OPEN
                + "<style>"
                + rules
                + "</style>"
                + "<g>".repeat(50)
                + "<rect width='1' height='1'/>".repeat(50_000)
                + "</g>".repeat(50)
                + "</svg>",
        ArtworkCode.TOO_BIG);
  }

  @Test
  void a_spoilt_drawing_gives_a_drawing_or_a_diagnostic() {
    String good =
        OPEN
            + "<style>.a{fill:none;stroke:#123456;stroke-width:.5mm}</style><g"
            + " transform='rotate(5)'><path class='a' d='M1 2C3 4 5 6 7 8zA1 2 3 0 1 4 5'/><use"
            + " href='#r' x='1em'/></g><svg viewBox='0 0 10 10' width='50' height='5'><rect id='r'"
            + " width='9' height='9' rx='1'/></svg><polygon points='1,2 3,4 5,9'/><clipPath"
            + " id='c'><circle r='9'/></clipPath><text x='1 2' dy='1em' clip-path='url(#c)'"
            + " style='font:bold 9px serif'>Ash<tspan>A</tspan></text><path stroke='red'"
            + " stroke-dasharray='0 4 1' d='M0 0H9' stroke-linecap='round' transform='skewX(9)'"
            + " transform-origin='50% 1'/></svg>";
    long seed = Seeds.seed(20_260_101);
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 1_000; n++) {
      byte[] spoilt = Drawings.bytes(good);
      for (int k = random.nextInt(6); k >= 0; k--) {
        int at = OPEN.length() + random.nextInt(spoilt.length - OPEN.length());
        int from = OPEN.length() + random.nextInt(spoilt.length - OPEN.length());
        spoilt[at] = random.nextBoolean() ? spoilt[from] : (byte) random.nextInt(256);
      }
      try {
        new SvgReader().read("t.svg", spoilt);
      } catch (frieze.diagnostic.BadInputException e) {
        assertThat(e.diagnostics()).isNotEmpty();
      } catch (RuntimeException e) {
        throw new AssertionError(
            "seed "
                + seed
                + ", drawing "
                + n
                + ": "
                + new String(spoilt, java.nio.charset.StandardCharsets.UTF_8),
            e);
      }
    }
  }
}
