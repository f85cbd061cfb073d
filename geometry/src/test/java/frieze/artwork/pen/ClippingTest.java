package frieze.artwork.pen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.artwork.svg.SvgReader;
import frieze.curve.Arc;
import frieze.curve.Point;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clips of SVG 1.1, 14.3, against areas in closed form. */
class ClippingTest {
  private static final double TOLERANCE_MM = 1e-4;

  private static Artwork read(String body) {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg'>" + body + "</svg>";
    return SvgReader.withScale(1).read("t.svg", svg.getBytes(StandardCharsets.UTF_8));
  }

  private static Artwork clipped(String body) {
    return Clipping.of(read(body), TOLERANCE_MM);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "a rectangle | <rect x='5' width='10' height='4'/> | <rect CLIP width='10' height='10'/> |"
            + " 20",
        "two panes | <rect width='2' height='9'/><rect x='1' width='3' height='9'/> | <rect CLIP"
            + " width='10' height='5'/> | 20",
        "moved with it | <rect width='3' height='3'/> | <rect CLIP transform='translate(7)"
            + " scale(2)' width='10' height='10'/> | 36",
        "a moved pane | <rect transform='translate(8)' width='3' height='3'/> | <rect CLIP"
            + " width='10' height='10'/> | 6",
        "the rule of a pane | <path clip-rule='evenodd' d='M0 0h8v8h-8zM2 2h4v4h-4z'/> | <rect CLIP"
            + " width='10' height='10'/> | 48",
        "no paint needed | <rect fill='none' opacity='0' width='3' height='3'/> | <rect CLIP"
            + " width='10' height='10'/> | 9",
        "a hidden pane | <rect width='3' height='3'/><rect display='none' width='9' height='9'/> |"
            + " <rect CLIP width='10' height='10'/> | 9",
        "a used pane | <use href='#r' x='8'/> | <rect CLIP width='10' height='10'/><defs><rect"
            + " id='r' width='9' height='9'/></defs> | 18",
        "a group | <rect width='3' height='3'/> | <g CLIP><rect width='2' height='9'/><rect x='2'"
            + " width='9' height='2'/></g> | 8",
        "a use | <rect width='3' height='3'/> | <use CLIP x='8' href='#d'/><defs><rect id='d'"
            + " width='2' height='9'/></defs> | 6"
      })
  void a_clip_leaves_what_is_inside(String name, String panes, String drawn, double area) {
    Artwork art =
        clipped(
            "<clipPath id='c'>"
                + panes
                + "</clipPath>"
                + drawn.replace("CLIP", "clip-path='url(#c)'"));
    assertThat(art.filled(TOLERANCE_MM).area()).as(name).isCloseTo(area, within(1e-9));
  }

  @Test
  void a_clip_in_units_of_the_box_goes_with_what_it_clips() {
    Artwork art =
        clipped(
            "<clipPath id='c' clipPathUnits='objectBoundingBox'><rect x='.5' width='.5'"
                + " height='.5'/></clipPath><rect clip-path='url(#c)' x='10' y='20' width='8'"
                + " height='6'/>");
    assertThat(art.filled(TOLERANCE_MM).area()).isCloseTo(12, within(1e-9));
    assertThat(art.bounds().minX()).isCloseTo(14, within(1e-9));
    assertThat(art.bounds().maxY()).isCloseTo(-20, within(1e-9));
  }

  @Test
  void clips_of_clips_and_of_panes_all_hold() {
    Artwork art =
        clipped(
            "<clipPath id='a'><rect width='6' height='6'/></clipPath><clipPath id='b'"
                + " clip-path='url(#a)'><rect x='3' width='6' height='6'/></clipPath><clipPath"
                + " id='d'><rect clip-path='url(#b)' y='4' width='9' height='9'/></clipPath><rect"
                + " clip-path='url(#d)' width='20' height='20'/>");
    assertThat(art.filled(TOLERANCE_MM).area()).isCloseTo(3 * 2, within(1e-9));
  }

  @Test
  void what_is_not_cut_and_arcs_that_are_cut_stay_exact() {
    Artwork art =
        clipped(
            "<clipPath id='c'><rect x='-10' y='-10' width='20' height='10'/></clipPath>"
                + "<g clip-path='url(#c)'><circle r='5'/><circle cy='-5' r='1'/></g>");
    assertThat(art.pieces().get(0).paths().get(0).segments())
        .filteredOn(Arc.class::isInstance)
        .allSatisfy(s -> assertThat(((Arc) s).radius()).isCloseTo(5, within(1e-9)));
    assertThat(art.pieces().get(0).paths().get(0).segments()).hasSizeBetween(2, 3);
    assertThat(art.pieces().get(1).paths().get(0).segments()).singleElement();
  }

  @Test
  void a_line_is_cut_where_it_leaves_and_keeps_its_direction() {
    Artwork art =
        clipped(
            "<clipPath id='c'><rect width='10' height='10'/></clipPath><path clip-path='url(#c)'"
                + " stroke='red' fill='none' d='M15 5H-5M5 2V8'/>");
    Piece line = art.pieces().get(0);
    assertThat(line.stroke()).isPresent();
    assertThat(line.paths()).hasSize(2);
    assertThat(line.paths().get(0).start().distance(new Point(10, -5))).isLessThan(1e-9);
    assertThat(line.paths().get(0).end().distance(new Point(0, -5))).isLessThan(1e-9);
  }

  @Test
  void an_inner_drawing_is_cut_at_its_edge_unless_it_may_overflow() {
    String inner = "<rect width='30' height='30'/></svg>";
    assertThat(clipped("<svg x='2' width='10' height='5'>" + inner).filled(1e-3).area())
        .isCloseTo(50, within(1e-9));
    assertThat(
            clipped("<svg overflow='visible' width='10' height='5'>" + inner).filled(1e-3).area())
        .isCloseTo(900, within(1e-9));
  }

  @Test
  void a_clip_that_leads_nowhere_cuts_nothing_and_says_so() {
    Artwork art = clipped("<rect clip-path='url(#gone)' width='3' height='3'/>");
    assertThat(art.filled(1e-3).area()).isCloseTo(9, within(1e-9));
    assertThat(art.notes().get(0).message()).contains("no clipPath with the id \"gone\"");
  }
}
