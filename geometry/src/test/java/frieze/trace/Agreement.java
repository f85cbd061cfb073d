package frieze.trace;

import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Distances between traced and true outlines, both ways, at dense samples. */
final class Agreement {
  private static final double STEP_MM = 0.1;
  private static final double CELL_MM = 1;

  /** Sorted. */
  private final double[] away;

  private Agreement(double[] away) {
    this.away = away;
    Arrays.sort(away);
  }

  static Agreement between(List<List<Point>> truth, List<List<Point>> traced) {
    Grid toTruth = new Grid(truth);
    Grid toTraced = new Grid(traced);
    List<Double> all = new ArrayList<>();
    samples(traced).forEach(p -> all.add(toTruth.distance(p)));
    samples(truth).forEach(p -> all.add(toTraced.distance(p)));
    return new Agreement(all.stream().mapToDouble(d -> d).toArray());
  }

  static List<List<Point>> flat(List<Path> paths) {
    return paths.stream().map(p -> Flattener.flatten(p, 0.0005)).toList();
  }

  double share(double withinMm) {
    int at = Arrays.binarySearch(away, withinMm);
    int count = at < 0 ? -at - 1 : at + 1;
    return (double) count / away.length;
  }

  double percentile(double share) {
    return away[(int) Math.min(away.length - 1, share * away.length)];
  }

  double worst() {
    return away[away.length - 1];
  }

  static Agreement together(List<Agreement> several) {
    return new Agreement(several.stream().flatMapToDouble(a -> Arrays.stream(a.away)).toArray());
  }

  static List<Point> samples(List<List<Point>> rings) {
    List<Point> samples = new ArrayList<>();
    for (List<Point> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Point a = ring.get(i);
        Point b = ring.get((i + 1) % ring.size());
        int n = Math.max(1, (int) Math.ceil(a.distance(b) / STEP_MM));
        // Short chords count by their length, so that curves weigh no more than lines.
        if (n > 1 || Math.floorMod(i, Math.max(1, (int) (STEP_MM / (a.distance(b) + 1e-9)))) == 0) {
          for (int k = 0; k < n; k++) {
            samples.add(a.towards(b, (double) k / n));
          }
        }
      }
    }
    return samples;
  }

  /** The edges of rings in the cells of a grid. */
  static final class Grid {
    private final Map<Long, List<Point[]>> cells = new HashMap<>();

    Grid(List<List<Point>> rings) {
      for (List<Point> ring : rings) {
        for (int i = 0; i < ring.size(); i++) {
          add(ring.get(i), ring.get((i + 1) % ring.size()));
        }
      }
    }

    private void add(Point a, Point b) {
      for (int x = cell(Math.min(a.x(), b.x())); x <= cell(Math.max(a.x(), b.x())); x++) {
        for (int y = cell(Math.min(a.y(), b.y())); y <= cell(Math.max(a.y(), b.y())); y++) {
          cells.computeIfAbsent(key(x, y), k -> new ArrayList<>()).add(new Point[] {a, b});
        }
      }
    }

    private static int cell(double mm) {
      return (int) Math.floor(mm / CELL_MM);
    }

    private static long key(int x, int y) {
      return ((long) x << 32) ^ (y & 0xffffffffL);
    }

    /** Exact up to the size of a cell; more than that is given as that. */
    double distance(Point p) {
      double least = CELL_MM;
      for (int dx = -1; dx <= 1; dx++) {
        for (int dy = -1; dy <= 1; dy++) {
          for (Point[] e : cells.getOrDefault(key(cell(p.x()) + dx, cell(p.y()) + dy), List.of())) {
            least = Math.min(least, toEdge(p, e[0], e[1]));
          }
        }
      }
      return least;
    }

    private static double toEdge(Point p, Point a, Point b) {
      Point along = b.minus(a);
      double squared = along.dot(along);
      double t = squared == 0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(along) / squared));
      return p.distance(a.towards(b, t));
    }
  }
}
