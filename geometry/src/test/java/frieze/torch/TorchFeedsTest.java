package frieze.torch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.design.TorchWay;
import frieze.fixtures.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** 3 mm sheet, a kerf of 1.5 mm. */
class TorchFeedsTest {
  private static final Path PANEL = TorchBench.rectangle(0, 0, 150, 100);
  private static final Point MIDDLE = new Point(75, 50);

  private static TorchPath hole(Path opening) {
    return TorchBench.plan(PANEL, TorchWay.USUAL, opening).paths().get(0);
  }

  /** What comes after the lead. */
  private static List<TorchPath.Piece> lap(TorchPath path) {
    return path.pieces().subList(1, path.pieces().size());
  }

  private static double lengthMm(List<TorchPath.Piece> pieces) {
    return pieces.stream()
        .map(TorchPath.Piece::path)
        .mapToDouble(s -> s instanceof Arc a ? a.length() : s.start().distance(s.end()))
        .sum();
  }

  private static Path polygon(int corners, double radius, double turnRad) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double a = turnRad + 2 * Math.PI * i / corners;
      points.add(MIDDLE.plus(new Point(Math.cos(a), Math.sin(a)).times(radius)));
    }
    return Path.polyline(points, true);
  }

  /**
   * A regular pentagon turns by 72 degrees at each corner; its track is one of circumradius R -
   * 0.75 / cos 36. Slow within 2 mm of its corners, and nowhere else; height followed everywhere.
   */
  @Test
  void a_corner_is_slow_for_two_millimetres_on_both_sides_and_follows_the_sheet() {
    long seed = Seeds.seed(20261128);
    SplittableRandom random = new SplittableRandom(seed);
    for (int round = 0; round < 4; round++) {
      double radius = 15 + 20 * random.nextDouble();
      double turn = random.nextDouble() * 2;
      double inner = radius - 0.75 / Math.cos(Math.PI / 5);
      List<Point> corners =
          polygon(5, inner, turn).segments().stream().map(Segment::start).toList();
      List<TorchPath.Piece> lap = lap(hole(polygon(5, radius, turn)));
      for (TorchPath.Piece piece : lap) {
        Point middle = piece.path().at(0.5);
        double away = corners.stream().mapToDouble(middle::distance).min().orElseThrow();
        assertThat(piece.feedPart())
            .as("seed %d, round %d, %s mm from a corner", seed, round, away)
            .isEqualTo(away < 2 ? 0.75 : 1);
        assertThat(piece.frozen()).isFalse();
      }
      double slow = lengthMm(lap.stream().filter(p -> p.feedPart() < 1).toList());
      assertThat(slow).as("seed %d", seed).isCloseTo(5 * 2 * 2.0, within(0.01));
    }
  }

  /** A decagon turns by 36 degrees: no corner that needs it. */
  @Test
  void gentle_corners_are_cut_at_full_feed() {
    assertThat(lap(hole(polygon(10, 30, 0)))).allMatch(p -> p.feedPart() == 1 && !p.frozen());
  }

  /** Common practice: holes up to five times the thickness, here 15 mm. */
  @Test
  void small_closed_holes_and_no_others_are_slow_and_frozen_all_around() {
    long seed = Seeds.seed(20261129);
    SplittableRandom random = new SplittableRandom(seed);
    int small = 0;
    for (int round = 0; round < 12; round++) {
      double diameter = 11 + 8 * random.nextDouble();
      boolean isSmall = diameter < 15;
      TorchPath path = hole(Path.circle(MIDDLE, diameter / 2));
      assertThat(lap(path))
          .as("seed %d, round %d, diameter %s", seed, round, diameter)
          .allMatch(p -> p.frozen() == isSmall && p.feedPart() == (isSmall ? 0.6 : 1));
      double overburn = isSmall ? 0 : 0.5;
      assertThat(lengthMm(lap(path)))
          .isCloseTo(Math.PI * (diameter - 1.5) + overburn, within(0.05));
      small += isSmall ? 1 : 0;
    }
    assertThat(small).as("seed %d", seed).isBetween(2, 10);
  }

  private static Path rounded(double radius) {
    double s = 20;
    List<Segment> sides = new ArrayList<>();
    Point[] at = {new Point(1, 0), new Point(0, 1), new Point(-1, 0), new Point(0, -1)};
    for (int i = 0; i < 4; i++) {
      Point out = at[i];
      Point next = at[(i + 1) % 4];
      Point centre = MIDDLE.plus(out.plus(next).times(s - radius));
      Point from = MIDDLE.plus(out.times(s)).plus(next.times(radius - s));
      Point to = centre.plus(out.times(radius));
      sides.add(new Line(from, to));
      sides.add(new Arc(to, centre.plus(next.times(radius)), centre, Math.PI / 2));
    }
    return new Path(sides, true);
  }

  /** Quarter turns of 3.5 and 4 mm leave the torch radii of 2.75 and 3.25: the sheet is 3 mm. */
  @Test
  void only_arcs_tighter_than_the_sheet_is_thick_are_slow_and_frozen() {
    List<TorchPath.Piece> tight = lap(hole(rounded(3.5)));
    assertThat(lengthMm(tight.stream().filter(TorchPath.Piece::frozen).toList()))
        .as("an arc may end early by 5 µm across")
        .isCloseTo(4 * 2.75 * Math.PI / 2, within(8 * Math.sqrt(2 * 2.75 * 0.005)));
    assertThat(tight)
        .allMatch(p -> p.frozen() == p.path() instanceof Arc)
        .allMatch(p -> p.feedPart() == (p.frozen() ? 0.6 : 1));
    assertThat(lap(hole(rounded(4)))).allMatch(p -> p.feedPart() == 1 && !p.frozen());
  }

  /**
   * Quarter turns of 2.5 mm leave the torch 1.75 mm, over 2.75 mm of way, less than the sheet's
   * thickness: corners, slow from 2 mm before their middle to 2 mm beyond, height followed.
   */
  @Test
  void a_short_bend_is_a_corner() {
    List<TorchPath.Piece> lap = lap(hole(rounded(2.5)));
    assertThat(lap).noneMatch(TorchPath.Piece::frozen);
    assertThat(lengthMm(lap.stream().filter(p -> p.feedPart() == 0.75).toList()))
        .isCloseTo(4 * 4.0, within(0.01));
  }

  /** A tongue of 4.5 mm: what is left between its two corners is too short to speed up. */
  @Test
  void between_two_corners_near_each_other_the_torch_stays_slow() {
    List<Point> points = new ArrayList<>();
    for (double[] p :
        new double[][] {
          {55, 30}, {95, 30}, {95, 70}, {77.25, 70}, {77.25, 50}, {72.75, 50}, {72.75, 70}, {55, 70}
        }) {
      points.add(new Point(p[0], p[1]));
    }
    List<TorchPath.Piece> end =
        lap(hole(Path.polyline(points, true))).stream()
            .filter(p -> Math.abs(p.path().at(0.5).y() - 49.25) < 1e-6)
            .toList();
    assertThat(lengthMm(end)).isGreaterThan(4.4);
    assertThat(end).allMatch(p -> p.feedPart() == 0.75);
  }

  /** A disc: once around, then a quarter turn of one kerf's radius away from it. */
  @Test
  void an_outline_closes_and_leaves_into_the_scrap() {
    Path disc = Path.circle(new Point(30, 30), 30);
    TorchPath outline = TorchBench.plan(disc, TorchWay.USUAL).paths().get(0);
    List<TorchPath.Piece> lap = lap(outline);
    assertThat(lap.get(lap.size() - 1).path())
        .isInstanceOfSatisfying(
            Arc.class, a -> assertThat(a.length()).isCloseTo(1.5 * Math.PI / 2, within(1e-9)));
    assertThat(lengthMm(lap.subList(0, lap.size() - 1)))
        .isCloseTo(2 * Math.PI * 30.75, within(0.05));
    assertThat(outline.end().distance(new Point(30, 30))).isGreaterThan(32);
  }
}
