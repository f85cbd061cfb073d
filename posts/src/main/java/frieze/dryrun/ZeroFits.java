package frieze.dryrun;

import frieze.dryrun.check.TravelCheck;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Range;
import frieze.dryrun.scene.Slack;
import frieze.shop.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells for which zeros the moves fit into a machine. */
final class ZeroFits {
  private ZeroFits() {}

  /**
   * One answer for each axis along which moves are known in program coordinates.
   *
   * @param program the extents of all moves in program coordinates
   */
  static List<ZeroFit> of(Machine machine, Extents program) {
    List<ZeroFit> fits = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      Optional<Range> range = program.get(axis);
      if (range.isPresent()) {
        Range travel = TravelCheck.travel(machine, axis);
        double low = travel.minMm() - range.get().minMm();
        double high = travel.maxMm() - range.get().maxMm();
        Optional<Range> zero =
            high >= low
                ? Optional.of(new Range(low, high))
                : low - high <= Slack.LENGTH_MM
                    ? Optional.of(new Range((low + high) / 2, (low + high) / 2))
                    : Optional.empty();
        fits.add(new ZeroFit(Words.axisName(axis), range.get().sizeMm(), travel.sizeMm(), zero));
      }
    }
    return fits;
  }
}
