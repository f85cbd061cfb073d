package frieze.sheet;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.shop.Flip;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Zero;

/** Draws how a board is turned over between its back and its face, seen from above. */
final class FlipView {
  private static final double WIDTH = 184;
  private static final double TOP = 9;
  private static final double BESIDE = 12;
  private static final double BETWEEN = 22;
  private static final double MOST_HIGH = 46;
  private static final double BELOW = 9;
  private static final double LETTERS = 2.6;
  private static final double CORNER = 2.6;

  private final Setup setup;
  private final Flip flip;
  private final double scale;
  private final Markup out = new Markup();
  private final Ink ink = new Ink(out);

  FlipView(Setup setup, Flip flip) {
    this.setup = setup;
    this.flip = flip;
    Stock stock = setup.stock();
    double wide = (WIDTH - 2 * BESIDE - BETWEEN) / 2;
    this.scale = Math.max(stock.lengthMm() / wide, stock.widthMm() / MOST_HIGH);
  }

  /** The view, as an element for a page; the board to scale, the arrow not. */
  String svg() {
    double high = TOP + setup.stock().widthMm() / scale + BELOW;
    out.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "width",
        WIDTH + "mm",
        "height",
        Ink.n(high) + "mm",
        "viewBox",
        "0 0 " + WIDTH + " " + Ink.n(high),
        "font-family",
        "Helvetica, Arial, 'Liberation Sans', sans-serif",
        "role",
        "img",
        "aria-label",
        "How the board is turned over, seen from above");
    double middle = WIDTH / 2;
    double long2 = setup.stock().lengthMm() / scale;
    board(middle - BETWEEN / 2 - long2, true);
    board(middle + BETWEEN / 2, false);
    arrow(middle);
    return out.close().toString();
  }

  /** One side, with its left edge at a place of the paper. */
  private void board(double left, boolean back) {
    Stock stock = setup.stock();
    double wide = stock.lengthMm() / scale;
    double high = stock.widthMm() / scale;
    boolean here = back == flip.backUp();
    out.empty(
        "rect",
        "x",
        Ink.n(left),
        "y",
        Ink.n(TOP),
        "width",
        Ink.n(wide),
        "height",
        Ink.n(high),
        "fill",
        back ? "#fff" : "#eadcc0",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        here ? Ink.WIDE : Ink.NARROW);
    String title = (back ? "1  BACK UP" : "2  FACE UP") + (here ? ", THIS SHEET" : "");
    ink.text(left + wide / 2, TOP - 3, title, "middle", here ? 3.2 : LETTERS);
    axis(left, wide, high);
    Affine toPaper =
        (here ? Affine.IDENTITY : flip.turned(stock.lengthMm(), stock.widthMm()))
            .then(Affine.scaling(1 / scale, -1 / scale))
            .then(Affine.translation(left, TOP + high));
    corner(toPaper, left + wide / 2, TOP + high / 2);
    flip.pins().ifPresent(pins -> pins(pins, toPaper));
  }

  /** The line about which the board is turned. */
  private void axis(double left, double wide, double high) {
    double over = 4;
    if (flip.endToEnd()) {
      ink.dashed(
          left + wide / 2, TOP - over / 2, left + wide / 2, TOP + high + over, Ink.CENTRE_LINE);
    } else {
      ink.dashed(left - over, TOP + high / 2, left + wide + over, TOP + high / 2, Ink.CENTRE_LINE);
    }
  }

  /** A mark at the corner of the stock that zero lies at, or nearest to. */
  private void corner(Affine toPaper, double middleX, double middleY) {
    Zero zero = setup.zero();
    Point on =
        new Point(
            zero.x() == Zero.AlongX.RIGHT ? setup.stock().lengthMm() : 0,
            zero.y() == Zero.AlongY.BACK ? setup.stock().widthMm() : 0);
    Point p = toPaper.apply(on);
    double dx = Math.signum(middleX - p.x()) * CORNER;
    double dy = Math.signum(middleY - p.y()) * CORNER;
    String points =
        Ink.n(p.x())
            + ","
            + Ink.n(p.y())
            + " "
            + Ink.n(p.x() + 2 * dx)
            + ","
            + Ink.n(p.y())
            + " "
            + Ink.n(p.x())
            + ","
            + Ink.n(p.y() + 2 * dy);
    out.empty("polygon", "points", points, "fill", Ink.BLACK);
    double below = dy < 0 ? p.y() + 3.4 : p.y() - 1.2;
    ink.text(p.x() - dx * 0.4, below, "corner K", dx > 0 ? "start" : "end", LETTERS);
  }

  private void pins(Flip.Pins pins, Affine toPaper) {
    for (Point at : pins.at()) {
      Point p = toPaper.apply(at);
      out.empty(
          "circle",
          "cx",
          Ink.n(p.x()),
          "cy",
          Ink.n(p.y()),
          "r",
          Ink.n(Math.max(0.9, pins.diameterMm() / 2 / scale)),
          "fill",
          "#fff",
          "stroke",
          Ink.BLACK,
          "stroke-width",
          Ink.WIDE);
    }
  }

  /** A bent arrow from one side to the other. */
  private void arrow(double middle) {
    double y = TOP + setup.stock().widthMm() / scale / 2;
    double from = middle - 7;
    double to = middle + 7;
    out.empty(
        "path",
        "d",
        "M"
            + Ink.n(from)
            + " "
            + Ink.n(y)
            + "Q"
            + Ink.n(middle)
            + " "
            + Ink.n(y - 9)
            + " "
            + Ink.n(to - 1)
            + " "
            + Ink.n(y - 1),
        "fill",
        "none",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        Ink.WIDE);
    ink.arrow(to, y, 0.66, 0.75);
    ink.text(middle, y + 4.5, "turn over", "middle", LETTERS);
    ink.text(middle, y + 8, flip.endToEnd() ? "end to end" : "front to back", "middle", LETTERS);
  }
}
