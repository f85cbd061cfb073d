package frieze.artwork.pen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SecondPathReader;
import frieze.artwork.svg.SvgReader;
import frieze.curve.Arc;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas of strokes, against closed forms and against the strokes of java.awt. */
class StrokeOutlineTest {
  private static final double TOLERANCE_MM = 0.002;

  /** By how much two ways to draw along a curve may differ, as a part of the area. */
  private static final double SHARE_OF_ONE = 0.005;

  private static Artwork outlined(String body) {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg'>" + body + "</svg>";
    Artwork read = SvgReader.withScale(1).read("t.svg", svg.getBytes(StandardCharsets.UTF_8));
    return StrokeOutline.of(read, TOLERANCE_MM);
  }

  @ParameterizedTest
  @CsvSource({
    "butt,miter,0,0",
    "round,round,1,1",
    "square,bevel,2,2",
    "butt,bevel,0,2",
    "square,round,2,1"
  })
  void a_zigzag_covers_what_the_stroke_of_java_awt_covers(
      String cap, String join, int awtCap, int awtJoin) {
    Artwork art =
        outlined(
            "<path fill='none' stroke='#070' stroke-width='6' stroke-linecap='"
                + cap
                + "' stroke-linejoin='"
                + join
                + "' d='M0 0L40 0L20 30L60 40L62 42L62 0'/>");
    Path2D line = new Path2D.Double();
    line.moveTo(0, 0);
    line.lineTo(40, 0);
    line.lineTo(20, 30);
    line.lineTo(60, 40);
    line.lineTo(62, 42);
    line.lineTo(62, 0);
    Area other = new Area(new BasicStroke(6, awtCap, awtJoin, 4).createStrokedShape(line));
    assertThat(art.filled(0.0005).area()).isCloseTo(area(other), within(0.15));
  }

  @Test
  void the_ring_of_a_circle_has_two_exact_circles() {
    Artwork art = outlined("<circle r='10' fill='none' stroke='red' stroke-width='4'/>");
    assertThat(art.pieces().get(0).paths())
        .hasSize(2)
        .allSatisfy(p -> assertThat(p.segments()).allMatch(Arc.class::isInstance));
    assertThat(art.filled(1e-4).area()).isCloseTo(Math.PI * (144 - 64), within(0.01));
    assertThat(art.bounds().width()).isCloseTo(24, within(1e-9));
  }

  @Test
  void dashes_are_areas_of_their_own() {
    Artwork art =
        outlined("<path d='M0 0H25' stroke='red' stroke-width='2' stroke-dasharray='5 3'/>");
    assertThat(art.pieces().get(0).paths()).hasSize(4);
    assertThat(art.filled(1e-3).area()).isCloseTo(2 * (5 + 5 + 5 + 1), within(1e-9));
  }

  /**
   * What is drawn, against the strokes of java.awt, which make curves of their own along a curve:
   * the area that only one of both covers, as a part of the area.
   */
  @ParameterizedTest(name = "{0} {1} {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "M0 0C60 -40 100 60 40 80S-20 40 10 20 | round | round | | 1 0 0 1 0 0",
        "M0 0C60 -40 100 60 40 80S-20 40 10 20 | butt | bevel | | 2 .5 -1 1 3 4",
        "M0 0C60 -40 100 60 40 80S-20 40 10 20 | square | miter | | 1 0 -1 .4 0 0",
        "M0 0H60V40H0z | butt | miter | 11 5 | 1 0 0 1 0 0",
        "M0 0H60V40H0z | square | bevel | 9 7 4 8 | 1 0 .5 1 0 0",
        "M0 0C60 -40 100 60 40 80z | round | round | 12 9 | 1 0 0 1 0 0",
        "M0 0L40 0L20 30z | butt | miter | | -1 0 .3 2 0 0"
      })
  void a_stroke_covers_what_the_stroke_of_java_awt_covers(
      String d, String cap, String join, String dashes, String matrix) {
    String dashed = dashes == null ? "" : " stroke-dasharray='" + dashes + "'";
    Artwork art =
        outlined(
            String.format(
                "<path fill='none' stroke='red' stroke-width='6' stroke-linecap='%s'"
                    + " stroke-linejoin='%s'%s transform='matrix(%s)' d='%s'/>",
                cap, join, dashed, matrix, d));
    Area theirs = byJavaAwt(d, cap, join, dashes, matrix);
    double area = area(theirs);
    Area both = flat(art);
    both.exclusiveOr(theirs);
    assertThat(area(both) / area).isLessThan(SHARE_OF_ONE);
    assertThat(art.filled(0.0005).area()).isCloseTo(area, within(SHARE_OF_ONE * area));
  }

  private static Area byJavaAwt(String d, String cap, String join, String dashes, String matrix) {
    float[] lengths = null;
    if (dashes != null) {
      double[] parsed = numbers(dashes);
      lengths = new float[parsed.length];
      for (int i = 0; i < parsed.length; i++) {
        lengths[i] = (float) parsed[i];
      }
    }
    int awtCap = List.of("butt", "round", "square").indexOf(cap);
    int awtJoin = List.of("miter", "round", "bevel").indexOf(join);
    Shape path = SecondPathReader.read(d, PathIterator.WIND_NON_ZERO);
    Shape stroked = new BasicStroke(6, awtCap, awtJoin, 4, lengths, 0).createStrokedShape(path);
    return new Area(new AffineTransform(numbers(matrix)).createTransformedShape(stroked));
  }

  private static double[] numbers(String list) {
    return Arrays.stream(list.trim().split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  /** What a drawing fills, Y down. */
  private static Area flat(Artwork art) {
    Path2D all = new Path2D.Double(PathIterator.WIND_NON_ZERO);
    for (Path path : art.pieces().get(0).paths()) {
      List<Point> points = Flattener.flatten(path, 0.0005);
      all.moveTo(points.get(0).x(), -points.get(0).y());
      points.subList(1, points.size()).forEach(p -> all.lineTo(p.x(), -p.y()));
      all.closePath();
    }
    return new Area(all);
  }

  @Test
  void what_is_filled_and_stroked_becomes_one_area() {
    Artwork art = outlined("<rect width='20' height='10' stroke='red' stroke-width='2'/>");
    assertThat(art.pieces()).hasSize(1);
    assertThat(art.pieces().get(0).paths()).hasSize(1);
    assertThat(art.filled(1e-3).area()).isCloseTo(22 * 12, within(1e-9));
  }

  /**
   * SVG 2, 13.5: closed forms of discs and squares, of an ellipse under a pen that is not round.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<path stroke-linecap='round' d='M5 5z'/> | 3.141592654",
        "<path stroke-linecap='round' d='M5 5h0'/> | 3.141592654",
        "<path stroke-linecap='square' d='M5 5L5 5 M9 9z'/> | 8",
        "<path stroke-linecap='round' transform='scale(2 1)' d='M5 5z'/> | 6.283185307",
        "<line stroke-linecap='square' x1='3' x2='3'/> | 4",
        "<path stroke-linecap='round' stroke-dasharray='0 4' d='M0 0H11'/> | 9.424777961",
        "<path stroke-linecap='square' stroke-dasharray='0 5' d='M0 0V11'/> | 12",
        "<path stroke-linecap='round' stroke-dasharray='0 5' stroke-dashoffset='2' d='M0 0V11'/> |"
            + " 6.283185307",
        "<path stroke-linecap='round' stroke-dasharray='0 4' d='M0 0H8V8H0z'/> | 25.132741229"
      })
  void a_line_or_a_dash_without_length_is_a_dot(String shape, double area) {
    Artwork art = outlined("<g stroke='red' stroke-width='2' fill='none'>" + shape + "</g>");
    assertThat(art.filled(1e-5).area()).isCloseTo(area, within(2e-4 * area));
  }

  @Test
  void a_line_without_length_and_with_flat_ends_is_nothing() {
    Artwork art = outlined("<path stroke='red' d='M5 5z M0 0'/><rect width='1' height='1'/>");
    assertThat(art.pieces()).hasSize(1);
    assertThat(art.notes())
        .singleElement()
        .satisfies(n -> assertThat(n.message()).contains("1 thing is"));
  }

  @Test
  void more_dashes_than_can_be_cut_are_said_to_be_one_line() {
    Artwork art = outlined("<path id='rim' d='M0 0H25' stroke='red' stroke-dasharray='.001'/>");
    assertThat(art.filled(1e-3).area()).isCloseTo(25, within(1e-9));
    assertThat(art.notes().get(art.notes().size() - 1).message())
        .isEqualTo(
            "the line \"rim\" that starts at x 0.00, y 0.00 mm would have more than 20000 dashes;"
                + " it is outlined whole");
  }

  @Test
  void a_list_of_dashes_in_a_style_is_read_whole() {
    Artwork art =
        outlined("<path d='M0 0H25' style='stroke:red;stroke-width:2;stroke-dasharray:5,3'/>");
    assertThat(art.filled(1e-3).area()).isCloseTo(2 * (5 + 5 + 5 + 1), within(1e-9));
  }

  @Test
  void colours_and_the_groups_around_it_name_a_piece() {
    Artwork art =
        outlined("<g id='veins'><title>Layer 2</title><rect width='5' height='5' fill='Red'/></g>");
    assertThat(art.pieces().get(0).label().groups()).containsExactly("veins", "Layer 2");
    assertThat(art.pieces().get(0).label().answersTo("#f00")).isTrue();
    assertThat(art.pieces().get(0).label().answersTo("blue")).isFalse();
  }

  private static double area(Area shape) {
    double twice = 0;
    double[] c = new double[6];
    double[] first = new double[2];
    double[] at = new double[2];
    for (PathIterator i = shape.getPathIterator(null, 1e-4); !i.isDone(); i.next()) {
      int kind = i.currentSegment(c);
      double[] to = kind == PathIterator.SEG_CLOSE ? first.clone() : new double[] {c[0], c[1]};
      if (kind == PathIterator.SEG_MOVETO) {
        first = to;
      } else {
        twice += at[0] * to[1] - at[1] * to[0];
      }
      at = to;
    }
    return Math.abs(twice) / 2;
  }
}
