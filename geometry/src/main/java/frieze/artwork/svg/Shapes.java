package frieze.artwork.svg;

import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.curve.Arc;
import frieze.curve.EllipticArc;
import frieze.curve.Point;
import org.jspecify.annotations.Nullable;

/**
 * Draws the basic shapes.
 *
 * <p>Source: SVG 2, chapter 10. A circle is one full turn from its rightmost point, clockwise on
 * the screen; a negative size counts as none, with a message.
 */
final class Shapes {
  /** Reads the lengths of an element. */
  interface Lengths {
    /** The attribute in user units, or NaN if it is absent or "auto". */
    double get(String attribute, Axis axis);
  }

  /** What a percentage of a length is taken of. */
  enum Axis {
    X,
    Y,
    DIAGONAL
  }

  private static final double FULL_TURN = 2 * Math.PI;
  private static final double QUARTER_TURN = Math.PI / 2;

  /** What the sum of a few numbers may be off by, as a fraction of them. */
  private static final double ROUNDING = 1e-12;

  private final Lengths lengths;
  private final PathBuilder out;

  Shapes(Lengths lengths, PathBuilder out) {
    this.lengths = lengths;
    this.out = out;
  }

  static boolean isShape(String name) {
    return switch (name) {
      case "path", "rect", "circle", "ellipse", "line", "polyline", "polygon" -> true;
      default -> false;
    };
  }

  /**
   * Draws a shape.
   *
   * @throws SyntaxException if path data or points break off; what came before has been drawn
   */
  void draw(SvgElement shape) throws SyntaxException {
    switch (shape.name()) {
      case "path" -> PathData.draw(shape.attribute("d", ""), out);
      case "rect" -> rect();
      case "circle" -> circle();
      case "ellipse" -> ellipse();
      case "line" -> line();
      case "polyline" -> points(shape.attribute("points"), false);
      case "polygon" -> points(shape.attribute("points"), true);
      default -> throw new IllegalArgumentException("no shape: " + shape.name());
    }
  }

  private double orZero(String attribute, Axis axis) {
    double value = lengths.get(attribute, axis);
    return Double.isNaN(value) ? 0 : value;
  }

  private void line() {
    out.moveTo(new Point(orZero("x1", Axis.X), orZero("y1", Axis.Y)));
    out.lineTo(new Point(orZero("x2", Axis.X), orZero("y2", Axis.Y)));
  }

  private void circle() {
    double r = orZero("r", Axis.DIAGONAL);
    if (r > 0) {
      Point centre = new Point(orZero("cx", Axis.X), orZero("cy", Axis.Y));
      out.moveTo(centre.plus(new Point(r, 0)));
      out.fullTurn(Arc.polar(centre, r, 0, FULL_TURN));
    }
  }

  private void ellipse() {
    double rx = lengths.get("rx", Axis.X);
    double ry = lengths.get("ry", Axis.Y);
    rx = Double.isNaN(rx) ? ry : rx;
    ry = Double.isNaN(ry) ? rx : ry;
    if (rx > 0 && ry > 0) {
      Point centre = new Point(orZero("cx", Axis.X), orZero("cy", Axis.Y));
      Point start = centre.plus(new Point(rx, 0));
      Point v = new Point(0, ry);
      out.moveTo(start);
      out.fullTurn(new EllipticArc(start, start, centre, new Point(rx, 0), v, 0, FULL_TURN));
    }
  }

  private void rect() {
    double w = orZero("width", Axis.X);
    double h = orZero("height", Axis.Y);
    if (!(w > 0 && h > 0)) {
      return;
    }
    double rx = lengths.get("rx", Axis.X);
    double ry = lengths.get("ry", Axis.Y);
    rx = Double.isNaN(rx) || rx < 0 ? ry : rx;
    ry = Double.isNaN(ry) || ry < 0 ? rx : ry;
    rx = Double.isNaN(rx) ? 0 : Math.min(rx, w / 2);
    ry = Double.isNaN(ry) ? 0 : Math.min(ry, h / 2);
    Point corner = new Point(orZero("x", Axis.X), orZero("y", Axis.Y));
    if (rx > 0 && ry > 0) {
      roundedRect(corner, w, h, new EndpointArc(rx, ry, 0, false, true));
      return;
    }
    out.moveTo(corner);
    out.lineTo(corner.plus(new Point(w, 0)));
    out.lineTo(corner.plus(new Point(w, h)));
    out.lineTo(corner.plus(new Point(0, h)));
    out.close();
  }

  private void roundedRect(Point corner, double w, double h, EndpointArc arc) {
    double left = corner.x() + arc.rx();
    double right = beyond(left, corner.x() + w - arc.rx(), w);
    double top = corner.y() + arc.ry();
    double bottom = beyond(top, corner.y() + h - arc.ry(), h);
    out.moveTo(new Point(left, corner.y()));
    out.lineTo(new Point(right, corner.y()));
    corner(right, top, arc, -QUARTER_TURN);
    out.lineTo(new Point(corner.x() + w, bottom));
    corner(right, bottom, arc, 0);
    out.lineTo(new Point(left, corner.y() + h));
    corner(left, bottom, arc, QUARTER_TURN);
    out.lineTo(new Point(corner.x(), top));
    corner(left, top, arc, FULL_TURN / 2);
    out.close();
  }

  /** The second of two centres; the first one again if only rounding parts them. */
  private static double beyond(double first, double second, double size) {
    return second - first > ROUNDING * size ? second : first;
  }

  /** Draws a quarter around a centre, ending where its angle has grown by a right angle. */
  private void corner(double cx, double cy, EndpointArc arc, double startRad) {
    double endRad = startRad + QUARTER_TURN;
    double ex = Math.rint(StrictMath.cos(endRad));
    double ey = Math.rint(StrictMath.sin(endRad));
    out.arcTo(arc, new Point(cx + arc.rx() * ex, cy + arc.ry() * ey));
  }

  private void points(@Nullable String text, boolean closed) throws SyntaxException {
    if (text == null) {
      return;
    }
    NumberScanner in = new NumberScanner(text);
    in.skipSpace();
    boolean first = true;
    try {
      while (!in.atEnd()) {
        double x = in.number();
        in.skipSeparator();
        Point p = new Point(x, in.number());
        if (first) {
          out.moveTo(p);
        } else {
          out.lineTo(p);
        }
        first = false;
        in.skipSeparator();
      }
    } finally {
      if (closed && !first) {
        out.close();
      }
    }
  }
}
