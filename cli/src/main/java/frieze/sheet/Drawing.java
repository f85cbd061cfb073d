package frieze.sheet;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.layout.Panel;
import frieze.shop.KeepOut;
import frieze.shop.Setup;
import frieze.shop.Zero;

/**
 * Draws a panel as a shop drawing: one view from above at a whole-numbered scale, with its
 * dimensions.
 *
 * <p>Source: line types after ISO 128-2, dimensions after ISO 129-1, scales after ISO 5455, all as
 * known from memory. The width and height of the picture are millimetres of paper, so that a print
 * at 100 % is at the stated scale.
 */
public final class Drawing {
  /** The width of a sheet of A4 or Letter between usual margins. */
  private static final double PAPER_MM = 184;

  private static final double LEFT = 10;
  private static final double RIGHT = 21;

  /** What stays free at the edge of the paper. */
  private static final double EDGE = 1;

  private static final double TOP = 8;
  private static final double BOTTOM = 25;
  private static final double FIRST = 9;
  private static final double NEXT = 7;

  /** Clamps that reach farther beside the stock would make the panel too small to see. */
  private static final double NEAR_MM = 60;

  private final PanelFacts panel;
  private final Measures measures;
  private final Sheet sheet;
  private final double heightMm;

  private Drawing(PanelFacts panel, boolean inches) {
    this.panel = panel;
    this.measures = new Measures(inches);
    double widthMm = panel.setup().stock().widthMm();
    Bounds shown = shown(panel.setup());
    Sheet plain = across(0, panel.setup().stock().lengthMm(), shown, widthMm);
    boolean fits = plain.x(shown.minX()) >= EDGE && plain.x(shown.maxX()) <= PAPER_MM - EDGE;
    this.sheet = fits ? plain : across(shown.minX(), shown.maxX(), shown, widthMm);
    double scale = sheet.scale();
    this.heightMm = TOP + shown.height() / scale + BOTTOM;
  }

  /** A sheet with a stretch along X in the middle of the room between its margins. */
  private static Sheet across(double minX, double maxX, Bounds shown, double widthMm) {
    double room = PAPER_MM - LEFT - RIGHT;
    double scale = Sheet.scaleFor(maxX - minX, room);
    double left = LEFT + (room - (maxX - minX) / scale) / 2;
    double top = TOP + (shown.maxY() - widthMm) / scale;
    return new Sheet(left - minX / scale, top, widthMm, scale);
  }

  /** The stock, and the clamps beside it as far as they are near. */
  private static Bounds shown(Setup setup) {
    Bounds stock = new Bounds(0, 0, setup.stock().lengthMm(), setup.stock().widthMm());
    Bounds near = stock.grown(NEAR_MM);
    Bounds shown = stock;
    for (KeepOut k : setup.keepOuts()) {
      Bounds clamp = new Bounds(k.minXMm(), k.minYMm(), k.maxXMm(), k.maxYMm());
      shown = near.contains(clamp) ? shown.with(clamp) : shown;
    }
    return shown;
  }

  /** The drawing as an SVG file of its own. */
  public static String svg(PanelFacts panel, boolean inches) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + inline(panel, inches, "p") + "\n";
  }

  /**
   * The drawing as an element for a page.
   *
   * @param idPrefix makes its ids unique on the page
   */
  static String inline(PanelFacts panel, boolean inches, String idPrefix) {
    return new Drawing(panel, inches).draw(idPrefix);
  }

  /** The scale in words, such as {@code 1:5}. */
  static String scale(PanelFacts panel, boolean inches) {
    return Sheet.scaleText(new Drawing(panel, inches).sheet.scale());
  }

  private String draw(String idPrefix) {
    Markup out = new Markup();
    out.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "width",
        Ink.n(PAPER_MM) + "mm",
        "height",
        Ink.n(heightMm) + "mm",
        "viewBox",
        "0 0 " + Ink.n(PAPER_MM) + " " + Ink.n(heightMm),
        "font-family",
        "Helvetica, Arial, 'Liberation Sans', sans-serif",
        "role",
        "img",
        "aria-label",
        "Drawing of " + panel.name() + " on its stock, from above");
    new PlanView(panel, sheet, out, idPrefix).draw();
    dimensions(new Ink(out));
    notes(new Ink(out));
    return out.close().toString();
  }

  private Bounds panelOnStock() {
    Panel p = panel.design().panel();
    Setup setup = panel.setup();
    return setup.stockFromPanel().apply(p.outline()).bounds();
  }

  private void dimensions(Ink ink) {
    Setup setup = panel.setup();
    Bounds b = panelOnStock();
    double bottom = sheet.y(0);
    double right = sheet.x(setup.stock().lengthMm());
    double y = sheet.y(shown(setup).minY()) + FIRST;
    double x = sheet.x(shown(setup).maxX()) + FIRST;
    if (!setup.stock().blank()) {
      ink.alongX(
          sheet.x(b.minX()),
          sheet.x(b.maxX()),
          sheet.y(b.minY()),
          y,
          measures.number(b.width()),
          false);
      ink.alongX(sheet.x(0), sheet.x(b.minX()), bottom, y, measures.number(b.minX()), true);
      ink.alongY(
          sheet.y(b.minY()),
          sheet.y(b.maxY()),
          sheet.x(b.maxX()),
          x,
          measures.number(b.height()),
          false);
      ink.alongY(sheet.y(0), sheet.y(b.minY()), right, x, measures.number(b.minY()), true);
      y += NEXT;
      x += NEXT;
    }
    ink.alongX(sheet.x(0), right, bottom, y, measures.number(setup.stock().lengthMm()), false);
    ink.alongY(
        bottom,
        sheet.y(setup.stock().widthMm()),
        right,
        x,
        measures.number(setup.stock().widthMm()),
        false);
  }

  private void notes(Ink ink) {
    String text =
        "Scale "
            + Sheet.scaleText(sheet.scale())
            + ". Dimensions in "
            + (measures.inches() ? "inches" : "millimetres")
            + ". Seen from above, X to the right, Y away from the front.";
    ink.text(sheet.x(0), heightMm - 1.5, text, "start", 2.5);
    Point zero = sheet.at(panel.setup().stockFromProgram().apply(Point.ORIGIN));
    boolean right = panel.setup().zero().x() == Zero.AlongX.RIGHT;
    ink.text(zero.x() + (right ? 2 : -3), zero.y() + 4.6, "ZERO", right ? "start" : "end", 2.5);
    ink.text(
        (sheet.x(0) + sheet.x(panel.setup().stock().lengthMm())) / 2,
        TOP - 3,
        "BACK",
        "middle",
        2.2);
    ink.text(sheet.x(panel.setup().stock().lengthMm()), sheet.y(0) + 3.4, "FRONT", "end", 2.2);
  }
}
