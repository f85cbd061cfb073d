package frieze.dryrun.check;

import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed;
import frieze.shop.Machine;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Objects to tools that the shop does not list, and to changes that the machine cannot make. */
public final class ToolCheck implements Check {
  private final Surroundings known;
  private final boolean noChanger;
  private final Set<Integer> told = new HashSet<>();
  private boolean hasFed;
  private boolean unnamed;
  private Optional<Integer> tool = Optional.empty();

  public ToolCheck(Surroundings known) {
    this.known = known;
    this.noChanger = known.machine().map(Machine::toolChanger).map(has -> !has).orElse(false);
  }

  @Override
  public void start(String program) {
    hasFed = false;
  }

  @Override
  public void event(Executed event, FindingLog log) {
    if (event instanceof Executed.ToolChange change) {
      if (noChanger && hasFed && !change.toolNumber().equals(tool)) {
        log.add(
            FindingCode.NO_TOOL_CHANGER,
            change.span(),
            Amount.NONE,
            "the program calls for another tool after it has cut, and this machine has no changer");
      }
      tool = change.toolNumber();
    }
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (!passage.isFeed()) {
      return;
    }
    hasFed = true;
    tool = passage.toolNumber();
    if (passage.tool().isPresent() || known.tools().isEmpty()) {
      return;
    }
    if (tool.isEmpty()) {
      unnamed = true;
    } else if (told.add(tool.get())) {
      tell(tool.get(), passage.span(), log);
    }
  }

  private static void tell(int number, SourceSpan span, FindingLog log) {
    log.add(
        FindingCode.UNKNOWN_TOOL,
        span,
        Amount.NONE,
        "the shop lists no tool with the number " + number);
  }

  @Override
  public List<NotChecked> notChecked() {
    if (known.tools().isEmpty()) {
      return List.of(new NotChecked("the tools' limits", "no tools are given", true));
    }
    return unnamed
        ? List.of(
            new NotChecked(
                "the tool's limits", "a program does not say which tool is in the spindle", true))
        : List.of();
  }
}
