package frieze.artwork.svg;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.io.StringReader;
import org.apache.batik.parser.DefaultPathHandler;
import org.apache.batik.parser.PathParser;

/**
 * Path data read by Batik's parser into a Java2D shape.
 *
 * <p>Batik hands over floats; the decimals that were written are taken back from them. Arcs are
 * drawn as many chords about the one of the two possible centres that suits the flags: Batik's own
 * shape is not used for them, since it enlarges the radii of half circles by 1e-5, which moves
 * their centre by 0.4 % of the radius.
 */
public final class SecondPathReader extends DefaultPathHandler {
  private static final int CHORDS_PER_TURN = 8000;

  private final Path2D.Double shape;
  private double x;
  private double y;
  private double startX;
  private double startY;
  private double controlX;
  private double controlY;
  private char kind = 'M';

  private SecondPathReader(int windingRule) {
    shape = new Path2D.Double(windingRule);
  }

  /** The outline of path data. */
  public static Shape read(String data, int windingRule) {
    SecondPathReader handler = new SecondPathReader(windingRule);
    PathParser parser = new PathParser();
    parser.setPathHandler(handler);
    parser.parse(new StringReader(data));
    return handler.shape;
  }

  private static double d(float f) {
    return Double.parseDouble(Float.toString(f));
  }

  private void at(double newX, double newY, char newKind) {
    x = newX;
    y = newY;
    kind = newKind;
  }

  private void move(double toX, double toY) {
    shape.moveTo(toX, toY);
    startX = toX;
    startY = toY;
    at(toX, toY, 'M');
  }

  private void line(double toX, double toY) {
    shape.lineTo(toX, toY);
    at(toX, toY, 'L');
  }

  private void cubic(double ax, double ay, double bx, double by, double toX, double toY) {
    shape.curveTo(ax, ay, bx, by, toX, toY);
    controlX = bx;
    controlY = by;
    at(toX, toY, 'C');
  }

  private void quad(double ax, double ay, double toX, double toY) {
    shape.quadTo(ax, ay, toX, toY);
    controlX = ax;
    controlY = ay;
    at(toX, toY, 'Q');
  }

  private double smoothX(char wanted) {
    return kind == wanted ? 2 * x - controlX : x;
  }

  private double smoothY(char wanted) {
    return kind == wanted ? 2 * y - controlY : y;
  }

  private void arc(double[] radii, double turnDeg, boolean large, boolean sweep, double[] to) {
    AffineTransform toUnit = AffineTransform.getScaleInstance(1 / radii[0], 1 / radii[1]);
    toUnit.rotate(-Math.toRadians(turnDeg));
    Point2D a = toUnit.transform(new Point2D.Double(x, y), null);
    Point2D b = toUnit.transform(new Point2D.Double(to[0], to[1]), null);
    double half = a.distance(b) / 2;
    double radius = Math.max(1, half);
    double height = Math.sqrt(Math.max(0, radius * radius - half * half));
    for (int side = -1; side <= 1; side += 2) {
      double cx = (a.getX() + b.getX()) / 2 - side * height * (b.getY() - a.getY()) / (2 * half);
      double cy = (a.getY() + b.getY()) / 2 + side * height * (b.getX() - a.getX()) / (2 * half);
      double from = Math.atan2(a.getY() - cy, a.getX() - cx);
      double turn = Math.atan2(b.getY() - cy, b.getX() - cx) - from;
      turn = sweep == turn > 0 ? turn : turn + (sweep ? 2 : -2) * Math.PI;
      if (Math.abs(turn) > Math.PI == large || height == 0) {
        chords(toUnit, new double[] {cx, cy, radius, from, turn});
        break;
      }
    }
    line(to[0], to[1]);
  }

  private void chords(AffineTransform toUnit, double[] arc) {
    int n = (int) Math.ceil(Math.abs(arc[4]) / (2 * Math.PI) * CHORDS_PER_TURN);
    try {
      for (int i = 1; i < n; i++) {
        double angle = arc[3] + arc[4] * i / n;
        Point2D unit =
            new Point2D.Double(
                arc[0] + arc[2] * Math.cos(angle), arc[1] + arc[2] * Math.sin(angle));
        Point2D p = toUnit.inverseTransform(unit, null);
        shape.lineTo(p.getX(), p.getY());
      }
    } catch (java.awt.geom.NoninvertibleTransformException e) {
      throw new AssertionError(e);
    }
  }

  @Override
  public void movetoRel(float dx, float dy) {
    move(x + d(dx), y + d(dy));
  }

  @Override
  public void movetoAbs(float ax, float ay) {
    move(d(ax), d(ay));
  }

  @Override
  public void closePath() {
    shape.closePath();
    at(startX, startY, 'Z');
  }

  @Override
  public void linetoRel(float dx, float dy) {
    line(x + d(dx), y + d(dy));
  }

  @Override
  public void linetoAbs(float ax, float ay) {
    line(d(ax), d(ay));
  }

  @Override
  public void linetoHorizontalRel(float dx) {
    line(x + d(dx), y);
  }

  @Override
  public void linetoHorizontalAbs(float ax) {
    line(d(ax), y);
  }

  @Override
  public void linetoVerticalRel(float dy) {
    line(x, y + d(dy));
  }

  @Override
  public void linetoVerticalAbs(float ay) {
    line(x, d(ay));
  }

  @Override
  public void curvetoCubicRel(float a, float b, float c, float e, float dx, float dy) {
    cubic(x + d(a), y + d(b), x + d(c), y + d(e), x + d(dx), y + d(dy));
  }

  @Override
  public void curvetoCubicAbs(float a, float b, float c, float e, float ax, float ay) {
    cubic(d(a), d(b), d(c), d(e), d(ax), d(ay));
  }

  @Override
  public void curvetoCubicSmoothRel(float c, float e, float dx, float dy) {
    cubic(smoothX('C'), smoothY('C'), x + d(c), y + d(e), x + d(dx), y + d(dy));
  }

  @Override
  public void curvetoCubicSmoothAbs(float c, float e, float ax, float ay) {
    cubic(smoothX('C'), smoothY('C'), d(c), d(e), d(ax), d(ay));
  }

  @Override
  public void curvetoQuadraticRel(float a, float b, float dx, float dy) {
    quad(x + d(a), y + d(b), x + d(dx), y + d(dy));
  }

  @Override
  public void curvetoQuadraticAbs(float a, float b, float ax, float ay) {
    quad(d(a), d(b), d(ax), d(ay));
  }

  @Override
  public void curvetoQuadraticSmoothRel(float dx, float dy) {
    quad(smoothX('Q'), smoothY('Q'), x + d(dx), y + d(dy));
  }

  @Override
  public void curvetoQuadraticSmoothAbs(float ax, float ay) {
    quad(smoothX('Q'), smoothY('Q'), d(ax), d(ay));
  }

  @Override
  public void arcRel(
      float a, float b, float turn, boolean large, boolean sweep, float dx, float dy) {
    arc(new double[] {d(a), d(b)}, d(turn), large, sweep, new double[] {x + d(dx), y + d(dy)});
  }

  @Override
  public void arcAbs(
      float a, float b, float turn, boolean large, boolean sweep, float ax, float ay) {
    arc(new double[] {d(a), d(b)}, d(turn), large, sweep, new double[] {d(ax), d(ay)});
  }
}
