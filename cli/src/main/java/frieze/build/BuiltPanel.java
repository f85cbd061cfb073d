package frieze.build;

import frieze.diagnostic.Diagnostic;
import frieze.post.ProgramText;
import frieze.sheet.PanelFacts;
import frieze.sheet.SheetFacts;
import java.util.List;

/**
 * Everything that was worked out for one panel.
 *
 * @param facts what its papers tell: the job's facts with this panel alone, once for each clamping
 * @param notes warnings and notes of reading the drawings and of planning
 */
public record BuiltPanel(SheetFacts facts, List<Diagnostic> notes) {
  public BuiltPanel {
    notes = List.copyOf(notes);
    if (facts.panels().isEmpty()) {
      throw new IllegalArgumentException("facts must be of one panel but are of none");
    }
  }

  /** Its clampings in running order: one, unless it is carved in steps. */
  public List<PanelFacts> clampings() {
    return facts.panels();
  }

  /** The last clamping, after which the panel is done. */
  public PanelFacts panel() {
    return clampings().get(clampings().size() - 1);
  }

  public String name() {
    return panel().design().panel().name();
  }

  /** The programs in running order. */
  public List<ProgramText> programs() {
    return clampings().stream().flatMap(c -> c.programs().stream()).toList();
  }

  /** Whether its programs may reach a machine. */
  public boolean mayWrite() {
    return clampings().stream().allMatch(c -> c.dryRun().mayWrite());
  }
}
