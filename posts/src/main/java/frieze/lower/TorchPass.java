package frieze.lower;

import frieze.motion.Instruction;
import frieze.motion.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * Leaves out what a torch cannot do: feeling for the sheet where its height is set by hand, holding
 * a height control that is not there.
 */
final class TorchPass implements Pass {
  private final Capabilities.Torch torch;

  TorchPass(Capabilities.Torch torch) {
    this.torch = torch;
  }

  @Override
  public List<Step> apply(List<Step> steps) {
    List<Step> out = new ArrayList<>();
    for (Step step : steps) {
      if (step.instruction().accept(new Keeps(step.origin()))) {
        out.add(step);
      }
    }
    return out;
  }

  private final class Keeps extends EachInstruction<Boolean> {
    private final String origin;

    Keeps(String origin) {
      this.origin = origin;
    }

    @Override
    Boolean otherwise(Instruction instruction) {
      return true;
    }

    @Override
    public Boolean torch(Instruction.Torch instruction) {
      if (!torch.present()) {
        throw new IllegalArgumentException("this controller has no torch: " + origin);
      }
      return true;
    }

    @Override
    public Boolean heightControl(Instruction.HeightControl instruction) {
      return torch.heightControl();
    }

    @Override
    public Boolean probe(Instruction.Probe instruction) {
      return torch.touch();
    }
  }
}
