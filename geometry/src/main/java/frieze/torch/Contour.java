package frieze.torch;

import frieze.curve.ArcFitter;
import frieze.curve.Path;
import frieze.curve.Tolerances;
import frieze.plan.cut.Track;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A closed way of the torch's axis, half a kerf from the edge of the part on the side of the scrap.
 *
 * @param track in the direction of cutting
 * @param hole whether the part lies around it
 * @param inside what the track encloses
 * @param partOnRight whether the part lies on the right of travel
 */
record Contour(String name, Track track, boolean hole, Region inside, boolean partOnRight) {

  /**
   * Makes the contour of a ring whose area, the grown part, lies on its left.
   *
   * @param partOnRight whether the part shall lie on the right of travel
   */
  static Contour of(String name, Ring ring, boolean partOnRight, Tolerances tolerances) {
    List<frieze.curve.Point> points = new ArrayList<>(ring.points());
    Region inside = Region.ofRing(points);
    if (partOnRight) {
      Collections.reverse(points);
    }
    Path path = ArcFitter.fit(points, true, tolerances.arcFitMm());
    return new Contour(name, new Track(path), ring.hole(), inside, partOnRight);
  }

  /** The larger side of its box. */
  double extentMm() {
    return Math.max(inside.bounds().width(), inside.bounds().height());
  }
}
