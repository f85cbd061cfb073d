package frieze.design;

import frieze.artwork.Artwork;
import java.util.List;

/**
 * A drawing at the size at which it is used, with a name.
 *
 * @param variants the shapes that some of its placements have instead, such as bent or cut ones
 * @param insetsMm how far inside the panel's outline each point of its pieces lies, where these are
 *     lines that the panel makes and that keep one distance; else empty
 */
public record Motif(String name, Artwork artwork, List<Artwork> variants, List<Double> insetsMm) {
  public Motif {
    variants = List.copyOf(variants);
    insetsMm = List.copyOf(insetsMm);
  }

  /** A motif that is drawn. */
  public Motif(String name, Artwork artwork, List<Artwork> variants) {
    this(name, artwork, variants, List.of());
  }

  /** A motif that is everywhere as drawn. */
  public Motif(String name, Artwork artwork) {
    this(name, artwork, List.of());
  }

  /** The motif as if it were drawn in one of its shapes; 0 for as it is drawn. */
  public Motif variant(int number) {
    return number == 0 ? this : new Motif(name, variants.get(number - 1));
  }
}
