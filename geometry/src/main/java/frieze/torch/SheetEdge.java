package frieze.torch;

import frieze.curve.Point;
import frieze.shop.Setup;

/** The sheet's edge, from which a pierce stays away. */
final class SheetEdge {
  private final Setup setup;
  private final double marginMm;
  private final Point corner;

  SheetEdge(Setup setup, double marginMm) {
    this.setup = setup;
    this.marginMm = marginMm;
    this.corner = setup.stockFromPanel().affine().apply(Point.ORIGIN);
  }

  /** Whether a place of the panel's frame lies on the sheet, a margin from its edges. */
  boolean allows(Point place) {
    Point p = place.plus(corner);
    return p.x() >= marginMm
        && p.y() >= marginMm
        && p.x() <= setup.stock().lengthMm() - marginMm
        && p.y() <= setup.stock().widthMm() - marginMm;
  }
}
