package frieze.plan;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.motion.Instruction;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.motion.Step;
import frieze.plan.cut.Cut;
import frieze.shop.Setup;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts the cuts of a plan into one sequence of instructions in the program's frame.
 *
 * <p>Guarantees: the tool travels in the plane only at the clearance height or above; it is raised
 * before every tool change and at the end; rapids come no lower than {@value #APPROACH_MM} mm above
 * the stock; the spindle is started before the first cut of each tool, also where an operator has
 * to do it (lowering turns that into a stop with a message).
 */
public final class Sequencer {
  /** The height above the stock down to which the tool comes at rapid speed. */
  static final double APPROACH_MM = 1;

  private final Setup setup;
  private final List<Step> steps = new ArrayList<>();
  private final Affine toProgram;
  private final double zShiftMm;
  private String origin = "";

  /** Whether the last move left the tool at the clearance height, and not higher. */
  private boolean atClearance;

  private Sequencer(Setup setup) {
    this.setup = setup;
    this.toProgram = setup.programFromPanel().affine();
    this.zShiftMm = -setup.stockZFromProgramZMm();
  }

  /**
   * Makes the sequence of a plan.
   *
   * @param title the panel's name
   */
  public static Sequence sequence(Plan plan, Setup setup, String title) {
    Sequencer sequencer = new Sequencer(setup);
    sequencer.add(new Instruction.RaiseToSafe());
    Optional<Tool> tool = Optional.empty();
    double rpm = 0;
    for (Cut cut : plan.cuts()) {
      if (!tool.equals(Optional.of(cut.tool())) || rpm != cut.spindleRpm()) {
        sequencer.change(cut, tool);
        tool = Optional.of(cut.tool());
        rpm = cut.spindleRpm();
      }
      sequencer.cut(cut);
    }
    sequencer.origin = "";
    sequencer.add(new Instruction.RaiseToSafe());
    sequencer.add(new Instruction.Spindle(Optional.empty()));
    return new Sequence(title, sequencer.steps);
  }

  private void add(Instruction instruction) {
    steps.add(new Step(instruction, origin));
  }

  private void change(Cut cut, Optional<Tool> before) {
    origin = "tool " + cut.tool().name();
    atClearance = false;
    if (before.isPresent()) {
      add(new Instruction.RaiseToSafe());
      if (!before.get().equals(cut.tool())) {
        add(new Instruction.Spindle(Optional.empty()));
      }
    }
    if (!before.equals(Optional.of(cut.tool()))) {
      add(new Instruction.ToolChange(cut.tool()));
    }
    add(new Instruction.Spindle(Optional.of(cut.spindleRpm())));
    double spinUp = setup.machine().spindle().spinUpSeconds();
    if (spinUp > 0) {
      add(new Instruction.Dwell(spinUp));
    }
  }

  private void cut(Cut cut) {
    origin = cut.origin();
    Position start = place(cut.start());
    double approach = Math.min(APPROACH_MM, setup.clearanceMm()) + zShiftMm;
    add(new Instruction.RapidXy(start.x(), start.y()));
    if (!atClearance) {
      add(new Instruction.RapidZ(setup.clearanceMm() + zShiftMm));
    }
    add(new Instruction.RapidZ(approach));
    if (cut.peckMm().isPresent()) {
      add(
          new Instruction.Drill(
              start.x(),
              start.y(),
              approach,
              cut.end().z() + zShiftMm,
              cut.peckMm().getAsDouble(),
              0,
              cut.moves().get(0).feedMmPerMin()));
    } else {
      if (start.z() < approach) {
        add(new Instruction.Feed(start, plunge(cut)));
      }
      for (Cut.Move move : cut.moves()) {
        add(move.path().accept(new ToInstruction(move.feedMmPerMin())));
      }
    }
    add(new Instruction.RapidZ(setup.clearanceMm() + zShiftMm));
    atClearance = true;
  }

  /** Down through air, or through what is cut already, no faster than the tool may plunge. */
  private double plunge(Cut cut) {
    return Math.min(cut.tool().maxPlungeMmPerMin(), setup.machine().z().maxFeedMmPerMin());
  }

  private Position place(Position p) {
    return new Position(toProgram.apply(p.xy()), p.z() + zShiftMm);
  }

  private final class ToInstruction implements Motion.Visitor<Instruction> {
    private final double feedMmPerMin;

    ToInstruction(double feedMmPerMin) {
      this.feedMmPerMin = feedMmPerMin;
    }

    @Override
    public Instruction straight(Motion.Straight straight) {
      return new Instruction.Feed(place(straight.to()), feedMmPerMin);
    }

    @Override
    public Instruction turn(Motion.Turn turn) {
      Point centre = toProgram.apply(new Point(turn.centreU(), turn.centreV()));
      return new Instruction.Turn(
          place(turn.to()), turn.plane(), centre.x(), centre.y(), turn.sweepRad(), feedMmPerMin);
    }
  }
}
