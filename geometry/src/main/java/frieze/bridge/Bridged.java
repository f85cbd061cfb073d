package frieze.bridge;

import frieze.diagnostic.Diagnostic;
import frieze.region.Region;
import java.util.List;

/**
 * Material whose islands are tied.
 *
 * @param material what stays, with the bridges
 * @param held each island that is tied, in the order of tying
 * @param pieces how many pieces the material is in, counted by {@link Pieces}: 1 if all is well
 * @param found what could not be done, each with its place
 */
public record Bridged(Region material, List<Held> held, int pieces, List<Diagnostic> found) {
  public Bridged {
    held = List.copyOf(held);
    found = List.copyOf(found);
  }

  /**
   * An island with its bridges.
   *
   * @param island as it was before
   * @param loadN the push square to the sheet, at the worst place of the island, at which its
   *     bridges start to yield: a lower bound
   */
  public record Held(Region island, List<Bridge> bridges, double loadN) {
    public Held {
      bridges = List.copyOf(bridges);
    }
  }

  /** Whether nothing falls out. */
  public boolean isOnePiece() {
    return pieces == 1;
  }

  /** All bridges, in the order of the islands. */
  public List<Bridge> bridges() {
    return held.stream().flatMap(h -> h.bridges().stream()).toList();
  }
}
