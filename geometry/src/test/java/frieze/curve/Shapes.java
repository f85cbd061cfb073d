package frieze.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Outlines with known properties, for tests. */
public final class Shapes {
  private Shapes() {}

  public static Path ellipse(double a, double b) {
    Point s = new Point(a, 0);
    Point u = new Point(a, 0);
    Point v = new Point(0, b);
    return new Path(List.of(new EllipticArc(s, s, Point.ORIGIN, u, v, 0, 2 * Math.PI)), true);
  }

  /** Two circles of one radius, centres apart on the X axis, and what they share. */
  public static Path leaf(double radius, double centresApart) {
    double c = centresApart / 2;
    double half = StrictMath.acos(c / radius);
    Arc right = Arc.polar(new Point(-c, 0), radius, -half, 2 * half);
    Point top = right.end();
    Point bottom = right.start();
    return new Path(List.of(right, new Arc(top, bottom, new Point(c, 0), 2 * half)), true);
  }

  public static Path rectangle(double width, double height) {
    return polygon(0, 0, width, 0, width, height, 0, height);
  }

  /** An equilateral triangle. */
  public static Path triangle(double side) {
    return polygon(0, 0, side, 0, side / 2, side * Math.sqrt(3) / 2);
  }

  /** An L, 40 by 30, with arms 10 wide. */
  public static Path ell() {
    return polygon(0, 0, 40, 0, 40, 10, 10, 10, 10, 30, 0, 30);
  }

  public static Path polygon(double... xy) {
    return Path.polyline(points(xy), true);
  }

  public static List<Point> points(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return points;
  }

  /** A rectangle from the origin with its corners rounded. */
  public static Path roundedRectangle(double width, double height, double radius) {
    List<Segment> s = new ArrayList<>();
    double[] x = {width - radius, radius, radius, width - radius};
    double[] y = {height - radius, height - radius, radius, radius};
    for (int i = 0; i < 4; i++) {
      Arc arc = Arc.polar(new Point(x[i], y[i]), radius, i * Math.PI / 2, Math.PI / 2);
      if (i > 0) {
        Point from = s.get(s.size() - 1).end();
        Point to = arc.start();
        s.add(new Line(from, to));
      }
      s.add(arc);
    }
    Point from = s.get(s.size() - 1).end();
    Point to = s.get(0).start();
    s.add(new Line(from, to));
    return new Path(s, true);
  }

  /**
   * A closed curve of smoothly joined cubics through points at random distances from the origin.
   *
   * @param lobes how many cubics
   */
  public static Path blob(SplittableRandom random, int lobes, double sizeMm) {
    Point[] p = new Point[lobes];
    for (int i = 0; i < lobes; i++) {
      double r = sizeMm / 2 * (0.4 + 0.6 * random.nextDouble());
      p[i] = Point.polar(Point.ORIGIN, r, 2 * Math.PI * i / lobes);
    }
    List<Segment> s = new ArrayList<>();
    for (int i = 0; i < lobes; i++) {
      Point before = p[(i + lobes - 1) % lobes];
      Point from = p[i];
      Point to = p[(i + 1) % lobes];
      Point after = p[(i + 2) % lobes];
      Point c1 = from.plus(to.minus(before).times(1.0 / 6));
      Point c2 = to.minus(after.minus(from).times(1.0 / 6));
      s.add(new Cubic(from, c1, c2, to));
    }
    return new Path(s, true);
  }

  /** A polygon that does not cross itself, star-shaped about the origin, with sharp corners. */
  public static List<Point> star(SplittableRandom random, int corners, double sizeMm) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double r = sizeMm / 2 * (0.2 + 0.8 * random.nextDouble());
      points.add(
          Point.polar(Point.ORIGIN, r, 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners));
    }
    return points;
  }
}
