package frieze.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import frieze.artwork.Drawings;
import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Corner cases of the grammar of path data: SVG 1.1, 8.3, and SVG 2, 9.3 and 9.5.4. */
class PathDataTest {
  /** The corner points, subpaths parted by a bar; closed ones end in z. */
  private static String corners(String d) {
    PathBuilder builder = new PathBuilder(Affine.IDENTITY);
    SyntaxException broken = null;
    try {
      PathData.draw(d, builder);
    } catch (SyntaxException e) {
      broken = e;
    }
    List<String> written = new ArrayList<>();
    for (Path path : builder.finish()) {
      StringBuilder text = new StringBuilder(point(path.start()));
      path.segments().forEach(s -> text.append(' ').append(point(s.end())));
      written.add(text + (path.closed() ? "z" : ""));
    }
    return (String.join("|", written) + (broken == null ? "" : " !" + broken.position())).trim();
  }

  private static String point(Point p) {
    return String.format(Locale.ROOT, "%s,%s", number(p.x()), number(p.y()));
  }

  private static String number(double x) {
    return x == Math.rint(x) ? Long.toString((long) x) : Double.toString(x);
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = ';',
      nullValues = "nothing",
      value = {
        "M0 0 1 1 2 0; 0,0 1,1 2,0",
        "m1 1 2 2; 1,1 3,3",
        "M0 0 1 1 m2 2 3 3; 0,0 1,1|3,3 6,6",
        "M10-20H0; 10,-20 0,-20",
        "M1.5.5H0; 1.5,0.5 0,0.5",
        "M.5.5.5.5 1 1; 0.5,0.5 1,1",
        "M1 1L-.5e-3,1E2; 1,1 -5.0E-4,100",
        "M1e3.5H0; 1000,0.5 0,0.5",
        "M+1+2H0; 1,2 0,2",
        "M0 0a1 1 0 0110 10; 0,0 10,10",
        "M0 0a1 1 0 01-5-5; 0,0 -5,-5",
        "M0 0H1 2 3; 0,0 1,0 2,0 3,0",
        "M0 0v1 2 3; 0,0 0,1 0,3 0,6",
        "M1 1h2v2h-2z m 5 0 h1; 1,1 3,1 3,3 1,3 1,1z|6,1 7,1",
        "M1 1h2v2zzL5 5; 1,1 3,1 3,3 1,1z|1,1 5,5",
        "M1 1h2v2z z; 1,1 3,1 3,3 1,1z",
        "M0 0 1 0 1 1 0 0; 0,0 1,0 1,1 0,0z",
        "M0 0L1 1,2 2,; 0,0 1,1 2,2 !13",
        "M0 0L1 1 2; 0,0 1,1 !10",
        "M0 0L1 1a1 1 0 2 0 5 5; 0,0 1,1 !15",
        "M0 0L1 1x3 3; 0,0 1,1 !8",
        "M0 0L1 1L2 2.; 0,0 1,1 !13",
        "M0 0z 5 5; !6",
        "M0,,0; !3",
        "L5 5; !0",
        "M5; !2",
        "''; ''",
        "none; ''",
        "M5 5; ''",
        "M5 5z; ''"
      })
  void path_data_are_drawn_up_to_the_first_error(String d, String expected) {
    assertThat(corners(d)).isEqualTo(expected);
  }

  @Test
  void all_white_space_of_the_grammar_separates() {
    assertThat(corners("\tM0\t0\n1\r1\f2,2 ")).isEqualTo("0,0 1,1 2,2");
  }

  @Test
  void a_smooth_curve_mirrors_the_control_point_of_its_own_kind_only() {
    assertThat(Drawings.segments("M0 0C0 1 1 2 2 2S4 1 4 0").get(1))
        .isEqualTo(Drawings.segments("M0 0C0 1 1 2 2 2C3 2 4 1 4 0").get(1));
    assertThat(Drawings.segments("M0 0L2 2S4 1 4 0").get(1))
        .isEqualTo(Drawings.segments("M0 0L2 2C2 2 4 1 4 0").get(1));
    assertThat(Drawings.segments("M0 0Q1 2 2 0T4 0").get(1))
        .isEqualTo(Drawings.segments("M0 0Q1 2 2 0Q3 -2 4 0").get(1));
    assertThat(Drawings.segments("M0 0C0 1 1 2 2 2T4 0").get(1).tangentAt(0.5))
        .isEqualTo(Drawings.segments("M0 0L2 2Q2 2 4 0").get(1).tangentAt(0.5));
  }

  @Test
  void a_number_beyond_all_sizes_is_refused() {
    PathBuilder builder = new PathBuilder(Affine.IDENTITY);
    assertThatThrownBy(() -> PathData.draw("M0 0L1e400 0", builder))
        .isInstanceOfSatisfying(SyntaxException.class, e -> assertThat(e.noSize()).isTrue());
    assertThatThrownBy(() -> PathData.draw("M NaN 0", builder))
        .isInstanceOfSatisfying(SyntaxException.class, e -> assertThat(e.noSize()).isTrue());
  }

  @Test
  void closing_where_only_rounding_parts_the_ends_adds_no_line() {
    assertThat(Drawings.segments("M.1.2l.1.1l.1.1l-.3.1l.1-.3z")).hasSize(4);
  }
}
