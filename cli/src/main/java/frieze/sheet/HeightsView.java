package frieze.sheet;

import frieze.shop.Setup;
import frieze.shop.Zero;

/** Draws the heights of a setup, seen from the front: clearance, zero, deepest cut, bed. */
final class HeightsView {
  private static final double WIDTH = 88;
  private static final double HEIGHT = 46;
  private static final double TOP_Y = 18;
  private static final double BED_Y = 34;
  private static final double STOCK_LEFT = 14;
  private static final double STOCK_RIGHT = 50;

  private HeightsView() {}

  /**
   * The view as an element for a page; not to scale.
   *
   * @param deepestMm below the stock's top
   */
  static String inline(Setup setup, double deepestMm, Measures measures) {
    Markup out = new Markup();
    out.open(
        "svg", "xmlns", "http://www.w3.org/2000/svg", "width", WIDTH + "mm", "height",
        HEIGHT + "mm", "viewBox", "0 0 " + WIDTH + " " + HEIGHT, "font-family",
        "Helvetica, Arial, 'Liberation Sans', sans-serif", "role", "img", "aria-label",
        "Heights of the setup, seen from the front");
    Ink ink = new Ink(out);
    block(out, TOP_Y, BED_Y, "#eadcc0");
    block(out, BED_Y, BED_Y + 6, "#e4e4e2");
    ink.line(STOCK_LEFT - 8, BED_Y, STOCK_RIGHT + 6, BED_Y, Ink.WIDE);
    ink.text(STOCK_LEFT + 18, TOP_Y + 9.2, "stock " + measures.one(setup.stock().thickestMm()), "middle", 2.8);
    ink.text(STOCK_LEFT + 18, BED_Y + 4.2, "bed or spoilboard", "middle", 2.5);
    ink.dashed(STOCK_LEFT - 8, 7, STOCK_RIGHT + 6, 7, Ink.CENTRE_LINE);
    double clear = STOCK_LEFT - 4;
    ink.alongY(7, TOP_Y, STOCK_LEFT, clear, "");
    ink.text(STOCK_RIGHT + 8, 8, "travel: " + measures.one(setup.clearanceMm()) + " above the top", "start", 2.5);
    boolean top = setup.zero().z() == Zero.AlongZ.TOP;
    double zeroY = top ? TOP_Y : BED_Y;
    ink.zero(STOCK_RIGHT, zeroY);
    ink.text(STOCK_RIGHT + 15, zeroY + 3.4, top ? "Z0 on the TOP of the stock" : "Z0 on the BED", "start", 2.8);
    double depth = Math.min(1.35, deepestMm / setup.stock().thickestMm());
    double tip = TOP_Y + (BED_Y - TOP_Y) * depth;
    ink.line(STOCK_LEFT + 6, TOP_Y, STOCK_LEFT + 6, tip, Ink.NARROW);
    ink.arrow(STOCK_LEFT + 6, tip, 0, 1);
    ink.text(STOCK_RIGHT + 15, TOP_Y + 10.2, "deepest cut " + measures.one(deepestMm) + " below the top", "start", 2.5);
    ink.text(STOCK_LEFT - 8, HEIGHT - 2, "Heights, seen from the front, not to scale", "start", 2.5);
    return out.close().toString();
  }

  private static void block(Markup out, double top, double bottom, String fill) {
    out.empty(
        "rect", "x", Ink.n(STOCK_LEFT), "y", Ink.n(top), "width", Ink.n(STOCK_RIGHT - STOCK_LEFT),
        "height", Ink.n(bottom - top), "fill", fill, "stroke", Ink.BLACK, "stroke-width",
        Ink.NARROW);
  }
}
