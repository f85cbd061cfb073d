package frieze.torch;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.design.TorchWay;
import frieze.motion.Motion;
import frieze.region.BoundaryDistance;
import frieze.region.Region;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds where a torch is lit again when a cut broke off: in solid scrap beside the end of the kerf.
 *
 * <p><i>Guarantees:</i> the pierce is on the sheet, no nearer to any part than a pierce must be,
 * not in a piece that has come loose, and it and the way in lie on metal: a kerf from all that was
 * cut before, but for the end of the kerf itself.
 */
public final class Relight {
  private static final double STEP_MM = 0.25;
  private static final double SAME_PLACE_MM = 0.01;

  private final TorchPlan plan;
  private final Affine toPanel;
  private final Affine toProgram;
  private final LeadFinder leads;

  /** Makes one for the plan of a sheet. */
  public Relight(TorchPlan plan, TorchWay way, Setup setup) {
    this.plan = plan;
    this.toProgram = setup.programFromPanel().affine();
    this.toPanel = setup.programFromPanel().inverse().affine();
    Region all = Region.EMPTY;
    for (Region part : plan.parts()) {
      all = all.union(part);
    }
    SheetEdge sheet = new SheetEdge(setup, plan.torch().kerfMm());
    this.leads = new LeadFinder(plan.torch(), way, BoundaryDistance.of(all), sheet::allows);
  }

  /**
   * Finds a place to light the torch, from which a straight way leads to the end of the kerf.
   *
   * @param at where the cut goes on, in the program's frame (mm)
   * @param ahead the direction that it takes there, of any length above 0
   * @param done all that was cut before, in the program's frame
   * @return in the program's frame; empty where the scrap has no room
   */
  public Optional<Point> pierce(Point at, Point ahead, List<Motion> done) {
    Point here = toPanel.apply(at);
    Point way = toPanel.apply(at.plus(ahead)).minus(here);
    List<Point> gone = gone(done);
    List<Region> loose = loose(done);
    return leads
        .onwards(here, way.times(1 / way.norm()), lead -> isSolid(lead, here, gone, loose))
        .map(lead -> toProgram.apply(lead.path().start()));
  }

  private List<Point> gone(List<Motion> done) {
    List<Point> gone = new ArrayList<>();
    for (Motion motion : done) {
      int pieces = (int) Math.max(1, Math.ceil(motion.lengthMm() / STEP_MM));
      for (int i = 0; i <= pieces; i++) {
        gone.add(toPanel.apply(motion.at((double) i / pieces).xy()));
      }
    }
    return gone;
  }

  /** The pieces whose contours have been closed. */
  private List<Region> loose(List<Motion> done) {
    return plan.paths().stream()
        .filter(
            p ->
                done.stream()
                    .map(m -> toPanel.apply(m.to().xy()))
                    .anyMatch(to -> to.distance(p.end()) < SAME_PLACE_MM))
        .flatMap(p -> p.frees().stream())
        .toList();
  }

  private boolean isSolid(Segment lead, Point here, List<Point> gone, List<Region> loose) {
    double kerf = plan.torch().kerfMm();
    Point pierce = lead.start();
    if (loose.stream().anyMatch(r -> r.contains(pierce))) {
      return false;
    }
    int samples = (int) Math.ceil(pierce.distance(lead.end()) / STEP_MM);
    for (int i = 0; i <= samples; i++) {
      Point p = lead.at((double) i / samples);
      boolean nearEnd = p.distance(here) < 2 * kerf;
      if (!nearEnd && gone.stream().anyMatch(g -> g.distance(p) < kerf)) {
        return false;
      }
    }
    return true;
  }
}
