package frieze.artwork;

import frieze.curve.Affine;
import java.util.List;

/**
 * A window through which pieces are seen: the areas of its panes together.
 *
 * @param panes filled pieces, which may be clipped themselves; none for a window that shows nothing
 */
public record Clip(List<Piece> panes) {
  public Clip {
    panes = List.copyOf(panes);
  }

  /** The image under a map. */
  public Clip transformed(Affine map) {
    return new Clip(panes.stream().map(p -> p.transformed(map)).toList());
  }
}
