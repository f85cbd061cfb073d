package frieze.region;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Makes an area of rings that neither cross nor touch, by which ring lies in which. */
final class RingNesting {
  /** One ring: its sense, the rings around it, largest first, and the winding on both its sides. */
  private static final class Nested {
    final Coordinate[] ring;
    final Winding winding;
    final double area;
    int outside;
    int inside;
    boolean isOuter;
    final List<LinearRing> holes = new ArrayList<>();

    Nested(Coordinate[] ring) {
      this.ring = ring;
      this.winding = new Winding(ring);
      this.area = Area.ofRing(ring);
    }

    boolean holds(Nested other) {
      return winding.bounds().contains(other.winding.bounds())
          && winding.around(other.ring[0]) != 0;
    }
  }

  private RingNesting() {}

  static Region resolve(List<Coordinate[]> rings, FillRule rule) {
    List<Nested> largestFirst = new ArrayList<>();
    for (Coordinate[] ring : rings) {
      largestFirst.add(new Nested(ring));
    }
    largestFirst.sort((a, b) -> Double.compare(b.area, a.area));
    List<Nested> outer = new ArrayList<>();
    for (int i = 0; i < largestFirst.size(); i++) {
      place(largestFirst, i, rule, outer);
    }
    List<Polygon> polygons = new ArrayList<>();
    for (Nested n : outer) {
      polygons.add(
          Region.factory()
              .createPolygon(
                  Region.factory().createLinearRing(n.ring), n.holes.toArray(LinearRing[]::new)));
    }
    return Region.ofPolygons(Region.factory().createMultiPolygon(polygons.toArray(Polygon[]::new)));
  }

  /** Finds the winding inside a ring; a ring between filled and empty is a border. */
  private static void place(List<Nested> all, int i, FillRule rule, List<Nested> outer) {
    Nested ring = all.get(i);
    Nested border = ring;
    for (int k = 0; k < i; k++) {
      if (all.get(k).holds(ring)) {
        ring.outside += all.get(k).inside - all.get(k).outside;
        if (all.get(k).isOuter) {
          border = all.get(k);
        }
      }
    }
    ring.inside = ring.outside + (Orientation.isCCW(ring.ring) ? 1 : -1);
    boolean filledOutside = FillRuleResolver.isInside(ring.outside, rule);
    boolean filledInside = FillRuleResolver.isInside(ring.inside, rule);
    if (filledInside && !filledOutside) {
      ring.isOuter = true;
      outer.add(ring);
    } else if (filledOutside && !filledInside) {
      border.holes.add(Region.factory().createLinearRing(ring.ring));
    }
  }
}
