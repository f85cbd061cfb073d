package frieze.artwork.svg;

import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.curve.Point;

/**
 * Reads the value of a {@code d} attribute.
 *
 * <p>Source: SVG 2, 9.3 (commands and grammar) and 9.5.4 (errors: everything up to the last good
 * segment is drawn).
 */
final class PathData {
  private final NumberScanner in;
  private final PathBuilder out;

  /** The last control point, mirrored by S and T; meaningful only after such a command. */
  private Point lastControl = Point.ORIGIN;

  private char lastCommand = 'M';

  private PathData(String data, PathBuilder out) {
    this.in = new NumberScanner(data);
    this.out = out;
  }

  /**
   * Draws path data into a builder.
   *
   * @throws SyntaxException at the first character that breaks the grammar; what came before it has
   *     been drawn
   */
  static void draw(String data, PathBuilder out) throws SyntaxException {
    if (!data.trim().equals("none")) {
      new PathData(data, out).drawAll();
    }
  }

  private void drawAll() throws SyntaxException {
    in.skipSpace();
    boolean first = true;
    while (!in.atEnd()) {
      char command = in.peek();
      if (first && command != 'M' && command != 'm') {
        throw in.fail("path data must start with M or m");
      }
      if ("MmZzLlHhVvCcSsQqTtAa".indexOf(command) < 0) {
        throw in.fail("a command is expected");
      }
      in.next();
      first = false;
      drawCommand(command);
      in.skipSpace();
    }
  }

  private void drawCommand(char command) throws SyntaxException {
    if (command == 'Z' || command == 'z') {
      out.close();
      lastCommand = 'Z';
      return;
    }
    char repeated = command;
    in.skipSpace();
    while (true) {
      drawOnce(repeated);
      lastCommand = Character.toUpperCase(repeated);
      if (repeated == 'M' || repeated == 'm') {
        repeated = repeated == 'M' ? 'L' : 'l';
      }
      boolean comma = in.skipSeparator();
      if (!in.atNumber()) {
        if (comma) {
          throw in.fail("a number must follow a comma");
        }
        return;
      }
    }
  }

  private void drawOnce(char command) throws SyntaxException {
    boolean relative = Character.isLowerCase(command);
    switch (Character.toUpperCase(command)) {
      case 'M' -> out.moveTo(point(relative));
      case 'L' -> out.lineTo(point(relative));
      case 'H' -> {
        double x = in.number();
        out.lineTo(new Point(relative ? out.current().x() + x : x, out.current().y()));
      }
      case 'V' -> {
        double y = in.number();
        out.lineTo(new Point(out.current().x(), relative ? out.current().y() + y : y));
      }
      case 'C' -> drawCubic(nextPoint(relative), relative);
      case 'S' -> drawCubic(mirrored('C', 'S'), relative);
      case 'Q' -> drawQuadratic(nextPoint(relative), relative);
      case 'T' -> drawQuadratic(mirrored('Q', 'T'), relative);
      default -> drawArc(relative);
    }
  }

  private void drawCubic(Point control1, boolean relative) throws SyntaxException {
    Point control2 = nextPoint(relative);
    Point to = point(relative);
    out.cubicTo(control1, control2, to);
    lastControl = control2;
  }

  private void drawQuadratic(Point control, boolean relative) throws SyntaxException {
    Point to = point(relative);
    out.quadraticTo(control, to);
    lastControl = control;
  }

  private void drawArc(boolean relative) throws SyntaxException {
    double rx = in.number();
    in.skipSeparator();
    double ry = in.number();
    in.skipSeparator();
    double turnRad = Math.toRadians(in.number() % 360);
    in.skipSeparator();
    boolean large = in.flag();
    in.skipSeparator();
    boolean increasing = in.flag();
    in.skipSeparator();
    out.arcTo(new EndpointArc(rx, ry, turnRad, large, increasing), point(relative));
  }

  /** The control point that continues the last curve, if that was one of the two kinds. */
  private Point mirrored(char kind, char otherKind) {
    boolean continues = lastCommand == kind || lastCommand == otherKind;
    return continues ? out.current().times(2).minus(lastControl) : out.current();
  }

  private Point nextPoint(boolean relative) throws SyntaxException {
    Point p = point(relative);
    in.skipSeparator();
    return p;
  }

  private Point point(boolean relative) throws SyntaxException {
    double x = in.number();
    in.skipSeparator();
    double y = in.number();
    return relative ? out.current().plus(new Point(x, y)) : new Point(x, y);
  }
}
