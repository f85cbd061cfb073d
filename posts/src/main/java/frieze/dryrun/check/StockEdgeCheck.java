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
import frieze.motion.Box;
import java.util.List;
import java.util.Optional;

/**
 * Objects to cuts beside the stock: to those whose axis runs beside it by more than the tool's
 * radius, and, more mildly, to those that run over its edge.
 */
public final class StockEdgeCheck implements Check {
  private final Optional<StockBox> stock;

  public StockEdgeCheck(Surroundings known) {
    this.stock = StockBox.of(known);
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (stock.isEmpty() || passage.isRapid() || passage.belowTop().isEmpty()) {
      return;
    }
    Box box = passage.belowTop().get().box();
    double radius = passage.tool().map(t -> t.radiusMm()).orElse(0.0);
    double axisBeyond = stock.get().beyondMm(box.minX(), box.minY(), box.maxX(), box.maxY());
    if (axisBeyond > radius + Slack.LENGTH_MM) {
      log.add(
          FindingCode.CUT_OFF_STOCK,
          passage,
          Amount.mm(axisBeyond),
          "the tool's axis is "
              + Words.mm(axisBeyond)
              + " beside the stock while it is below its top");
    } else if (axisBeyond > Slack.LENGTH_MM) {
      log.add(
          FindingCode.OVER_STOCK_EDGE,
          passage,
          Amount.mm(axisBeyond),
          "the tool's axis runs " + Words.mm(axisBeyond) + " over the edge of the stock");
    }
  }

  @Override
  public List<NotChecked> notChecked() {
    return stock.isPresent()
        ? List.of()
        : List.of(
            new NotChecked(
                "place and depth in the stock", "the stock or the zero on it is not given", true));
  }
}
