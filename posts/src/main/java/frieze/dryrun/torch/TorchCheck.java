package frieze.dryrun.torch;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Objects to what a torch should not do: travel while it is lit, start to cut without a pierce
 * delay, cut at another height than before, stay lit at the end.
 *
 * <p>The cutting height is that of the first cut sideways of each program: later cuts are compared
 * with it. Looks at programs that light a torch only.
 */
public final class TorchCheck implements Check {
  /** How far the height of cuts may differ; common practice, no published value. */
  static final double HEIGHT_MM = 0.5;

  private boolean isLit;
  private boolean hasTorch;
  private boolean pierced;
  private int putOutAt;
  private OptionalDouble cutZ = OptionalDouble.empty();
  private boolean sawTorch;
  private final boolean partIsKnown;

  /** Makes one, told whether the part is known and so looked at by {@link TorchPartCheck}. */
  public TorchCheck(boolean partIsKnown) {
    this.partIsKnown = partIsKnown;
  }

  @Override
  public void start(String program) {
    isLit = false;
    hasTorch = false;
    pierced = false;
    putOutAt = 0;
    cutZ = OptionalDouble.empty();
  }

  @Override
  public void event(Executed event, FindingLog log) {
    if (event instanceof Executed.Torch torch) {
      hasTorch = true;
      sawTorch = true;
      putOutAt = isLit && !torch.on() ? torch.span().line() : 0;
      isLit = torch.on();
      pierced = false;
    } else if (event instanceof Executed.Dwell dwell && isLit && dwell.seconds() > 0) {
      pierced = true;
    } else if (event instanceof Executed.End end && (isLit || endPutsOut(end))) {
      isLit = false;
      log.add(
          FindingCode.TORCH_LEFT_ON, event.span(), Amount.NONE, "the torch is lit when it ends");
    }
  }

  /** The end of a program puts out what was left lit, yet not on every controller. */
  private boolean endPutsOut(Executed.End end) {
    return putOutAt > 0 && putOutAt == end.span().line();
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (!hasTorch) {
      return;
    }
    boolean sideways = passage.planarMm() > Slack.LENGTH_MM;
    if (isLit && passage.isRapid()) {
      log.add(FindingCode.TORCH_RAPID, passage, Amount.NONE, "a rapid while the torch is lit");
    } else if (passage.move().kind() == Kind.FEED && sideways) {
      cut(passage, log);
    }
  }

  private void cut(Passage passage, FindingLog log) {
    OptionalDouble z = passage.lowZ();
    if (!isLit) {
      boolean low =
          z.isPresent() && cutZ.isPresent() && z.getAsDouble() <= cutZ.getAsDouble() + HEIGHT_MM;
      if (low) {
        log.add(
            FindingCode.TORCH_OFF, passage, Amount.NONE, "feeds at cutting height, but is not lit");
      }
      return;
    }
    if (!pierced) {
      pierced = true;
      log.add(
          FindingCode.NO_PIERCE,
          passage,
          Amount.NONE,
          "moves off sideways as soon as it is lit, without a dwell (G4)");
    }
    if (z.isEmpty()) {
      return;
    }
    if (cutZ.isEmpty()) {
      cutZ = z;
    }
    double away = z.getAsDouble() - cutZ.getAsDouble();
    if (Math.abs(away) > HEIGHT_MM) {
      log.add(
          FindingCode.TORCH_HEIGHT,
          passage,
          Amount.mm(away),
          "cuts "
              + Words.mm(Math.abs(away))
              + (away > 0 ? " above" : " below")
              + " the height of the program's first cut");
    }
  }

  @Override
  public List<NotChecked> notChecked() {
    return sawTorch && !partIsKnown
        ? List.of(
            new NotChecked(
                "edges, pierces and pieces of the torch",
                "the part that it should cut is not given",
                true))
        : List.of();
  }
}
