package frieze.sheet;

import frieze.curve.Point;
import frieze.region.Region;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;

/** A picture that is drawn on, in pixels from its upper left corner. */
final class Canvas {
  private static final double ARROW_LONG = 11;
  private static final double ARROW_HALF = 3;

  private final BufferedImage image;
  private final Graphics2D g;
  private final Letters letters = Letters.load();

  Canvas(int width, int height) {
    image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
  }

  /** From a drawing's millimetres, Y up, to pixels. */
  record View(Point middle, double pxPerMm, double x, double y) {
    Point seen(Point p) {
      return new Point(x + (p.x() - middle.x()) * pxPerMm, y - (p.y() - middle.y()) * pxPerMm);
    }
  }

  void fill(Region region, View view, int rgb) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    region.rings().forEach(r -> append(path, r.points(), view, true));
    g.setColor(new Color(rgb));
    g.fill(path);
  }

  void polyline(List<Point> points, boolean closed, View view, double widthPx, int rgb) {
    Path2D path = new Path2D.Double();
    append(path, points, view, closed);
    g.setColor(new Color(rgb));
    g.setStroke(new BasicStroke((float) widthPx, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(path);
  }

  private static void append(Path2D path, List<Point> points, View view, boolean closed) {
    Point start = view.seen(points.get(0));
    path.moveTo(start.x(), start.y());
    for (Point point : points.subList(1, points.size())) {
      Point p = view.seen(point);
      path.lineTo(p.x(), p.y());
    }
    if (closed) {
      path.closePath();
    }
  }

  void line(Point a, Point b, double widthPx, int rgb) {
    g.setColor(new Color(rgb));
    g.setStroke(new BasicStroke((float) widthPx));
    g.draw(new Line2D.Double(a.x(), a.y(), b.x(), b.y()));
  }

  /** An arrowhead with its tip at a place. */
  void arrow(Point tip, Point direction, int rgb) {
    Point along = direction.times(1 / direction.norm());
    Point across = new Point(-along.y(), along.x()).times(ARROW_HALF);
    Point back = tip.minus(along.times(ARROW_LONG));
    Path2D head = new Path2D.Double();
    head.moveTo(tip.x(), tip.y());
    head.lineTo(back.plus(across).x(), back.plus(across).y());
    head.lineTo(back.minus(across).x(), back.minus(across).y());
    head.closePath();
    g.setColor(new Color(rgb));
    g.fill(head);
  }

  void circle(Point centre, double radius, double widthPx, int rgb) {
    g.setColor(new Color(rgb));
    g.setStroke(new BasicStroke((float) widthPx));
    g.draw(round(centre, radius));
  }

  /** Draws only within a circle. */
  void within(Point centre, double radius, Runnable drawing) {
    Shape before = g.getClip();
    g.setClip(round(centre, radius));
    drawing.run();
    g.setClip(before);
  }

  private static Shape round(Point c, double r) {
    return new Ellipse2D.Double(c.x() - r, c.y() - r, 2 * r, 2 * r);
  }

  void text(double x, double y, String text, double size) {
    put(text, size, AffineTransform.getTranslateInstance(x, y));
  }

  void centred(double x, double y, String text, double size) {
    text(x - letters.width(text, size) / 2, y, text, size);
  }

  /** A text that is read from the right, its middle at a place. */
  void upright(double x, double y, String text, double size) {
    AffineTransform place = AffineTransform.getTranslateInstance(x, y);
    place.rotate(-Math.PI / 2);
    place.translate(-letters.width(text, size) / 2, 0);
    put(text, size, place);
  }

  double width(String text, double size) {
    return letters.width(text, size);
  }

  private void put(String text, double size, AffineTransform place) {
    g.setColor(new Color(0x111111));
    g.fill(place.createTransformedShape(letters.outline(text, size)));
  }

  byte[] png() {
    return Png.write(image.getWidth(), image.getHeight(), (x, y) -> image.getRGB(x, y) & 0xffffff);
  }
}
