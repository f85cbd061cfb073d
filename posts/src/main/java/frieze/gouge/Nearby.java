package frieze.gouge;

import frieze.curve.Bounds;
import frieze.curve.Point;
import java.util.List;

/**
 * The intent that a place belongs to: one that holds it, else the nearest within {@link #FAR_MM}.
 *
 * @param name empty if none is near
 * @param sidewaysMm how far outside of it the place lies; 0 inside or if none is near
 */
record Nearby(String name, double sidewaysMm) {
  /** Farther than this from a place, an intent has nothing to do with it. */
  private static final double FAR_MM = 10;

  static Nearby of(List<Wish> wishes, Point place) {
    String name = "";
    double nearest = FAR_MM;
    for (Wish wish : wishes) {
      Edges near = wish.edges().near(Bounds.of(place), FAR_MM);
      double outside = wish.outside(place, near.distance(place.x(), place.y()));
      if (outside < nearest) {
        nearest = outside;
        name = wish.intent().name();
      }
    }
    return new Nearby(name, name.isEmpty() ? 0 : nearest);
  }
}
