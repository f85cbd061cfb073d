package frieze.dryrun;

import frieze.motion.Executed;
import java.util.List;
import java.util.Optional;

/** Objects to moves that go below the stock by more than the spoilboard may be cut. */
final class SpoilboardCheck implements Check {
  private final Optional<StockBox> stock;
  private final double allowedMm;
  private final boolean isGiven;

  SpoilboardCheck(Surroundings known) {
    this.stock = StockBox.of(known);
    this.allowedMm = known.spoilboardMm().orElse(0);
    this.isGiven = known.spoilboardMm().isPresent();
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    // A probing move stops at what it feels, not at its programmed end.
    boolean probing = passage.move().kind() == Executed.Kind.PROBE;
    if (stock.isEmpty() || passage.lowZ().isEmpty() || probing) {
      return;
    }
    double below = stock.get().bottomMm() - passage.lowZ().getAsDouble();
    double beyond = below - allowedMm;
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
