package frieze.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.pen.Clipping;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.diagnostic.Diagnostic;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Letters, against the fonts as java.awt draws them and against published widths. */
class TextTest {
  /** The units of the fonts' em, so that java.awt rounds nothing. */
  private static final int EM = 2048;

  private static Artwork text(String attributes, String words) {
    return Drawings.inMm("<text " + attributes + ">" + words + "</text>");
  }

  private static Bounds bounds(List<Path> paths) {
    Bounds b = Bounds.EMPTY;
    for (Path path : paths) {
      b = b.with(path.bounds());
    }
    return b;
  }

  /** The outlines of java.awt, one for each subpath, Y down. */
  private static List<Path2D> byJavaAwt(String face, String words) {
    try (InputStream in = TextTest.class.getResourceAsStream("/liberation/" + face + ".ttf")) {
      Font font =
          Font.createFont(Font.TRUETYPE_FONT, in)
              .deriveFont((float) EM)
              .deriveFont(Map.of(TextAttribute.KERNING, TextAttribute.KERNING_ON));
      char[] letters = words.toCharArray();
      GlyphVector line =
          font.layoutGlyphVector(
              new FontRenderContext(null, true, true),
              letters,
              0,
              letters.length,
              Font.LAYOUT_LEFT_TO_RIGHT);
      return subpaths(line.getOutline());
    } catch (IOException | FontFormatException e) {
      throw new AssertionError(e);
    }
  }

  private static List<Path2D> subpaths(Shape shape) {
    List<Path2D> all = new ArrayList<>();
    double[] c = new double[6];
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      Path2D last = all.isEmpty() ? null : all.get(all.size() - 1);
      switch (i.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> {
          all.add(new Path2D.Double());
          all.get(all.size() - 1).moveTo(c[0], c[1]);
        }
        case PathIterator.SEG_LINETO -> last.lineTo(c[0], c[1]);
        case PathIterator.SEG_QUADTO -> last.quadTo(c[0], c[1], c[2], c[3]);
        case PathIterator.SEG_CUBICTO -> last.curveTo(c[0], c[1], c[2], c[3], c[4], c[5]);
        default -> last.closePath();
      }
    }
    return all;
  }

  @ParameterizedTest
  @CsvSource({
    "LiberationSans-Regular, font-family='sans-serif'",
    "LiberationSerif-BoldItalic, font-family='serif' font-weight='700' font-style='italic'",
    "LiberationMono-Bold, 'style=\"font: bold 2048px/1.2 Liberation Mono, serif\"'"
  })
  void letters_have_the_outlines_and_places_that_java_awt_gives_them(String face, String style) {
    String words = "AVATAR To. Gr\u00f6\u00dfe @8%";
    Artwork art = text("font-size='2048' " + style, words);
    List<Path> ours = art.pieces().get(0).paths();
    List<Path2D> theirs = byJavaAwt(face, words);
    assertThat(ours).hasSameSizeAs(theirs);
    for (int i = 0; i < ours.size(); i++) {
      Bounds a = ours.get(i).bounds();
      Rectangle2D b = theirs.get(i).getBounds2D();
      assertThat(List.of(a.minX(), -a.maxY(), a.maxX(), -a.minY()))
          .as("outline %d of %s", i, face)
          .usingElementComparator((p, q) -> Math.abs(p - q) < 0.6 ? 0 : Double.compare(p, q))
          .containsExactly(b.getMinX(), b.getMinY(), b.getMaxX(), b.getMaxY());
    }
    assertThat(art.pieces().get(0).fill()).isPresent();
  }

  /** The advance of any letter of a fixed-width font of size 10, and what of it is left of an i. */
  private static final double ADVANCE = 10 * 1229.0 / EM;

  private static double left(String attributes, String words) {
    return text("font-size='10' font-family='monospace' " + attributes, words).bounds().minX();
  }

  @ParameterizedTest
  @CsvSource({"start, 0", "middle, 1.5", "end, 3"})
  void a_line_is_anchored_at_its_place(String anchor, double letters) {
    double bearing = left("", "i");
    String style = "x='100' text-anchor='" + anchor + "'";
    assertThat(left(style, "iii")).isCloseTo(100 - letters * ADVANCE + bearing, within(1e-9));
    assertThat(left(style, "i<tspan>i</tspan> "))
        .isCloseTo(100 - letters * ADVANCE * 2 / 3 + bearing, within(1e-9));
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "x='3 30' | iii | 3 30 36.001",
        "x='3' dx='0 1 2' | iii | 3 10.001 18.002",
        "x='3'| i<tspan x='20'>ii</tspan>i | 3 20 26.001 32.002",
        "x='3 4 5' | i<tspan dx='9'>i</tspan>i | 3 13 5",
        "x='3' letter-spacing='2' | ii | 3 11.001",
        "x='3' word-spacing='4' | i i | 3 19.002",
        "x='3' | i &#10;&#9; i | 3 15.002",
        "x='3' | &#10; i &#10; | 3",
        "x='3' xml:space='preserve' | &#10;ii&#32; | 9.001 15.002",
        "x='3' | i<tspan> i</tspan> i | 3 15.002 27.003",
        "x='3' | i <tspan> i</tspan> | 3 15.002",
        "x='3' | i<tspan display='none'>i</tspan>i | 3 9.001",
        "x='3' | i<tspan visibility='hidden'>i</tspan>i | 3 15.002",
        "x='1mm' | i | 3.7795",
        "x='1em 2em' | ii | 10 20"
      })
  void letters_stand_where_the_lists_say(String attributes, String words, String places) {
    Artwork art =
        text("font-size='10' font-family='monospace' " + attributes, words.replace("|", ""));
    List<Double> dots = new ArrayList<>();
    double stem = left("", "i");
    art.pieces().forEach(p -> letters(p).forEach(l -> dots.add(l.minX() - stem)));
    String[] expected = places.split(" ");
    assertThat(dots).hasSameSizeAs(expected);
    for (int i = 0; i < expected.length; i++) {
      assertThat(dots.get(i)).isCloseTo(Double.parseDouble(expected[i]), within(1e-3));
    }
  }

  /** The bounds of each i: of its dot and its stem. */
  private static List<Bounds> letters(Piece piece) {
    List<Bounds> all = new ArrayList<>();
    for (int i = 0; i < piece.paths().size(); i += 2) {
      all.add(bounds(piece.paths().subList(i, i + 2)));
    }
    return all;
  }

  @Test
  void letters_are_turned_about_where_they_stand_and_the_last_turn_goes_on() {
    Artwork upright = text("font-size='10' font-family='monospace'", "i");
    Artwork art = text("font-size='10' font-family='monospace' rotate='0 90'", "iii");
    Bounds first = letters(art.pieces().get(0)).get(0);
    Bounds last = letters(art.pieces().get(0)).get(2);
    assertThat(first).isEqualTo(upright.bounds());
    assertThat(last.width()).isCloseTo(upright.bounds().height(), within(1e-9));
    assertThat(last.minX()).isCloseTo(2 * ADVANCE + upright.bounds().minY(), within(1e-9));
    assertThat(last.maxY()).isCloseTo(-upright.bounds().minX(), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"middle, 1082", "central, 1254"})
  void a_baseline_in_the_middle_lowers_the_letters(String baseline, double unitsTwice) {
    double high = text("font-size='2048'", "x").bounds().minY();
    double low = text("font-size='2048' dominant-baseline='" + baseline + "'", "x").bounds().minY();
    assertThat(high - low)
        .as("half of the height of x, or of ascender 1854 and descender -434, less rounding")
        .isCloseTo(baseline.equals("middle") ? unitsTwice / 2 : (1854 - 434) / 2.0, within(1e-9));
  }

  @Test
  void the_report_names_fonts_and_what_is_missing() {
    Artwork art = text("font-family='Nowhere, Elsewhere'", "a☃b<textPath href='#p'>no</textPath>");
    assertThat(art.notes())
        .extracting(Diagnostic::code)
        .containsExactlyInAnyOrder(
            ArtworkCode.NOT_AN_OUTLINE, ArtworkCode.TEXT_SET, ArtworkCode.GLYPH_MISSING);
    assertThat(art.notes())
        .extracting(Diagnostic::message)
        .anyMatch(
            m ->
                m.startsWith(
                    "3 letters are set in Liberation Sans, which comes with Frieze; \"Nowhere, Elsewhere\" is not"))
        .anyMatch(m -> m.contains("the character \"☃\" (U+2603) is not in Liberation Sans"))
        .anyMatch(m -> m.startsWith("text along a path is not set"));
  }

  @Test
  void asked_fonts_are_named_in_a_note_and_wishes_that_are_not_followed_in_a_warning() {
    Artwork art =
        text("font-family='serif' textLength='90' style='text-decoration:underline'", "abc");
    assertThat(art.notes()).extracting(d -> d.severity().toString()).contains("NOTE", "WARNING");
    assertThat(art.notes())
        .extracting(Diagnostic::message)
        .anyMatch(m -> m.equals("3 letters are set in Liberation Serif, which comes with Frieze"))
        .anyMatch(m -> m.startsWith("textLength is not followed"))
        .anyMatch(m -> m.startsWith("text-decoration is not followed"));
  }

  @Test
  void parts_of_a_text_are_picked_by_its_id_their_own_and_their_colour() {
    Artwork art = text("id='name' font-size='10'", "Hall <tspan id='b' fill='red'>Bench</tspan>");
    assertThat(art.pieces()).hasSize(2).allMatch(p -> p.label().answersTo("name"));
    assertThat(art.pieces().get(1).label().answersTo("b")).isTrue();
    assertThat(art.pieces().get(1).label().answersTo("#f00")).isTrue();
    assertThat(art.pieces().get(0).label().answersTo("b")).isFalse();
  }

  @Test
  void letters_cut_what_they_clip() {
    Artwork letter = text("font-size='40'", "I");
    Artwork art =
        Drawings.inMm(
            "<clipPath id='c' clip-rule='evenodd'><text font-size='40'>I</text></clipPath>"
                + "<rect clip-path='url(#c)' y='-90' width='99' height='99'/>");
    assertThat(Clipping.of(art, 1e-3).filled(1e-3).area())
        .isCloseTo(letter.filled(1e-3).area(), within(1e-6));
  }

  @Test
  void the_licence_of_the_fonts_is_beside_them() throws IOException {
    try (InputStream in = TextTest.class.getResourceAsStream("/liberation/LICENSE")) {
      assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
          .contains("SIL OPEN FONT LICENSE Version 1.1");
    }
  }
}
