package frieze.dryrun;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Straight pieces in a grid of squares, to ask which is nearest. */
final class NearLines {
  private final double squareMm;
  private final Map<Long, List<Integer>> squares = new HashMap<>();
  private final List<double[]> lines;

  /** The nearest line and how far it is; index -1 if none is within the radius. */
  record Nearest(double distanceMm, int index) {}

  /**
   * @param lines four numbers each: from x, y to x, y
   */
  NearLines(List<double[]> lines, double squareMm) {
    this.lines = lines;
    this.squareMm = squareMm;
    for (int i = 0; i < lines.size(); i++) {
      double[] l = lines.get(i);
      double length = Math.hypot(l[2] - l[0], l[3] - l[1]);
      int steps = (int) Math.ceil(length / (squareMm / 2)) + 1;
      long last = Long.MIN_VALUE;
      for (int k = 0; k <= steps; k++) {
        double x = l[0] + (l[2] - l[0]) * k / steps;
        double y = l[1] + (l[3] - l[1]) * k / steps;
        long key = key(column(x), column(y));
        if (key != last) {
          squares.computeIfAbsent(key, s -> new ArrayList<>()).add(i);
          last = key;
        }
      }
    }
  }

  private int column(double at) {
    return (int) Math.floor(at / squareMm);
  }

  private static long key(int column, int row) {
    return ((long) column << 32) ^ (row & 0xffffffffL);
  }

  /**
   * Looks within a radius; a line may cut a corner of a square unseen, so one more is looked at.
   */
  Nearest nearest(double x, double y, double radiusMm) {
    double best = radiusMm;
    int index = -1;
    int reach = (int) Math.ceil(radiusMm / squareMm) + 1;
    for (int c = column(x) - reach; c <= column(x) + reach; c++) {
      for (int r = column(y) - reach; r <= column(y) + reach; r++) {
        for (int i : squares.getOrDefault(key(c, r), List.of())) {
          double d = distance(lines.get(i), x, y);
          if (d < best) {
            best = d;
            index = i;
          }
        }
      }
    }
    return new Nearest(best, index);
  }

  static double distance(double[] l, double x, double y) {
    double dx = l[2] - l[0];
    double dy = l[3] - l[1];
    double squared = dx * dx + dy * dy;
    double t = squared > 0 ? ((x - l[0]) * dx + (y - l[1]) * dy) / squared : 0;
    double at = Math.max(0, Math.min(1, t));
    return Math.hypot(x - l[0] - at * dx, y - l[1] - at * dy);
  }
}
