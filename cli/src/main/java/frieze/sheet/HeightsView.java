package frieze.sheet;

import frieze.shop.CutChart;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Zero;
import frieze.torch.TorchPlan;

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

  /** How far above the stock a torch is drawn. */
  private static final double CUT_ABOVE = 5;

  /** How far an arrow may go below the bed, as a share of the stock. */
  private static final double DEEPEST_SHARE = 1.25;

  private final Setup setup;
  private final Measures measures;
  private final Markup out = new Markup();
  private final Ink ink = new Ink(out);

  HeightsView(Setup setup, Measures measures) {
    this.setup = setup;
    this.measures = measures;
  }

  /**
   * The view for a spindle, as an element for a page; not to scale.
   *
   * @param deepestMm below the stock's top
   */
  String spindle(double deepestMm) {
    open();
    stock("bed or spoilboard");
    double depth = Math.min(DEEPEST_SHARE, deepestMm / setup.stock().thickestMm());
    down(TOP_Y, TOP_Y + (BED_Y - TOP_Y) * depth);
    travel("tool");
    boolean top = zero();
    String deepest = "deepest cut " + measures.one(deepestMm) + " below the top";
    ink.text(LABELS, top ? BED_Y + 1 : TOP_Y + 7, deepest, "start", 2.5);
    return close();
  }

  /** The view for a torch: it stays above the sheet and cuts through it. */
  String torch(TorchPlan plan) {
    open();
    stock("slats of the table");
    double cut = TOP_Y - CUT_ABOVE;
    ink.line(STOCK_LEFT + 7, cut, STOCK_RIGHT + 4, cut, Ink.NARROW);
    down(cut, BED_Y + 6);
    travel("torch");
    zero();
    CutChart.Row row = plan.torch().row();
    String heights =
        "pierces at "
            + measures.one(row.pierceHeightMm())
            + ", cuts at "
            + measures.one(row.cutHeightMm());
    ink.text(LABELS, cut + 1, heights, "start", 2.5);
    ink.text(LABELS, BED_Y + 1, "the arc goes through the sheet and on", "start", 2.5);
    return close();
  }

  private void open() {
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
  }

  private void stock(String below) {
    boolean steel = setup.stock().material().kind() == Material.Kind.STEEL;
    block(TOP_Y, BED_Y, steel ? "#c9d1d8" : "#eadcc0");
    block(BED_Y, BED_Y + 6, "#e4e4e2");
    ink.line(STOCK_LEFT - 8, BED_Y, STOCK_RIGHT + 4, BED_Y, Ink.WIDE);
    double middle = (STOCK_LEFT + STOCK_RIGHT) / 2;
    ink.text(middle + 2, TOP_Y + 9.2, measures.one(setup.stock().thickestMm()), "middle", 2.8);
    ink.text(middle, BED_Y + 4.2, below, "middle", 2.5);
  }

  private void travel(String what) {
    ink.dashed(STOCK_LEFT - 8, TRAVEL_Y, STOCK_RIGHT + 4, TRAVEL_Y, Ink.CENTRE_LINE);
    ink.alongY(TRAVEL_Y, TOP_Y, STOCK_LEFT, STOCK_LEFT - 4, "", false);
    String travel = what + " travels " + measures.one(setup.clearanceMm()) + " above the top";
    ink.text(LABELS, TRAVEL_Y + 1, travel, "start", 2.5);
  }

  /** Draws the zero; true if it is on the stock's top. */
  private boolean zero() {
    boolean top = setup.zero().z() == Zero.AlongZ.TOP;
    double zeroY = top ? TOP_Y : BED_Y;
    ink.zeroMark(STOCK_RIGHT, zeroY);
    ink.text(LABELS, zeroY + 1, top ? "Z0 on TOP of the stock" : "Z0 on the BED", "start", 3.2);
    return top;
  }

  private void down(double from, double to) {
    ink.line(STOCK_LEFT + 4, from, STOCK_LEFT + 4, to, Ink.NARROW);
    ink.arrow(STOCK_LEFT + 4, to, 0, 1);
  }

  private String close() {
    ink.text(
        STOCK_LEFT - 8, HEIGHT - 2, "Heights, seen from the front, not to scale", "start", 2.5);
    return out.close().toString();
  }

  private void block(double top, double bottom, String fill) {
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
