package frieze.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.motion.Box;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.plan.Plan;
import frieze.plan.cut.Cut;
import frieze.shop.KeepOut;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StepsTest {
  private static final double EXACT = 1e-9;
  private static final SourceSpan WHERE = new SourceSpan("long.yaml", 15, 5, 0);
  private static final Tool FLAT_6 =
      new Tool(
          "flat 6",
          1,
          new ToolShape.Flat(6),
          2,
          25,
          30,
          true,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          24_000,
          3_000,
          600);
  private static final Pins.Wanted PINS = new Pins.Wanted(8, 10, FLAT_6, WHERE);

  private static Setup setup(double travelMm, double widthMm, List<KeepOut> clamps) {
    Machine.Axis axis = new Machine.Axis(5000, 3000, 300);
    Machine machine =
        new Machine(
            "router",
            "p",
            travelMm,
            750,
            90,
            axis,
            axis,
            axis,
            Machine.Spindle.NONE,
            false,
            false,
            0);
    Stock stock =
        new Stock(new Material("ash", Material.Kind.HARDWOOD), 1240, widthMm, List.of(19.0), false);
    return new Setup(machine, stock, Zero.LEFT_FRONT_TOP, 20, 25, 5, 0.5, clamps, List.of(FLAT_6));
  }

  private static Cut line(String origin, double fromX, double toX, double y) {
    Motion m = new Motion.Straight(new Position(fromX, y, -4), new Position(toX, y, -4));
    return new Cut(origin, FLAT_6, 18_000, List.of(new Cut.Move(m, 1000)));
  }

  /** Leaves of 60 mm every 80 mm along 1200 mm, and a border line that goes back at the top. */
  private static Plan plan() {
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < 15; i++) {
      cuts.add(line("recess leaf " + (i + 1), 10 + 80 * i, 70 + 80 * i, 50));
    }
    cuts.add(line("groove border 1", 5, 1195, 5));
    cuts.add(line("groove border 1, pass 2", 1195, 5, 95));
    return new Plan(cuts, List.of(), List.of(), 0);
  }

  private static Steps steps(Plan plan, Setup setup) {
    return Steps.of(plan, setup, PINS, new Diagnostics());
  }

  @Test
  void the_stock_is_pushed_as_far_as_the_last_cut_needs() {
    Steps steps = steps(plan(), setup(750, 150, List.of()));
    assertThat(steps.count()).isEqualTo(2);
    assertThat(steps.windowFromMm()).isEqualTo(0);
    assertThat(steps.windowMm()).isEqualTo(740);
    assertThat(steps.shiftMm()).isEqualTo(1195 + 20 - 740);
  }

  @Test
  void a_seam_lies_in_the_middle_of_the_gap_that_is_nearest_to_the_middle_of_its_room() {
    Steps steps = steps(plan(), setup(750, 150, List.of()));
    // The room on the stock is 475 to 737; gaps (less the tool's radius) are 14 mm wide around
    // 80 k of the panel, 100 + 80 k of the stock: 580 and 660; the middle of the room is 606.
    Seam seam = steps.seams().get(0);
    assertThat(seam.xMm()).isCloseTo(580, within(EXACT));
    assertThat(seam.crossed()).containsExactly("groove border 1");
    assertThat(seam.motifs()).isEmpty();
  }

  @Test
  void no_step_leaves_its_window_and_together_they_cut_everything_and_the_overlap_twice() {
    for (double travel : List.of(1000.0, 750.0, 500.0, 400.0, 300.0)) {
      Plan plan = plan();
      Steps steps = steps(plan, setup(travel, 150, List.of()));
      double length = 0;
      for (int i = 0; i < steps.count(); i++) {
        double from = steps.windowFromMm() + i * steps.shiftMm();
        for (Cut cut : steps.cuts().get(i)) {
          for (Cut.Move move : cut.moves()) {
            Box box = move.path().box();
            assertThat(box.minX() + 20).isGreaterThanOrEqualTo(from - EXACT);
            assertThat(box.maxX() + 20).isLessThanOrEqualTo(from + steps.windowMm() + EXACT);
            length += isLevel(move.path()) ? move.path().lengthMm() : 0;
          }
        }
      }
      double whole =
          plan.cuts().stream()
              .flatMap(c -> c.moves().stream())
              .mapToDouble(m -> m.path().lengthMm())
              .sum();
      double twice = 0;
      for (Seam seam : steps.seams()) {
        twice += 2 * Steps.OVERLAP_MM; // the border's two lines
        assertThat(seam.motifs()).as("travel %s", travel).isEmpty();
      }
      assertThat(length).as("travel %s", travel).isCloseTo(whole + twice, within(1e-6));
    }
  }

  private static boolean isLevel(Motion path) {
    return path.from().z() == -4 && path.to().z() == -4;
  }

  @Test
  void a_part_that_begins_in_the_solid_is_entered_along_a_ramp_and_one_that_does_not_is_not() {
    Steps steps = steps(plan(), setup(750, 150, List.of()));
    List<Cut> back =
        steps.cuts().get(0).stream().filter(c -> c.origin().endsWith("pass 2")).toList();
    Position start = back.get(0).start();
    assertThat(start.z()).isEqualTo(0.5);
    assertThat(start.x()).isCloseTo(580 - 20 + 3, within(EXACT));
    for (Cut.Move move : back.get(0).moves()) {
      double drop = move.path().from().z() - move.path().to().z();
      assertThat(Math.toDegrees(Math.asin(drop / move.path().lengthMm()))).isLessThan(3.001);
    }
    List<Cut> on = steps.cuts().get(1).stream().filter(c -> c.start().x() < 561).toList();
    assertThat(on).hasSize(1);
    assertThat(on.get(0).start().distance(new Position(560, 5, -4))).isLessThan(EXACT);
  }

  /** The ramp into the solid and that of the cut itself add up; 5 degrees are the most. */
  @Test
  void a_part_that_goes_down_itself_is_entered_along_a_flatter_ramp() {
    double[][] way = {{110, -13}, {94, -13.84}, {99, -14.1}, {94, -14.36}, {90, -14.36}};
    List<Cut.Move> moves = new ArrayList<>();
    for (int i = 1; i < way.length; i++) {
      Position from = new Position(way[i - 1][0], 7, way[i - 1][1]);
      moves.add(
          new Cut.Move(new Motion.Straight(from, new Position(way[i][0], 7, way[i][1])), 3000));
    }
    Cut whole = new Cut("cutout", FLAT_6, 18_000, moves);
    List<Cut> parts = new CutSplit(0, 100).of(whole);
    assertThat(parts).hasSize(1);
    assertThat(parts.get(0).start().z()).isCloseTo(0.5, within(EXACT));
    assertThat(parts.get(0).end()).isEqualTo(whole.end());
    for (Cut.Move move : parts.get(0).moves()) {
      double share = (move.path().from().z() - move.path().to().z()) / move.path().lengthMm();
      assertThat(Math.toDegrees(Math.asin(share))).isLessThan(5);
    }
  }

  @Test
  void an_arc_is_parted_where_it_passes_the_seam() {
    Motion circle =
        new Motion.Turn(
            new Position(10, 0, -1), new Position(10, 0, -1), Plane.XY, 0, 0, 2 * Math.PI);
    Cut cut = new Cut("groove ring 1", FLAT_6, 18_000, List.of(new Cut.Move(circle, 1000)));
    List<Cut> right = new CutSplit(6, 100).of(cut);
    // x = 6 on a circle of 10: cos a = 0.6, both arcs of acos 0.6 on the right.
    assertThat(right).hasSize(2);
    assertThat(right.get(0).end().y()).isCloseTo(8, within(EXACT));
    assertThat(right.get(1).start().y()).isCloseTo(-8, within(EXACT));
    double arc = 10 * Math.acos(0.6);
    for (Cut part : right) {
      double length = part.moves().stream().mapToDouble(m -> m.path().lengthMm()).sum();
      assertThat(length).isCloseTo(arc, within(1e-7));
    }
  }

  @Test
  void the_holes_of_each_step_lie_over_those_in_the_board_after_the_push() {
    Steps steps = steps(plan(), setup(400, 150, List.of()));
    assertThat(steps.count()).isGreaterThan(2);
    List<Point> board = steps.pins().holes(0, steps.count()).subList(0, 2);
    for (int i = 1; i < steps.count(); i++) {
      List<Point> bored = steps.pins().holes(i - 1, steps.count());
      List<Point> standing = steps.pins().standing(i);
      assertThat(bored).containsAll(standing);
      for (int k = 0; k < 2; k++) {
        double onMachine = standing.get(k).x() - i * steps.shiftMm();
        assertThat(onMachine).isCloseTo(board.get(k).x(), within(EXACT));
        assertThat(standing.get(k).y()).isEqualTo(board.get(k).y());
      }
    }
    assertThat(steps.pins().holes(steps.count() - 1, steps.count())).isEmpty();
  }

  @Test
  void pins_keep_clear_of_clamps() {
    Steps free = steps(plan(), setup(750, 150, List.of()));
    Point front = free.pins().front();
    KeepOut clamp = new KeepOut("clamp", front.x() - 5, 0, front.x() + 5, 20, 10);
    Steps beside = steps(plan(), setup(750, 150, List.of(clamp)));
    assertThat(beside.pins().front().x()).isLessThan(clamp.minXMm() - 8.0 / 2);
    assertThat(beside.pins().front().y()).isEqualTo(front.y());
  }

  @Test
  void waste_too_narrow_for_pins_is_refused_with_its_width() {
    // The cuts reach to 95 + 3 of the panel, which lies 25 mm up: 123; 130 leave 7 mm.
    assertThatThrownBy(() -> steps(plan(), setup(750, 130, List.of())))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("STEP-001")
        .hasMessageContaining("7 mm")
        .hasMessageContaining("14 mm");
  }

  @Test
  void a_seam_that_has_to_go_through_a_motif_says_so() {
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      cuts.add(line("recess fern " + (i + 1), 5 + 190 * i, 200 + 190 * i, 50));
    }
    cuts.add(line("groove border 1", 5, 1195, 5));
    Diagnostics found = new Diagnostics();
    Steps steps =
        Steps.of(new Plan(cuts, List.of(), List.of(), 0), setup(750, 150, List.of()), PINS, found);
    Seam seam = steps.seams().get(0);
    assertThat(found.sorted())
        .singleElement()
        .satisfies(d -> assertThat(d.code()).isEqualTo(StepCode.SEAM_THROUGH_MOTIF))
        .satisfies(d -> assertThat(d.message()).contains("at X" + Amounts.length(seam.xMm())))
        .satisfies(d -> assertThat(d.message()).contains("through " + seam.motifs().get(0)));
  }

  @Test
  void a_travel_too_short_for_any_step_is_refused() {
    assertThatThrownBy(() -> steps(plan(), setup(100, 150, List.of())))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("STEP-002")
        .hasMessageContaining("travels 100 mm")
        .hasMessageContaining("20 steps are not enough");
  }
}
