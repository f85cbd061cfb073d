package frieze.gouge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.design.Intent;
import frieze.field.StockField;
import frieze.field.SweptMoves;
import frieze.fixtures.Seeds;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.region.Region;
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
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Slots that the tool only just fits, in a long panel, with all programs written by hand. */
class NarrowPlacesTest {
  private static final double LENGTH_MM = 1200;
  private static final double DEPTH_MM = 3;

  /** Cells so large that in a slot along X or Y none may lie near the middle. */
  private static final double CELL_MM = 0.2;

  private static final long SEED = 20261126;

  /** A single window, which lies in the first slot: what is found in others the cells found. */
  private static final GougeCheck.Settings CELLS_ONLY =
      new GougeCheck.Settings(0.02, 0.01, 1, 30, 50);

  private static final GougeCheck.Settings MANY_WINDOWS =
      new GougeCheck.Settings(0.02, 0.01, 400, 30, 50);

  /** A slot about its middle line, wider than its tool by {@code spareMm}. */
  private record Slot(String name, Point from, Point to, Tool tool, double spareMm) {
    Intent intent() {
      Point along = to.minus(from).times(1 / from.distance(to));
      Point ahead = along.times(tool.radiusMm());
      Point aside = new Point(-along.y(), along.x()).times(tool.radiusMm() + spareMm / 2);
      return new Intent.Recess(
          name,
          Region.ofRing(
              List.of(
                  from.minus(ahead).minus(aside),
                  to.plus(ahead).minus(aside),
                  to.plus(ahead).plus(aside),
                  from.minus(ahead).plus(aside))),
          DEPTH_MM,
          tool);
    }
  }

  private static Tool tool(ToolShape shape) {
    OptionalDouble none = OptionalDouble.empty();
    return new Tool("tool", 1, shape, 2, 25, 35, true, none, none, 24_000, 3_000, 900);
  }

  private static List<Slot> slots() {
    SplittableRandom random = Seeds.random(SEED);
    double[] spares = {0, 0, 0.004, 0.012, 0.036};
    List<Slot> slots = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      double diameter = random.nextDouble(3, 6);
      ToolShape shape = i % 4 == 3 ? new ToolShape.Ball(diameter) : new ToolShape.Flat(diameter);
      double angle = i % 3 == 0 ? 0 : random.nextDouble(Math.PI);
      Point from = new Point(20 + 28.5 * i + random.nextDouble(), 20 + random.nextDouble());
      Point to = from.plus(new Point(random.nextDouble(4, 15), 0).turned(angle));
      slots.add(new Slot("slot " + i, from, to, tool(shape), spares[i % spares.length]));
    }
    return slots;
  }

  private static List<Intent> intents() {
    return slots().stream().map(Slot::intent).toList();
  }

  private static GougeCheck.Result check(
      List<Intent> intents, List<Slot> cut, double depthMm, GougeCheck.Settings settings) {
    Machine.Axis axis = new Machine.Axis(3000, 3000, 200);
    Machine.Spindle spindle = new Machine.Spindle(true, 10_000, 24_000, List.of(), 5);
    Machine machine =
        new Machine(
            "bench", "short-arcs", 1500, 760, 90, axis, axis, axis, spindle, false, false, 0);
    Material ash = new Material("white ash", Material.Kind.HARDWOOD);
    Stock stock = new Stock(ash, cut.size() > 1 ? LENGTH_MM : 80, 50, List.of(12.0), false);
    Setup setup =
        new Setup(machine, stock, Zero.LEFT_FRONT_TOP, 0, 0, 5, 0.5, List.of(), List.of());
    StockField field = StockField.of(stock, CELL_MM);
    SweptMoves moves = new SweptMoves();
    for (Slot slot : cut) {
      Position start = new Position(slot.from(), -depthMm);
      for (Motion path :
          List.of(
              new Motion.Straight(new Position(slot.from(), 5), start),
              new Motion.Straight(start, new Position(slot.to(), -depthMm)))) {
        field.cut(path, slot.tool().shape());
        moves.add(path, slot.tool().shape());
      }
    }
    return GougeCheck.check(intents, setup, field, moves, settings);
  }

  @Test
  void slots_that_just_fit_their_tool_and_are_cut_right_are_not_accused() {
    assertThat(check(intents(), slots(), DEPTH_MM, CELLS_ONLY).discrepancies()).isEmpty();
    assertThat(check(intents(), slots(), DEPTH_MM, MANY_WINDOWS).discrepancies()).isEmpty();
  }

  @Test
  void every_slot_that_is_cut_too_shallow_is_found_by_the_cells() {
    List<Slot> slots = slots();
    GougeCheck.Result result = check(intents(), slots, DEPTH_MM - 0.3, CELLS_ONLY);
    assertThat(result.windows()).isEqualTo(1);
    assertThat(result.tooDeep()).isZero();
    for (Slot slot : slots) {
      double r = slot.tool().radiusMm();
      double reached = 2 * r * slot.from().distance(slot.to()) + Math.PI * r * r;
      assertThat(result.discrepancies())
          .as("%s, seed %d", slot, SEED)
          .anySatisfy(
              d -> {
                assertThat(d.intent()).isEqualTo(slot.name());
                assertThat(d.kind()).isEqualTo(Discrepancy.Kind.LEFT);
                assertThat(d.amountMm()).isCloseTo(0.3, within(0.011));
                assertThat(d.areaMm2()).isBetween(0.8 * reached, 1.02 * reached);
              });
    }
  }

  /** The narrow part of a wedge starts where nobody can say to a micrometre. */
  @Test
  void a_wedge_may_be_left_where_the_tool_just_fits() {
    Tool flat = tool(new ToolShape.Flat(6));
    Region area =
        Region.ofRing(
            List.of(
                new Point(17, 16.985),
                new Point(77, 17.015),
                new Point(77, 22.985),
                new Point(17, 23.015)));
    Intent wedge = new Intent.Recess("wedge", area, DEPTH_MM, flat);
    // Where the axis stops the area is from 13 micrometres wider to 5 narrower than the tool.
    for (double end = 34; end <= 52; end += 6) {
      Slot cut = new Slot("wedge", new Point(20, 20), new Point(end, 20), flat, 0);
      assertThat(check(List.of(wedge), List.of(cut), DEPTH_MM, MANY_WINDOWS).discrepancies())
          .as("cut up to x %s", end)
          .isEmpty();
    }
    Slot half = new Slot("wedge", new Point(20, 20), new Point(26, 20), flat, 0);
    assertThat(check(List.of(wedge), List.of(half), DEPTH_MM, CELLS_ONLY).left()).isPositive();
  }
}
