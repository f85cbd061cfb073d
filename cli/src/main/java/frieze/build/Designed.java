package frieze.build;

import frieze.curve.Path;
import frieze.design.Design;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.job.Insert;
import frieze.job.Job;
import frieze.layout.Opening;
import java.util.List;
import java.util.Optional;

/**
 * A panel of a job with its drawings in their places, not yet planned.
 *
 * @param notes what was noted meanwhile
 */
public record Designed(Job.PanelJob asked, Design design, List<Diagnostic> notes) {
  public Designed {
    notes = List.copyOf(notes);
  }

  /** What a tape is trusted to unless the job says otherwise; as for a fitted opening. */
  static final double TAPE_MM = 0.5;

  /**
   * The opening, larger on each side by what the tape may be wrong; empty for a panel of a given
   * size.
   */
  public Optional<Path> beyond() {
    Insert insert = asked.insert();
    if (insert.sitting().isPresent()) {
      return insert.sitting().get().beyond();
    }
    if (insert.gapMm() == 0) {
      return Optional.empty();
    }
    Opening o = insert.opening();
    double corner = o.cornerRadiusMm() > 0 ? o.cornerRadiusMm() + TAPE_MM : 0;
    Opening larger = new Opening(o.widthMm() + 2 * TAPE_MM, o.heightMm() + 2 * TAPE_MM, corner);
    return Optional.of(larger.panel(asked.name(), 0, SourceSpan.NONE).outline());
  }
}
