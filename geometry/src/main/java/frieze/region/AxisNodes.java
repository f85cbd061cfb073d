package frieze.region;

import frieze.curve.Point;
import org.jspecify.annotations.Nullable;

/** Finds the disc that each triangle of the boundary samples stands for. */
final class AxisNodes {
  /** A circumcentre nearer to the boundary than this part of the radius is not to be trusted. */
  private static final double TRUSTED = 0.9;

  /** Three walls whose directions span less than this do not meet in a point. */
  private static final double LEAST_SPAN = 0.01;

  /** Three walls meet where their distances and the nearest agree to this. */
  private static final double AGREE_MM = 1e-6;

  /** Walls that face the same way may be overlapped by this. */
  private static final double SLACK_MM = 5e-4;

  private static final int MOST_STEPS = 20;
  private static final double DONE_MM = 1e-11;

  private final AxisSamples s;
  private final AxisTriangles triangles;
  private final BoundaryDistance boundary;
  private final Retraction retraction;
  private final double toleranceMm;

  AxisNodes(AxisSamples s, AxisTriangles triangles, BoundaryDistance boundary, double toleranceMm) {
    this.toleranceMm = toleranceMm;
    this.s = s;
    this.triangles = triangles;
    this.boundary = boundary;
    this.retraction = new Retraction(boundary);
  }

  Disc place(int triangle) {
    int[] v = triangles.corners.get(triangle);
    int[] across = triangles.neighbours.get(triangle);
    int open = 0;
    for (int neighbour : across) {
      open += neighbour == AxisTriangles.BORDER ? 0 : 1;
    }
    Point centre = circumcentre(v);
    double lacks = centre == null ? Double.NaN : lacks(v[0], centre);
    Point start = centre != null && lacks >= 0 ? centre : middleOfOpenSides(v, across, open);
    if (!boundary.contains(start)) {
      start = middle(v); // where rings touch, a side may run along the outside
    }
    Disc junction = open == 3 ? junction(v, start) : null;
    if (junction != null) {
      return junction;
    }
    Disc onto = retraction.onto(start);
    if (onto == null && !(lacks <= toleranceMm)) {
      onto = retraction.past(start, SLACK_MM);
    }
    return onto != null ? onto : retraction.at(start);
  }

  /** By how much a centre is nearer to the boundary than to a sample; NaN if it is not trusted. */
  private double lacks(int sample, Point centre) {
    double radius = Math.hypot(s.x[sample] - centre.x(), s.y[sample] - centre.y());
    double nearest = boundary.distance(centre);
    boolean trusted = nearest >= TRUSTED * radius && boundary.contains(centre);
    return trusted ? Math.max(0, radius - nearest) : Double.NaN;
  }

  private @Nullable Point circumcentre(int[] v) {
    double bx = s.x[v[1]] - s.x[v[0]];
    double by = s.y[v[1]] - s.y[v[0]];
    double cx = s.x[v[2]] - s.x[v[0]];
    double cy = s.y[v[2]] - s.y[v[0]];
    double d = 2 * (bx * cy - by * cx);
    double bb = bx * bx + by * by;
    double cc = cx * cx + cy * cy;
    double x = s.x[v[0]] + (cy * bb - by * cc) / d;
    double y = s.y[v[0]] + (bx * cc - cx * bb) / d;
    return Double.isFinite(x) && Double.isFinite(y) ? new Point(x, y) : null;
  }

  private Point middle(int[] v) {
    return new Point(
        (s.x[v[0]] + s.x[v[1]] + s.x[v[2]]) / 3, (s.y[v[0]] + s.y[v[1]] + s.y[v[2]]) / 3);
  }

  private Point middleOfOpenSides(int[] v, int[] across, int open) {
    double x = 0;
    double y = 0;
    for (int side = 0; side < 3; side++) {
      if (across[side] != AxisTriangles.BORDER || open == 0) {
        x += s.x[v[side]] + s.x[v[(side + 1) % 3]];
        y += s.y[v[side]] + s.y[v[(side + 1) % 3]];
      }
    }
    int sides = open == 0 ? 3 : open;
    return new Point(x / 2 / sides, y / 2 / sides);
  }

  /** The point equally far from the stretches of boundary at three samples, by Newton steps. */
  private @Nullable Disc junction(int[] v, Point start) {
    double x = start.x();
    double y = start.y();
    double[] nx = new double[3];
    double[] ny = new double[3];
    double[] d = new double[3];
    for (int step = 0; step < MOST_STEPS; step++) {
      for (int k = 0; k < 3; k++) {
        AxisSamples.Foot foot = s.footFrom(v[k], x, y);
        d[k] = Math.sqrt(foot.squared());
        nx[k] = (x - foot.x()) / d[k];
        ny[k] = (y - foot.y()) / d[k];
      }
      double ax = nx[0] - nx[2];
      double ay = ny[0] - ny[2];
      double bx = nx[1] - nx[2];
      double by = ny[1] - ny[2];
      double span = ax * by - ay * bx;
      if (!(Math.abs(span) > LEAST_SPAN)) {
        return null;
      }
      double dx = ((d[2] - d[0]) * by - (d[2] - d[1]) * ay) / span;
      double dy = ((d[2] - d[1]) * ax - (d[2] - d[0]) * bx) / span;
      x += dx;
      y += dy;
      if (Math.abs(dx) + Math.abs(dy) < DONE_MM) {
        return confirmed(new Point(x, y), d[0]);
      }
    }
    return null;
  }

  private @Nullable Disc confirmed(Point p, double expectedMm) {
    double nearest = boundary.distance(p);
    boolean agree = Math.abs(nearest - expectedMm) <= AGREE_MM && boundary.contains(p);
    return agree ? new Disc(p, nearest) : null;
  }
}
