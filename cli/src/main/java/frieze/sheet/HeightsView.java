package frieze.sheet;

import frieze.shop.Setup;
import frieze.shop.Zero;

/** Draws the heights of a setup, seen from the front: clearance, zero, deepest cut, bed. */
final class HeightsView {
  private static final double WIDTH = 92;
  private static final double HEIGHT = 46;
  private static final double TOP_Y = 18;
  private static final double BED_Y = 34;
  private static final double STOCK_LEFT = 10;
  private static final double STOCK_RIGHT = 40;
  private static final double LABELS = 46;
  private static final double TRAVEL_Y = 7;

  /** How far an arrow may go below the bed, as a share of the stock. */
  private static final double DEEPEST_SHARE = 1.25;

  private HeightsView() {}

  /**
   * The view as an element for a page; not to scale.
   *
   * @param deepestMm below the stock's top
   */
  static String inline(Setup setup, double deepestMm, Measures measures) {
    Markup out = new Markup();
    out.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "width",
        WIDTH + "mm",
        "height",
        HEIGHT + "mm",
        "viewBox",
        "0 0 " + WIDTH + " " + HEIGHT,
        "font-family",
        "Helvetica, Arial, 'Liberation Sans', sans-serif",
        "role",
        "img",
        "aria-label",
        "Heights of the setup, seen from the front");
    Ink ink = new Ink(out);
    block(out, TOP_Y, BED_Y, "#eadcc0");
    block(out, BED_Y, BED_Y + 6, "#e4e4e2");
    ink.line(STOCK_LEFT - 8, BED_Y, STOCK_RIGHT + 4, BED_Y, Ink.WIDE);
    double middle = (STOCK_LEFT + STOCK_RIGHT) / 2;
    ink.text(middle + 2, TOP_Y + 9.2, measures.one(setup.stock().thickestMm()), "middle", 2.8);
    ink.text(middle, BED_Y + 4.2, "bed or spoilboard", "middle", 2.5);
    ink.dashed(STOCK_LEFT - 8, TRAVEL_Y, STOCK_RIGHT + 4, TRAVEL_Y, Ink.CENTRE_LINE);
    ink.alongY(TRAVEL_Y, TOP_Y, STOCK_LEFT, STOCK_LEFT - 4, "", false);
    boolean top = setup.zero().z() == Zero.AlongZ.TOP;
    double zeroY = top ? TOP_Y : BED_Y;
    ink.zeroMark(STOCK_RIGHT, zeroY);
    double depth = Math.min(DEEPEST_SHARE, deepestMm / setup.stock().thickestMm());
    double tip = TOP_Y + (BED_Y - TOP_Y) * depth;
    ink.line(STOCK_LEFT + 4, TOP_Y, STOCK_LEFT + 4, tip, Ink.NARROW);
    ink.arrow(STOCK_LEFT + 4, tip, 0, 1);
    String travel = "tool travels " + measures.one(setup.clearanceMm()) + " above the top";
    ink.text(LABELS, TRAVEL_Y + 1, travel, "start", 2.5);
    ink.text(LABELS, zeroY + 1, top ? "Z0 on TOP of the stock" : "Z0 on the BED", "start", 3.2);
    String deepest = "deepest cut " + measures.one(deepestMm) + " below the top";
    ink.text(LABELS, top ? BED_Y + 1 : TOP_Y + 7, deepest, "start", 2.5);
    ink.text(
        STOCK_LEFT - 8, HEIGHT - 2, "Heights, seen from the front, not to scale", "start", 2.5);
    return out.close().toString();
  }

  private static void block(Markup out, double top, double bottom, String fill) {
    out.empty(
        "rect",
        "x",
        Ink.n(STOCK_LEFT),
        "y",
        Ink.n(top),
        "width",
        Ink.n(STOCK_RIGHT - STOCK_LEFT),
        "height",
        Ink.n(bottom - top),
        "fill",
        fill,
        "stroke",
        Ink.BLACK,
        "stroke-width",
        Ink.NARROW);
  }
}
