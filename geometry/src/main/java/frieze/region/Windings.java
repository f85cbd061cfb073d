package frieze.region;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * How often many rings together go round points.
 *
 * <p><i>Cost:</i> O(n log n) for n rings; a point costs O(log n) and the edges of the rings whose
 * bounds it is in.
 */
final class Windings {
  private final STRtree rings = new STRtree();

  private static final class Sum {
    private int turns;
  }

  /** Rings with their first coordinate repeated at the end. */
  Windings(List<Coordinate[]> closed) {
    for (Coordinate[] ring : closed) {
      Winding winding = new Winding(ring);
      rings.insert(winding.bounds(), winding);
    }
  }

  /** The number of turns of all rings round a point, counter-clockwise counted positive. */
  int around(Coordinate p) {
    Sum sum = new Sum();
    rings.query(new Envelope(p), ring -> sum.turns += ((Winding) ring).around(p));
    return sum.turns;
  }
}
