package frieze.dryrun.check;

import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed;
import frieze.motion.Executed.Rotation;
import frieze.shop.Machine;
import java.util.List;
import java.util.Optional;

/**
 * Objects to cuts with the spindle off or turning backwards. A spindle that is switched by hand
 * counts as on after a stop with a message, until the next tool. Objects also to a text that ends
 * without stopping it.
 */
public final class SpindleCheck implements Check {
  private final Optional<StockBox> stock;
  private final boolean byHand;
  private final boolean machineIsGiven;
  private boolean stopped;
  private boolean objected;
  private Optional<Integer> tool = Optional.empty();
  private boolean torch;
  private SourceSpan runsSince = SourceSpan.NONE;
  private boolean runs;

  public SpindleCheck(Surroundings known) {
    this.stock = StockBox.of(known);
    this.byHand = known.machine().map(Machine::spindle).map(Machine.Spindle::byHand).orElse(false);
    this.machineIsGiven = known.machine().isPresent();
  }

  @Override
  public void start(String program) {
    stopped = false;
    objected = false;
    torch = false;
    runs = false;
  }

  @Override
  public void event(Executed event, FindingLog log) {
    if (event instanceof Executed.Stop stop && !stop.optional() && !stop.message().isBlank()) {
      stopped = true;
    } else if (event instanceof Executed.ToolChange change && !change.toolNumber().equals(tool)) {
      tool = change.toolNumber();
      stopped = false;
      objected = false;
    } else if (event instanceof Executed.Torch) {
      torch = true;
    } else if (event instanceof Executed.SpindleChange change) {
      runs = change.rotation() != Rotation.STOPPED;
      runsSince = change.span();
    } else if (event instanceof Executed.End && runs) {
      // M2 and M30 stop the spindle first, so this end is that of the text.
      runs = false;
      objectToEnd(log);
    }
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (!passage.isFeed() || torch || !cuts(passage)) {
      return;
    }
    Rotation rotation = passage.move().state().rotation();
    if (rotation == Rotation.COUNTER_CLOCKWISE) {
      log.add(
          FindingCode.SPINDLE_BACKWARDS,
          passage,
          Amount.NONE,
          "the spindle turns counter-clockwise (M4) in this cut");
    }
    if (byHand) {
      objectByHand(passage, log);
    } else if (rotation == Rotation.STOPPED) {
      log.add(
          FindingCode.SPINDLE_OFF,
          passage,
          Amount.NONE,
          machineIsGiven
              ? "the program has not started the spindle"
              : "the program has not started the spindle, and no machine is given that has it"
                  + " switched by hand");
    }
  }

  private void objectToEnd(FindingLog log) {
    log.add(
        FindingCode.SPINDLE_LEFT_ON,
        runsSince,
        Amount.NONE,
        "the spindle that starts here still turns when the text ends; no M5, M2 or M30 stops it");
  }

  private void objectByHand(Passage passage, FindingLog log) {
    if (!stopped && !objected) {
      objected = true;
      log.add(
          FindingCode.NO_STOP_FOR_SPINDLE,
          passage,
          Amount.NONE,
          "this machine's spindle is switched by hand, but the program has not stopped with a"
              + " message before this first plunge"
              + passage.tool().map(t -> " of " + t.name()).orElse(""));
    }
  }

  /** Below the stock's top; any feed move of which nobody can say that it is not. */
  private boolean cuts(Passage passage) {
    if (stock.isEmpty() || passage.belowTop().isPresent()) {
      return true;
    }
    double low = passage.lowZ().orElse(Double.NEGATIVE_INFINITY);
    return !passage.isPlaced() && low < stock.get().topMm() - Slack.LENGTH_MM;
  }

  @Override
  public List<NotChecked> notChecked() {
    return List.of();
  }
}
