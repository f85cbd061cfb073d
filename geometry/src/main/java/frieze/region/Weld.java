package frieze.region;

import frieze.curve.Point;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * Makes points that are apart by rounding one point, so that shapes drawn edge to edge meet.
 *
 * <p>A point is replaced by the first one met within a nanometre. Cost: O(1) each.
 */
final class Weld {
  private static final double SAME_MM = 1e-6;

  private record Cell(long column, long row) {}

  private final Map<Cell, Coordinate> seen = new HashMap<>();

  /** The point, or the one that stands for it. */
  Coordinate of(Point p) {
    long column = (long) Math.floor(p.x() / SAME_MM);
    long row = (long) Math.floor(p.y() / SAME_MM);
    for (long c = column - 1; c <= column + 1; c++) {
      for (long r = row - 1; r <= row + 1; r++) {
        @Nullable Coordinate near = seen.get(new Cell(c, r));
        if (near != null && Math.hypot(near.x - p.x(), near.y - p.y()) <= SAME_MM) {
          return near;
        }
      }
    }
    Coordinate at = new Coordinate(p.x(), p.y());
    seen.putIfAbsent(new Cell(column, row), at);
    return at;
  }
}
