package frieze.dryrun;

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
 */
public record TorchFacts(
    List<Region> parts,
    List<Point> pierceOnly,
    double kerfMm,
    double pierceClearMm,
    double pierceSeconds,
    double clearZMm) {
  public TorchFacts {
    parts = List.copyOf(parts);
    pierceOnly = List.copyOf(pierceOnly);
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
