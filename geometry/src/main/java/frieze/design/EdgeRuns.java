package frieze.design;

import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.layout.Panel;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The stretches of a panel's outline that make up some of its sides.
 *
 * <p>Two sides meet at the point of the outline that lies farthest out in the direction midway
 * between theirs: the corner of a rectangle, the foot of an arch, the middle of a rounded corner. A
 * notch belongs to the side that it is cut into.
 */
public final class EdgeRuns {
  private static final int SIDES = 4;

  private EdgeRuns() {}

  /**
   * Finds the stretches, each as long as it goes on.
   *
   * @param flattenMm the most by which a stretch departs from the outline
   * @return polylines that run as the outline does, counter-clockwise; a closed one alone for all
   *     sides
   */
  public static List<Path> of(Panel panel, Set<PanelSide> sides, double flattenMm) {
    List<Point> points = Flattener.flatten(panel.outline(), flattenMm);
    if (sides.size() == SIDES) {
      return List.of(Path.polyline(points, true));
    }
    PanelSide[] all = PanelSide.values();
    List<Path> runs = new ArrayList<>();
    for (int i = 0; i < SIDES; i++) {
      if (sides.contains(all[i]) && !sides.contains(all[(i + SIDES - 1) % SIDES])) {
        int last = i;
        while (sides.contains(all[(last + 1) % SIDES])) {
          last++;
        }
        runs.add(between(points, farthest(points, i), farthest(points, last + 1)));
      }
    }
    return runs;
  }

  /** The corner at which a side begins, as an index; the lower left one for the bottom. */
  private static int farthest(List<Point> points, int side) {
    double x = side % SIDES == 1 || side % SIDES == 2 ? 1 : -1;
    double y = side % SIDES >= 2 ? 1 : -1;
    int best = 0;
    for (int i = 1; i < points.size(); i++) {
      Point p = points.get(i);
      Point q = points.get(best);
      if (x * p.x() + y * p.y() > x * q.x() + y * q.y()) {
        best = i;
      }
    }
    return best;
  }

  private static Path between(List<Point> points, int from, int to) {
    List<Point> run = new ArrayList<>();
    int count = Math.floorMod(to - from, points.size());
    for (int i = 0; i <= count; i++) {
      run.add(points.get((from + i) % points.size()));
    }
    return Path.polyline(run, false);
  }

  /**
   * An open run that goes on straight at both ends.
   *
   * @param byMm how far
   */
  public static Path extended(Path run, double byMm) {
    Point in = run.segments().get(0).tangentAt(0);
    Point out = run.segments().get(run.segments().size() - 1).tangentAt(1);
    List<Point> points = new ArrayList<>();
    points.add(run.start().minus(in.times(byMm / in.norm())));
    points.add(run.start());
    run.segments().forEach(s -> points.add(s.end()));
    points.add(run.end().plus(out.times(byMm / out.norm())));
    return Path.polyline(points, false);
  }
}
