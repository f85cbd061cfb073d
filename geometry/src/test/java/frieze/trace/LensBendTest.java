package frieze.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A light sheet with an ink square on a darker table, bent by the formula of the lens. */
class LensBendTest {
  private static final int W = 640;
  private static final int H = 480;
  private static final List<Point> SHEET =
      List.of(new Point(70, 60), new Point(580, 45), new Point(600, 440), new Point(50, 420));

  private static Point seen(Point p, double bend) {
    Point out = p.minus(new Point(W / 2.0, H / 2.0));
    double by = 1 + bend * out.dot(out) / (W * W / 4.0 + H * H / 4.0);
    return new Point(W / 2.0, H / 2.0).plus(out.times(by));
  }

  /** Each pixel is looked up where it was before the lens bent it. */
  private static GreyImage photo(double bend, double table) {
    float[] grey = new float[W * H];
    SplittableRandom random = new SplittableRandom(5);
    for (int y = 0; y < H; y++) {
      for (int x = 0; x < W; x++) {
        Point real = unbent(new Point(x + 0.5, y + 0.5), bend);
        boolean ink = Math.abs(real.x() - 300) < 60 && Math.abs(real.y() - 240) < 60;
        double value = ink ? 0.1 : inSheet(real) ? 0.9 : table;
        grey[y * W + x] = (float) (value + 0.02 * random.nextGaussian());
      }
    }
    return new GreyImage(W, H, grey);
  }

  private static Point unbent(Point at, double bend) {
    Point real = at;
    for (int i = 0; i < 20; i++) {
      real = real.plus(at.minus(seen(real, bend)));
    }
    return real;
  }

  private static boolean inSheet(Point p) {
    for (int i = 0; i < 4; i++) {
      Point a = SHEET.get(i);
      if (SHEET.get((i + 1) % 4).minus(a).cross(p.minus(a)) < 0) {
        return false;
      }
    }
    return true;
  }

  private static List<Point> corners(double bend) {
    return SHEET.stream().map(p -> seen(p, bend)).toList();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.03, 0, 0.01, 0.02, 0.05})
  void the_edges_of_the_sheet_tell_the_bend(double bend) {
    LensBend found = LensBend.of(photo(bend, 0.5), corners(bend), 0);
    assertThat(found.found().orElseThrow()).isCloseTo(bend, within(0.002));
    assertThat(found.isWorthTelling()).isEqualTo(bend != 0);
    assertThat(LensBend.of(photo(bend, 0.5), corners(bend), bend).isWorthTelling()).isFalse();
  }

  @Test
  void a_table_like_the_sheet_tells_nothing() {
    LensBend found = LensBend.of(photo(0.02, 0.9), corners(0.02), 0);
    assertThat(found.found()).isEmpty();
    assertThat(found.words()).contains("not measured");
  }

  @Test
  void a_bent_photo_is_warned_of_and_says_what_to_tell() {
    RealSize size = new RealSize.Sheet(corners(0.02), 200, 150);
    Traced traced = Tracer.trace("photo.jpg", photo(0.02, 0.5), TraceSettings.of(size));
    assertThat(traced.artwork().notes())
        .anyMatch(n -> n.code() == TraceCode.EDGES_BENT && n.hint().contains("lens bend: 2"));
    TraceSettings told = TraceSettings.of(size).withLensBend(0.02);
    assertThat(Tracer.trace("photo.jpg", photo(0.02, 0.5), told).artwork().notes())
        .noneMatch(n -> n.code() == TraceCode.EDGES_BENT);
  }
}
