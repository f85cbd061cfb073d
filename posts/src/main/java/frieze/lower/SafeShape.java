package frieze.lower;

import frieze.motion.Instruction;
import frieze.motion.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Gives a program its safe shape, whatever the planner left out.
 *
 * <p><i>Guarantees:</i> the first thing that moves is a raise; the spindle runs, and has had its
 * time to spin up, before the first cut of each tool; no rapid in the plane happens below the
 * travel height; the program ends raised, parked over zero, with the spindle off.
 */
final class SafeShape implements Pass {
  private static final double SAME_HEIGHT_MM = 1e-6;
  private static final String ADDED = "";

  private final Lowering.Request request;

  SafeShape(Lowering.Request request) {
    this.request = request;
  }

  @Override
  public List<Step> apply(List<Step> steps) {
    Shaping shaping = new Shaping();
    request.run().beforeStart().forEach(m -> shaping.add(new Instruction.Stop(m), ADDED));
    shaping.raise(ADDED);
    for (Step step : steps) {
      shaping.origin = step.origin();
      step.instruction().accept(shaping);
    }
    shaping.end();
    return shaping.out;
  }

  private final class Shaping extends EachInstruction<Boolean> {
    private final List<Step> out = new ArrayList<>();
    private final Cursor cursor = new Cursor();
    private String origin = ADDED;
    private boolean raised;
    private boolean torchLit;
    private boolean hasTool;
    private boolean switchedByStop;
    private double spunUpSeconds;
    private Optional<Double> rpm = Optional.empty();

    private boolean add(Instruction instruction, String from) {
      spunUpSeconds = 0;
      out.add(new Step(instruction, from));
      cursor.follow(instruction);
      return true;
    }

    private void raise(String from) {
      if (!raised && !highEnough()) {
        add(new Instruction.RaiseToSafe(), from);
      }
      raised = true;
    }

    /** Without machine coordinates nothing is higher than the travel height for sure. */
    private boolean highEnough() {
      return !request.capabilities().coordinates().machine()
          && cursor.zKnown()
          && cursor.z() >= request.travelZMm() - SAME_HEIGHT_MM;
    }

    /** Comes up to the travel height if the tool stands lower. */
    private void retract(String from) {
      if (raised) {
        return;
      }
      if (!cursor.zKnown()) {
        raise(from);
      } else if (cursor.z() < request.travelZMm() - SAME_HEIGHT_MM) {
        add(new Instruction.RapidZ(request.travelZMm()), from);
      }
    }

    private void spindleOff(String from) {
      if (rpm.isPresent()) {
        add(new Instruction.Spindle(Optional.empty()), from);
        rpm = Optional.empty();
      }
    }

    private void end() {
      if (torchLit) {
        add(new Instruction.Torch(false), ADDED);
      }
      raise(ADDED);
      add(new Instruction.RapidXy(0, 0), ADDED);
      spindleOff(ADDED);
    }

    private boolean cut(Instruction instruction) {
      boolean router = !request.capabilities().torch().present() && !request.run().isAir();
      if (router && (!hasTool || (rpm.isEmpty() && !switchedByStop))) {
        throw new IllegalArgumentException(
            "a cut needs a tool and a turning spindle first: " + origin);
      }
      raised = false;
      return add(instruction, origin);
    }

    @Override
    Boolean otherwise(Instruction instruction) {
      return add(instruction, origin);
    }

    @Override
    public Boolean raiseToSafe(Instruction.RaiseToSafe instruction) {
      raise(origin);
      return true;
    }

    @Override
    public Boolean rapidXy(Instruction.RapidXy instruction) {
      retract(origin);
      return add(instruction, origin);
    }

    @Override
    public Boolean rapidZ(Instruction.RapidZ instruction) {
      raised = false;
      return add(instruction, origin);
    }

    @Override
    public Boolean feed(Instruction.Feed instruction) {
      return cut(instruction);
    }

    @Override
    public Boolean turn(Instruction.Turn instruction) {
      return cut(instruction);
    }

    @Override
    public Boolean drill(Instruction.Drill instruction) {
      if (cursor.x() != instruction.x() || cursor.y() != instruction.y()) {
        rapidXy(new Instruction.RapidXy(instruction.x(), instruction.y()));
      }
      return cut(instruction);
    }

    @Override
    public Boolean toolChange(Instruction.ToolChange instruction) {
      boolean first = !hasTool;
      hasTool = true;
      switchedByStop = false;
      if (!first) {
        raise(origin);
        spindleOff(origin);
      }
      return add(instruction, first ? ADDED : origin);
    }

    @Override
    public Boolean spindle(Instruction.Spindle instruction) {
      if (instruction.rpm().equals(rpm)) {
        return false;
      }
      if (instruction.rpm().isEmpty()) {
        retract(origin);
        spindleOff(origin);
        return true;
      }
      retract(origin);
      rpm = instruction.rpm();
      add(instruction, origin);
      double seconds = request.setup().machine().spindle().spinUpSeconds();
      if (seconds > 0) {
        add(new Instruction.Dwell(seconds), origin);
        spunUpSeconds = seconds;
      }
      return true;
    }

    /** The time to spin up is there already. */
    @Override
    public Boolean dwell(Instruction.Dwell instruction) {
      return instruction.seconds() > spunUpSeconds && add(instruction, origin);
    }

    /** A planner may ask the operator itself. */
    @Override
    public Boolean stop(Instruction.Stop instruction) {
      switchedByStop = request.spindleByHand();
      return add(instruction, origin);
    }

    @Override
    public Boolean torch(Instruction.Torch instruction) {
      torchLit = instruction.on();
      return add(instruction, origin);
    }
  }
}
