package frieze.lower;

import frieze.curve.Point;
import frieze.motion.Instruction;
import frieze.motion.Step;
import frieze.shop.Machine;
import frieze.shop.Tool;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Stops the program, with a message, where the operator does what the controller cannot: switching
 * the spindle, changing a tool, raising the tool when nothing says how high it stands.
 */
final class ByHand implements Pass {
  private static final double SAME_SPEED = 1e-6;
  private static final double HALF = 0.5;

  private final Lowering.Request request;
  private final List<Point> touchSpots = new ArrayList<>();

  ByHand(Lowering.Request request) {
    this.request = request;
  }

  @Override
  public List<Step> apply(List<Step> steps) {
    Replacing replacing = new Replacing();
    for (Step step : steps) {
      replacing.origin = step.origin();
      step.instruction().accept(replacing);
    }
    return replacing.out;
  }

  /** Where Z is found again after tool changes, in program coordinates. */
  List<Point> touchSpots() {
    return touchSpots;
  }

  /** What the operator is told to set, such as {@code DIAL AT 3 FOR 18000 RPM}. */
  static String speedSetting(Machine.Spindle spindle, double rpm) {
    String speed = String.format(Locale.ROOT, "%.0f RPM", rpm);
    if (spindle.dial().isEmpty()) {
      return "SET TO " + speed;
    }
    double mark = dialMark(spindle.dial(), rpm);
    String text =
        mark == Math.rint(mark)
            ? String.format(Locale.ROOT, "%.0f", mark)
            : String.format(Locale.ROOT, "%.1f", mark);
    return "DIAL AT " + text + " FOR " + speed;
  }

  /** The mark for a speed, in halves, never one that turns faster. */
  private static double dialMark(List<Double> dial, double rpm) {
    int last = dial.size() - 1;
    if (rpm <= dial.get(0)) {
      return 1;
    }
    for (int i = 0; i < last; i++) {
      double low = dial.get(i);
      double high = dial.get(i + 1);
      if (rpm < high) {
        double between = (rpm - low) / (high - low);
        return i + 1 + Math.floor(between / HALF + SAME_SPEED) * HALF;
      }
    }
    return dial.size();
  }

  private final class Replacing extends EachInstruction<Boolean> {
    private final List<Step> out = new ArrayList<>();
    private String origin = "";
    private boolean justSwitchedOn;
    private boolean justStarted;
    private boolean started;
    private boolean hasTool;

    private boolean add(Instruction instruction) {
      justSwitchedOn = false;
      justStarted = false;
      return out.add(new Step(instruction, origin));
    }

    private boolean travelHeight() {
      return add(new Instruction.RapidZ(request.travelZMm()));
    }

    @Override
    Boolean otherwise(Instruction instruction) {
      return add(instruction);
    }

    @Override
    public Boolean raiseToSafe(Instruction.RaiseToSafe instruction) {
      if (request.capabilities().coordinates().machine()) {
        return add(instruction);
      }
      if (!started) {
        String what = request.capabilities().torch().present() ? "TORCH" : "TOOL";
        add(new Instruction.Stop("RAISE THE " + what + " CLEAR OF WORK AND CLAMPS, THEN START"));
      }
      started = true;
      return travelHeight();
    }

    @Override
    public Boolean toolChange(Instruction.ToolChange instruction) {
      boolean first = !hasTool;
      hasTool = true;
      return switch (request.toolChanging()) {
        case CHANGER -> add(instruction);
        case SEPARATE_PROGRAMS -> false;
        case STOP -> !first && change(instruction.tool());
      };
    }

    private boolean change(Tool tool) {
      boolean onTop = request.setup().zero().z() == Zero.AlongZ.TOP;
      Optional<Point> spot = onTop ? TouchSpot.choose(out, request.setup()) : Optional.empty();
      Point place = spot.orElse(Point.ORIGIN);
      spot.ifPresent(touchSpots::add);
      add(new Instruction.RapidXy(place.x(), place.y()));
      String find =
          spot.isPresent() ? "FIND Z ZERO HERE" : onTop ? "FIND Z ZERO" : "FIND Z ZERO ON THE BED";
      add(
          new Instruction.Stop(
              "CHANGE TO TOOL "
                  + tool.number()
                  + ", "
                  + tool.name()
                  + ". "
                  + find
                  + ", THEN START"));
      return request.capabilities().coordinates().machine()
          ? add(new Instruction.RaiseToSafe())
          : travelHeight();
    }

    @Override
    public Boolean spindle(Instruction.Spindle instruction) {
      if (!request.spindleByHand()) {
        add(instruction);
        justStarted = instruction.rpm().isPresent();
        return true;
      }
      Machine.Spindle spindle = request.setup().machine().spindle();
      add(
          new Instruction.Stop(
              instruction
                  .rpm()
                  .map(rpm -> "SPINDLE ON, " + speedSetting(spindle, rpm) + ", THEN START")
                  .orElse("SWITCH THE SPINDLE OFF")));
      justSwitchedOn = instruction.rpm().isPresent();
      return true;
    }

    /** The operator waits for the speed; the program need not. */
    @Override
    public Boolean dwell(Instruction.Dwell instruction) {
      boolean canWait = request.capabilities().dwell() != Capabilities.DwellWord.NONE;
      if (canWait || !justStarted) {
        return canWait && !justSwitchedOn && add(instruction);
      }
      return add(new Instruction.Stop("WAIT UNTIL THE SPINDLE IS AT SPEED, THEN START"));
    }
  }
}
