package frieze.build;

import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Intent;
import frieze.design.Intents;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.job.Job;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.motion.Sequence;
import frieze.plan.Plan;
import frieze.plan.Planner;
import frieze.plan.Sequencer;
import frieze.plan.SlowDrills;
import frieze.sheet.StepPart;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Zero;
import frieze.steps.Pins;
import frieze.steps.StepCode;
import frieze.steps.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans a panel that is carved in steps: as a whole first, then shared out to its clampings. */
public final class Clampings {
  private final Job.PanelJob asked;
  private final Setup setup;
  private final Design design;
  private final Pins.Wanted wanted;

  private Clampings(Job.PanelJob asked, Setup setup, Design design, Pins.Wanted wanted) {
    this.asked = asked;
    this.setup = setup;
    this.design = design;
    this.wanted = wanted;
  }

  /**
   * Plans the clampings of a panel, in running order.
   *
   * @throws BadInputException if it can't be carved in steps
   */
  static List<PlannedPanel> of(Job.PanelJob asked, Setup setup, Design design, Pins.Wanted wanted) {
    if (setup.zero().x() != Zero.AlongX.LEFT) {
      throw new BadInputException(
          Diagnostic.error(
              StepCode.ZERO_OUT_OF_REACH,
              wanted.where(),
              "a panel that is carved in steps has its zero at the left edge of the stock",
              "zero: {x: left}"));
    }
    Design replaced = SlowDrills.replaced(design, setup);
    return new Clampings(asked, setup, replaced, wanted).plan();
  }

  private List<PlannedPanel> plan() {
    Stock stock = setup.stock();
    Setup whole = setup.on(setup.machine().reaching(stock.lengthMm()));
    Plan plan = Planner.plan(design, whole, Tolerances.DEFAULT);
    Diagnostics found = new Diagnostics();
    if (!Steps.areNeeded(plan, setup)) {
      found.note(
          StepCode.ONE_STEP_IS_ENOUGH,
          wanted.where(),
          "the machine reaches over the whole panel, so it is carved in one clamping");
      return List.of(PlannedPanel.ofSpindle(asked, setup, design).after(found.sorted()));
    }
    Steps steps = Steps.of(plan, setup, wanted, found);
    List<PlannedPanel> clampings = new ArrayList<>();
    for (int step = 0; step < steps.count(); step++) {
      List<Point> holes = steps.pins().holes(step, steps.count());
      if (!holes.isEmpty()) {
        clampings.add(pins(new StepPart(steps, step, true), holes));
      }
      Plan part =
          new Plan(
              steps.cuts().get(step),
              step == 0 ? plan.leftovers() : List.of(),
              step == 0 ? plan.after(found.sorted()).notes() : List.of(),
              plan.geometryCalls(),
              step == 0 ? plan.rims() : List.of());
      clampings.add(clamping(setup, part, design, new StepPart(steps, step, false)));
    }
    return clampings;
  }

  private PlannedPanel clamping(Setup lies, Plan part, Design of, StepPart step) {
    Setup pushed = lies.pushed(step.pushedMm());
    Sequence sequence = Sequencer.sequence(part, pushed, asked.name() + " " + step.shortTitle());
    return new PlannedPanel(asked, pushed, of, part, sequence, Optional.empty(), Optional.of(step));
  }

  /** Holes anywhere in the stock: it is its own panel here. */
  private PlannedPanel pins(StepPart step, List<Point> holes) {
    Stock stock = setup.stock();
    Panel all =
        new Opening(stock.lengthMm(), stock.widthMm(), 0).panel(asked.name(), 0, wanted.where());
    Setup onStock =
        new Setup(
            setup.machine(),
            stock,
            setup.zero(),
            0,
            0,
            setup.clearanceMm(),
            wanted.depthMm(),
            setup.keepOuts(),
            setup.tools());
    Setup whole = onStock.on(setup.machine().reaching(stock.lengthMm()));
    Design bored =
        new Design(all, List.of(), List.of(), List.of(bore(holes, 0, 0, Optional.empty())));
    Plan plan = Planner.plan(bored, whole, Tolerances.DEFAULT);
    return clamping(onStock, plan, bored, step);
  }

  private Work.Bore bore(List<Point> holes, double dx, double dy, Optional<Double> depthMm) {
    List<Point> centres = holes.stream().map(h -> new Point(h.x() + dx, h.y() + dy)).toList();
    return new Work.Bore(centres, wanted.diameterMm(), depthMm, wanted.tool(), wanted.where());
  }

  /** What the design wants of the stock, and the holes for the pins. */
  public static List<Intent> intents(List<PlannedPanel> clampings) {
    PlannedPanel last = clampings.get(clampings.size() - 1);
    List<Intent> intents = new ArrayList<>(last.intents());
    for (PlannedPanel clamping : clampings) {
      StepPart part = clamping.part().orElseThrow();
      if (part.boring()) {
        Steps steps = part.steps();
        Setup setup = last.setup();
        List<Point> holes = steps.pins().holes(part.step(), steps.count());
        double depth = setup.stock().thickestMm() + steps.pins().wanted().depthMm();
        Work.Bore onPanel =
            new Clampings(last.asked(), setup, last.design(), steps.pins().wanted())
                .bore(holes, -setup.panelXMm(), -setup.panelYMm(), Optional.of(depth));
        intents.addAll(
            Intents.of(
                new Design(last.design().panel(), List.of(), List.of(), List.of(onPanel)),
                Tolerances.DEFAULT.flattenMm()));
      }
    }
    return intents;
  }
}
