package frieze.artwork.look;

import frieze.curve.Point;
import frieze.region.BoundaryDistance;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * What a round tool leaves standing that may touch no wall.
 *
 * @param left the places that it does not reach, the largest first
 * @param shortMm how far short of the deepest of them it stops; infinite if it enters nowhere
 */
public record ToolReach(double diameterMm, List<Region> left, double shortMm) {
  private static final double OFFSET_MM = 0.002;

  /** What is thinner than this is the rounding of offsets. */
  private static final double CRUMB_MM = 0.006;

  public ToolReach {
    left = List.copyOf(left);
  }

  /** Clears an area, as for a recess. */
  public static ToolReach within(Region area, double diameterMm) {
    double r = diameterMm / 2;
    Region centres = Offset.offset(area, -r, OFFSET_MM);
    return of(diameterMm, area, Offset.offset(centres, r, OFFSET_MM));
  }

  /** Clears all around an area and its holes, as to cut it out or to leave it raised. */
  public static ToolReach around(Region area, double diameterMm) {
    double r = diameterMm / 2;
    Region standing = Offset.offset(Offset.offset(area, r, OFFSET_MM), -r, OFFSET_MM);
    List<Region> places = places(standing.minus(area));
    return new ToolReach(diameterMm, places, deepest(places, standing));
  }

  private static ToolReach of(double diameterMm, Region area, Region cleared) {
    List<Region> places = places(area.minus(cleared));
    return new ToolReach(diameterMm, places, deepest(places, cleared));
  }

  /** How far the farthest corner of all places is from the edge of what the tool clears. */
  private static double deepest(List<Region> places, Region edge) {
    if (places.isEmpty() || edge.isEmpty()) {
      return places.isEmpty() ? 0 : Double.POSITIVE_INFINITY;
    }
    BoundaryDistance distance = BoundaryDistance.of(edge);
    double deepest = 0;
    for (Region place : places) {
      for (Ring ring : place.rings()) {
        for (Point p : ring.points()) {
          deepest = Math.max(deepest, distance.distance(p));
        }
      }
    }
    return deepest;
  }

  /** The area of all that is left. */
  public double leftMm2() {
    return left.stream().mapToDouble(Region::area).sum();
  }

  private static List<Region> places(Region left) {
    List<Region> places = new ArrayList<>();
    for (Region part : left.parts()) {
      if (2 * part.area() > CRUMB_MM * part.perimeter()) {
        places.add(part);
      }
    }
    places.sort((a, b) -> Double.compare(b.area(), a.area()));
    return places;
  }
}
