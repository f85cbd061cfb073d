package frieze.job;

import frieze.diagnostic.Diagnostic;
import frieze.post.ProgramText;
import frieze.sheet.PanelFacts;
import frieze.sheet.SheetFacts;
import java.util.List;

/**
 * Everything that was worked out for one panel.
 *
 * @param facts what its papers tell: the job's facts with this panel alone
 * @param notes warnings and notes of reading the drawings and of planning
 */
public record BuiltPanel(SheetFacts facts, List<Diagnostic> notes) {
  public BuiltPanel {
    notes = List.copyOf(notes);
    if (facts.panels().size() != 1) {
      throw new IllegalArgumentException(
          "facts must be of one panel but are of " + facts.panels().size());
    }
  }

  public PanelFacts panel() {
    return facts.panels().get(0);
  }

  public String name() {
    return panel().name();
  }

  /** The programs in running order. */
  public List<ProgramText> programs() {
    return panel().programs();
  }

  /** Whether its programs may reach a machine. */
  public boolean mayWrite() {
    return panel().dryRun().mayWrite();
  }
}
