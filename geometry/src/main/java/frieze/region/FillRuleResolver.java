package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/**
 * Turns closed polylines, crossing themselves and each other as they like, into an area.
 *
 * <p>If nothing crosses or touches, each ring is a border or not by its nesting alone. Otherwise
 * the lines are cut where they cross, and each face of the net is kept if its winding number says
 * so. Ends that miss each other by rounding are welded first. Cost: O(n log n) for rings apart, and
 * about ten times that when they cross; each face costs the rings that it may be in.
 */
final class FillRuleResolver {
  private FillRuleResolver() {}

  static Region resolve(List<List<Point>> rings, FillRule rule) {
    List<Coordinate[]> closed = new ArrayList<>();
    Weld weld = new Weld();
    for (List<Point> ring : rings) {
      Coordinate[] c = closedCoordinates(ring, weld);
      if (c.length >= 4) {
        closed.add(c);
      }
    }
    if (closed.isEmpty()) {
      return Region.EMPTY;
    }
    MultiLineString lines =
        Region.factory()
            .createMultiLineString(
                closed.stream()
                    .map(c -> (LineString) Region.factory().createLinearRing(c))
                    .toArray(LineString[]::new));
    return new IsSimpleOp(lines).isSimple()
        ? RingNesting.resolve(closed, rule)
        : resolveCrossing(lines, closed, rule);
  }

  private static Region resolveCrossing(
      MultiLineString lines, List<Coordinate[]> closed, FillRule rule) {
    Geometry noded =
        OverlayNGRobust.overlay(lines, Region.factory().createLineString(), OverlayNG.UNION);
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(noded);
    Windings windings = new Windings(closed);
    List<Geometry> kept = new ArrayList<>();
    @SuppressWarnings("unchecked") // the library's collection is raw, its elements are polygons
    Collection<Polygon> faces = polygonizer.getPolygons();
    for (Polygon face : faces) {
      Coordinate inside = face.getInteriorPoint().getCoordinate();
      if (isInside(windings.around(inside), rule)) {
        kept.add(face);
      }
    }
    return kept.isEmpty() ? Region.EMPTY : Region.ofPolygons(OverlayNGRobust.union(kept));
  }

  static boolean isInside(int winding, FillRule rule) {
    return rule == FillRule.NONZERO ? winding != 0 : winding % 2 != 0;
  }

  private static Coordinate[] closedCoordinates(List<Point> ring, Weld weld) {
    List<Coordinate> c = new ArrayList<>(ring.size() + 1);
    @Nullable Coordinate last = null;
    for (Point p : ring) {
      Coordinate next = weld.of(p).copy();
      if (last == null || !last.equals2D(next)) {
        c.add(next);
        last = next;
      }
    }
    if (last != null && !c.get(0).equals2D(last)) {
      c.add(c.get(0).copy());
    }
    return c.toArray(Coordinate[]::new);
  }
}
