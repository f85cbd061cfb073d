package frieze.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Intent;
import frieze.design.Intents;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
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
