package frieze.build;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Intent;
import frieze.design.Intents;
import frieze.design.Work;
import frieze.diagnostic.Diagnostic;
import frieze.dryrun.DryRun;
import frieze.dryrun.scene.Surroundings;
import frieze.dryrun.scene.TorchFacts;
import frieze.job.Job;
import frieze.lower.RelightSpot;
import frieze.motion.Sequence;
import frieze.plan.Plan;
import frieze.plan.Planner;
import frieze.plan.Sequencer;
import frieze.plan.SlowDrills;
import frieze.region.Region;
import frieze.sheet.StepPart;
import frieze.shop.Setup;
import frieze.torch.Relight;
import frieze.torch.TorchPlan;
import frieze.torch.TorchPlanner;
import frieze.torch.TorchSequencer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A panel and what a machine is to do for it, before it is written for a controller.
 *
 * @param torch the plan of a torch; empty for work of a spindle
 * @param part which clamping it is, of a panel that is carved in steps
 */
public record PlannedPanel(
    Job.PanelJob asked,
    Setup setup,
    Design design,
    Plan plan,
    Sequence sequence,
    Optional<TorchPlan> torch,
    Optional<StepPart> part) {

  /** A panel that a spindle cuts. */
  static PlannedPanel ofSpindle(Job.PanelJob asked, Setup setup, Design wanted) {
    Design design = SlowDrills.replaced(wanted, setup);
    Plan plan = Planner.plan(design, setup, Tolerances.DEFAULT);
    Sequence sequence = Sequencer.sequence(plan, setup, asked.name());
    return new PlannedPanel(
        asked, setup, design, plan, sequence, Optional.empty(), Optional.empty());
  }

  /** A panel that a torch cuts. */
  static PlannedPanel ofTorch(Job.PanelJob asked, Setup setup, Design design) {
    TorchPlan plan = TorchPlanner.plan(design, setup, Tolerances.DEFAULT);
    Sequence sequence = TorchSequencer.sequence(plan, setup, asked.name());
    return new PlannedPanel(
        asked, setup, design, plan.asPlan(), sequence, Optional.of(plan), Optional.empty());
  }

  /** The same with what was noted as its drawings were placed. */
  PlannedPanel after(List<Diagnostic> earlier) {
    return new PlannedPanel(asked, setup, design, plan.after(earlier), sequence, torch, part);
  }

  /** Its name, with the step where there are several. */
  String name() {
    return asked.name() + part.map(p -> ", " + p.title()).orElse("");
  }

  /** What the design wants of the stock. */
  public List<Intent> intents() {
    List<Intent> intents = new ArrayList<>(Intents.of(design, Tolerances.DEFAULT.flattenMm()));
    for (Work work : design.work()) {
      if (work instanceof Work.TorchCut torchCut && torch.isPresent()) {
        int number = 0;
        for (Region part : torch.get().parts()) {
          number++;
          intents.add(Intents.torchPart("torchcut panel " + number, part, torchCut));
        }
      }
    }
    return intents;
  }

  /** The dry run that suits it; the depths of a torch's work are not compared. */
  public DryRun dryRun(List<Intent> intents) {
    return dryRun(intents, List.of());
  }

  /**
   * The dry run after a break.
   *
   * @param relit where a torch is lit in a kerf, in the program's frame
   */
  public DryRun dryRun(List<Intent> intents, List<Point> relit) {
    DryRun dryRun = DryRun.in(Surroundings.of(setup));
    return torch.isPresent()
        ? dryRun.withTorch(facts(torch.get(), setup).withRelit(relit))
        : dryRun.comparedWith(setup, intents);
  }

  /** What the dry run may know of a torch's work, in the program's frame. */
  public static TorchFacts facts(TorchPlan plan, Setup setup) {
    Affine toProgram = setup.programFromPanel().affine();
    return new TorchFacts(
        plan.parts().stream().map(r -> r.transformed(toProgram)).toList(),
        plan.paths().stream()
            .filter(p -> p.pieces().isEmpty())
            .map(p -> toProgram.apply(p.pierce()))
            .toList(),
        plan.torch().kerfMm(),
        plan.torch().leastPierceMm() - ROUNDING_MM,
        plan.torch().row().pierceSeconds(),
        setup.clearanceMm() - setup.stockZFromProgramZMm(),
        plan.joints().stream()
            .map(
                j ->
                    new TorchFacts.Joint(
                        toProgram.apply(j.at()),
                        toProgram.apply(j.inside()),
                        toProgram.apply(j.outside()),
                        j.widthMm()))
            .toList(),
        List.of());
  }

  /** Where a torch may be lit again after a break. */
  RelightSpot relight() {
    for (Work work : design.work()) {
      if (work instanceof Work.TorchCut torchCut && torch.isPresent()) {
        Relight relight = new Relight(torch.get(), torchCut.way(), setup);
        return relight::pierce;
      }
    }
    return RelightSpot.NONE;
  }

  private static final double ROUNDING_MM = 0.02;
}
