package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import java.util.List;

/**
 * A finished insert.
 *
 * @param name as in the job, such as {@code front apron}
 * @param outline closed, counter-clockwise, in the panel frame: the lower left corner of its bounds
 *     is the origin
 * @param whole the outline without its notches
 * @param notches what is left out at its edges, four straight sides each, the last along the edge
 */
public record Panel(String name, Path outline, Path whole, List<Path> notches) {
  public Panel {
    notches = List.copyOf(notches);
    if (!outline.closed() || !whole.closed()) {
      throw new IllegalArgumentException("the outline of panel " + name + " must be closed");
    }
  }

  /** A panel without notches. */
  public Panel(String name, Path outline) {
    this(name, outline, outline, List.of());
  }

  public double lengthMm() {
    return bounds().width();
  }

  public double heightMm() {
    return bounds().height();
  }

  /** The same as if nothing were left out. */
  public Panel withoutNotches() {
    return new Panel(name, whole);
  }

  /** Its mirror image, left for right. */
  public Panel mirrored() {
    return turned(Affine.scaling(-1, 1).then(Affine.translation(lengthMm(), 0)));
  }

  /** Its other side, by a map that mirrors it. */
  public Panel turned(Affine mirroring) {
    return new Panel(
        name,
        outline.transformed(mirroring).reversed(),
        whole.transformed(mirroring).reversed(),
        notches.stream().map(n -> n.transformed(mirroring).reversed()).toList());
  }

  private Bounds bounds() {
    return outline.bounds();
  }
}
