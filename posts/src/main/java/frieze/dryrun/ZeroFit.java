package frieze.dryrun;

import frieze.dryrun.scene.Range;
import java.util.Optional;

/**
 * Whether the moves fit into the travel of an axis.
 *
 * @param axis {@code X}, {@code Y} or {@code Z}
 * @param neededMm what the moves need from end to end
 * @param travelMm what the machine has
 * @param zeroMm where the program's zero may lie on the machine, in machine coordinates; empty when
 *     no zero fits
 */
public record ZeroFit(String axis, double neededMm, double travelMm, Optional<Range> zeroMm) {
  public boolean fits() {
    return zeroMm.isPresent();
  }
}
