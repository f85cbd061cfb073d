package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Turns closed polylines, crossing themselves and each other as they like, into an area.
 *
 * <p>The lines are cut where they cross; each face of the net is kept if its winding number says
 * so.
 */
final class FillRuleResolver {
  private FillRuleResolver() {}

  static Region resolve(List<List<Point>> rings, FillRule rule) {
    List<Coordinate[]> closed = new ArrayList<>();
    List<LineString> lines = new ArrayList<>();
    for (List<Point> ring : rings) {
      Coordinate[] c = closedCoordinates(ring);
      if (c.length >= 4) {
        closed.add(c);
        lines.add(Region.factory().createLineString(c));
      }
    }
    if (lines.isEmpty()) {
      return Region.EMPTY;
    }
    Geometry noded =
        OverlayNGRobust.overlay(
            Region.factory().createMultiLineString(lines.toArray(LineString[]::new)),
            Region.factory().createLineString(),
            org.locationtech.jts.operation.overlayng.OverlayNG.UNION);
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(noded);
    List<Geometry> kept = new ArrayList<>();
    @SuppressWarnings("unchecked") // the library's collection is raw, its elements are polygons
    Collection<Polygon> faces = polygonizer.getPolygons();
    for (Polygon face : faces) {
      if (isInside(face, closed, rule)) {
        kept.add(face);
      }
    }
    return kept.isEmpty() ? Region.EMPTY : Region.ofPolygons(OverlayNGRobust.union(kept));
  }

  private static boolean isInside(Polygon face, List<Coordinate[]> rings, FillRule rule) {
    Coordinate inside = face.getInteriorPoint().getCoordinate();
    int winding = 0;
    for (Coordinate[] ring : rings) {
      winding += winding(inside, ring);
    }
    return rule == FillRule.NONZERO ? winding != 0 : winding % 2 != 0;
  }

  /** The number of times that a ring goes round a point, counter-clockwise counted positive. */
  private static int winding(Coordinate p, Coordinate[] ring) {
    Envelope bounds = new Envelope();
    int winding = 0;
    for (int i = 1; i < ring.length; i++) {
      Coordinate a = ring[i - 1];
      Coordinate b = ring[i];
      bounds.init(a, b);
      if (p.y < bounds.getMinY() || p.y >= bounds.getMaxY()) {
        continue;
      }
      int side = org.locationtech.jts.algorithm.Orientation.index(a, b, p);
      if (b.y > a.y && side > 0) {
        winding++;
      } else if (b.y < a.y && side < 0) {
        winding--;
      }
    }
    return winding;
  }

  private static Coordinate[] closedCoordinates(List<Point> ring) {
    List<Coordinate> c = new ArrayList<>(ring.size() + 1);
    for (Point p : ring) {
      Coordinate next = new Coordinate(p.x(), p.y());
      if (c.isEmpty() || !c.get(c.size() - 1).equals2D(next)) {
        c.add(next);
      }
    }
    if (!c.isEmpty() && !c.get(0).equals2D(c.get(c.size() - 1))) {
      c.add(c.get(0).copy());
    }
    return c.toArray(Coordinate[]::new);
  }
}
