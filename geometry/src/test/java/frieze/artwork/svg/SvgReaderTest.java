package frieze.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.artwork.Drawings;
import frieze.artwork.Piece;
import frieze.curve.Arc;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Diagnostic;
import frieze.region.FillRule;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SvgReaderTest {
  private static final double ONE_MICROMETRE = 0.001;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<circle cx='500' cy='500' r='500'/>",
        "<ellipse cx='500' cy='500' rx='500' ry='500'/>",
        "<path d='M0 500A500 500 0 0 1 1000 500 500 500 0 0 1 0 500z'/>",
        "<path d='M0 500a500 500 0 1 0 1000 0 500 500 0 1 0-1000 0'/>",
        "<rect width='1000' height='1000' rx='500'/>",
        "<g transform='translate(500 500)'><circle transform='rotate(33) scale(5)' r='100'/></g>",
        "<g transform='translate(500 500) scale(2 1)'><ellipse rx='250' ry='500'/></g>",
        "<svg x='100' y='100' width='800' height='800' viewBox='0 0 2 2' overflow='visible'>"
            + "<circle cx='1' cy='1' r='1.25'/></svg>"
      })
  void a_circle_of_half_a_metre_stays_one_to_a_micrometre(String body) {
    Artwork art = Drawings.page("width='1000mm' height='1000mm' viewBox='0 0 1000 1000'", body);
    Path path = art.pieces().get(0).paths().get(0);
    assertThat(path.closed()).isTrue();
    assertThat(path.segments()).allSatisfy(s -> assertThat(s).isInstanceOf(Arc.class));
    for (Arc arc : path.segments().stream().map(Arc.class::cast).toList()) {
      for (int i = 0; i <= 100; i++) {
        double distance = arc.at(i / 100.0).distance(new Point(500, 500));
        assertThat(distance).isCloseTo(500, within(ONE_MICROMETRE / 1000));
      }
    }
  }

  @Test
  void the_size_that_was_assumed_is_said() {
    String rect = "<rect width='10' height='10'/>";
    assertThat(Drawings.page("width='100mm' height='50mm'", rect).sizeAssumed())
        .isEqualTo("page of 100 x 50 mm, as the file says in mm");
    assertThat(Drawings.page("width='96' height='192'", rect).sizeAssumed())
        .isEqualTo("page of 25.4 x 50.8 mm, from px at 96 to the inch");
    Artwork unsized = Drawings.page("viewBox='0 0 96 96'", rect);
    assertThat(unsized.sizeAssumed()).contains("25.4 x 25.4 mm").contains("1/96 in");
    assertThat(unsized.notes()).extracting(Diagnostic::code).contains(ArtworkCode.SIZE_ASSUMED);
    assertThat(Drawings.page("", rect).sizeAssumed()).contains("1/96 in");
  }

  @Test
  void one_size_and_a_box_give_the_other_size() {
    Artwork art =
        Drawings.page("width='2in' viewBox='0 0 100 50'", "<rect width='100' height='50'/>");
    assertThat(art.bounds().height()).isCloseTo(25.4, within(1e-9));
  }

  @Test
  void an_explicit_scale_wins_over_the_file() {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' width='1in' height='1in' viewBox='0 0 90 90'>"
            + "<rect width='90' height='90'/></svg>";
    Artwork art = SvgReader.withScale(2).read("t.svg", Drawings.bytes(svg));
    assertThat(art.bounds()).isEqualTo(new Bounds(0, 0, 180, 180));
  }

  @Test
  void a_line_is_its_centre_with_its_width() {
    Artwork art =
        Drawings.inMm("<g transform='scale(2)'><line x2='10' stroke='red' stroke-width='3'/></g>");
    assertThat(art.pieces().get(0).fill()).isPresent();
    assertThat(art.pieces().get(0).strokeWidthMm()).hasValueCloseTo(6.0, within(1e-12));
    Artwork fixed =
        Drawings.page(
            "",
            "<path transform='scale(9)' d='M0 0H9' style='fill:none;stroke:red;stroke-width:"
                + "96px;vector-effect:non-scaling-stroke'/>");
    assertThat(fixed.pieces().get(0).fill()).isEmpty();
    assertThat(fixed.pieces().get(0).strokeWidthMm()).hasValueCloseTo(25.4, within(1e-9));
  }

  @Test
  void a_used_symbol_is_fitted_into_the_place_of_its_use() {
    Artwork art =
        Drawings.inMm(
            "<defs><symbol id='s' viewBox='0 0 10 10'><rect width='10' height='10'/></symbol>"
                + "<g id='g' transform='scale(2)'><circle r='1'/></g></defs>"
                + "<use href='#s' x='5' y='7' width='20' height='40'/>"
                + "<use href='#g' x='100' transform='translate(0 1)'/>");
    assertThat(art.pieces().get(0).paths().get(0).bounds()).isEqualTo(new Bounds(5, -37, 25, -17));
    Bounds circle = art.pieces().get(1).paths().get(0).bounds();
    assertThat(circle).isEqualTo(new Bounds(98, -3, 102, 1));
  }

  @Test
  void style_sheets_are_followed_by_their_weight() {
    String css =
        "<style>/* c */ @media print {path{fill:none}} .a{fill:none} g.a > path#x {fill:red}"
            + " path[data-k='v'] {stroke:blue; stroke-width:2px !important}"
            + " g path {fill-rule:evenodd}</style>";
    Artwork art =
        Drawings.inMm(
            css
                + "<g class='a'><path id='x' d='M0 0h9v9z'/><path id='y' d='M0 0h9v9z'/><path"
                + " id='z' data-k='v' stroke='none' style='stroke-width:7' d='M0 0h9v9z'/></g>");
    assertThat(art.pieces()).extracting(Piece::id).containsExactly("x", "z");
    assertThat(art.pieces().get(0).fill()).contains(FillRule.EVEN_ODD);
    assertThat(art.pieces().get(1).fill()).isEmpty();
    assertThat(art.pieces().get(1).strokeWidthMm()).hasValueCloseTo(2.0, within(1e-6));
  }

  @Test
  void what_does_not_show_is_left_out_and_counted() {
    Artwork art =
        Drawings.inMm(
            "<rect id='kept' width='1' height='1'/><rect width='0' height='5'/>"
                + "<g display='none'><circle r='5'/></g><circle r='5' visibility='hidden'/>"
                + "<g visibility='hidden'><circle id='back' r='5' visibility='visible'/></g>"
                + "<circle r='5' fill='none'/><path d='M0 0H9'/><circle r='3' style='opacity:0'/>"
                + "<g transform='scale(0)'><circle r='5'/></g><circle r='5' fill-opacity='0'/>"
                + "<g style='display:none'><rect width='9' height='9'/></g>");
    assertThat(art.pieces()).extracting(Piece::id).containsExactly("kept", "back");
    assertThat(art.notes())
        .extracting(Diagnostic::code)
        .containsExactlyInAnyOrder(ArtworkCode.INVISIBLE_LEFT_OUT, ArtworkCode.NO_AREA);
    assertThat(art.notes()).anyMatch(d -> d.message().startsWith("8 things are"));
  }

  @Test
  void classes_come_from_the_groups_around_too() {
    Artwork art =
        Drawings.inMm("<g class='leaf  big'><g><path class='vein' d='M0 0h1v1z'/></g></g>");
    assertThat(art.pieces().get(0).classes()).containsExactly("leaf", "big", "vein");
  }

  @Test
  void what_is_not_followed_is_said_with_its_place() {
    Artwork art =
        Drawings.inMm(
            "\n"
                + "<clipPath id='c'><rect width='1' height='1'/></clipPath>\n"
                + "<rect mask='url(#c)' width='9' height='9'/>\n"
                + "<text>hi</text>\n"
                + "<image href='data:image/png;base64,AAAA'/>\n"
                + "<rect fill='#FFF' width='9' height='9'/>\n"
                + "<path d='M0 0h5v5z L 7'/>\n"
                + "<use href='#gone'/><script>x()</script>");
    assertThat(art.notes().stream().map(d -> d.where() + " " + d.code().id()).toList())
        .containsExactly(
            "t.svg:3:1 ART-014",
            "t.svg:4:1 ART-024",
            "t.svg:5:1 ART-013",
            "t.svg:6:1 ART-016",
            "t.svg:7:23 ART-009",
            "t.svg:8:1 ART-008",
            "t.svg:8:20 ART-005");
  }

  @Test
  void shapes_have_the_rounding_of_their_radii() {
    Artwork art =
        Drawings.inMm(
            "<rect width='10' height='6' rx='2'/><rect width='10' height='6' ry='9'/>"
                + "<rect width='10' height='6' rx='1' ry='2'/><polyline points='0,0 4,0 4,4 7'/>");
    assertThat(art.filled(1e-5).isEmpty()).isFalse();
    assertThat(area(art, 0)).isCloseTo(60 - (4 - Math.PI) * 4, within(1e-3));
    assertThat(area(art, 1)).isCloseTo(60 - (4 - Math.PI) * 5 * 3, within(1e-3));
    assertThat(area(art, 2)).isCloseTo(60 - (4 - Math.PI) * 2, within(1e-3));
    assertThat(area(art, 3)).isCloseTo(8, within(1e-9));
    assertThat(art.notes()).extracting(Diagnostic::code).contains(ArtworkCode.BROKEN_PATH);
  }

  private static double area(Artwork art, int piece) {
    Piece p = art.pieces().get(piece);
    return new Artwork("", List.of(p), "", List.of()).filled(1e-5).area();
  }

  @Test
  void a_hundred_thousand_points_are_read() {
    StringBuilder d = new StringBuilder("M");
    int n = 100_000;
    for (int i = 0; i < n; i++) {
      double r = 100 + StrictMath.sin(i * 0.01);
      double a = 2 * Math.PI * i / n;
      d.append(r * StrictMath.cos(a)).append(',').append(r * StrictMath.sin(a)).append(' ');
    }
    Artwork art = Drawings.inMm("<path d='" + d + "z'/>");
    assertThat(art.pieces().get(0).paths().get(0).segments()).hasSize(n);
  }

  @Test
  void an_old_header_and_other_encodings_are_read() {
    String body =
        "<svg xmlns='http://www.w3.org/2000/svg'><rect id='\u00e9' width='9' height='9'/></svg>";
    String doctype =
        "<?xml version='1.0' encoding='ISO-8859-1'?>\n"
            + "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN'"
            + " 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>\n";
    byte[] latin = (doctype + body).getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
    byte[] wide = ("\ufeff" + body).getBytes(java.nio.charset.StandardCharsets.UTF_16LE);
    for (byte[] content : List.of(latin, wide)) {
      assertThat(new SvgReader().read("t.svg", content).pieces().get(0).id()).isEqualTo("\u00e9");
    }
  }

  @Test
  void a_line_may_keep_how_wide_it_is_place_by_place() {
    String line =
        "<path d='M0 0H9%s' stroke='black' stroke-width='2' fill='none' data-width-parts='%s'/>";
    Piece one = Drawings.inMm(line.formatted("", " 1 0.5 .25 ")).pieces().get(0);
    assertThat(one.stroke().orElseThrow().parts()).containsExactly(1.0, 0.5, 0.25);
    assertThat(one.strokeWidthMm().orElseThrow()).isCloseTo(2, within(1e-9));
    Piece two = Drawings.inMm(line.formatted("M0 5H9", "1 0.5")).pieces().get(0);
    assertThat(two.stroke().orElseThrow().parts()).as("which of the two lines?").isEmpty();
  }

  @Test
  void
      an_outline_along_an_axis_that_encloses_nothing_and_doubled_points_are_told_with_their_places() {
    Artwork art = Drawings.inMm("<path d='M1 2H9z'/><path d='M0 0H9H9V9V9z'/>");
    assertThat(art.pieces()).hasSize(1);
    assertThat(art.notes())
        .extracting(Diagnostic::code)
        .containsExactlyInAnyOrder(ArtworkCode.NO_AREA, ArtworkCode.DOUBLED_POINTS);
    assertThat(art.notes())
        .anyMatch(d -> d.message().contains("8.0000 mm long about (mm) 5.000, -2.000"))
        .anyMatch(d -> d.message().contains("doubled points removed: 2, the first at (mm) 9.000"));
  }
}
