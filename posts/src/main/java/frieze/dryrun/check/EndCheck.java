package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed;
import java.util.Optional;
import java.util.OptionalDouble;

/** Objects to programs that end low, or that cut nothing where they feed sideways. */
public final class EndCheck implements Check {
  /** A ramp that begins a little above the top may go this far without taking anything. */
  private static final double ENTRY_MM = 5;

  private final Optional<StockBox> stock;
  private final double clearanceMm;
  private OptionalDouble height = OptionalDouble.empty();
  private boolean hasFed;
  private boolean hasTorch;

  /** How far the tool has fed above the stock since it last cut, sank or rose. */
  private double idleMm;

  public EndCheck(Surroundings known) {
    this.stock = StockBox.of(known);
    this.clearanceMm = known.clearanceMm().orElse(0);
  }

  @Override
  public void start(String program) {
    height = OptionalDouble.empty();
    hasFed = false;
    hasTorch = false;
    idleMm = 0;
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    height =
        passage.move().toKnown().z()
            ? OptionalDouble.of(passage.path().to().z())
            : OptionalDouble.empty();
    hasFed |= passage.isFeed();
    if (stock.isEmpty() || !passage.isFeed() || !passage.isPlaced()) {
      return;
    }
    double above = passage.box().maxZ() - stock.get().topMm();
    boolean sinks = passage.path().to().z() < passage.path().from().z() - Slack.LENGTH_MM;
    boolean cuts = passage.belowTop().isPresent() || sinks;
    boolean idle = !cuts && above > Slack.LENGTH_MM && passage.planarMm() > Slack.LENGTH_MM;
    idleMm = idle && !hasTorch ? idleMm + passage.planarMm() : 0;
    if (idleMm > ENTRY_MM) {
      log.add(
          FindingCode.CUTS_NOTHING,
          passage,
          Amount.mm(above),
          "feeds sideways up to " + Words.mm(above) + " above the stock");
    }
  }

  @Override
  public void event(Executed event, FindingLog log) {
    // A torch cuts from above the sheet.
    hasTorch |= event instanceof Executed.Torch;
    if (!(event instanceof Executed.End) || stock.isEmpty() || height.isEmpty() || !hasFed) {
      return;
    }
    double missing = stock.get().topMm() + clearanceMm - height.getAsDouble();
    if (missing > Slack.LENGTH_MM) {
      log.add(
          FindingCode.ENDS_LOW,
          event.span(),
          Amount.mm(missing),
          "the tool is left "
              + Words.mm(missing)
              + " below the clearance height when the program ends");
    }
  }
}
