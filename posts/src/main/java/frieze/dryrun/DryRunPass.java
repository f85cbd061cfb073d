package frieze.dryrun;

import frieze.clock.ClockAccount;
import frieze.clock.MotionClock;
import frieze.clock.TimeSpent;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.MachineBox;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.StockCutter;
import frieze.dryrun.scene.Surroundings;
import frieze.field.DepthMap;
import frieze.motion.Executed;
import frieze.motion.Executed.Rotation;
import frieze.rs274.ProgramCode;
import frieze.rs274.ProgramSummary;
import frieze.rs274.ReadingRules;
import frieze.rs274.ReadingRules.Rapids;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Takes the events of a setup's programs in running order and hands them to all that look on.
 *
 * <p>As a visitor it tells whether the checks are to see the event itself: of a move they see the
 * passages that it is made of.
 */
final class DryRunPass implements Executed.Visitor<Boolean> {
  private final Surroundings known;
  private final Optional<StockBox> stock;
  private final FindingLog log = new FindingLog();
  private final int pictureColumns;
  private final Ledger ledger;
  private final MotionClock clock;
  private final Checks checks;
  private final Optional<StockCutter> cutter;
  private ToolInSpindle tool;
  private Optional<Integer> toolOfLastProgram = Optional.empty();
  private Rotation rotation = Rotation.STOPPED;
  private SourceSpan offsetSpan = SourceSpan.NONE;
  private Rapids rapids = Rapids.UNSAID;
  private boolean moved;

  /**
   * Makes one.
   *
   * @param before the stock as earlier programs left it, elsewhere; empty for one that is uncut
   */
  DryRunPass(
      Surroundings known, RunSettings settings, boolean keepsMoves, Optional<StockCutter> before) {
    this.known = known;
    this.tool = new ToolInSpindle(known, OptionalInt.empty());
    this.pictureColumns = settings.pictureColumns();
    this.stock = StockBox.of(known);
    this.ledger = new Ledger(known);
    this.clock = new MotionClock(known.machine(), settings.clock());
    this.cutter =
        before.isPresent()
            ? before.get().movedTo(known)
            : StockCutter.of(known, settings.cellMm(), keepsMoves);
    this.checks = new Checks(known, cutter, settings.torch());
  }

  Optional<StockCutter> cutter() {
    return cutter;
  }

  FindingLog log() {
    return log;
  }

  /**
   * A program starts.
   *
   * @param rules how the controller reads and moves, and what the operator was told to put in
   */
  void start(String program, ReadingRules rules) {
    OptionalInt inSpindle = rules.start().tool();
    rapids = rules.paths().rapids();
    log.startProgram(program);
    ledger.startProgram();
    checks.paths(rules.paths());
    checks.start(program);
    tool = new ToolInSpindle(known, inSpindle);
    rotation = Rotation.STOPPED;
    offsetSpan = SourceSpan.NONE;
    moved = false;
    clock.setExactStop(false);
    Optional<Integer> number = tool.number();
    if (number.isPresent() && !number.equals(toolOfLastProgram)) {
      clock.toolChange(ledger.account(number));
    }
  }

  /** An event of the program. */
  void accept(Executed event) {
    boolean isForChecks = event.accept(this);
    if (isForChecks) {
      checks.event(event, log);
    }
  }

  /** The program's text has ended. */
  void end(String program, ProgramSummary summary) {
    clock.stop();
    checks.end(log);
    if (!moved && summary.readable() && summary.count(ProgramCode.EMPTY) == 0) {
      log.add(
          FindingCode.NOTHING_MOVES,
          SourceSpan.file(program),
          Amount.NONE,
          "the program has no move in "
              + summary.lines()
              + (summary.lines() == 1 ? " line" : " lines"));
    }
    if (summary.g92()) {
      log.add(
          FindingCode.STALE_OFFSET,
          offsetSpan,
          Amount.NONE,
          "the offset set here is still in force when the program ends");
    }
    Optional<DepthMap> picture =
        pictureColumns > 0 ? cutter.map(c -> c.field().depthMap(pictureColumns)) : Optional.empty();
    ledger.endProgram(program, summary.lines(), picture);
    toolOfLastProgram = tool.number();
  }

  /** All texts have ended. */
  DryRunResult finish(boolean readable) {
    checks.finish(log);
    List<ProgramReport> programs = ledger.programs();
    TimeSpent time =
        programs.stream().map(ProgramReport::time).reduce(TimeSpent.NONE, TimeSpent::plus);
    return new DryRunResult(
        log.findings(),
        log.counts(),
        readable,
        programs,
        ledger.tools(),
        ledger.all().program(),
        ledger.all().machine(),
        known.machine().map(m -> ZeroFits.of(m, ledger.all().program().all())).orElse(List.of()),
        time,
        checks.notChecked(),
        cutter.map(StockCutter::field),
        Optional.empty());
  }

  @Override
  public Boolean move(Executed.Move move) {
    moved = true;
    Passage whole = tool.passage(move, stock);
    clock.move(move, account());
    if (rapids == Rapids.EACH_AXIS && whole.isRapid() && whole.isPlaced()) {
      Dogleg.legs(move, known.machine()).forEach(leg -> pass(tool.passage(leg, stock)));
    } else {
      pass(whole);
    }
    return false;
  }

  private void pass(Passage passage) {
    ledger.add(passage, MachineBox.of(passage));
    cutter.ifPresent(c -> c.move(passage));
    checks.move(passage, log);
  }

  @Override
  public Boolean dwell(Executed.Dwell dwell) {
    clock.dwell(dwell.seconds(), account());
    return true;
  }

  @Override
  public Boolean toolChange(Executed.ToolChange change) {
    Optional<Integer> before = tool.number();
    tool.change(change.toolNumber());
    if (!tool.number().equals(before)) {
      clock.toolChange(account());
    }
    return true;
  }

  @Override
  public Boolean spindle(Executed.SpindleChange change) {
    if (change.rotation() != Rotation.STOPPED && rotation != change.rotation()) {
      clock.spindleUp(account());
    }
    rotation = change.rotation();
    return true;
  }

  @Override
  public Boolean stop(Executed.Stop stop) {
    if (tool.changedAt(stop)) {
      clock.toolChange(account());
    } else if (!stop.optional()) {
      clock.operatorStop(account());
    }
    return true;
  }

  @Override
  public Boolean torch(Executed.Torch torch) {
    clock.stop();
    return true;
  }

  @Override
  public Boolean other(Executed.Other other) {
    switch (other.what()) {
      case "offset g92" -> offsetSpan = other.span();
      case "path exact stop" -> clock.setExactStop(true);
      case "path exact", "path continuous" -> clock.setExactStop(false);
      default -> {}
    }
    return true;
  }

  @Override
  public Boolean end(Executed.End end) {
    return true;
  }

  private ClockAccount account() {
    return ledger.account(tool.number());
  }
}
