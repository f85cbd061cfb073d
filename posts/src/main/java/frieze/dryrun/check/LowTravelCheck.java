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
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Objects to rapids that travel sideways below the clearance height, or at an unknown height. */
public final class LowTravelCheck implements Check {
  private final Optional<StockBox> stock;
  private final OptionalDouble clearanceMm;
  private boolean heightIsKnown;

  public LowTravelCheck(Surroundings known) {
    this.stock = StockBox.of(known);
    this.clearanceMm = known.clearanceMm();
  }

  @Override
  public void start(String program) {
    heightIsKnown = false;
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (!heightIsKnown && tellsHeight(passage)) {
      heightIsKnown = passage.planarMm() <= Slack.LENGTH_MM && !movesSideways(passage);
    }
    if (!passage.isRapid() || !movesSideways(passage)) {
      return;
    }
    if (passage.lowZ().isEmpty()) {
      if (!heightIsKnown) {
        heightIsKnown = true;
        log.add(
            FindingCode.TRAVEL_AT_UNKNOWN_HEIGHT,
            passage,
            Amount.NONE,
            "the tool travels before the program has raised it");
      }
      return;
    }
    heightIsKnown = true;
    compare(passage, passage.lowZ().getAsDouble(), log);
  }

  /** Whether the move goes to a height, of the program or of the machine, or rises by itself. */
  private static boolean tellsHeight(Passage passage) {
    return passage.move().toKnown().z()
        || passage.move().machineTo().z().isPresent()
        || passage.path().to().z() > passage.path().from().z();
  }

  private static boolean movesSideways(Passage passage) {
    boolean firstX = passage.move().toKnown().x() && !passage.move().fromKnown().x();
    boolean firstY = passage.move().toKnown().y() && !passage.move().fromKnown().y();
    return firstX || firstY || passage.planarMm() > Slack.LENGTH_MM;
  }

  private void compare(Passage passage, double low, FindingLog log) {
    if (stock.isEmpty()) {
      return;
    }
    double above = low - stock.get().topMm();
    if (above < -Slack.LENGTH_MM) {
      log.add(
          FindingCode.TRAVEL_IN_STOCK,
          passage,
          Amount.mm(-above),
          "a rapid travels sideways " + Words.mm(-above) + " below the top of the stock");
    } else if (clearanceMm.isPresent() && above < clearanceMm.getAsDouble() - Slack.LENGTH_MM) {
      double missing = clearanceMm.getAsDouble() - above;
      log.add(
          FindingCode.LOW_TRAVEL,
          passage,
          Amount.mm(missing),
          "a rapid travels sideways "
              + Words.mm(above)
              + " above the stock; the clearance height is "
              + Words.mm(clearanceMm.getAsDouble()));
    }
  }

  @Override
  public List<NotChecked> notChecked() {
    if (stock.isEmpty()) {
      return List.of(
          new NotChecked("height of rapids", "the stock or the zero on it is not given", true));
    }
    return clearanceMm.isPresent()
        ? List.of()
        : List.of(
            new NotChecked(
                "clearance height",
                "none is given; rapids were only compared with the stock's top",
                false));
  }
}
