package frieze.region;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** How often one ring goes round points. Cost: O(n) a point, nothing outside the ring's bounds. */
final class Winding {
  private final Coordinate[] ring;
  private final Envelope bounds;

  /** A ring with its first coordinate repeated at the end. */
  Winding(Coordinate[] ring) {
    this.ring = ring;
    this.bounds = new Envelope();
    for (Coordinate c : ring) {
      bounds.expandToInclude(c);
    }
  }

  Envelope bounds() {
    return bounds;
  }

  /** The number of turns round a point, counter-clockwise counted positive. */
  int around(Coordinate p) {
    if (!bounds.contains(p)) {
      return 0;
    }
    int winding = 0;
    for (int i = 1; i < ring.length; i++) {
      Coordinate a = ring[i - 1];
      Coordinate b = ring[i];
      if (a.y <= p.y) {
        if (b.y > p.y && Orientation.index(a, b, p) > 0) {
          winding++;
        }
      } else if (b.y <= p.y && Orientation.index(a, b, p) < 0) {
        winding--;
      }
    }
    return winding;
  }
}
