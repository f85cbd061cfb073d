package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.StockCutter;
import frieze.dryrun.scene.Surroundings;
import frieze.shop.Tool;
import java.util.Optional;

/**
 * Objects to cuts in which the shank or the collet would rub: where material beside the tool stands
 * higher above its tip than the flutes are long, or than the tool sticks out.
 *
 * <p>Without a simulated stock, material is taken to stand everywhere up to the stock's top.
 */
public final class ReachCheck implements Check {
  private final Optional<StockBox> stock;
  private final Optional<StockCutter> cutter;

  public ReachCheck(Surroundings known, Optional<StockCutter> cutter) {
    this.stock = StockBox.of(known);
    this.cutter = cutter;
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (passage.tool().isEmpty() || passage.belowTop().isEmpty() || stock.isEmpty()) {
      return;
    }
    Tool tool = passage.tool().get();
    double depth = stock.get().topMm() - passage.belowTop().get().box().minZ();
    if (depth > tool.reachMm() + Slack.LENGTH_MM) {
      double collet = KeepOutCheck.HOLDER_DIAMETER_MM / 2;
      double high = besideMm(passage, depth, Math.max(collet, tool.radiusMm()));
      if (high > tool.reachMm() + Slack.LENGTH_MM) {
        report(passage, FindingCode.DEEPER_THAN_REACH, high, tool.reachMm(), log);
        return;
      }
    }
    if (depth > tool.fluteLengthMm() + Slack.LENGTH_MM) {
      double high = Math.max(metMm(passage), besideMm(passage, depth, tool.radiusMm()));
      if (high > tool.fluteLengthMm() + Slack.LENGTH_MM) {
        report(passage, FindingCode.DEEPER_THAN_FLUTES, high, tool.fluteLengthMm(), log);
      }
    }
  }

  /** How far what the move itself has cut stood above the tip. */
  private static double metMm(Passage passage) {
    return passage.met().map(m -> m.deepestMm()).orElse(0.0);
  }

  /** How far material stands above the tip, beside a tool of a radius. */
  private double besideMm(Passage passage, double depth, double radius) {
    if (cutter.isEmpty() || passage.met().isEmpty()) {
      return depth;
    }
    return cutter.get().besideMm(passage.path(), radius);
  }

  private static void report(
      Passage passage, FindingCode code, double high, double limit, FindingLog log) {
    String what = code == FindingCode.DEEPER_THAN_REACH ? "sticks out " : "has flutes of ";
    log.add(
        code,
        passage,
        Amount.mm(high - limit),
        "the tip is "
            + Words.mm(high)
            + " below material beside it; "
            + passage.tool().map(Tool::name).orElse("the tool")
            + " "
            + what
            + Words.mm(limit));
  }
}
