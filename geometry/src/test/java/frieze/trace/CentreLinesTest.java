package frieze.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Piece;
import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.trace.Motifs.Motif;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Strokes of a round pen 1.2 mm wide, whose middle line is known. */
class CentreLinesTest {
  private static final double HALF = 0.6;
  private static final double WIDEST = 1.5;
  private static final double TOLERANCE = 0.01;

  /** A straight stroke: two lines and two half circles. */
  private static Path stroke(Point from, Point to) {
    Point along = to.minus(from).times(1 / to.distance(from));
    Point left = new Point(-along.y(), along.x()).times(HALF);
    Point a = from.minus(left);
    Point b = to.minus(left);
    Point c = to.plus(left);
    Point d = from.plus(left);
    return new Path(
        List.of(
            new Line(a, b),
            new Arc(b, c, to, Math.PI),
            new Line(c, d),
            new Arc(d, a, from, Math.PI)),
        true);
  }

  private static Region strokes(Point... ends) {
    List<Path> paths = new ArrayList<>();
    for (int i = 0; i < ends.length; i += 2) {
      paths.add(stroke(ends[i], ends[i + 1]));
    }
    return Region.of(paths, FillRule.NONZERO, 0.001);
  }

  private static Optional<Piece> lines(Region region) {
    List<Path> paths = region.rings().stream().map(r -> Path.polyline(r.points(), true)).toList();
    Piece area =
        new Piece("a", List.of(), paths, Optional.of(FillRule.EVEN_ODD), OptionalDouble.empty());
    return CentreLines.of(area, WIDEST, TOLERANCE).stream().findFirst();
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  @Test
  void a_stroke_becomes_its_middle_line_with_the_width_of_the_pen() {
    Piece piece = lines(strokes(p(2, 3), p(28, 11))).orElseThrow();
    assertThat(piece.fill()).isEmpty();
    assertThat(piece.strokeWidthMm().orElseThrow()).isCloseTo(2 * HALF, within(0.005));
    assertThat(piece.paths()).hasSize(1);
    Path line = piece.paths().get(0);
    assertThat(line.start().distance(p(2, 3))).as("the lower end").isLessThan(0.03);
    assertThat(line.end().distance(p(28, 11))).isLessThan(0.03);
  }

  /** The branch meets the stem from the side; its line starts there. */
  @Test
  void a_branch_starts_at_its_root() {
    Piece piece = lines(strokes(p(0, 0), p(40, 0), p(15, 0), p(30, 18))).orElseThrow();
    assertThat(piece.paths()).hasSize(2);
    Path branch =
        piece.paths().stream().filter(x -> x.bounds().height() > 5).findFirst().orElseThrow();
    assertThat(branch.start().distance(p(15, 0))).isLessThan(0.3);
    assertThat(branch.end().distance(p(30, 18))).isLessThan(0.05);
    Path stem = piece.paths().stream().filter(x -> !x.equals(branch)).findFirst().orElseThrow();
    assertThat(stem.bounds().width()).isCloseTo(40, within(0.05));
    assertThat(stem.bounds().height()).isLessThan(0.05);
  }

  @Test
  void strokes_that_cross_go_on_through() {
    Piece piece = lines(strokes(p(0, 0), p(30, 20), p(0, 20), p(30, 0))).orElseThrow();
    assertThat(piece.paths()).hasSize(2);
    for (Path line : piece.paths()) {
      assertThat(line.start().distance(line.end())).isCloseTo(Math.hypot(30, 20), within(0.1));
    }
  }

  @Test
  void a_ring_becomes_a_circle() {
    Region ring =
        Region.of(
            List.of(Path.circle(Point.ORIGIN, 10.6), Path.circle(Point.ORIGIN, 9.4).reversed()),
            FillRule.EVEN_ODD,
            0.001);
    Piece piece = lines(ring).orElseThrow();
    assertThat(piece.paths()).hasSize(1);
    assertThat(piece.paths().get(0).closed()).isTrue();
    assertThat(piece.paths().get(0).bounds().width()).isCloseTo(20, within(0.02));
  }

  @Test
  void a_leaf_stays_an_area() {
    assertThat(lines(Region.of(List.of(Path.circle(p(5, 5), 4)), FillRule.NONZERO, 0.001)))
        .isEmpty();
    assertThat(
            lines(
                strokes(p(0, 0), p(20, 0))
                    .union(Region.of(List.of(Path.circle(p(5, 0), 4)), FillRule.NONZERO, 0.001))))
        .as("a blade with a stem")
        .isEmpty();
  }

  /** From grey values: the branch of above at ten pixels to the millimetre. */
  @Test
  void a_picture_of_pen_lines_gives_lines() {
    Motif fern = Motif.of("fern", strokes(p(0, 0), p(40, 7), p(15, 2.6), p(30, 18)));
    TraceSettings settings = Trial.scan().withLinesUpTo(WIDEST);
    Trial trial = Trial.of(fern, r -> r.blurred(1).plain(), settings);
    List<Piece> pieces = trial.traced.artwork().pieces();
    assertThat(pieces).hasSize(1);
    assertThat(pieces.get(0).strokeWidthMm().orElseThrow()).isCloseTo(1.2, within(0.02));
    assertThat(pieces.get(0).paths()).hasSize(2);
  }

  /** Straight sides from 1.4 mm at the root to 0.4 at the tip, both ends round. */
  @Test
  void a_line_that_a_pen_drew_thick_and_thin_keeps_its_widths() {
    double sine = (0.7 - 0.2) / 30;
    double cosine = Math.sqrt(1 - sine * sine);
    Point up = p(sine, cosine);
    Point down = p(sine, -cosine);
    Path outline =
        new Path(
            List.of(
                new Line(down.times(0.7), p(30, 0).plus(down.times(0.2))),
                new Arc(
                    p(30, 0).plus(down.times(0.2)),
                    p(30, 0).plus(up.times(0.2)),
                    p(30, 0),
                    2 * StrictMath.atan2(cosine, sine)),
                new Line(p(30, 0).plus(up.times(0.2)), up.times(0.7)),
                new Arc(
                    up.times(0.7),
                    down.times(0.7),
                    Point.ORIGIN,
                    2 * Math.PI - 2 * StrictMath.atan2(cosine, sine))),
            true);
    Piece piece = lines(Region.of(List.of(outline), FillRule.NONZERO, 0.001)).orElseThrow();
    assertThat(piece.paths()).hasSize(1);
    boolean fromRoot = piece.paths().get(0).start().x() < 15;
    List<Double> parts = piece.stroke().orElseThrow().parts();
    assertThat(parts).hasSizeGreaterThan(20);
    for (int i = 0; i < parts.size(); i++) {
      double along = (double) i / (parts.size() - 1);
      double expected = 1.4 - (fromRoot ? along : 1 - along);
      assertThat(parts.get(i) * piece.strokeWidthMm().orElseThrow())
          .as("at %s", along)
          .isCloseTo(expected, within(0.02));
    }
  }
}
