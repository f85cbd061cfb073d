package frieze.layout;

import frieze.curve.Bounds;
import frieze.curve.Path;

/**
 * A finished insert.
 *
 * @param name as in the job, such as {@code front apron}
 * @param outline closed, counter-clockwise, in the panel frame: the lower left corner of its bounds
 *     is the origin
 */
public record Panel(String name, Path outline) {
  public Panel {
    if (!outline.closed()) {
      throw new IllegalArgumentException("the outline of panel " + name + " must be closed");
    }
  }

  public double lengthMm() {
    return bounds().width();
  }

  public double heightMm() {
    return bounds().height();
  }

  private Bounds bounds() {
    return outline.bounds();
  }
}
