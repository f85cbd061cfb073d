package frieze.layout;

import frieze.curve.Path;
import java.util.List;

/**
 * Where the motifs of a pattern may lie.
 *
 * @param insetMm what stays free along the panel's outline and along the fences
 * @param fences lines on the panel that no motif may cross, such as those that a row runs between
 */
public record Ground(Panel panel, double insetMm, List<Path> fences) {
  public Ground {
    fences = List.copyOf(fences);
  }

  /** A whole panel. */
  public Ground(Panel panel, double insetMm) {
    this(panel, insetMm, List.of());
  }
}
