package frieze.dryrun;

import frieze.clock.ClockSettings;
import frieze.clock.MotionClock;
import frieze.curve.Point;
import frieze.design.Intent;
import frieze.diagnostic.Diagnostic;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCount;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.StockCutter;
import frieze.dryrun.scene.Surroundings;
import frieze.dryrun.scene.TorchFacts;
import frieze.gouge.Discrepancy;
import frieze.gouge.GougeCheck;
import frieze.motion.Executed;
import frieze.motion.Executed.MachinePosition;
import frieze.rs274.Interpreter;
import frieze.rs274.ProgramCode;
import frieze.rs274.ProgramSummary;
import frieze.rs274.ReadingRules;
import frieze.rs274.Start;
import frieze.shop.Setup;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Reads the programs of one setup back from their text, carries them out in thought, and says what
 * would happen and where.
 *
 * <p>The story: {@link Interpreter} turns each text into events; {@link DryRunPass} hands every
 * event to the {@link Ledger} (extents, lengths), the {@link MotionClock} (time), the stock field
 * and the {@link Checks}; these object into a {@link FindingLog}.
 *
 * <p><em>Guarantees:</em> the same texts and surroundings give the same result; memory does not
 * grow with the texts; what could not be checked is said. <em>Cost:</em> one pass over the texts,
 * and one more up to the last line that a finding quotes.
 */
public final class DryRun {
  /** What the checks say themselves, as errors and with the move. */
  private static final Set<ProgramCode> SAID_BY_CHECKS =
      EnumSet.of(ProgramCode.FEED_NEVER_SET, ProgramCode.FEED_ZERO, ProgramCode.SPEED_ABSENT);

  private final Surroundings known;
  private final RunSettings settings;
  private final Optional<DesignCheck> design;

  private DryRun(Surroundings known, RunSettings settings, Optional<DesignCheck> design) {
    this.known = known;
    this.settings = settings;
    this.design = design;
  }

  /** A dry run in the given surroundings, with the usual assumptions of the clock. */
  public static DryRun in(Surroundings known) {
    return new DryRun(known, RunSettings.USUAL, Optional.empty());
  }

  public DryRun withClock(ClockSettings assumed) {
    return new DryRun(known, settings.withClock(assumed), design);
  }

  /** Compares the stock with a design after the last program. */
  public DryRun comparedWith(Setup setup, List<Intent> intents) {
    return new DryRun(known, settings, Optional.of(new DesignCheck(setup, intents)));
  }

  /**
   * Keeps a map of depths after each program.
   *
   * @param mostColumns how many columns and rows a map has at most; 0 keeps none
   */
  public DryRun withPictures(int mostColumns) {
    return new DryRun(known, settings.withPictures(mostColumns), design);
  }

  /**
   * Simulates the stock in cells of a given size; without it, the finest that is quick.
   *
   * @param sideMm the side of a cell
   */
  public DryRun withCell(double sideMm) {
    return new DryRun(known, settings.withCell(sideMm), design);
  }

  /** Compares what a torch cuts with what it is asked for. */
  public DryRun withTorch(TorchFacts facts) {
    return new DryRun(known, settings.withTorch(facts), design);
  }

  /**
   * Runs programs one after the other on the same stock.
   *
   * @param programs in running order
   * @throws UncheckedIOException if a text cannot be opened or read
   */
  public DryRunResult run(List<ProgramText> programs) {
    return runAll(List.of(new Clamping(known, programs))).get(0);
  }

  /**
   * Runs programs on one stock that is moved between them, under a zero that stays where it is on
   * the machine.
   *
   * @param clampings in running order, of the same machine; each has its programs
   * @return what there is to say about each clamping; the design is compared after the last, with
   *     what all of them have cut
   * @throws UncheckedIOException if a text cannot be opened or read
   */
  public List<DryRunResult> runMoved(List<Clamping> clampings) {
    return SharedZero.judged(runAll(clampings), clampings.get(0).known().machine());
  }

  private List<DryRunResult> runAll(List<Clamping> clampings) {
    List<DryRunResult> results = new ArrayList<>();
    List<StockCutter> cutters = new ArrayList<>();
    Optional<StockCutter> stock = Optional.empty();
    for (Clamping clamping : clampings) {
      DryRun here = new DryRun(clamping.known(), settings, design);
      DryRunPass pass = new DryRunPass(clamping.known(), settings, design.isPresent(), stock);
      boolean readable = true;
      for (ProgramText program : clamping.programs()) {
        readable &= here.read(program, pass);
      }
      results.add(pass.finish(readable));
      stock = pass.cutter();
      stock.ifPresent(cutters::add);
    }
    if (design.isPresent() && cutters.size() == clampings.size()) {
      int last = results.size() - 1;
      results.set(last, compare(results.get(last), design.get(), cutters, clampings));
    }
    for (int i = 0; i < results.size(); i++) {
      Clamping there = clampings.get(i);
      DryRunResult asRun = TurnedBack.withTravel(results.get(i), there.known(), there.programs());
      results.set(i, withTexts(asRun, i == results.size() - 1 ? all(clampings) : there.programs()));
    }
    return results;
  }

  /** Compares what all clampings have cut. */
  private DryRunResult compare(
      DryRunResult result, DesignCheck with, List<StockCutter> cutters, List<Clamping> clampings) {
    GougeCheck.Result found = with.compare(cutters.get(cutters.size() - 1));
    List<Point> places =
        found.discrepancies().stream()
            .filter(d -> d.kind() == Discrepancy.Kind.TOO_DEEP)
            .limit(FindingCount.SHOWN_PER_CODE)
            .map(Discrepancy::place)
            .toList();
    Culprits culprits = new Culprits(places);
    if (culprits.isNeeded()) {
      for (int i = 0; i < clampings.size(); i++) {
        DryRun there = new DryRun(clampings.get(i).known(), settings, design);
        for (ProgramText program : clampings.get(i).programs()) {
          there.lookAgain(program, cutters.get(i), culprits);
        }
      }
    }
    return result.comparedWith(
        found, DesignCheck.findings(found, culprits), DesignCheck.counts(found));
  }

  private static List<ProgramText> all(List<Clamping> clampings) {
    return clampings.stream().flatMap(c -> c.programs().stream()).toList();
  }

  private void lookAgain(ProgramText program, StockCutter cutter, Culprits culprits) {
    ToolInSpindle tool = new ToolInSpindle(known, program.rules().start().tool());
    double skewRad = TurnedBack.skewRad(known);
    try (InputStream in = program.open()) {
      Interpreter.run(
          program.name(),
          in,
          withZero(program.rules()),
          raw -> {
            Executed event = TurnedBack.seen(raw, skewRad);
            if (event instanceof Executed.Move move) {
              Passage passage = tool.passage(move, Optional.empty());
              passage
                  .tool()
                  .filter(t -> passage.isPlaced())
                  .ifPresent(
                      t ->
                          culprits.move(
                              program.name(), passage, cutter.inStock(move.path()), t.shape()));
            } else if (event instanceof Executed.ToolChange change) {
              tool.change(change.toolNumber());
            } else if (event instanceof Executed.Stop stop) {
              tool.changedAt(stop);
            }
          });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Runs one program; false when its text could not be read to its end. */
  private boolean read(ProgramText program, DryRunPass pass) {
    ReadingRules rules = withZero(program.rules());
    pass.start(program.name(), rules);
    double skewRad = TurnedBack.skewRad(known);
    ProgramSummary summary;
    try (InputStream in = program.open()) {
      summary =
          Interpreter.run(
              program.name(), in, rules, event -> pass.accept(TurnedBack.seen(event, skewRad)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    for (Diagnostic said : summary.diagnostics()) {
      if (!(said.code() instanceof ProgramCode code && SAID_BY_CHECKS.contains(code))) {
        pass.log().add(said);
      }
    }
    pass.end(program.name(), summary);
    return isReadable(summary);
  }

  /** Tells the interpreter where the zero lies on the machine, if that is known. */
  private ReadingRules withZero(ReadingRules rules) {
    MachinePosition zero = known.zeroOnMachine();
    Start start = rules.start();
    if (zero.equals(MachinePosition.UNKNOWN) || start.workOffsets().containsKey(1)) {
      return rules;
    }
    Map<Integer, MachinePosition> offsets = new TreeMap<>(start.workOffsets());
    offsets.put(1, zero);
    return rules.but().start(start.withWorkOffsets(offsets)).build();
  }

  /**
   * Whether a text is a program of the language at all. A line that is one but asks for something
   * impossible, such as an arc with two radii, is a finding like others.
   */
  private static boolean isReadable(ProgramSummary summary) {
    return summary.diagnostics().stream()
        .noneMatch(
            d ->
                d.isError()
                    && d.code() instanceof ProgramCode code
                    && code.compareTo(ProgramCode.FEED_NEGATIVE) < 0);
  }

  /** Adds the text of the line to each finding. */
  private static DryRunResult withTexts(DryRunResult result, List<ProgramText> programs) {
    Map<String, Map<Integer, String>> texts = new HashMap<>();
    for (ProgramText program : programs) {
      NavigableSet<Integer> wanted = new TreeSet<>();
      for (Finding finding : result.findings()) {
        if (finding.program().equals(program.name()) && finding.line() > 0) {
          wanted.add(finding.line());
        }
      }
      texts.put(program.name(), LineTexts.of(program, wanted));
    }
    List<Finding> quoted = new ArrayList<>();
    for (Finding finding : result.findings()) {
      Map<Integer, String> lines = texts.getOrDefault(finding.program(), Map.of());
      quoted.add(finding.withText(lines.getOrDefault(finding.line(), "")));
    }
    return result.withFindings(quoted);
  }
}
