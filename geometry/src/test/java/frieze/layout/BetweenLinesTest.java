package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Rows between two lines of a drawing, against closed forms. */
class BetweenLinesTest {
  private static final Panel PANEL = new Opening(400, 300, 0).panel("apron", 0, SourceSpan.NONE);
  private static final Point MIDDLE = new Point(200, 150);

  /** Straight pieces of a line that is worked out in 400 places. */
  private static final double CHORDS_MM = 0.01;

  private static Hull leaf(double size) {
    double h = size / 2;
    return Hull.of(List.of(new Point(-h, -h), new Point(h, -h), new Point(h, h), new Point(-h, h)));
  }

  private static List<Placement> place(
      Path one, Path other, int count, double insetMm, boolean swelling, double size) {
    return new Follow(
            new Follow.BetweenLines("rails", Optional.empty(), swelling),
            List.of(one, other),
            FriezeGroup.P1,
            count,
            insetMm,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            false)
        .place("leaf", leaf(size), PANEL, 0, SourceSpan.NONE);
  }

  private static Point at(Placement p) {
    return p.map().affine().apply(Point.ORIGIN).minus(MIDDLE);
  }

  private static double size(Placement p) {
    return p.map().affine().scale();
  }

  @Test
  void between_concentric_arcs_it_is_the_arc_in_the_middle() {
    double from = Math.toRadians(200);
    Path inner = new Path(List.of(Arc.polar(Point.ORIGIN, 80, from, -Math.PI * 1.2)), false);
    Path outer = new Path(List.of(Arc.polar(Point.ORIGIN, 120, from, -Math.PI * 1.2)), false);
    for (Path other : List.of(outer, outer.reversed())) {
      List<Placement> placed = place(inner, other, 6, 2, true, 20);
      assertThat(placed).hasSize(6);
      double step = Math.PI * 1.2 / 6;
      for (int i = 0; i < 6; i++) {
        Point p = at(placed.get(i));
        assertThat(p.norm()).isCloseTo(100, within(CHORDS_MM));
        double along = from - (i + 0.5) * step;
        assertThat(p.distance(Point.polar(Point.ORIGIN, 100, along))).isLessThan(0.1);
        // Chords of 5 micrometres at two arcs, 36 apart.
        assertThat(size(placed.get(i))).isCloseTo(1, within(2 * 0.005 / 36));
      }
    }
  }

  /** Equally far from two circles, one in the other: an ellipse about their two centres. */
  @Test
  void between_two_circles_it_is_an_ellipse() {
    Point aside = new Point(15, 5);
    List<Placement> placed =
        place(Path.circle(Point.ORIGIN, 130), Path.circle(aside, 60), 9, 0, true, 30);
    assertThat(placed).hasSize(9);
    double widest = placed.stream().mapToDouble(p -> 130 - at(p).norm()).max().orElseThrow();
    for (Placement p : placed) {
      assertThat(at(p).norm() + at(p).distance(aside)).isCloseTo(190, within(0.05));
      assertThat(size(p) / (130 - at(p).norm())).isCloseTo(1 / widest, within(0.02 / widest));
    }
  }

  /** Sizes and places grow by the same factor from motif to motif. */
  @Test
  void between_two_slanting_lines_motifs_swell_in_proportion() {
    Path low = Path.polyline(List.of(new Point(-160, -10), new Point(160, -90)), false);
    Path high = Path.polyline(List.of(new Point(-160, 10), new Point(160, 90)), false);
    List<Placement> placed = place(high, low, 8, 0, true, 60);
    double factor = size(placed.get(1)) / size(placed.get(0));
    // The two lines meet 200 left of the middle.
    for (int i = 0; i < 8; i++) {
      assertThat(at(placed.get(i)).y()).isCloseTo(0, within(1e-6));
      double from = at(placed.get(i)).x() + 200;
      assertThat(from / (at(placed.get(0)).x() + 200))
          .isCloseTo(Math.pow(factor, i), within(2e-3 * Math.pow(factor, i)));
    }
    Affine even = place(high, low, 3, 0, false, 5).get(1).map().affine();
    assertThat(even.apply(Point.ORIGIN).minus(MIDDLE).norm()).isLessThan(1e-6);
  }

  @Test
  void motifs_keep_from_both_lines() {
    Path low = Path.polyline(List.of(new Point(-150, -20), new Point(150, -20)), false);
    Path high = Path.polyline(List.of(new Point(-150, 20), new Point(150, 20)), false);
    assertThat(place(low, high, 4, 5, false, 30)).hasSize(4);
    assertThatThrownBy(() -> place(low, high, 4, 5.1, false, 30))
        .hasMessageContaining("LAY-007")
        .hasMessageContaining("motif leaf 1 at x 87.5")
        .hasMessageContaining("inset of 5.1 mm");
    assertThatThrownBy(() -> place(low, high, 4, 20, false, 30)).hasMessageContaining("LAY-004");
    assertThatThrownBy(() -> place(low, Path.circle(Point.ORIGIN, 9), 4, 0, false, 30))
        .hasMessageContaining("LAY-012");
  }

  /** Squares of 30 in a band of 42: at most a millimetre of room at each rail. */
  @Test
  void differences_and_shifts_stay_between_the_lines() {
    Path low = Path.polyline(List.of(new Point(-150, -21), new Point(150, -21)), false);
    Path high = Path.polyline(List.of(new Point(-150, 21), new Point(150, 21)), false);
    Follow follow =
        new Follow(
            new Follow.BetweenLines("rails", Optional.empty(), false),
            List.of(low, high),
            FriezeGroup.P1,
            5,
            5,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            false);
    Ground ground = new Ground(PANEL, 5, follow.fences(PANEL));
    Variation vary = new Variation(0, 0, 6, OptionalDouble.empty());
    boolean moved = false;
    for (long seed = 1; seed <= 20; seed++) {
      List<Placement> before = follow.place("leaf", leaf(30), PANEL, 0, SourceSpan.NONE);
      for (Placement p : vary.apply(before, leaf(30), ground, seed)) {
        assertThat(Math.abs(at(p).y())).isLessThanOrEqualTo(1 + 1e-4);
        moved |= Math.abs(at(p).y()) > 0.3;
      }
      assertThat(vary.apply(before, leaf(30), new Ground(PANEL, 5), seed))
          .as("without the lines they go farther")
          .anyMatch(p -> Math.abs(at(p).y()) > 1);
    }
    assertThat(moved).isTrue();
    List<Placement> row = follow.place("leaf", leaf(30), PANEL, 0, SourceSpan.NONE);
    Hull hole = Hull.of(List.of(MIDDLE.plus(new Point(16, 14)), MIDDLE.plus(new Point(18, 16))));
    Avoidance beside = new Avoidance(3, 9);
    // Two to the left, or two down: there is only one.
    Placement third = beside.within(ground, row, leaf(30), List.of(hole), SourceSpan.NONE).get(2);
    assertThat(at(third).x()).isCloseTo(-2, within(0.3));
    assertThat(Math.abs(at(third).y())).isLessThanOrEqualTo(1 + 1e-4);
  }

  @Test
  void a_drawing_with_one_line_is_refused() {
    Follow follow =
        new Follow(
            new Follow.BetweenLines("rails", Optional.empty(), false),
            FriezeGroup.P1,
            3,
            0,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            false);
    Path line = Path.polyline(List.of(Point.ORIGIN, new Point(9, 0)), false);
    Piece piece =
        new Piece("rail", List.of(), List.of(line), Optional.empty(), OptionalDouble.of(1));
    Artwork one = new Artwork("rails.svg", List.of(piece), "", List.of());
    assertThatThrownBy(() -> follow.resolved(name -> one, SourceSpan.NONE))
        .hasMessageContaining("LAY-012")
        .hasMessageContaining("two lines to go between, but only one");
  }
}
