package frieze.dryrun;

import frieze.dryrun.scene.Surroundings;
import java.util.List;

/**
 * Programs that run while a stock lies in one place.
 *
 * @param known where it lies
 * @param programs in running order
 */
public record Clamping(Surroundings known, List<ProgramText> programs) {
  public Clamping {
    programs = List.copyOf(programs);
  }
}
