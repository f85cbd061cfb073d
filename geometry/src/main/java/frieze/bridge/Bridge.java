package frieze.bridge;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.region.Region;
import java.util.List;

/**
 * A strip of metal that ties an island to what holds it.
 *
 * @param line its centre line across the gap, from the island's edge to the edge of what holds it
 * @param area what it adds to the material, reaching a little into the metal at both ends
 * @param alongVein whether it follows a vein of the motif
 */
public record Bridge(List<Point> line, double widthMm, Region area, boolean alongVein) {
  public Bridge {
    line = List.copyOf(line);
    if (line.size() < 2) {
      throw new IllegalArgumentException("a bridge needs two ends");
    }
  }

  /** Where it leaves the island. */
  public Point atIsland() {
    return line.get(0);
  }

  /** Where it reaches what holds it. */
  public Point atHold() {
    return line.get(line.size() - 1);
  }

  /** Its length across the gap. */
  public double lengthMm() {
    double sum = 0;
    for (int i = 1; i < line.size(); i++) {
      sum += line.get(i - 1).distance(line.get(i));
    }
    return sum;
  }

  /** The same bridge elsewhere; the map must keep lengths. */
  public Bridge transformed(Affine map) {
    List<Point> moved = line.stream().map(map::apply).toList();
    return new Bridge(moved, widthMm, area.transformed(map), alongVein);
  }
}
