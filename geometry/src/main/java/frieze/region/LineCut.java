package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Cuts polylines where they cross the border of a region.
 *
 * <p>Cost: O(n log n) for the border once, O(log n) and what is crossed for each edge of a line.
 */
final class LineCut {
  /** Crossings nearer than this along an edge are one. */
  private static final double SAME_SHARE = 1e-12;

  private final STRtree edges = new STRtree();
  private final Region.Locator inside;

  LineCut(Region region) {
    this.inside = region.locator();
    Geometry g = region.geometry();
    for (int i = 0; i < g.getNumGeometries(); i++) {
      Polygon polygon = (Polygon) g.getGeometryN(i);
      add(polygon.getExteriorRing());
      for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
        add(polygon.getInteriorRingN(h));
      }
    }
  }

  private void add(LineString ring) {
    Coordinate[] c = ring.getCoordinates();
    for (int i = 1; i < c.length; i++) {
      edges.insert(new Envelope(c[i - 1], c[i]), new Coordinate[] {c[i - 1], c[i]});
    }
  }

  /** The stretches inside, in the line's order and direction. */
  List<List<Point>> inside(List<Point> line) {
    List<List<Point>> stretches = new ArrayList<>();
    boolean going = false;
    for (int i = 1; i < line.size(); i++) {
      List<Point> stops = stops(line.get(i - 1), line.get(i));
      for (int k = 1; k < stops.size(); k++) {
        boolean in = inside.contains(stops.get(k - 1).towards(stops.get(k), 0.5));
        if (in && !going) {
          stretches.add(new ArrayList<>(List.of(stops.get(k - 1))));
        }
        if (in) {
          stretches.get(stretches.size() - 1).add(stops.get(k));
        }
        going = in;
      }
    }
    return stretches;
  }

  /** An edge's ends, and between them, in order, where it crosses the border. */
  private List<Point> stops(Point a, Point b) {
    List<Double> shares = new ArrayList<>();
    Envelope around = new Envelope(a.x(), b.x(), a.y(), b.y());
    for (Object found : edges.query(around)) {
      Coordinate[] edge = (Coordinate[]) found;
      crossing(a, b.minus(a), edge, shares);
    }
    shares.sort(null);
    List<Point> stops = new ArrayList<>(List.of(a));
    double last = 0;
    for (double share : shares) {
      if (share - last > SAME_SHARE && 1 - share > SAME_SHARE) {
        stops.add(a.towards(b, share));
        last = share;
      }
    }
    stops.add(b);
    return stops;
  }

  private static void crossing(Point a, Point along, Coordinate[] edge, List<Double> shares) {
    Point from = new Point(edge[0].x, edge[0].y);
    Point to = new Point(edge[1].x, edge[1].y);
    Point side = to.minus(from);
    double det = along.cross(side);
    if (det == 0) {
      shares.add(from.minus(a).dot(along) / along.dot(along));
      shares.add(to.minus(a).dot(along) / along.dot(along));
      return;
    }
    double u = from.minus(a).cross(along) / det;
    if (u >= -SAME_SHARE && u <= 1 + SAME_SHARE) {
      shares.add(from.minus(a).cross(side) / det);
    }
  }
}
