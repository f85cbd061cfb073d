package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Motion;
import frieze.motion.Motions;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;

/**
 * Objects, from the simulated stock, to rapids into standing material and to passes that take more
 * depth than the tool's limit.
 */
public final class MaterialCheck implements Check {
  private final boolean stockIsKnown;
  private boolean allMet = true;

  public MaterialCheck(Surroundings known) {
    this.stockIsKnown = StockBox.of(known).isPresent();
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (passage.met().isEmpty()) {
      allMet &= passage.isPlaced() ? passage.belowTop().isEmpty() : passage.isRapid();
      return;
    }
    double deep = passage.met().get().deepestMm();
    if (deep <= Slack.STANDING_MM) {
      return;
    }
    if (passage.isRapid()) {
      log.add(
          FindingCode.RAPID_INTO_MATERIAL,
          passage,
          Amount.mm(deep),
          "a rapid meets " + Words.mm(deep) + " of standing material");
    } else {
      passage.tool().ifPresent(tool -> comparePass(passage, tool, deep, log));
    }
  }

  private static void comparePass(Passage passage, Tool tool, double deep, FindingLog log) {
    Motion path = passage.path();
    boolean straightDown = Motions.planarMm(path) <= Slack.LENGTH_MM;
    if (straightDown || tool.shape() instanceof ToolShape.Drill || tool.passDepthMm().isEmpty()) {
      return;
    }
    double beyond = deep - tool.passDepthMm().getAsDouble();
    if (beyond > Slack.STANDING_MM) {
      log.add(
          FindingCode.PASS_TOO_DEEP,
          passage,
          Amount.mm(beyond),
          "takes "
              + Words.mm(deep)
              + " in one pass; "
              + tool.name()
              + " may take "
              + Words.mm(tool.passDepthMm().getAsDouble()));
    }
  }

  @Override
  public List<NotChecked> notChecked() {
    return stockIsKnown && allMet
        ? List.of()
        : List.of(
            new NotChecked(
                "rapids into material and depth of passes",
                "the stock, the zero on it, the tool or the place where the program starts is not"
                    + " known",
                true));
  }
}
