package frieze.design;

import frieze.artwork.Artwork;
import java.util.List;

/**
 * A drawing at the size at which it is used, with a name.
 *
 * @param variants the shapes that some of its placements have instead, such as bent or cut ones
 */
public record Motif(String name, Artwork artwork, List<Artwork> variants) {
  public Motif {
    variants = List.copyOf(variants);
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
