package frieze.dryrun;

import frieze.clock.ClockAccount;
import frieze.clock.TimeSpent;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.Surroundings;
import frieze.field.DepthMap;
import frieze.motion.Box;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Keeps what each tool does in each program, in each tool's own tally and time account. */
final class Ledger {
  private static final class Page {
    final Tally tally = new Tally();
    final ClockAccount account = new ClockAccount();
  }

  private final Surroundings known;
  private final Optional<StockBox> stock;
  private final Map<Optional<Integer>, Page> inProgram = new LinkedHashMap<>();
  private final Map<Optional<Integer>, List<Page>> inAll = new LinkedHashMap<>();
  private final Map<Optional<Integer>, Tally> tallyOfAll = new LinkedHashMap<>();
  private final List<ProgramReport> programs = new ArrayList<>();
  private final Tally all = new Tally();
  private Tally program = new Tally();

  Ledger(Surroundings known) {
    this.known = known;
    this.stock = StockBox.of(known);
  }

  void startProgram() {
    inProgram.clear();
    program = new Tally();
  }

  /** The time account of a tool in this program. */
  ClockAccount account(Optional<Integer> tool) {
    return page(tool).account;
  }

  void add(Passage passage, Box onMachine) {
    page(passage.toolNumber()).tally.add(passage, onMachine);
    tallyOfAll.computeIfAbsent(passage.toolNumber(), t -> new Tally()).add(passage, onMachine);
    program.add(passage, onMachine);
    all.add(passage, onMachine);
  }

  private Page page(Optional<Integer> tool) {
    return inProgram.computeIfAbsent(
        tool,
        t -> {
          Page page = new Page();
          inAll.computeIfAbsent(t, key -> new ArrayList<>()).add(page);
          return page;
        });
  }

  /** Closes the program's page; its clock must have come to a stop. */
  void endProgram(String name, int lines, Optional<DepthMap> stockAfter) {
    List<ToolReport> tools = new ArrayList<>();
    TimeSpent time = TimeSpent.NONE;
    for (Map.Entry<Optional<Integer>, Page> entry : inProgram.entrySet()) {
      Page page = entry.getValue();
      TimeSpent spent = page.account.spent();
      time = time.plus(spent);
      if (page.tally.hasMoves() || spent.totalSeconds() > 0) {
        tools.add(report(entry.getKey(), page.tally, spent));
      }
    }
    programs.add(
        new ProgramReport(
            name,
            lines,
            program.program(),
            program.machine(),
            program.feedMm(),
            program.rapidMm(),
            program.lowestZMm(),
            depth(program),
            time,
            tools,
            stockAfter));
  }

  private ToolReport report(Optional<Integer> number, Tally tally, TimeSpent spent) {
    return new ToolReport(
        number,
        number.flatMap(known::tool).map(t -> t.name()),
        tally.program(),
        tally.feedMm(),
        tally.rapidMm(),
        tally.lowestZMm(),
        depth(tally),
        spent);
  }

  private OptionalDouble depth(Tally tally) {
    return stock.isPresent() && tally.lowestZMm().isPresent()
        ? OptionalDouble.of(Math.max(0, stock.get().topMm() - tally.lowestZMm().getAsDouble()))
        : OptionalDouble.empty();
  }

  List<ProgramReport> programs() {
    return programs;
  }

  List<ToolReport> tools() {
    List<ToolReport> tools = new ArrayList<>();
    inAll.forEach(
        (number, pages) -> {
          TimeSpent spent = TimeSpent.NONE;
          for (Page page : pages) {
            spent = spent.plus(page.account.spent());
          }
          Tally tally = tallyOfAll.getOrDefault(number, new Tally());
          if (tally.hasMoves() || spent.totalSeconds() > 0) {
            tools.add(report(number, tally, spent));
          }
        });
    return tools;
  }

  Tally all() {
    return all;
  }
}
