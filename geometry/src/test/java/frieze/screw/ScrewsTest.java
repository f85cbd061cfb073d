package frieze.screw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.Intent;
import frieze.design.Work;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import frieze.region.BoundaryDistance;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.shop.Material;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.wood.Moisture;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ScrewsTest {
  private static final double ROUNDING = 1e-9;
  private static final double THICK = 19;
  private static final Tool DRILL = tool("drill 3", new ToolShape.Drill(3, Math.toRadians(118)));
  private static final Tool FLAT = tool("flat 3", new ToolShape.Flat(3));
  private static final Tool VEE = tool("vee 60", new ToolShape.Vee(12, Math.toRadians(60), 0));
  private static final Stock BOARD =
      new Stock(
          new Material("white ash", Material.Kind.HARDWOOD), 400, 140, List.of(THICK, 19.4), false);

  /** White ash, flat sawn: 0.00274 for 1 % across (Wood Handbook, table 13-5). */
  private static final Movement ASH =
      new Movement(new Point(150, 60), 0.0002, 0.00274, new Moisture(8, 6, 10));

  private static Tool tool(String name, ToolShape shape) {
    OptionalDouble usual = OptionalDouble.empty();
    return new Tool(name, 1, shape, 2, 40, 40, true, usual, usual, 24000, 2000, 500);
  }

  private static Screws screws(
      boolean slots, OptionalInt held, Tool tool, double depthMm, boolean fromBack) {
    return new Screws(
        List.of(new Point(150, 60), new Point(30, 100)),
        4,
        new Screws.Steel(5, slots, held),
        new Screws.Pilot(3, depthMm, tool, List.of(), fromBack, 1.5),
        SourceSpan.NONE);
  }

  /** Closed form: the second screw lies 120 along and 40 across from the place that is held. */
  @Test
  void a_slot_holds_the_screw_from_the_driest_to_the_wettest() {
    Screws screws = screws(true, OptionalInt.of(0), FLAT, 10, true);
    List<SteelHole> holes = screws.steelHoles(Optional.of(ASH));
    assertThat(holes.get(0).isSlot()).isFalse();
    SteelHole slot = holes.get(1);
    double x = 120 * 0.0002 * 2;
    double y = 40 * 0.00274 * 2;
    assertThat(slot.driest().distance(new Point(30 + x, 100 - y))).isLessThan(ROUNDING);
    assertThat(slot.wettest().distance(new Point(30 - x, 100 + y))).isLessThan(ROUNDING);
    assertThat(slot.lengthMm()).isCloseTo(5 + 2 * Math.hypot(x, y), within(ROUNDING));
    Region edge = Region.of(List.of(slot.edge()), FillRule.NONZERO, 0.001);
    BoundaryDistance wall = BoundaryDistance.of(edge);
    assertThat(wall.signed(slot.driest())).isCloseTo(2.5, within(0.002));
    assertThat(wall.signed(slot.wettest())).isCloseTo(2.5, within(0.002));
    assertThat(edge.area()).isCloseTo(Math.PI * 2.5 * 2.5 + 5 * slot.travelMm(), within(0.02));
  }

  @Test
  void holes_stay_round_where_round_ones_are_asked_for_or_no_movement_is_known() {
    assertThat(screws(false, OptionalInt.empty(), FLAT, 10, true).steelHoles(Optional.of(ASH)))
        .noneMatch(SteelHole::isSlot);
    assertThat(screws(true, OptionalInt.empty(), FLAT, 10, true).steelHoles(Optional.empty()))
        .noneMatch(SteelHole::isSlot);
  }

  /** A hole of 5 gives a screw of 4 half a millimetre; it moves 0.219 across and 0.048 along. */
  @Test
  void a_panel_that_is_screwed_tight_is_warned_of_with_both_figures() {
    Screws round = screws(false, OptionalInt.of(0), FLAT, 10, true);
    assertThat(moved(round, ASH)).isEmpty();
    Moisture wide = new Moisture(8, 2, 10);
    Movement far = new Movement(ASH.held(), ASH.alongPerPct(), ASH.acrossPerPct(), wide);
    double moves = Math.hypot(120 * 0.0002 * 6, 40 * 0.00274 * 6);
    assertThat(moved(round, far).get(0).toString())
        .contains("warning[SCREW-003]", "screw 2", "gives it 0.5 mm")
        .contains(String.format(Locale.ROOT, "moves by %.2f mm", moves));
    assertThat(moved(screws(true, OptionalInt.of(0), FLAT, 10, true), far)).isEmpty();
    Diagnostics found = new Diagnostics();
    ScrewCheck.movement(round, Optional.empty(), found);
    assertThat(found.sorted().get(0).toString()).contains("SCREW-004", "SLOTS NOT SIZED");
  }

  private static List<Diagnostic> moved(Screws screws, Movement movement) {
    Diagnostics found = new Diagnostics();
    ScrewCheck.movement(screws, Optional.of(movement), found);
    return found.sorted();
  }

  private static List<Diagnostic> pilots(Screws screws, Intent... face) {
    Diagnostics found = new Diagnostics();
    ScrewCheck.pilots(screws, BOARD, List.of(face), found);
    return found.sorted();
  }

  /** The point of a drill of 118 degrees reaches 1.5 / tan 59 deg = 0.901 below its diameter. */
  @Test
  void the_point_of_the_drill_counts() {
    assertThat(pilots(screws(true, OptionalInt.empty(), DRILL, 16.5, true))).isEmpty();
    assertThat(pilots(screws(true, OptionalInt.empty(), DRILL, 16.7, true)).get(0).toString())
        .contains("SCREW-001", "leave 1.4 mm", "17.6 mm", "1.5 mm (0.059 in) must stay");
    assertThat(pilots(screws(true, OptionalInt.empty(), FLAT, 17.5, true))).isEmpty();
    assertThat(pilots(screws(true, OptionalInt.empty(), FLAT, 20, true)).get(0).toString())
        .contains("break through by 1 mm");
  }

  @Test
  void a_pilot_from_the_back_keeps_the_wood_that_must_stay_below_what_is_carved() {
    Region near = square(new Point(150 + 1.4 + 5, 60), 5);
    Region far = square(new Point(150 + 1.6 + 5, 60), 5);
    Screws screws = screws(true, OptionalInt.empty(), FLAT, 14, true);
    assertThat(pilots(screws, new Intent.Recess("recess leaf 1", near, 3.4, FLAT))).isEmpty();
    assertThat(pilots(screws, new Intent.Recess("recess leaf 1", far, 9, FLAT))).isEmpty();
    assertThat(
            pilots(screws, new Intent.Recess("recess leaf 1", near, 3.8, FLAT)).get(0).toString())
        .contains("SCREW-001", "pilot 1", "below recess leaf 1, leaves 1.2 mm");
    assertThat(
            pilots(screws, new Intent.Through("cutout", near, FLAT, Work.Side.INSIDE, 3, 0))
                .get(0)
                .toString())
        .contains("SCREW-002", "meets cutout");
  }

  @Test
  void a_pilot_from_the_front_meets_no_carving_but_may_have_a_seat() {
    Screws screws = screws(true, OptionalInt.empty(), FLAT, 10, false);
    Intent seat = new Intent.Hole("bore 1", new Point(150, 60), 12, 2, FLAT);
    Intent other = new Intent.Hole("bore 2", new Point(153, 60), 12, 2, FLAT);
    assertThat(pilots(screws, seat)).isEmpty();
    assertThat(pilots(screws, other).get(0).toString()).contains("SCREW-002", "meets bore 2");
  }

  /** An independent way: both depths summed on a fine grid, as a depth field would. */
  @Test
  void what_both_faces_take_together_is_never_more_than_told() {
    SplittableRandom random = Seeds.random(811);
    for (int i = 0; i < 24; i++) {
      Point axis = new Point(random.nextDouble() * 6, random.nextDouble() * 6);
      Tool tool = random.nextBoolean() ? DRILL : FLAT;
      Screws.Pilot pilot = new Screws.Pilot(3, 10, tool, List.of(), true, 1);
      Region area = square(new Point(3, 3), 2 + random.nextDouble() * 3);
      Path line = Path.polyline(List.of(new Point(0, 0), new Point(6, 4)), false);
      BoundaryDistance wall = BoundaryDistance.of(area);
      Intent.VRecess carved = new Intent.VRecess("v", area, 4, VEE, List.of(), 0);
      double bound = carved.accept(new Together(axis, pilot));
      double sum = sum(axis, pilot, p -> carved.depthMm(wall.signed(p)));
      assertThat(sum)
          .as("seed %d, case %d", Seeds.seed(811), i)
          .isLessThanOrEqualTo(bound + ROUNDING);
      same(axis, pilot, new Intent.Recess("r", area, 3, FLAT), p -> wall.contains(p) ? 3 : 0);
      same(
          axis,
          pilot,
          new Intent.Groove("g", List.of(line), 3, VEE),
          p -> Math.max(0, 3 - VEE.shape().heightAtMm(toLine(p))));
    }
  }

  /** Within the grid's step times the steepest walls. */
  private static void same(Point axis, Screws.Pilot pilot, Intent intent, Depth depth) {
    double told = intent.accept(new Together(axis, pilot));
    double sum = sum(axis, pilot, depth);
    assertThat(sum).isLessThanOrEqualTo(told + ROUNDING);
    if (sum > Together.APART) {
      assertThat(sum).isCloseTo(told, within(0.3));
    }
  }

  private interface Depth {
    double at(Point p);
  }

  private static double sum(Point axis, Screws.Pilot pilot, Depth depth) {
    double most = Together.APART;
    for (double x = -1.5; x <= 1.5; x += 0.05) {
      for (double y = -1.5; y <= 1.5; y += 0.05) {
        double carved = depth.at(axis.plus(new Point(x, y)));
        if (Math.hypot(x, y) < 1.5 && carved > 0) {
          most = Math.max(most, carved + pilot.depthAtMm(Math.hypot(x, y)));
        }
      }
    }
    return most;
  }

  private static double toLine(Point p) {
    double t = Math.max(0, Math.min(1, (p.x() * 6 + p.y() * 4) / 52));
    return p.distance(new Point(6 * t, 4 * t));
  }

  private static Region square(Point middle, double half) {
    return Region.ofRing(
        List.of(
            middle.plus(new Point(-half, -half)),
            middle.plus(new Point(half, -half)),
            middle.plus(new Point(half, half)),
            middle.plus(new Point(-half, half))));
  }
}
