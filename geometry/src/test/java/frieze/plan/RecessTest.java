package frieze.plan;

import static frieze.plan.Bench.FLAT_3;
import static frieze.plan.Bench.FLAT_6;
import static frieze.plan.Bench.SIDE_ONLY_6;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.diagnostic.Diagnostic;
import frieze.layout.Placement;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.PlanCode;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

public class RecessTest {
  private static final Affine AT = Affine.translation(30, 20);

  private static Plan plan(Design design) {
    return Planner.plan(design, Bench.setup(), Tolerances.DEFAULT);
  }

  /** Closed form: a round cutter leaves (1 - pi/4) r^2 in each square corner. */
  @Test
  void a_rectangle_is_cleared_but_for_its_round_corners() {
    Motif motif = Bench.filled("field", Bench.rectangle(0, 0, 60, 40));
    Plan plan = plan(Bench.design(motif, AT, Bench.recess("field", FLAT_6, 6)));
    double floor = 2392.274334;
    Swept swept = new Swept(25, 15, 70, 50, 0.05).cut(plan.cuts());
    assertThat(swept.areaMm2(6)).isCloseTo(floor, within(floor * 1e-3));
    assertThat(swept.volumeMm3()).isCloseTo(14353.646003, within(14353.6 * 1e-3));
    assertThat(plan.leftovers()).hasSize(1);
    assertThat(plan.leftovers().get(0).area().area()).isCloseTo(7.725666, within(0.05));
    assertThat(plan.notes()).extracting(Diagnostic::code).contains(PlanCode.NOT_ALL_REACHED);
  }

  @Test
  void the_tool_never_leaves_the_area_nor_touches_an_island() {
    Motif motif =
        Bench.filled("ring", Path.circle(new Point(25, 25), 25), Path.circle(new Point(27, 25), 9));
    Plan plan = plan(Bench.design(motif, AT, Bench.recess("ring", FLAT_3, 4)));
    Point outer = AT.apply(new Point(25, 25));
    Point inner = AT.apply(new Point(27, 25));
    double allowed = Tolerances.DEFAULT.totalMm();
    for (Position p : positions(plan.cuts())) {
      assertThat(p.xy().distance(outer) + 1.5).isLessThanOrEqualTo(25 + allowed);
      assertThat(p.xy().distance(inner) - 1.5).isGreaterThanOrEqualTo(9 - allowed);
    }
    double expected = Math.PI * (25 * 25 - 9 * 9);
    Swept swept = new Swept(28, 18, 54, 54, 0.05).cut(plan.cuts());
    assertThat(swept.areaMm2(4)).isCloseTo(expected, within(expected * 1e-3));
    assertThat(plan.leftovers()).isEmpty();
  }

  @Test
  void every_point_within_reach_is_cut() {
    Path star = star(new Point(40, 40), 38, 17, 7);
    Motif motif = Bench.filled("star", star);
    Plan plan = plan(Bench.design(motif, AT, Bench.recess("star", FLAT_3, 1)));
    Swept swept = new Swept(28, 18, 84, 84, 0.1).cut(plan.cuts());
    List<Point> outline = star.segments().stream().map(s -> AT.apply(s.start())).toList();
    int missed = 0;
    int reachable = 0;
    for (double x = 28; x < 112; x += 0.5) {
      for (double y = 18; y < 102; y += 0.5) {
        Point p = new Point(x, y);
        // A tool's middle may stand here: so all of its disc is within reach.
        if (BruteForce.inside(outline, p) && BruteForce.distance(outline, p) >= 1.5) {
          reachable++;
          missed += swept.at(p) > -1 + 1e-9 ? 1 : 0;
        }
      }
    }
    assertThat(reachable).isGreaterThan(1000);
    assertThat(missed).isZero();
  }

  /** Closed form: after the smaller tool each square corner lacks (1 - pi/4) r^2 of its radius. */
  @Test
  void a_smaller_tool_takes_only_what_a_larger_one_has_left() {
    Motif motif = Bench.filled("field", Bench.rectangle(0, 0, 60, 40));
    Work.Recess large = Bench.recess("field", FLAT_6, 2);
    Work.Recess small = Bench.recess("field", FLAT_3, 2);
    Plan both = plan(Bench.design(motif, AT, small, large));
    Plan alone = plan(Bench.design(motif, AT, small));
    assertThat(both.cuts().get(0).tool()).isEqualTo(FLAT_6);
    assertThat(length(both, FLAT_3)).isLessThan(0.4 * length(alone, FLAT_3));
    double floor = 2400 - (4 - Math.PI) * 1.5 * 1.5;
    Swept swept = new Swept(25, 15, 70, 50, 0.05).cut(both.cuts());
    assertThat(swept.areaMm2(2)).isCloseTo(floor, within(floor * 1e-3));
    for (Position p :
        positions(both.cuts().stream().filter(c -> c.tool().equals(FLAT_3)).toList())) {
      double x = Math.min(p.x() - 30, 90 - p.x());
      double y = Math.min(p.y() - 20, 60 - p.y());
      assertThat(Math.min(x, y)).isGreaterThanOrEqualTo(1.5 - 0.012);
      assertThat(Math.max(x, y)).as("only in the corners: %s", p).isLessThan(6);
    }
    assertThat(both.leftovers()).hasSize(1);
    assertThat(both.leftovers().get(0).area().area()).isCloseTo(7.725666 / 4, within(0.05));
  }

  private static double length(Plan plan, Tool tool) {
    return plan.cuts().stream()
        .filter(c -> c.tool().equals(tool))
        .flatMap(c -> c.moves().stream())
        .mapToDouble(m -> m.path().lengthMm())
        .sum();
  }

  @Test
  void passes_are_equal_and_no_deeper_than_half_the_diameter_in_hardwood() {
    Motif motif = Bench.filled("field", Bench.rectangle(0, 0, 60, 40));
    Plan plan = plan(Bench.design(motif, AT, Bench.recess("field", FLAT_6, 7)));
    List<Double> levels =
        plan.cuts().stream()
            .flatMap(c -> c.moves().stream())
            .filter(m -> m.path().from().z() == m.path().to().z())
            .map(m -> m.path().to().z())
            .filter(z -> z < 0)
            .distinct()
            .sorted()
            .toList();
    assertThat(levels).hasSize(3);
    assertThat(levels.get(0)).isEqualTo(-7);
    assertThat(levels.get(1)).isCloseTo(-7 * 2 / 3.0, within(1e-12));
  }

  @Test
  void a_tool_goes_down_at_the_ramp_angle_and_no_steeper() {
    for (Tool tool : List.of(FLAT_6, SIDE_ONLY_6)) {
      Motif motif = Bench.filled("field", Bench.rectangle(0, 0, 60, 40));
      Plan plan = plan(Bench.design(motif, AT, Bench.recess("field", tool, 6)));
      for (Cut.Move move : moves(plan.cuts())) {
        double drop = move.path().from().z() - move.path().to().z();
        double steepest = StrictMath.sin(MoveBuilder.RAMP_RAD) * (1 + 1e-9);
        assertThat(drop).isLessThanOrEqualTo(move.path().lengthMm() * steepest + 1e-12);
      }
    }
  }

  /** The links between loops lead back as well: no lift, and no move in the air but the first. */
  @Test
  void a_chain_of_loops_is_cut_to_its_depth_without_leaving_the_recess() {
    Motif motif = Bench.filled("star", star(new Point(40, 40), 38, 17, 7));
    Plan one = plan(Bench.design(motif, AT, Bench.recess("star", FLAT_3, 1)));
    Plan four = plan(Bench.design(motif, AT, Bench.recess("star", FLAT_3, 6)));
    assertThat(four.cuts()).hasSameSizeAs(one.cuts());
    for (Cut cut : four.cuts()) {
      for (Cut.Move move : cut.moves()) {
        assertThat(move.path().to().z()).isLessThanOrEqualTo(move.path().from().z() + 1e-9);
      }
      assertThat(cut.end().z()).isEqualTo(-6);
    }
  }

  /** A helix: each lap of a small loop takes its part, and one lap more makes the floor even. */
  @Test
  void a_single_loop_is_cut_in_one_helix_and_one_lap_at_the_floor() {
    Motif motif = Bench.filled("dot", Bench.rectangle(0, 0, 5, 5));
    Plan plan = plan(Bench.design(motif, AT, Bench.recess("dot", FLAT_3, 6)));
    double lap = 4 * 2;
    double length =
        RecessTest.moves(plan.cuts()).stream().mapToDouble(m -> m.path().lengthMm()).sum();
    double laps = Math.ceil(6.5 / Math.min(1.5, lap * Math.tan(MoveBuilder.RAMP_RAD)));
    assertThat(length).isCloseTo(lap * (laps + 1), within(0.01 * length));
    Swept swept = new Swept(28, 18, 10, 10, 0.05).cut(plan.cuts());
    assertThat(swept.areaMm2(6)).isCloseTo(25 - (4 - Math.PI) * 2.25, within(0.3));
  }

  /** Climb: the wall is on the right of the travel, for a spindle that turns clockwise. */
  @Test
  void climb_and_conventional_stay_what_they_are_in_a_mirror() {
    Motif motif = Bench.filled("field", Bench.rectangle(0, 0, 60, 40));
    for (Work.Milling milling : Work.Milling.values()) {
      for (Affine map : List.of(AT, Affine.scaling(-1, 1).then(Affine.translation(95, 20)))) {
        Plan plan = plan(Bench.design(motif, map, Bench.recess("field", FLAT_6, 2, milling)));
        Point middle = map.apply(new Point(30, 20));
        double turned = 0;
        for (Cut.Move move : moves(plan.cuts())) {
          Point from = move.path().from().xy().minus(middle);
          Point to = move.path().to().xy().minus(middle);
          // only along the border, where the wall is
          if (Math.max(Math.abs(to.x()) + 3 - 30, Math.abs(to.y()) + 3 - 20) > -0.01) {
            turned += from.cross(to);
          }
        }
        assertThat(turned > 0).as("%s %s", milling, map).isEqualTo(milling == Work.Milling.CLIMB);
      }
    }
  }

  @Test
  void a_motif_is_worked_out_once_for_a_thousand_placements() {
    Motif motif = Bench.filled("dot", Bench.rectangle(0, 0, 7, 7));
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      Affine map =
          Affine.scaling(i % 2 == 0 ? 1 : -1, 1)
              .then(
                  Affine.translation(
                      20 + i % 70 * 9.5 + i % 2 * 7, 5 + Math.floorDiv(i, 70) * 8.0));
      placements.add(Bench.at("dot", i + 1, map));
    }
    Design design =
        new Design(
            Bench.panel(), List.of(motif), placements, List.of(Bench.recess("dot", FLAT_3, 1)));
    Plan plan = plan(design);
    assertThat(plan.geometryCalls()).isEqualTo(1);
    assertThat(plan.cuts().stream().map(Cut::origin).distinct()).hasSize(1000);
  }

  public static List<Cut.Move> moves(List<Cut> cuts) {
    return cuts.stream().flatMap(c -> c.moves().stream()).toList();
  }

  static List<Position> positions(List<Cut> cuts) {
    List<Position> positions = new ArrayList<>();
    for (Cut.Move move : moves(cuts)) {
      Motion path = move.path();
      int steps = (int) Math.max(1, Math.ceil(path.lengthMm() / 0.5));
      for (int i = 0; i <= steps; i++) {
        positions.add(path.at((double) i / steps));
      }
    }
    return positions;
  }

  private static Path star(Point centre, double outer, double inner, int points) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 2 * points; i++) {
      corners.add(Point.polar(centre, i % 2 == 0 ? outer : inner, Math.PI * i / points));
    }
    return Path.polyline(corners, true);
  }
}
