package frieze.region;

import frieze.curve.Point;
import java.util.List;

/**
 * A closed polyline that does not cross itself.
 *
 * @param points at least three, without the first one repeated at the end; counter-clockwise for an
 *     outer ring, clockwise for a hole, so that the area lies on the left
 */
public record Ring(List<Point> points, boolean hole) {
  public Ring {
    points = List.copyOf(points);
    if (points.size() < 3) {
      throw new IllegalArgumentException("a ring needs at least 3 points but has " + points.size());
    }
  }

  public double length() {
    double sum = 0;
    for (int i = 0; i < points.size(); i++) {
      sum += points.get(i).distance(points.get((i + 1) % points.size()));
    }
    return sum;
  }
}
