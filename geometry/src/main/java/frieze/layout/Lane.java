package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Point;
import java.util.List;

/**
 * Where a straight row of motifs runs on a panel: on a panel that leans, midway between its lower
 * and upper edge, from its left edge to its right one.
 *
 * @param band the row's band less the inset, upright
 * @param toPanel from there to the panel; a turn and a shift
 */
record Lane(Bounds band, Affine toPanel) {
  private static final double FLATTEN_MM = 0.005;

  /** A panel whose row is off by less is upright: half of what flattening may do. */
  private static final double UPRIGHT_MM = 0.01;

  /** The edges are met at these shares of the length. */
  private static final double NEAR_LEFT = 0.25;

  private static final double NEAR_RIGHT = 0.75;

  /** Whether the panel leans, so that its bounds do not tell what lies inside. */
  boolean leans() {
    return !toPanel.equals(Affine.IDENTITY);
  }

  static Lane of(Panel panel, double insetMm) {
    Bounds bounds = panel.whole().bounds();
    List<Point> ring = Flattener.flatten(panel.whole(), FLATTEN_MM);
    Span left = upAt(ring, bounds.minX() + NEAR_LEFT * bounds.width());
    Span right = upAt(ring, bounds.minX() + NEAR_RIGHT * bounds.width());
    Point from = left.middle();
    Point along = right.middle().minus(from);
    Affine turn = Affine.rotation(-along.angleRad());
    Affine toRow = Affine.translation(-from.x(), -from.y()).then(turn);
    Span row = alongX(ring.stream().map(toRow::apply).toList());
    double height = Math.min(left.length(), right.length()) * StrictMath.cos(along.angleRad());
    Point start = toRow.inverse().apply(row.from());
    Point end = toRow.inverse().apply(row.to());
    boolean upright =
        start.distance(new Point(bounds.minX(), bounds.centre().y())) < UPRIGHT_MM
            && end.distance(new Point(bounds.maxX(), bounds.centre().y())) < UPRIGHT_MM;
    if (upright) {
      return new Lane(bounds.grown(-insetMm), Affine.IDENTITY);
    }
    Bounds band = new Bounds(row.from().x(), -height / 2, row.to().x(), height / 2).grown(-insetMm);
    return new Lane(band, toRow.inverse());
  }

  /** From the lowest to the highest point of a panel at places along X. */
  static List<Span> upAt(Panel panel, List<Double> xs) {
    List<Point> ring = Flattener.flatten(panel.whole(), FLATTEN_MM);
    return xs.stream().map(x -> upAt(ring, x)).toList();
  }

  /** Two places on the outline, one across from the other. */
  record Span(Point from, Point to) {
    Point middle() {
      return from.towards(to, 0.5);
    }

    double length() {
      return from.distance(to);
    }
  }

  /** From the lowest to the highest point of an outline at a place along X. */
  private static Span upAt(List<Point> ring, double x) {
    Span span = alongX(ring.stream().map(p -> new Point(p.y(), x - p.x())).toList());
    return new Span(new Point(x, span.from().x()), new Point(x, span.to().x()));
  }

  /** From the leftmost to the rightmost point of an outline on the X axis. */
  private static Span alongX(List<Point> ring) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      if ((a.y() > 0) != (b.y() > 0)) {
        double x = a.x() + (b.x() - a.x()) * a.y() / (a.y() - b.y());
        least = Math.min(least, x);
        most = Math.max(most, x);
      }
    }
    return new Span(new Point(least, 0), new Point(most, 0));
  }
}
