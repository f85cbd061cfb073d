package frieze.dryrun.scene;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Straight pieces in a grid of squares, to ask which is nearest. */
public final class NearLines {
  private final double squareMm;
  private final Map<Square, List<Integer>> squares = new HashMap<>();
  private final List<double[]> lines;

  private record Square(int column, int row) {}

  /** The nearest line and how far it is; index -1 if none is within the radius. */
  public record Nearest(double distanceMm, int index) {}

  /**
   * @param lines four numbers each: from x, y to x, y
   */
  public NearLines(List<double[]> lines, double squareMm) {
    this.lines = lines;
    this.squareMm = squareMm;
    for (int i = 0; i < lines.size(); i++) {
      double[] l = lines.get(i);
      double length = Math.hypot(l[2] - l[0], l[3] - l[1]);
      int steps = (int) Math.ceil(length / squareMm) + 1;
      for (int k = 0; k <= steps; k++) {
        double x = l[0] + (l[2] - l[0]) * k / steps;
        double y = l[1] + (l[3] - l[1]) * k / steps;
        squares.computeIfAbsent(square(x, y), s -> new ArrayList<>()).add(i);
      }
    }
  }

  private Square square(double x, double y) {
    return new Square((int) Math.floor(x / squareMm), (int) Math.floor(y / squareMm));
  }

  /**
   * Looks within a radius; a line may cut a corner of a square unseen, so one more is looked at.
   */
  public Nearest nearest(double x, double y, double radiusMm) {
    double best = radiusMm;
    int index = -1;
    int reach = (int) Math.ceil(radiusMm / squareMm) + 1;
    Square at = square(x, y);
    for (int c = at.column() - reach; c <= at.column() + reach; c++) {
      for (int r = at.row() - reach; r <= at.row() + reach; r++) {
        for (int i : squares.getOrDefault(new Square(c, r), List.of())) {
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

  public static double distance(double[] l, double x, double y) {
    double dx = l[2] - l[0];
    double dy = l[3] - l[1];
    double squared = dx * dx + dy * dy;
    double t = squared > 0 ? ((x - l[0]) * dx + (y - l[1]) * dy) / squared : 0;
    double at = Math.max(0, Math.min(1, t));
    return Math.hypot(x - l[0] - at * dx, y - l[1] - at * dy);
  }
}
