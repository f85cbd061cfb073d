package frieze.steps;

import java.util.List;

/**
 * Where one step ends and the next begins.
 *
 * @param xMm along the stock, from its left edge
 * @param crossed the work that goes across it, such as {@code groove border 1}, in alphabetical
 *     order
 * @param motifs those of it that are short enough to have been spared, and could not be
 */
public record Seam(double xMm, List<String> crossed, List<String> motifs) {
  public Seam {
    crossed = List.copyOf(crossed);
    motifs = List.copyOf(motifs);
  }
}
