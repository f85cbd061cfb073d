package frieze.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.artwork.Drawings;
import frieze.curve.Arc;
import frieze.curve.Bounds;
import frieze.curve.Cubic;
import frieze.curve.EllipticArc;
import frieze.curve.Flattener;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Values that follow from SVG 1.1 (second edition), 7.6 to 7.10, 11.3, F.6, and from closed forms;
 * the formulas were written down from memory of that text, the numbers computed from them.
 */
class SvgReferenceTest {
  private static final double PRINTED = 1e-6;

  /** SVG 1.1, 7.10; CSS Values 3, 5.2. */
  @ParameterizedTest
  @CsvSource({
    "1in, 25.4",
    "1cm, 10",
    "1mm, 1",
    "1Q, 0.25",
    "1pt, 0.352777778",
    "1pc, 4.233333333",
    "1px, 0.264583333",
    "1, 0.264583333",
    "2E0mm, 2",
    "1em, 4.233333333",
    "1MM, 1"
  })
  void a_length_has_the_size_of_its_unit(String width, double mm) {
    Artwork art = Drawings.page("", "<rect width='" + width + "' height='1in'/>");
    assertThat(art.bounds().width()).isCloseTo(mm, within(1e-9));
  }

  /** SVG 1.1, 7.7 and 7.8. */
  @Test
  void a_box_is_fitted_into_the_middle_of_its_viewport() {
    Bounds b =
        Drawings.page(
                "width='100mm' height='50mm' viewBox='10 20 200 200'",
                "<rect x='10' y='20' width='200' height='200'/>")
            .bounds();
    assertThat(List.of(b.minX(), b.minY(), b.maxX(), b.maxY()))
        .usingElementComparator(SvgReferenceTest::nearly)
        .containsExactly(25.0, 0.0, 75.0, 50.0);
  }

  /** SVG 1.1, 7.8. */
  @ParameterizedTest
  @CsvSource({
    "none, 0, 0, 100, 50",
    "xMinYMid, 0, 0, 50, 50",
    "xMaxYMid meet, 50, 0, 100, 50",
    "xMidYMin slice, 0, -50, 100, 50",
    "xMidYMax slice, 0, 0, 100, 100"
  })
  void a_box_is_fitted_as_asked(String how, double x0, double y0, double x1, double y1) {
    Bounds b =
        Drawings.page(
                "width='100mm' height='50mm' viewBox='10 20 200 200' preserveAspectRatio='"
                    + how
                    + "'",
                "<rect x='10' y='20' width='200' height='200'/>")
            .bounds();
    assertThat(List.of(b.minX(), b.minY(), b.maxX(), b.maxY()))
        .usingElementComparator(SvgReferenceTest::nearly)
        .containsExactly(x0, y0, x1, y1);
  }

  private static int nearly(Double a, Double b) {
    return Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b);
  }

  /** SVG 1.1, 7.6; units from CSS Transforms 1, 12. */
  @ParameterizedTest
  @CsvSource({
    "translate(10 0) rotate(90), 10, 1",
    "rotate(90) translate(10 0), 0, 11",
    "'rotate(90,10,0)', 10, -9",
    "'matrix(1 2 3 4 5 6)', 6, 8",
    "scale(2 3), 2, 0",
    "skewY(45), 1, 1",
    "'translate(1),scale(2)', 3, 0",
    "rotate(-270), 0, 1",
    "scale(3), 3, 0",
    "skewX(45), 1, 0",
    "skewX(45) translate(0 2), 3, 2",
    "skewY(45) skewX(45), 1, 1",
    "rotate(.25turn) translate(1in 6pt), -8, 97",
    "'rotate(1.5707963267948966rad) scale(-1 1)', 0, -1"
  })
  void a_list_of_transforms_works_from_right_to_left(String transform, double x, double y) {
    Artwork art =
        Drawings.inMm("<path transform='" + transform + "' stroke='black' d='M1 0l0 1'/>");
    Point start = art.pieces().get(0).paths().get(0).start();
    assertThat(start.x()).isCloseTo(x, within(1e-12));
    assertThat(start.y()).isCloseTo(-y, within(1e-12));
  }

  /** SVG 1.1, 7.5: the place of (1, 0) through transforms of its own and of two groups. */
  @Test
  void transforms_of_groups_go_around_those_inside() {
    Artwork art =
        Drawings.inMm(
            "<g transform='translate(5 6)'><g transform='skewX(45) scale(2)'>"
                + "<path transform='rotate(90)' stroke='red' d='M1 0l1 0'/></g></g>");
    Point start = art.pieces().get(0).paths().get(0).start();
    assertThat(start.distance(new Point(7, -8))).isLessThan(1e-12);
  }

  /** CSS Transforms 1, 5: half a turn about the origin, seen from the point (1, 0). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10 20 | 19 40",
        "10px, 1in | 19 192",
        "0 0 | -1 0",
        "50% 25% | 99 100",
        "left bottom | -1 400",
        "bottom left | -1 400",
        "center | 99 200",
        "top | 99 0",
        "right 3 | 199 6",
        "1em 2em 5px | 31 64"
      })
  void a_transform_has_its_origin_where_it_is_said(String origin, String place) {
    String[] xy = place.trim().split(" ");
    for (String how :
        List.of(
            "transform='rotate(180)' transform-origin='" + origin + "'",
            "style='transform:rotate(180deg);transform-origin:" + origin + "'")) {
      Artwork art =
          Drawings.page(
              "width='100px' height='200px' viewBox='0 0 100 200'",
              "<path stroke='red' d='M1 0l1 0' " + how + "/>");
      Point start = art.pieces().get(0).paths().get(0).start();
      Point px = new Point(start.x() * 96 / 25.4, 200 - start.y() * 96 / 25.4);
      assertThat(px.distance(new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1]))))
          .as(how)
          .isLessThan(1e-6);
    }
  }

  /** CSS Transforms 1, 5 and 6: half a turn about a point of the element's own box. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "transform-origin='50% 50%' | 10 -24 14 -20",
        "transform-origin='center' | 10 -24 14 -20",
        "transform-origin='right bottom' | 14 -28 18 -24",
        "transform-origin='1 2' | 8 -24 12 -20",
        "transform-origin='25% 100%' | 8 -28 12 -24",
        "class='plain' | 6 -20 10 -16"
      })
  void a_transform_has_its_origin_in_the_box_of_its_element(String origin, String bounds) {
    String[] v = bounds.trim().split(" ");
    Bounds expected =
        new Bounds(
            Double.parseDouble(v[0]),
            Double.parseDouble(v[1]),
            Double.parseDouble(v[2]),
            Double.parseDouble(v[3]));
    String how = " transform='rotate(180)' transform-box='fill-box' " + origin;
    for (String body :
        List.of(
            "<rect x='10' y='20' width='4' height='4'" + how + "/>",
            "<g"
                + how
                + "><rect x='10' y='20' width='4' height='1'/><circle r='9' display='none'/>"
                + "<path stroke='red' stroke-width='3' d='M10 23h2v1h2'/></g>",
            "<g" + how + "><g transform='translate(10 20)'><rect width='4' height='4'/></g></g>",
            "<defs><rect id='r' x='1' y='2' width='4' height='4'/></defs>"
                + "<use href='#r' x='9' y='18'"
                + how
                + "/>")) {
      Bounds b = Drawings.inMm(body).bounds();
      assertThat(List.of(b.minX(), b.minY(), b.maxX(), b.maxY()))
          .as(body)
          .usingElementComparator(SvgReferenceTest::nearly)
          .containsExactly(expected.minX(), expected.minY(), expected.maxX(), expected.maxY());
    }
  }

  @Test
  void a_transform_in_the_box_of_nothing_and_one_in_the_box_of_a_line_are_told() {
    Artwork art =
        Drawings.inMm(
            "<g transform='scale(2)' transform-box='fill-box'/><rect width='9' height='9'/>");
    assertThat(art.bounds()).isEqualTo(new Bounds(0, -9, 9, 0));
    assertThat(
            Drawings.refused(
                "<svg xmlns='http://www.w3.org/2000/svg'><rect width='9' height='9' transform='"
                    + "rotate(9)' transform-box='stroke-box'/></svg>"))
        .anySatisfy(d -> assertThat(d.message()).contains("transform-box=\"stroke-box\""));
  }

  @ParameterizedTest
  @CsvSource({"left right", "top bottom", "1 2 3 4", "5%", "x"})
  void an_origin_that_is_none_is_refused(String origin) {
    assertThat(
            Drawings.refused(
                "<svg xmlns='http://www.w3.org/2000/svg'><rect width='9' height='9' transform='"
                    + "rotate(9)' transform-origin='"
                    + origin
                    + "'/></svg>"))
        .extracting(d -> d.code())
        .contains(ArtworkCode.UNREADABLE_VALUE);
  }

  /** SVG 1.1, 8.3.8 and 7.5: a map that mirrors turns arcs round. */
  @Test
  void a_mirrored_arc_runs_the_other_way_and_stays_an_arc() {
    Artwork art =
        Drawings.inMm("<path stroke='red' transform='scale(-1 1)' d='M0 0A10 10 0 0 1 10 10'/>");
    Arc arc = (Arc) art.pieces().get(0).paths().get(0).segments().get(0);
    assertThat(arc.counterClockwise()).isTrue();
    assertThat(arc.centre().distance(new Point(0, -10))).isLessThan(1e-12);
    assertThat(arc.end().distance(new Point(-10, -10))).isLessThan(1e-12);
  }

  @Test
  void y_points_up_and_the_picture_is_not_mirrored() {
    Artwork art =
        Drawings.page(
            "width='10mm' height='10mm' viewBox='0 0 10 10'", "<path stroke='red' d='M2 1L8 3'/>");
    Path path = art.pieces().get(0).paths().get(0);
    assertThat(path.start().distance(new Point(2, 9))).isLessThan(1e-9);
    assertThat(path.end().distance(new Point(8, 7))).isLessThan(1e-9);
  }

  @Test
  void a_set_sweep_flag_is_clockwise_when_y_is_up() {
    assertThat(((Arc) Drawings.segments("M0 0A10 10 0 0 1 10 10").get(0)).counterClockwise())
        .isFalse();
  }

  /** SVG 1.1, F.6.5 and F.6.6. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "S1, M0 0A10 10 0 0 1 10 10, 7.071068, 2.928932, 15.707963",
    "S2, M100 100A50 25 30 0 0 150 80, 145.875027, 108.229160, 81.301506",
    "S3, M100 100A50 25 30 0 1 150 80, 104.124973, 71.770840, 81.301506",
    "S4, M100 100A50 25 30 1 0 150 80, 175.561304, 134.152760, 160.909699",
    "S5, M100 100A50 25 30 1 1 150 80, 74.438696, 45.847240, 160.909699",
    "S6, M0 0a1 1 0 0110 10, 10, 0, 22.214415",
    "S7, M0 0A1 2 45 1 0 10 0, 1.25, 6.25, 19.148477",
    "S8, M0 0A-5 5 0 0 1 6 8, 7, 1, 15.707963",
    "S9, M0 0A0 5 0 0 1 6 8, 3, 4, 10"
  })
  void an_elliptical_arc_has_the_stated_middle_and_length(
      String id, String d, double midX, double midY, double length) {
    Segment arc = Drawings.segments(d).get(0);
    assertThat(arc.at(0.5).x()).isCloseTo(midX, within(PRINTED));
    assertThat(-arc.at(0.5).y()).isCloseTo(midY, within(PRINTED));
    assertThat(length(arc)).isCloseTo(length, within(2 * PRINTED));
  }

  private static double length(Segment segment) {
    List<Point> points = Flattener.flatten(new Path(List.of(segment), false), 1e-7);
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      sum += points.get(i).distance(points.get(i - 1));
    }
    return sum;
  }

  /**
   * SVG 1.1, F.6.5 and F.6.6: the radii in use, the centre, and the turn (positive clockwise on the
   * screen).
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "S2, M100 100A50 25 30 0 0 150 80, 50, 25, 110.156862, 77.038200, -130.890482",
    "S3, M100 100A50 25 30 0 1 150 80, 50, 25, 139.843138, 102.961800, 130.890482",
    "S4, M100 100A50 25 30 1 0 150 80, 50, 25, 139.843138, 102.961800, -229.109518",
    "S5, M100 100A50 25 30 1 1 150 80, 50, 25, 110.156862, 77.038200, 229.109518",
    "S7, M0 0A1 2 45 1 0 10 0, 3.952847, 7.905694, 5, 0, -180"
  })
  void an_elliptical_arc_has_the_stated_centre_radii_and_turn(
      String id, String d, double rx, double ry, double cx, double cy, double turnDeg) {
    EllipticArc arc = (EllipticArc) Drawings.segments(d).get(0);
    assertThat(arc.u().norm()).isCloseTo(rx, within(PRINTED));
    assertThat(arc.v().norm()).isCloseTo(ry, within(PRINTED));
    assertThat(arc.centre().distance(new Point(cx, -cy))).isLessThan(2 * PRINTED);
    double up = Math.signum(arc.u().cross(arc.v())) * arc.sweepRad();
    assertThat(Math.toDegrees(-up)).isCloseTo(turnDeg, within(2 * PRINTED));
  }

  /** SVG 1.1, F.6.6: the turn of the axes is taken modulo 360 degrees. */
  @Test
  void a_turn_of_the_axes_by_more_than_once_round_is_the_rest_of_it() {
    Segment once = Drawings.segments("M100 100A50 25 30 0 0 150 80").get(0);
    for (String turn : List.of("390", "-330", "7590")) {
      Segment more = Drawings.segments("M100 100A50 25 " + turn + " 0 0 150 80").get(0);
      assertThat(more.at(0.3).distance(once.at(0.3))).as(turn).isLessThan(1e-9);
    }
  }

  /** The start of an arc, in degrees from its first axis as on the screen; SVG 1.1, F.6.5. */
  @ParameterizedTest
  @CsvSource({
    "M100 100A50 25 30 0 0 150 80, 86.921966",
    "M100 100A50 25 30 0 1 150 80, 136.031484",
    "M0 0A1 2 45 1 0 10 0, 153.434949"
  })
  void an_elliptical_arc_starts_where_it_is_stated(String d, double startDeg) {
    EllipticArc arc = (EllipticArc) Drawings.segments(d).get(0);
    Point from = arc.start().minus(arc.centre());
    double along = from.dot(arc.u()) / arc.u().dot(arc.u());
    double across = from.dot(arc.v()) / arc.v().dot(arc.v());
    double mirrored = arc.u().cross(arc.v()) > 0 ? -1 : 1;
    assertThat(Math.toDegrees(StrictMath.atan2(mirrored * across, along)))
        .isCloseTo(startDeg, within(2 * PRINTED));
  }

  /** Closed form: 4/3 (sqrt(2) - 1) as handle; the largest error is 0.00027253 of the radius. */
  @Test
  void a_circle_of_four_cubic_curves_is_never_inside_the_circle() {
    double r = 100;
    double k = 4.0 / 3 * (Math.sqrt(2) - 1) * r;
    Cubic quarter = (Cubic) Drawings.segments("M100 0C100 " + k + " " + k + " 100 0 100").get(0);
    double most = 0;
    for (int i = 0; i <= 1000; i++) {
      double off = quarter.at(i / 1000.0).norm() / r - 1;
      assertThat(off).isGreaterThan(-1e-12);
      most = Math.max(most, off);
    }
    assertThat(most).isCloseTo(0.00027253, within(1e-8));
  }

  @Test
  void an_arc_from_a_point_to_itself_is_nothing() {
    assertThat(Drawings.segments("M0 0H3V3A5 5 0 1 1 3 3")).hasSize(2);
  }

  @Test
  void equal_radii_give_circular_arcs_and_others_elliptic_ones() {
    assertThat(Drawings.segments("M0 0A10 10 77 0 1 10 10").get(0)).isInstanceOf(Arc.class);
    assertThat(Drawings.segments("M0 0A10 11 77 0 1 10 10").get(0)).isInstanceOf(EllipticArc.class);
    assertThat(Drawings.segments("M0 0A0 11 77 0 1 10 10").get(0)).isInstanceOf(Line.class);
  }

  @Test
  void the_used_radius_of_a_packed_arc_that_is_too_small_is_half_its_chord() {
    Arc arc = (Arc) Drawings.segments("M0 0a1 1 0 0110 10").get(0);
    assertThat(arc.radius()).isCloseTo(Math.sqrt(50), within(1e-12));
    assertThat(arc.centre().distance(new Point(5, -5))).isLessThan(1e-12);
  }

  /** SVG 1.1, 11.3. */
  @ParameterizedTest
  @CsvSource({
    "nonzero, M0 0h10v10h-10zM3 3h4v4h-4z, 100",
    "evenodd, M0 0h10v10h-10zM3 3h4v4h-4z, 84",
    "nonzero, M0 0h10v10h-10zM3 3v4h4v-4z, 84",
    "evenodd, M0 0h10v10h-10zM3 3v4h4v-4z, 84",
    "nonzero, M0 0h10v10h-10zM5 0h10v10h-10z, 150",
    "evenodd, M0 0h10v10h-10zM5 0h10v10h-10z, 100",
    "nonzero, 'M0,0 10,10 10,0 0,10z', 50",
    "evenodd, 'M0,0 10,10 10,0 0,10z', 50",
    "nonzero, 'M0 0h10v10h-10', 100"
  })
  void an_area_follows_the_fill_rule(String rule, String d, double area) {
    Artwork art = Drawings.inMm("<path fill-rule='" + rule + "' d='" + d + "'/>");
    assertThat(art.filled(0.001).area()).isCloseTo(area, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"nonzero, 1.122569941", "evenodd, 0.775676752"})
  void a_pentagram_has_the_area_of_its_fill_rule(String rule, double area) {
    String points =
        "0,-1 .587785252,.809016994 -.951056516,-.309016994 .951056516,-.309016994"
            + " -.587785252,.809016994";
    Artwork art = Drawings.inMm("<polygon fill-rule='" + rule + "' points='" + points + "'/>");
    assertThat(art.filled(1e-6).area()).isCloseTo(area, within(1e-7));
  }

  @Test
  void a_cubic_curve_encloses_the_area_of_its_closed_form() {
    Artwork art = Drawings.inMm("<path d='M0 0C10 20 30 20 40 0'/>");
    Cubic cubic = (Cubic) art.pieces().get(0).paths().get(0).segments().get(0);
    assertThat(cubic.at(0.5)).isEqualTo(new Point(20, -15));
    Bounds b = cubic.bounds();
    assertThat(b.minY()).isCloseTo(-15, within(1e-12));
    assertThat(List.of(b.minX(), b.maxX(), b.maxY())).containsExactly(0.0, 40.0, 0.0);
    assertThat(length(cubic)).isCloseTo(52.683655, within(2 * PRINTED));
    assertThat(art.filled(1e-5).area()).isCloseTo(420, within(1e-3));
  }

  @Test
  void a_quadratic_curve_becomes_the_same_cubic() {
    Cubic cubic = (Cubic) Drawings.segments("M0 0Q15 30 30 0").get(0);
    assertThat(cubic.control1().distance(new Point(10, -20))).isLessThan(1e-12);
    assertThat(cubic.control2().distance(new Point(20, -20))).isLessThan(1e-12);
  }
}
