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
import frieze.motion.Executed;
import java.util.List;
import java.util.Optional;

/** Objects to moves that go below the stock by more than the spoilboard may be cut. */
public final class SpoilboardCheck implements Check {
  /** How far below the stock a probe may be sent that misses it. Common practice: a few mm. */
  private static final double MISSED_PROBE_MM = 10;

  private final Optional<StockBox> stock;
  private final double allowedMm;
  private final boolean isGiven;

  public SpoilboardCheck(Surroundings known) {
    this.stock = StockBox.of(known);
    this.allowedMm = known.spoilboardMm().orElse(0);
    this.isGiven = known.spoilboardMm().isPresent();
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (stock.isEmpty() || passage.lowZ().isEmpty()) {
      return;
    }
    double below = stock.get().bottomMm() - passage.lowZ().getAsDouble();
    // A probing move stops at what it feels; its programmed end counts where it feels nothing.
    boolean probing = passage.move().kind() == Executed.Kind.PROBE;
    double beyond = below - (probing ? Math.max(allowedMm, MISSED_PROBE_MM) : allowedMm);
    if (beyond > Slack.LENGTH_MM) {
      log.add(
          FindingCode.INTO_SPOILBOARD,
          passage,
          Amount.mm(beyond),
          "the tip goes "
              + Words.mm(below)
              + " below the stock, "
              + Words.mm(beyond)
              + " more than the "
              + Words.mm(allowedMm)
              + " that the spoilboard may be cut");
    }
  }

  @Override
  public List<NotChecked> notChecked() {
    return isGiven || stock.isEmpty()
        ? List.of()
        : List.of(
            new NotChecked(
                "the spoilboard's allowance",
                "none is given, so no cut may go below the stock",
                false));
  }
}
