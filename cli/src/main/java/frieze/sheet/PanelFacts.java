package frieze.sheet;

import frieze.design.Design;
import frieze.design.Intent;
import frieze.dryrun.DryRunResult;
import frieze.field.DepthMap;
import frieze.layout.Opening;
import frieze.opening.Sitting;
import frieze.plan.Plan;
import frieze.post.ProgramText;
import frieze.shop.Flip;
import frieze.shop.Setup;
import frieze.torch.TorchPlan;
import java.util.List;
import java.util.Optional;

/**
 * What is known of one panel once its programs have been read back.
 *
 * @param opening what it goes into
 * @param gapMm between it and the opening, all round
 * @param programs in running order, as they are written
 * @param depths of the stock once all programs have run; empty when it was not simulated
 * @param drawings the drawings that its motifs come from
 * @param sitting how it sits in its opening, where more than a rectangle and a gap is known
 * @param torch what a torch does; empty for work of a spindle
 * @param flip which of two sides it is, if the stock is turned over
 * @param part which clamping it is, of a panel that is carved in steps
 */
public record PanelFacts(
    Design design,
    Opening opening,
    double gapMm,
    Setup setup,
    List<Intent> intents,
    Plan plan,
    List<ProgramText> programs,
    DryRunResult dryRun,
    Optional<DepthMap> depths,
    List<DrawingFacts> drawings,
    Optional<Sitting> sitting,
    Optional<TorchPlan> torch,
    Optional<Flip> flip,
    Optional<StepPart> part) {
  public PanelFacts {
    intents = List.copyOf(intents);
    programs = List.copyOf(programs);
    drawings = List.copyOf(drawings);
  }

  /** The facts of a panel that a spindle cuts. */
  public PanelFacts(
      Design design,
      Opening opening,
      double gapMm,
      Setup setup,
      List<Intent> intents,
      Plan plan,
      List<ProgramText> programs,
      DryRunResult dryRun,
      Optional<DepthMap> depths,
      List<DrawingFacts> drawings,
      Optional<Sitting> sitting) {
    this(
        design,
        opening,
        gapMm,
        setup,
        intents,
        plan,
        programs,
        dryRun,
        depths,
        drawings,
        sitting,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The panel's name, with the step where it is carved in several. */
  public String name() {
    return design.panel().name() + part.map(p -> ", " + p.title()).orElse("");
  }

  /**
   * A drawing as it is used.
   *
   * @param name as in the job
   * @param file as the user named it
   * @param sizeAssumed in words, where the size in the file comes from
   * @param text in words, in which fonts its text is set; empty if it has none
   * @param lengthMm as placed, along X
   * @param heightMm as placed, along Y
   */
  public record DrawingFacts(
      String name,
      String file,
      String sizeAssumed,
      List<String> text,
      double lengthMm,
      double heightMm) {
    public DrawingFacts {
      text = List.copyOf(text);
    }
  }
}
