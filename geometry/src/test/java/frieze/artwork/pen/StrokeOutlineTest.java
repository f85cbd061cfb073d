package frieze.artwork.pen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.SvgReader;
import frieze.curve.Arc;
import java.awt.BasicStroke;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas of strokes, against closed forms and against the strokes of java.awt. */
class StrokeOutlineTest {
  private static final double TOLERANCE_MM = 0.002;

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
