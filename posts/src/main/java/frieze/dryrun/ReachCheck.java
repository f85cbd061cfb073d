package frieze.dryrun;

import frieze.shop.Tool;
import java.util.Optional;

/** Objects to cuts deeper than the tool's flutes, or so deep that the collet would rub. */
final class ReachCheck implements Check {
  private final Optional<StockBox> stock;

  ReachCheck(Surroundings known) {
    this.stock = StockBox.of(known);
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (passage.tool().isEmpty() || passage.belowTop().isEmpty() || stock.isEmpty()) {
      return;
    }
    Tool tool = passage.tool().get();
    double depth = stock.get().topMm() - passage.belowTop().get().box().minZ();
    if (depth > tool.reachMm() + Slack.LENGTH_MM) {
      report(passage, FindingCode.DEEPER_THAN_REACH, depth, tool.reachMm(), log);
    } else if (depth > tool.fluteLengthMm() + Slack.LENGTH_MM) {
      report(passage, FindingCode.DEEPER_THAN_FLUTES, depth, tool.fluteLengthMm(), log);
    }
  }

  private static void report(
      Passage passage, FindingCode code, double depth, double limit, FindingLog log) {
    String what = code == FindingCode.DEEPER_THAN_REACH ? "sticks out " : "has flutes of ";
    log.add(
        code,
        passage,
        Amount.mm(depth - limit),
        "the tip is "
            + Words.mm(depth)
            + " below the stock's top; "
            + passage.tool().map(Tool::name).orElse("the tool")
            + " "
            + what
            + Words.mm(limit));
  }
}
