package frieze.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.Label;
import frieze.artwork.Piece;
import frieze.artwork.Stroke;
import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Intent;
import frieze.design.Intents;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.plan.cut.PlanCode;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Against the closed forms of how wide a bit cuts at a depth. */
class GrooveByWidthTest {
  private static final double EXACT = 1e-9;
  private static final ToolShape VEE = new ToolShape.Vee(12, StrictMath.toRadians(60), 0.2);
  private static final ToolShape BALL = new ToolShape.Ball(6);

  /** Half the width less half the tip, over the tangent of half the angle. */
  @Test
  void a_v_bit_is_as_deep_as_makes_its_groove_as_wide_as_the_line() {
    double tangent = Math.tan(Math.toRadians(30));
    assertThat(depths(plan(VEE, 1, 1, 3)))
        .satisfiesExactly(near(0.4 / tangent), near(1.4 / tangent));
    assertThat(depths(plan(VEE, 1.5, 1, 3)))
        .satisfiesExactly(near(0.65 / tangent), near(2.15 / tangent));
  }

  /** The chord of a circle: w = 2 sqrt(2 R d - d d). */
  @Test
  void a_round_nose_is_as_deep_as_makes_its_groove_as_wide_as_the_line() {
    for (double width : new double[] {1, 4, 6}) {
      double d = depths(plan(BALL, 1, width)).get(0);
      assertThat(2 * Math.sqrt(6 * d - d * d)).isCloseTo(width, within(EXACT));
    }
  }

  @Test
  void the_intents_ask_for_the_same_depths() {
    Motif motif = motif(1, 3);
    Work work = work(VEE);
    List<Double> asked = new ArrayList<>();
    for (Intent intent :
        Intents.of(
            Bench.design(motif, Affine.translation(20, 20), work),
            Tolerances.DEFAULT.flattenMm())) {
      asked.add(((Intent.Groove) intent).depthMm());
    }
    asked.sort(null);
    double tangent = Math.tan(Math.toRadians(30));
    assertThat(asked).satisfiesExactly(near(0.4 / tangent), near(1.4 / tangent));
  }

  /** Down at the place where the groove is, along it, and nowhere deeper than it. */
  @Test
  void the_entry_is_as_deep_as_the_groove_and_lies_in_it() {
    for (Cut cut : plan(BALL, 1, 2, 5).cuts()) {
      double last = cut.moves().get(cut.moves().size() - 1).path().to().z();
      for (Cut.Move move : cut.moves()) {
        assertThat(move.path().to().z()).isGreaterThanOrEqualTo(last - EXACT);
        assertThat(move.path().to().x()).isBetween(20 - EXACT, 60 + EXACT);
      }
    }
  }

  @Test
  void lines_that_come_out_narrower_or_not_at_all_are_told() {
    Plan plan = plan(VEE, 1, 0.1, 2, 9);
    assertThat(plan.cuts()).hasSize(2);
    assertThat(plan.notes())
        .extracting(Diagnostic::code)
        .containsExactlyInAnyOrder(PlanCode.LINE_TOO_WIDE, PlanCode.THINNER_THAN_TIP);
    assertThat(plan.notes())
        .anyMatch(d -> d.message().contains("1 of 3") && d.message().contains("9 mm"));
  }

  @Test
  void a_flat_bit_and_lines_without_a_width_are_refused() {
    assertThatThrownBy(() -> plan(new ToolShape.Flat(6), 1, 2))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("one width at any depth");
    assertThatThrownBy(() -> plan(VEE, 1, 0))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("no lines with a width");
  }

  /**
   * Closed form of a line 30 mm long, 2 mm wide at the root and 0.4 at the tip, and a 60 degree bit
   * with a flat of 0.2: (w - 0.2) / 2 / tan 30 degrees deep, w falling evenly; by 0.05333 a
   * millimetre of its length.
   */
  @Test
  void a_line_drawn_thick_and_thin_is_cut_as_deep_as_it_is_wide_place_by_place() {
    double tangent = Math.tan(Math.toRadians(30));
    Path line = Path.polyline(List.of(new Point(0, 0), new Point(30, 0)), false);
    List<Double> parts = new ArrayList<>();
    for (int i = 0; i <= 10; i++) {
      parts.add((2 - 1.6 * i / 10) / 2);
    }
    Piece piece =
        new Piece(
            Label.NONE,
            List.of(line),
            Optional.empty(),
            Optional.of(Stroke.plain(2).varying(parts)));
    Motif motif = new Motif("lines", new Artwork("own.svg", List.of(piece), "mm", List.of()));
    Work work = work(VEE);
    for (double scale : new double[] {1, 1.5}) {
      Affine at = Affine.scaling(scale, scale).then(Affine.translation(20, 20));
      Design design = Bench.design(motif, at, work);
      Plan plan = Planner.plan(design, Bench.setup(), Tolerances.DEFAULT);
      double deepest = 0;
      for (Cut.Move move : RecessTest.moves(plan.cuts())) {
        for (double t : new double[] {0, 0.3, 1}) {
          Position p = move.path().at(t);
          double width = scale * (2 - 1.6 * (p.x() - 20) / (30 * scale));
          double floor = (width - 0.2) / 2 / tangent;
          assertThat(-p.z()).as("at %s", p).isLessThanOrEqualTo(floor + EXACT);
          deepest = Math.max(deepest, -p.z());
        }
      }
      assertThat(deepest).isCloseTo((2 * scale - 0.2) / 2 / tangent, within(EXACT));
      Position start = plan.cuts().get(0).start();
      assertThat(start.x()).as("begins at the tip").isCloseTo(20 + 30 * scale, within(EXACT));
      // The last pass lies on the floor wherever the pass before did not reach it.
      double reached = 0;
      for (Cut.Move move : RecessTest.moves(plan.cuts())) {
        if (move.path().from().x() != move.path().to().x()) {
          Position p = move.path().at(0.5);
          double floor = (scale * (2 - 1.6 * (p.x() - 20) / (30 * scale)) - 0.2) / 2 / tangent;
          reached +=
              Math.abs(-p.z() - floor) < EXACT
                  ? Math.abs(move.path().to().x() - move.path().from().x())
                  : 0;
        }
      }
      assertThat(reached).isGreaterThanOrEqualTo(30 * scale - EXACT);
      for (Intent intent : Intents.of(design, Tolerances.DEFAULT.flattenMm())) {
        Intent.Groove groove = (Intent.Groove) intent;
        Point a = groove.lines().get(0).start();
        Point b = groove.lines().get(0).end();
        double deep =
            (scale * (2 - 1.6 * (Math.min(a.x(), b.x()) - 20) / (30 * scale)) - 0.2) / 2 / tangent;
        assertThat(groove.depthMm()).isCloseTo(deep, within(EXACT));
      }
    }
  }

  /** From 1.2 mm down to nothing: the flat of 0.2 fits as far as five sixths of the length. */
  @Test
  void a_line_that_runs_out_to_nothing_is_cut_as_far_as_the_tip_fits() {
    Path line = Path.polyline(List.of(new Point(0, 0), new Point(36, 0)), false);
    List<Double> parts = new ArrayList<>();
    for (int i = 0; i <= 36; i++) {
      parts.add(1 - i / 36.0);
    }
    Piece piece =
        new Piece(
            Label.NONE,
            List.of(line),
            Optional.empty(),
            Optional.of(Stroke.plain(1.2).varying(parts)));
    Motif motif = new Motif("lines", new Artwork("own.svg", List.of(piece), "mm", List.of()));
    Plan plan =
        Planner.plan(
            Bench.design(motif, Affine.translation(20, 20), work(VEE)),
            Bench.setup(),
            Tolerances.DEFAULT);
    double last =
        RecessTest.positions(plan.cuts()).stream().mapToDouble(Position::x).max().orElseThrow();
    assertThat(last).isCloseTo(50, within(1.0 + EXACT));
    assertThat(plan.notes())
        .singleElement()
        .satisfies(d -> assertThat(d.code()).isEqualTo(PlanCode.THINNER_THAN_TIP))
        .satisfies(d -> assertThat(d.message()).contains("a line in lines is in places"));
  }

  private static java.util.function.Consumer<Double> near(double expected) {
    return d -> assertThat(d).isCloseTo(expected, within(EXACT));
  }

  private static Plan plan(ToolShape shape, double scale, double... widthsMm) {
    Affine map = Affine.scaling(scale, scale).then(Affine.translation(20, 20));
    return Planner.plan(
        Bench.design(motif(widthsMm), map, work(shape)), Bench.setup(), Tolerances.DEFAULT);
  }

  private static Work work(ToolShape shape) {
    OptionalDouble none = OptionalDouble.empty();
    Tool tool = new Tool("bit", 7, shape, 2, 12, 40, true, none, none, 20_000, 2_000, 400);
    Work.Target on = new Work.Target("lines", Optional.empty());
    return new Work.Groove(on, tool, 6, Optional.empty(), true, Bench.WHERE);
  }

  private static Motif motif(double... widthsMm) {
    List<Piece> pieces = new ArrayList<>();
    for (double width : widthsMm) {
      double y = 12.0 * pieces.size();
      Path line = Path.polyline(List.of(new Point(0, y), new Point(40, y)), false);
      pieces.add(
          new Piece("", List.of(), List.of(line), Optional.empty(), OptionalDouble.of(width)));
    }
    return new Motif("lines", new Artwork("own.svg", pieces, "millimetres", List.of()));
  }

  /** How deep each cut goes, the shallowest first. */
  private static List<Double> depths(Plan plan) {
    return plan.cuts().stream()
        .map(c -> -c.moves().stream().mapToDouble(m -> m.path().to().z()).min().orElseThrow())
        .sorted()
        .toList();
  }
}
