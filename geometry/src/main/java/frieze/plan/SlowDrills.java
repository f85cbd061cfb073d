package frieze.plan;

import frieze.design.Design;
import frieze.design.Work;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.PlanCode;
import frieze.shop.Setup;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Puts a mill in the place of a drill that may turn no faster than the spindle's lowest speed.
 *
 * <p>The largest of the straight bits that fits is taken: one that the hole leaves room for a
 * helix, that is long enough and that the spindle can turn. Without one the drill stays, and its
 * speed is an error of the plan.
 */
public final class SlowDrills {
  /** A hole is milled if it is this many times as wide as the bit; common practice. */
  private static final double ROOM = 1.15;

  private SlowDrills() {}

  /** The same design with mills where drills are too slow for the spindle. */
  public static Design replaced(Design design, Setup setup) {
    List<Work> work =
        design.work().stream()
            .map(w -> w instanceof Work.Bore bore ? (Work) replaced(bore, setup) : w)
            .toList();
    return new Design(design.panel(), design.motifs(), design.placements(), work);
  }

  private static Work.Bore replaced(Work.Bore bore, Setup setup) {
    if (!(bore.tool().shape() instanceof ToolShape.Drill) || turns(bore.tool(), bore, setup)) {
      return bore;
    }
    double depth = bore.depthMm().orElse(setup.stock().thickestMm() + setup.spoilboardMm());
    Optional<Tool> mill =
        bore.way().mills().stream()
            .filter(t -> t.shape() instanceof ToolShape.Flat)
            .filter(t -> bore.diameterMm() >= ROOM * t.diameterMm())
            .filter(t -> Math.min(t.fluteLengthMm(), t.reachMm()) >= depth)
            .filter(t -> t.passDepthMm().orElse(1) > 0 && turns(t, bore, setup))
            .max(Comparator.comparingDouble(Tool::diameterMm));
    return mill.map(
            tool ->
                new Work.Bore(
                    bore.centres(),
                    bore.diameterMm(),
                    bore.depthMm(),
                    tool,
                    bore.way().insteadOf(bore.tool()),
                    bore.where()))
        .orElse(bore);
  }

  private static boolean turns(Tool tool, Work.Bore bore, Setup setup) {
    return Feeds.choose(tool, setup.stock().material(), setup.machine(), bore.where())
        .notes()
        .stream()
        .noneMatch(note -> note.code() == PlanCode.SPEED_TOO_HIGH);
  }
}
