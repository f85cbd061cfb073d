package frieze.plan;

import static frieze.plan.Bench.DRILL_5;
import static frieze.plan.Bench.FLAT_6;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.layout.LayoutCode;
import frieze.plan.cut.Cut;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Tool;
import frieze.shop.Zero;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.api.AbstractThrowableAssert;
import org.junit.jupiter.api.Test;

class WorkCheckTest {
  private static final Motif FIELD = Bench.filled("field", Bench.rectangle(0, 0, 30, 5.9));

  private static AbstractThrowableAssert<?, ?> assertBad(Motif motif, Work work) {
    return assertBad(Bench.design(motif, Affine.translation(20, 20), work), Bench.setup());
  }

  private static AbstractThrowableAssert<?, ?> assertBad(Design design, Setup setup) {
    return assertThatThrownBy(() -> Planner.plan(design, setup, Tolerances.DEFAULT))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("bench.yaml:20:7: error[");
  }

  @Test
  void a_tool_wider_than_every_gap_says_how_wide_the_widest_is() {
    assertBad(FIELD, Bench.recess("field", FLAT_6, 2))
        .hasMessageContaining("PLAN-005")
        .hasMessageContaining("is 6 mm (0.236 in) wide")
        .hasMessageContaining("is 5.9 mm (0.232 in)");
  }

  /** Told to a hundredth, 3.175 mm and what halving finds of it would be 3.18 and 3.17 mm. */
  @Test
  void a_place_just_as_wide_as_the_tool_is_said_to_be_no_wider() {
    Tool eighth = Bench.flat(3.175, 1, true);
    Motif slot = Bench.filled("field", Bench.rectangle(0, 0, 30, 3.175));
    assertBad(slot, Bench.recess("field", eighth, 2))
        .hasMessageContaining("3.18 mm (0.125 in) wide but the widest place of field is no wider");
    Motif narrower = Bench.filled("field", Bench.rectangle(0, 0, 30, 3.155));
    assertBad(narrower, Bench.recess("field", eighth, 2))
        .hasMessageContaining("is 3.15 mm (0.124 in)");
  }

  @Test
  void a_depth_beyond_the_stock_or_the_tool_or_nothing_is_refused() {
    assertBad(FIELD, Bench.groove("field", FLAT_6, 18.9)).hasMessageContaining("PLAN-002");
    assertBad(FIELD, Bench.groove("field", FLAT_6, 26))
        .hasMessageContaining("PLAN-002")
        .hasMessageContaining("PLAN-003")
        .hasMessageContaining("1 mm (0.039 in) more than tool");
    for (double depth : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertBad(FIELD, Bench.groove("field", FLAT_6, depth)).hasMessageContaining("PLAN-001");
    }
  }

  @Test
  void a_pass_depth_of_nothing_is_refused() {
    for (double most : new double[] {0, -1, Double.NaN}) {
      Tool idle =
          new Tool(
              "idle",
              1,
              FLAT_6.shape(),
              2,
              25,
              30,
              true,
              OptionalDouble.of(most),
              OptionalDouble.empty(),
              24_000,
              4_000,
              600);
      assertBad(FIELD, Bench.groove("field", idle, 2))
          .hasMessageContaining("error[PLAN-042]: tool idle may take " + most + " mm in a pass");
    }
  }

  @Test
  void nothing_that_suits_the_operation_is_an_error() {
    Motif line =
        Bench.stroked("vein", Path.polyline(List.of(new Point(0, 0), new Point(9, 0)), false));
    assertBad(line, Bench.recess("vein", FLAT_6, 2))
        .hasMessageContaining("error[PLAN-004]: recess finds no filled areas in vein");
    Work.Groove picked =
        new Work.Groove(new Work.Target("vein", Optional.of("tips")), FLAT_6, 2, Bench.WHERE);
    assertBad(line, picked).hasMessageContaining("finds no lines named or classed tips in vein");
  }

  @Test
  void a_tool_of_the_wrong_shape_is_refused() {
    assertBad(FIELD, Bench.recess("field", DRILL_5, 2)).hasMessageContaining("PLAN-006");
    assertBad(FIELD, Bench.groove("field", DRILL_5, 2)).hasMessageContaining("PLAN-006");
  }

  @Test
  void a_stepover_that_is_no_stepover_is_refused() {
    for (double stepover : new double[] {0, -1, 0.1, 6.5, Double.NaN}) {
      Work.Recess recess =
          new Work.Recess(
              new Work.Target("field", Optional.empty()),
              FLAT_6,
              2,
              stepover,
              Work.Milling.CLIMB,
              Bench.WHERE);
      assertBad(FIELD, recess).hasMessageContaining("PLAN-007");
    }
  }

  @Test
  void steel_a_small_stock_and_a_small_machine_are_refused() {
    Motif wide = Bench.filled("field", Bench.rectangle(0, 0, 30, 20));
    Design design =
        Bench.design(wide, Affine.translation(20, 20), Bench.recess("field", FLAT_6, 2));
    assertBad(design, Bench.setup(Material.Kind.STEEL, false, Zero.LEFT_FRONT_TOP, false))
        .hasMessageContaining("PLAN-018");
    Setup good = Bench.setup();
    Setup shifted =
        new Setup(good.machine(), good.stock(), good.zero(), 20, 12, 5, 0.5, List.of(), List.of());
    assertBad(design, shifted)
        .hasMessageContaining("PLAN-010")
        .hasMessageContaining("4 mm (0.157 in) beyond the stock");
  }

  @Test
  void all_errors_are_told_at_once() {
    Design design =
        new Design(
            Bench.panel(),
            List.of(FIELD),
            List.of(Bench.at("field", 1, Affine.translation(20, 20))),
            List.of(Bench.recess("field", FLAT_6, 2), Bench.groove("field", FLAT_6, 0)));
    assertThatThrownBy(() -> Planner.plan(design, Bench.setup(), Tolerances.DEFAULT))
        .hasMessageContaining("PLAN-005")
        .hasMessageContaining("PLAN-001");
  }

  @Test
  void a_motif_beyond_the_panel_says_by_how_much() {
    Motif wide = Bench.filled("field", Bench.rectangle(0, 0, 30, 20));
    assertBad(
            Bench.design(wide, Affine.translation(696, 20), Bench.recess("field", FLAT_6, 2)),
            Bench.setup())
        .hasMessageContaining("error[LAY-007]: field 1 reaches 2 mm (0.079 in) beyond the panel");
    assertBad(
            Bench.design(wide, Affine.translation(0, 0), Bench.recess("field", FLAT_6, 2)),
            Bench.setup())
        // Closed form: (1 - pi / 4) r^2 for r 3.5 is 2.63
        .hasMessageContaining("field 1 reaches beyond the panel's outline at x 1.8, y 1.8 mm")
        .hasMessageContaining("by an area of 2.6");
  }

  /** Closed form: two rectangles less their overlap, with the corners of both rounded. */
  @Test
  void motifs_that_overlap_are_reported_and_cut_as_one() {
    Motif field = Bench.filled("field", Bench.rectangle(0, 0, 30, 20));
    Design design =
        new Design(
            Bench.panel(),
            List.of(field),
            List.of(
                Bench.at("field", 1, Affine.translation(20, 20)),
                Bench.at("field", 2, Affine.translation(45, 20)),
                Bench.at("field", 3, Affine.translation(100, 20))),
            List.of(Bench.recess("field", FLAT_6, 2)));
    Plan plan = Planner.plan(design, Bench.setup(), Tolerances.DEFAULT);
    assertThat(plan.notes())
        .anyMatch(
            d ->
                d.code() == LayoutCode.MOTIFS_OVERLAP
                    && d.message().startsWith("field 1 and field 2 overlap by 100 mm2"));
    assertThat(plan.cuts())
        .extracting(Cut::origin)
        .containsExactlyInAnyOrder("recess field 1 + 2", "recess field 3");
    assertThat(plan.geometryCalls()).isEqualTo(2);
    double left = plan.leftovers().stream().mapToDouble(l -> l.area().area()).sum();
    assertThat(left).isBetween(8 * 0.2146 * 9 - 0.1, 8 * 0.2146 * 9 + 0.1);
  }
}
