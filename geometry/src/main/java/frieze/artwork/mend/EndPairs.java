package frieze.artwork.mend;

import frieze.curve.Path;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Pairs the ends of open paths, nearest first.
 *
 * <p>End {@code 2 i} is the start of path i, end {@code 2 i + 1} its end. Cost: O(n log n), unless
 * very many ends lie within the gap of each other; then each is compared with the first few.
 */
final class EndPairs {
  static final int FREE = -1;

  /** Ends compared with each one, at most. */
  private static final int MOST_NEAR = 64;

  /** Cells of the search grid are never smaller than this. */
  private static final double LEAST_CELL_MM = 1e-6;

  private final List<Point> ends = new ArrayList<>();
  private final int[] partner;
  private final Map<Cell, List<Integer>> grid = new HashMap<>();
  private final double cellMm;

  private record Cell(long x, long y) {}

  private record Pair(int a, int b, double distanceMm) {}

  private EndPairs(List<Path> open, double gapMm) {
    this.cellMm = Math.max(gapMm, LEAST_CELL_MM);
    for (Path path : open) {
      ends.add(path.start());
      ends.add(path.end());
    }
    this.partner = new int[ends.size()];
    for (int i = 0; i < partner.length; i++) {
      partner[i] = FREE;
      grid.computeIfAbsent(cell(ends.get(i)), c -> new ArrayList<>()).add(i);
    }
  }

  /** The partner of each end, or {@link #FREE}. */
  static int[] of(List<Path> open, double gapMm) {
    EndPairs pairs = new EndPairs(open, gapMm);
    pairs.match(gapMm);
    return pairs.partner;
  }

  private Cell cell(Point p) {
    return new Cell((long) Math.floor(p.x() / cellMm), (long) Math.floor(p.y() / cellMm));
  }

  private void match(double gapMm) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      near(i, gapMm, pairs);
    }
    pairs.sort(
        Comparator.comparingDouble(Pair::distanceMm)
            .thenComparingInt(Pair::a)
            .thenComparingInt(Pair::b));
    for (Pair pair : pairs) {
      if (partner[pair.a()] == FREE && partner[pair.b()] == FREE) {
        partner[pair.a()] = pair.b();
        partner[pair.b()] = pair.a();
      }
    }
  }

  private void near(int i, double gapMm, List<Pair> into) {
    Point p = ends.get(i);
    Cell at = cell(p);
    int compared = 0;
    for (long dx = -1; dx <= 1; dx++) {
      for (long dy = -1; dy <= 1; dy++) {
        for (int j : grid.getOrDefault(new Cell(at.x() + dx, at.y() + dy), List.of())) {
          double distance = p.distance(ends.get(j));
          if (j > i && distance <= gapMm) {
            into.add(new Pair(i, j, distance));
            compared++;
            if (compared > MOST_NEAR) {
              return;
            }
          }
        }
      }
    }
  }
}
