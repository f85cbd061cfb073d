package frieze.torch;

import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Point;
import frieze.motion.Instruction;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.motion.Step;
import frieze.region.Region;
import frieze.shop.CutChart;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts the paths of a sheet into one sequence of instructions in the program's frame.
 *
 * <p>For each: over the pierce, down to the clearance height and on until the sheet is felt, up to
 * the pierce height, height held, arc on, the pierce delay, down to the cut height, the lead,
 * height followed, the cut, height held, arc off, the after-flow, up.
 *
 * <p><i>Guarantees:</i> the arc is off in every rapid; travel is at the clearance height, and
 * {@value #RAISED_MM} mm higher where the straight way crosses a piece that has been cut loose and
 * may have tipped up.
 */
public final class TorchSequencer {
  /** How much higher the torch passes over what is cut loose. */
  static final double RAISED_MM = 20;

  private static final double FEEL_BELOW_MM = 5;
  private static final double FEEL_MM_PER_MIN = 400;
  private static final double DOWN_MM_PER_MIN = 1000;
  private static final double MARK_SECONDS = 0.1;
  private static final double LOOK_MM = 1;

  private final TorchPlan plan;
  private final Setup setup;
  private final Affine toProgram;
  private final double topZ;
  private final List<Step> steps = new ArrayList<>();
  private final List<Region> loose = new ArrayList<>();
  private String origin = "";

  /** Whether the torch is above the clearance height, or nobody knows where. */
  private boolean high = true;

  private TorchSequencer(TorchPlan plan, Setup setup) {
    this.plan = plan;
    this.setup = setup;
    this.toProgram = setup.programFromPanel().affine();
    this.topZ = -setup.stockZFromProgramZMm();
  }

  /**
   * Makes the sequence of a plan.
   *
   * @param title the panel's name
   */
  public static Sequence sequence(TorchPlan plan, Setup setup, String title) {
    TorchSequencer sequencer = new TorchSequencer(plan, setup);
    sequencer.add(new Instruction.RaiseToSafe());
    sequencer.add(new Instruction.ToolChange(plan.torch().asTool()));
    List<TorchPath> paths = plan.paths();
    for (int i = 0; i < paths.size(); i++) {
      sequencer.path(paths.get(i));
      boolean last = i + 1 == paths.size();
      Point next = last ? sequencer.parking() : paths.get(i + 1).pierce();
      sequencer.up(next, paths.get(i));
    }
    sequencer.origin = "";
    sequencer.add(new Instruction.RaiseToSafe());
    return new Sequence(title, sequencer.steps);
  }

  /** Over the program's zero, where it ends. */
  private Point parking() {
    return setup.programFromPanel().inverse().affine().apply(Point.ORIGIN);
  }

  private void add(Instruction instruction) {
    steps.add(new Step(instruction, origin));
  }

  private void path(TorchPath path) {
    origin = path.origin();
    CutChart.Row row = plan.torch().row();
    Point start = toProgram.apply(path.pierce());
    add(new Instruction.RapidXy(start.x(), start.y()));
    if (high) {
      add(new Instruction.RapidZ(topZ + setup.clearanceMm()));
    }
    add(
        new Instruction.Probe(
            new Position(start, topZ - FEEL_BELOW_MM),
            FEEL_MM_PER_MIN,
            topZ - setup.machine().touchTravelMm()));
    add(new Instruction.RapidZ(topZ + row.pierceHeightMm()));
    add(new Instruction.HeightControl(false));
    add(new Instruction.Torch(true));
    boolean mark = path.kind() == TorchPath.Kind.MARK;
    add(new Instruction.Dwell(mark ? MARK_SECONDS : row.pierceSeconds()));
    if (!path.pieces().isEmpty()) {
      Position down = new Position(start, topZ + row.cutHeightMm());
      add(new Instruction.Feed(down, Math.min(DOWN_MM_PER_MIN, topFeedZ())));
      follow(path);
    }
    add(new Instruction.Torch(false));
    if (plan.torch().afterFlowSeconds() > 0) {
      add(new Instruction.Dwell(plan.torch().afterFlowSeconds()));
    }
    path.frees().ifPresent(loose::add);
  }

  private double topFeedZ() {
    return setup.machine().z().maxFeedMmPerMin();
  }

  private void follow(TorchPath path) {
    boolean follows = false;
    for (int i = 0; i < path.pieces().size(); i++) {
      TorchPath.Piece piece = path.pieces().get(i);
      boolean wanted = i > 0 && !piece.frozen();
      if (wanted != follows) {
        add(new Instruction.HeightControl(wanted));
        follows = wanted;
      }
      add(move(piece));
    }
    if (follows) {
      add(new Instruction.HeightControl(false));
    }
  }

  private Instruction move(TorchPath.Piece piece) {
    double z = topZ + plan.torch().row().cutHeightMm();
    Position to = new Position(toProgram.apply(piece.path().end()), z);
    double top =
        Math.min(setup.machine().x().maxFeedMmPerMin(), setup.machine().y().maxFeedMmPerMin());
    double feed = Math.min(top, plan.torch().row().feedMmPerMin() * piece.feedPart());
    if (piece.path() instanceof Arc arc) {
      Point centre = toProgram.apply(arc.centre());
      return new Instruction.Turn(to, Plane.XY, centre.x(), centre.y(), arc.sweepRad(), feed);
    }
    return new Instruction.Feed(to, feed);
  }

  /** Up for the way to the next pierce. */
  private void up(Point next, TorchPath path) {
    high = crossesLoose(path.end(), next);
    add(new Instruction.RapidZ(topZ + setup.clearanceMm() + (high ? RAISED_MM : 0)));
  }

  private boolean crossesLoose(Point from, Point to) {
    int samples = (int) Math.max(1, Math.ceil(from.distance(to) / LOOK_MM));
    for (Region piece : loose) {
      Region.Locator inside = piece.locator();
      for (int i = 0; i <= samples; i++) {
        Point p = from.towards(to, (double) i / samples);
        if (piece.bounds().contains(p) && inside.contains(p)) {
          return true;
        }
      }
    }
    return false;
  }
}
