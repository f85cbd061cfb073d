package frieze.lower;

import frieze.motion.Instruction;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.motion.Step;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Small jobs for the tests of lowering and of posts: a machine, two tools, and something to cut.
 */
public final class Jobs {
  /** The height above the stock at which tools travel. */
  public static final double CLEARANCE_MM = 12;

  /** A torch whose switch trips 1.2 mm after its tip has touched. */
  private static final double TRIPS_AT_MM = -1.2;

  /** How long air flows on after a cut, while the torch stays where it is. */
  public static final double AFTER_FLOW_SECONDS = 1.5;

  public static final Tool FLAT =
      new Tool(
          "flat 1/4",
          1,
          new ToolShape.Flat(6.35),
          2,
          25,
          35,
          true,
          OptionalDouble.of(3),
          OptionalDouble.empty(),
          24_000,
          2_500,
          600);

  public static final Tool SMALL =
      new Tool(
          "flat 1/8",
          2,
          new ToolShape.Flat(3.175),
          2,
          12,
          20,
          true,
          OptionalDouble.of(1.5),
          OptionalDouble.empty(),
          24_000,
          1_500,
          400);

  private Jobs() {}

  /** A benchtop machine. */
  public static Machine machine(boolean byHand, boolean changer, boolean inches) {
    Machine.Axis axis = new Machine.Axis(3_000, 2_500, 200);
    return new Machine(
        "benchtop router",
        "short-arcs",
        780,
        600,
        80,
        axis,
        axis,
        axis,
        new Machine.Spindle(
            byHand,
            10_000,
            30_000,
            List.of(10_000.0, 12_000.0, 17_000.0, 22_000.0, 27_000.0, 30_000.0),
            3),
        changer,
        inches,
        0);
  }

  /** An ash board on that machine, zero at the left front corner on top. */
  public static Setup setup(Machine machine) {
    return new Setup(
        machine,
        new Stock(
            new Material("white ash", Material.Kind.HARDWOOD),
            700,
            150,
            List.of(19.0, 19.1),
            false),
        Zero.LEFT_FRONT_TOP,
        10,
        10,
        CLEARANCE_MM,
        0.5,
        List.of(),
        List.of(FLAT, SMALL));
  }

  /**
   * A round recess with the larger tool, then a leaf of two arcs and two holes with the smaller.
   */
  public static Sequence leafAndRecess(String title) {
    List<Step> steps = new ArrayList<>();
    add(
        steps,
        "",
        new Instruction.ToolChange(FLAT),
        new Instruction.Spindle(Optional.of(18_000.0)));
    add(
        steps,
        "recess boss, pass 1",
        new Instruction.RapidXy(110, 75),
        new Instruction.RapidZ(2),
        new Instruction.Feed(new Position(110, 75, 0), 500),
        new Instruction.Turn(new Position(110, 75, -3), Plane.XY, 100, 75, 4 * Math.PI, 1_000),
        new Instruction.Turn(new Position(110, 75, -3), Plane.XY, 100, 75, 2 * Math.PI, 1_800.55),
        new Instruction.Feed(new Position(118.123_456, 75.000_049, -3), 1_800.55),
        new Instruction.RapidZ(CLEARANCE_MM));
    add(
        steps,
        "",
        new Instruction.ToolChange(SMALL),
        new Instruction.Spindle(Optional.of(22_000.0)));
    add(
        steps,
        "groove leaf 1",
        new Instruction.RapidXy(200, 40),
        new Instruction.RapidZ(2),
        new Instruction.Feed(new Position(200, 40, -1.5), 300),
        new Instruction.Turn(
            new Position(280, 40, -1.5), Plane.XY, 240, 10, -2 * StrictMath.atan2(40, 30), 900),
        new Instruction.Turn(
            new Position(200, 40, -1.5), Plane.XY, 240, 70, -2 * StrictMath.atan2(40, 30), 900));
    add(
        steps,
        "bore hole 1",
        new Instruction.RapidXy(20, 20),
        new Instruction.RapidZ(2),
        new Instruction.Drill(20, 20, 2, -10, 4, 0.5, 200));
    add(steps, "bore hole 2", new Instruction.Drill(680, 20, 2, -10, 0, 0, 200));
    return new Sequence(title, steps);
  }

  private static void add(List<Step> steps, String origin, Instruction... instructions) {
    for (Instruction instruction : instructions) {
      steps.add(new Step(instruction, origin));
    }
  }

  /** A round hole and a slot cut by a torch: felt for, pierced, cut, and left. */
  public static Sequence torchHoles(String title) {
    List<Step> steps = new ArrayList<>();
    add(steps, "", new Instruction.ToolChange(FLAT));
    torchCut(
        steps,
        "torchcut hole 1",
        new Position(50, 40, 1.5),
        new Instruction.Turn(new Position(50, 40, 1.5), Plane.XY, 40, 40, 2 * Math.PI, 2_000));
    torchCut(
        steps,
        "torchcut slot 1",
        new Position(100, 40, 1.5),
        new Instruction.Feed(new Position(150, 40.5, 1.5), 2_000));
    return new Sequence(title, steps);
  }

  private static void torchCut(List<Step> steps, String origin, Position start, Instruction cut) {
    add(
        steps,
        origin,
        new Instruction.RapidXy(start.x(), start.y()),
        new Instruction.Probe(start.withZ(-5), 400, TRIPS_AT_MM),
        new Instruction.RapidZ(3.8),
        new Instruction.HeightControl(false),
        new Instruction.Torch(true),
        new Instruction.Dwell(0.6),
        new Instruction.Feed(start, 1_000),
        new Instruction.HeightControl(true),
        cut,
        new Instruction.HeightControl(false),
        new Instruction.Torch(false),
        new Instruction.Dwell(AFTER_FLOW_SECONDS),
        new Instruction.RapidZ(CLEARANCE_MM));
  }

  /** The work that suits a controller. */
  public static Sequence fitting(Capabilities capabilities, String title) {
    return capabilities.torch().present() ? torchHoles(title) : leafAndRecess(title);
  }
}
