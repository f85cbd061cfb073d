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
import java.util.OptionalDouble;

/**
 * Stops the program, with a message, where the operator does what the controller cannot: switching
 * the spindle, changing a tool, raising the tool when nothing says how high it stands.
 */
final class ByHand implements Pass {
  private final Lowering.Request request;
  private final List<Step> before;
  private final List<Point> touchSpots = new ArrayList<>();

  /**
   * @param before what earlier programs have done to the stock
   */
  ByHand(Lowering.Request request, List<Step> before) {
    this.request = request;
    this.before = List.copyOf(before);
    touchSpots.addAll(request.run().touchSpots());
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
    OptionalDouble mark = spindle.dialMark(rpm);
    return mark.isEmpty()
        ? "SET TO " + speed
        : "DIAL AT " + NumberWords.plain(mark.getAsDouble(), 1) + " FOR " + speed;
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
      Optional<Point> spot = onTop ? spot() : Optional.empty();
      Point place = spot.orElse(Point.ORIGIN);
      add(new Instruction.RapidXy(place.x(), place.y()));
      String find =
          spot.isPresent() ? "FIND Z ZERO HERE" : onTop ? "FIND Z ZERO" : "FIND Z ZERO ON THE BED";
      String name = "TOOL " + tool.number() + ", " + tool.name();
      if (request.run().isAir()) {
        add(new Instruction.Stop("AIR PASS: " + name + " WOULD COME IN HERE. THEN START"));
      } else {
        spot.ifPresent(touchSpots::add);
        add(new Instruction.Stop("CHANGE TO " + name + ". " + find + ", THEN START"));
      }
      return request.capabilities().coordinates().machine()
          ? add(new Instruction.RaiseToSafe())
          : travelHeight();
    }

    private Optional<Point> spot() {
      List<Step> done = new ArrayList<>(before);
      done.addAll(out);
      return TouchSpot.choose(done, request.setup());
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
