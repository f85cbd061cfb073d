package frieze.dryrun.scene;

import frieze.curve.Point;
import frieze.region.Region;
import java.util.List;

/**
 * What a torch is asked to do, in the program's frame.
 *
 * @param parts what stays of each part, with its openings, from the design
 * @param pierceOnly where the part itself is pierced on purpose: holes to be drilled later
 * @param kerfMm the full width that the arc takes away
 * @param pierceClearMm how far a pierce must stay from each part's edge
 * @param pierceSeconds the pierce delay of the chart
 * @param clearZMm the height at which the torch may travel
 * @param joints stubs of metal that are to be left across the kerf
 * @param relit where, for lack of room in the scrap, a torch is lit in the kerf of a cut that broke
 *     off
 */
public record TorchFacts(
    List<Region> parts,
    List<Point> pierceOnly,
    double kerfMm,
    double pierceClearMm,
    double pierceSeconds,
    double clearZMm,
    List<Joint> joints,
    List<Point> relit) {
  /** Without micro-joints. */
  public TorchFacts(
      List<Region> parts,
      List<Point> pierceOnly,
      double kerfMm,
      double pierceClearMm,
      double pierceSeconds,
      double clearZMm) {
    this(parts, pierceOnly, kerfMm, pierceClearMm, pierceSeconds, clearZMm, List.of(), List.of());
  }

  /** The same with places where a torch is lit in a kerf. */
  public TorchFacts withRelit(List<Point> places) {
    return new TorchFacts(
        parts, pierceOnly, kerfMm, pierceClearMm, pierceSeconds, clearZMm, joints, places);
  }

  /**
   * A stub of metal across the kerf.
   *
   * @param at its middle
   * @param inside a place of the piece that it keeps
   * @param outside a place of what it hangs on
   */
  public record Joint(Point at, Point inside, Point outside, double widthMm) {}

  public TorchFacts {
    parts = List.copyOf(parts);
    pierceOnly = List.copyOf(pierceOnly);
    joints = List.copyOf(joints);
    relit = List.copyOf(relit);
    if (!(kerfMm > 0)) {
      throw new IllegalArgumentException("kerfMm must be > 0 but was " + kerfMm + " mm");
    }
    if (!(pierceClearMm >= 0) || !(pierceSeconds >= 0)) {
      throw new IllegalArgumentException(
          "pierceClearMm and pierceSeconds must be >= 0 but were "
              + (pierceClearMm + " mm, " + pierceSeconds + " s"));
    }
  }
}
