package frieze.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.EllipticArc;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.wood.Allowances;
import frieze.wood.Moisture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Panels for drawn openings, against closed forms and against a look from place to place.
 *
 * <p>White ash, flat sawn, 0.00274 for 1 % of moisture: Wood Handbook, table 13-5.
 */
class DrawnFitterTest {
  private static final double ALONG = 0.002 / 30;
  private static final double ACROSS = 0.00274;
  private static final double EDGE_MM = 0.003;
  private static final Moisture SEASONS = new Moisture(8, 6, 11);

  private static InsertRequest play(double playMm, Allowances allowances) {
    return new InsertRequest(Optional.empty(), playMm, ALONG, ACROSS, SEASONS, allowances);
  }

  private static InsertRequest gap(double mm, double alongPerPct, double acrossPerPct) {
    return new InsertRequest(
        Optional.of(List.of(mm, mm, mm, mm)),
        0.5,
        alongPerPct,
        acrossPerPct,
        SEASONS,
        Allowances.NONE);
  }

  private static Sitting fit(Path drawn, InsertRequest asked) {
    return DrawnFitter.fit("apron", drawn, asked, SourceSpan.NONE);
  }

  private static List<Point> points(Path path) {
    return Flattener.flatten(path, 1e-3);
  }

  /** Where the opening's middle lies in the panel's frame. */
  private static Point middle(Sitting sitting) {
    return sitting.drawn().orElseThrow().edge().bounds().centre();
  }

  private static Sitting.Gap gap(Sitting sitting, String place) {
    return sitting.gaps().stream().filter(g -> g.place().equals(place)).findFirst().orElseThrow();
  }

  private static double area(Path path) {
    return Region.of(List.of(path), FillRule.NONZERO, 1e-4).area();
  }

  /** At the wettest the panel is a circle again: before, an ellipse of the two swellings. */
  @Test
  void in_a_round_opening_the_panel_is_the_ellipse_that_swells_into_a_circle() {
    double radius = 150;
    Sitting sitting = fit(Path.circle(new Point(400, -20), radius), play(0.5, Allowances.NONE));
    double a = (radius - 0.5) / (1 + ALONG * 3);
    double b = (radius - 0.5) / (1 + ACROSS * 3);
    assertThat(sitting.panel().lengthMm()).isCloseTo(2 * a, within(2 * EDGE_MM));
    assertThat(sitting.panel().heightMm()).isCloseTo(2 * b, within(2 * EDGE_MM));
    for (Point p : points(sitting.panel().outline())) {
      Point q = p.minus(middle(sitting));
      double beyond = Math.hypot(q.x() / a, q.y() / b) - 1;
      assertThat(beyond * b).isCloseTo(0, within(EDGE_MM));
    }
    double dryA = a * (1 - ALONG * 2);
    double dryB = b * (1 - ACROSS * 2);
    // Where its edge faces half way between up and aside, along its normal to the circle.
    double out = Math.sqrt((dryA * dryA + dryB * dryB) / 2);
    double square = (Math.pow(dryA, 4) + Math.pow(dryB, 4)) / (dryA * dryA + dryB * dryB);
    double half = Math.sqrt(out * out + radius * radius - square) - out;
    assertThat(gap(sitting, "top").wettestMm()).isCloseTo(0.5, within(EDGE_MM));
    assertThat(gap(sitting, "top").driestMm()).isCloseTo(half, within(0.01));
    assertThat(gap(sitting, "left").driestMm()).isCloseTo(radius - dryA, within(EDGE_MM));
    DrawnHole hole = sitting.drawn().orElseThrow();
    assertThat(hole.widestMm()).isCloseTo(radius - dryB, within(EDGE_MM));
    assertThat(hole.tightest()).isEmpty();
    assertThat(area(hole.beyond())).isCloseTo(Math.PI * 150.5 * 150.5, within(3.0));
    assertThat(area(hole.largest())).isCloseTo(Math.PI * 149.5 * 149.5, within(3.0));
  }

  /** A parallel of an ellipse: p - n g; and Steiner's formula for its area. */
  @Test
  void a_given_gap_is_the_same_all_round() {
    double a = 200;
    double b = 80;
    double g = 2.5;
    Path ellipse =
        new Path(
            List.of(
                new EllipticArc(
                    new Point(a, 0),
                    new Point(a, 0),
                    Point.ORIGIN,
                    new Point(a, 0),
                    new Point(0, b),
                    0,
                    2 * Math.PI)),
            true);
    Sitting sitting = fit(ellipse, gap(g, 0, 0));
    List<Point> edge = points(sitting.panel().outline());
    Point middle = middle(sitting);
    for (int i = 0; i < 360; i++) {
      double t = Math.toRadians(i);
      Point n = new Point(b * Math.cos(t), a * Math.sin(t));
      Point p = new Point(a * Math.cos(t), b * Math.sin(t)).minus(n.times(g / n.norm()));
      assertThat(distance(p.plus(middle), edge)).isLessThan(EDGE_MM);
    }
    double h = Math.pow((a - b) / (a + b), 2);
    // Ramanujan's second formula: to 1e-5 of the length at this ratio; from memory.
    double length = Math.PI * (a + b) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h)));
    double expected = Math.PI * a * b - g * length + Math.PI * g * g;
    assertThat(area(sitting.panel().outline())).isCloseTo(expected, within(EDGE_MM * length));
    assertThat(sitting.gaps()).allSatisfy(x -> assertThat(x.nowMm()).isCloseTo(g, within(EDGE_MM)));
    assertThat(sitting.gaps()).hasSize(4);
    assertThat(sitting.wood()).isFalse();
  }

  /** Two ways to the same panel: the four sides of a rectangle, and its edge drawn. */
  @Test
  void a_drawn_rectangle_is_fitted_as_a_measured_one() {
    Path drawn =
        Path.polyline(
            List.of(new Point(5, 5), new Point(705, 5), new Point(705, 135), new Point(5, 135)),
            true);
    for (InsertRequest asked :
        List.of(
            play(0.6, Allowances.NONE),
            play(0.6, new Allowances(0.15, 0.3)),
            gap(1.5, ALONG, ACROSS))) {
      Sitting one = fit(drawn, asked);
      Sitting other =
          InsertFitter.fit(
              "apron", FittedOpening.rectangle(700, 130), Bead.NONE, 0, asked, SourceSpan.NONE);
      assertThat(one.panel().lengthMm()).isCloseTo(other.panel().lengthMm(), within(2 * EDGE_MM));
      assertThat(one.panel().heightMm()).isCloseTo(other.panel().heightMm(), within(2 * EDGE_MM));
      for (Sitting.Gap gap : other.sides()) {
        Sitting.Gap same = gap(one, gap.place());
        assertThat(same.nowMm()).isCloseTo(gap.nowMm(), within(2 * EDGE_MM));
        assertThat(same.driestMm()).isCloseTo(gap.driestMm(), within(2 * EDGE_MM));
        assertThat(same.wettestMm()).isCloseTo(gap.wettestMm(), within(2 * EDGE_MM));
      }
      assertThat(one.largest().bounds().width())
          .isCloseTo(other.largest().bounds().width(), within(0.01));
      assertThat(one.largest().bounds().height())
          .isCloseTo(other.largest().bounds().height(), within(0.01));
    }
  }

  /** Sanded and swollen place by place, the panel keeps coating and play from the drawn edge. */
  @Test
  void random_openings_keep_the_play_in_all_seasons() {
    long seed = Seeds.seed(408);
    Random random = new Random(seed);
    for (int k = 0; k < 6; k++) {
      Path drawn = blob(random);
      double coating = random.nextDouble() * 0.2;
      double playMm = 0.3 + random.nextDouble();
      double sanded = k % 2 * 0.2;
      Sitting sitting = fit(drawn, play(playMm, new Allowances(coating, sanded)));
      List<Point> hole = points(sitting.drawn().orElseThrow().edge());
      List<Point> cut = points(sitting.panel().outline());
      Point middle = sitting.panel().outline().bounds().centre();
      double least = Double.POSITIVE_INFINITY;
      double widest = 0;
      for (double pct : new double[] {6, 8, 11}) {
        for (int i = 0; i < cut.size(); i++) {
          Point along = cut.get((i + 1) % cut.size()).minus(cut.get(i));
          Point in = new Point(-along.y(), along.x()).times(sanded / along.norm());
          Point q = cut.get(i).towards(cut.get((i + 1) % cut.size()), 0.5).plus(in).minus(middle);
          Point moved =
              middle.plus(
                  new Point(q.x() * (1 + ALONG * (pct - 8)), q.y() * (1 + ACROSS * (pct - 8))));
          double gap = distance(moved, hole) - coating;
          least = Math.min(least, gap);
          widest = Math.max(widest, gap);
        }
      }
      assertThat(least).as("seed %d, %d", seed, k).isCloseTo(playMm, within(0.02));
      assertThat(sitting.tightest().leastMm()).isCloseTo(playMm, within(2 * EDGE_MM));
      assertThat(sitting.drawn().orElseThrow().widestMm())
          .as("seed %d, %d", seed, k)
          .isCloseTo(widest, within(0.02));
    }
  }

  /** A tongue of the frame stands in from the left: the panel is tight on it at the driest. */
  @Test
  void around_a_tongue_it_is_the_driest_season_that_counts() {
    Path tongue =
        Path.polyline(
            List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 200),
                new Point(0, 200),
                new Point(0, 190),
                new Point(80, 190),
                new Point(80, 185),
                new Point(0, 185)),
            true);
    Sitting sitting = fit(tongue, play(0.5, Allowances.NONE));
    // The wood above the tongue is 90 from the middle: it comes down by 90 x 2 % x 0.00274 = 0.49.
    double dry = 90 * 2 * ACROSS;
    assertThat(gap(sitting, "bottom").driestMm()).isCloseTo(0.5, within(0.01));
    assertThat(gap(sitting, "bottom").wettestMm()).isCloseTo(0.5, within(0.01));
    assertThat(gap(sitting, "bottom").nowMm()).isBetween(0.6, 0.5 + dry + 0.01);
    assertThat(gap(sitting, "top").wettestMm()).isCloseTo(0.5, within(0.01));
    assertThat(dry).isCloseTo(0.493, within(1e-3));
    BadInputException e =
        catchThrowableOfType(BadInputException.class, () -> fit(tongue, gap(0.4, ALONG, ACROSS)));
    assertThat(e.diagnostics().get(0).toString()).contains("WOOD-001", "at its");
  }

  @Test
  void what_binds_or_falls_apart_is_refused() {
    Path round = Path.circle(Point.ORIGIN, 100);
    // At 11 % it has grown by 100 x 3 x 0.00274 = 0.82 on each side, across.
    BadInputException binds =
        catchThrowableOfType(BadInputException.class, () -> fit(round, gap(0.5, ALONG, ACROSS)));
    assertThat(binds.diagnostics().get(0).message()).contains("wettest", "0.32 mm");
    BadInputException nothing =
        catchThrowableOfType(BadInputException.class, () -> fit(round, gap(100, 0, 0)));
    assertThat(nothing.diagnostics().get(0).toString()).contains("LAY-001", "200 mm");
    List<Point> waist =
        List.of(
            new Point(0, 0),
            new Point(50, 28),
            new Point(100, 0),
            new Point(100, 60),
            new Point(50, 32),
            new Point(0, 60));
    BadInputException parts =
        catchThrowableOfType(
            BadInputException.class, () -> fit(Path.polyline(waist, true), gap(3, 0, 0)));
    assertThat(parts.diagnostics().get(0).toString())
        .contains("OPEN-005", "2 pieces", "a gap of 3 mm");
  }

  /** A smooth outline that leans and waves, convex in no place in particular. */
  private static Path blob(Random random) {
    double[] size = new double[4];
    double[] phase = new double[4];
    for (int k = 0; k < 4; k++) {
      size[k] = random.nextDouble() * 0.1;
      phase[k] = random.nextDouble() * 7;
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < 360; i++) {
      double t = Math.toRadians(i);
      double r = 1;
      for (int k = 0; k < 4; k++) {
        r += size[k] * Math.sin((k + 2) * t + phase[k]);
      }
      points.add(new Point(140 * r * Math.cos(t), 70 * r * Math.sin(t)));
    }
    return Path.polyline(points, true);
  }

  private static double distance(Point p, List<Point> ring) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point d = ring.get((i + 1) % ring.size()).minus(a);
      double t = Math.max(0, Math.min(1, p.minus(a).dot(d) / d.dot(d)));
      least = Math.min(least, p.distance(a.plus(d.times(t))));
    }
    return least;
  }
}
