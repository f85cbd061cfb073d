package frieze.lower;

import frieze.motion.Instruction;
import frieze.motion.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * Leaves the moves of a program and takes away what works on the material: spindle, torch, feeling
 * for the sheet, and waiting for them. {@link Lift} then raises what is left.
 */
final class AirPass implements Pass {
  @Override
  public List<Step> apply(List<Step> steps) {
    List<Step> out = new ArrayList<>();
    for (Step step : steps) {
      if (step.instruction().accept(new Keeps())) {
        out.add(step);
      }
    }
    return out;
  }

  private static final class Keeps extends EachInstruction<Boolean> {
    @Override
    Boolean otherwise(Instruction instruction) {
      return true;
    }

    @Override
    public Boolean spindle(Instruction.Spindle instruction) {
      return false;
    }

    @Override
    public Boolean dwell(Instruction.Dwell instruction) {
      return false;
    }

    @Override
    public Boolean probe(Instruction.Probe instruction) {
      return false;
    }

    @Override
    public Boolean torch(Instruction.Torch instruction) {
      return false;
    }

    @Override
    public Boolean heightControl(Instruction.HeightControl instruction) {
      return false;
    }
  }
}
