package frieze.plan.vgroove;

import frieze.motion.Position;
import java.util.ArrayList;
import java.util.List;

/**
 * A line in space that a tool's tip may follow.
 *
 * @param points at least one; Z is that of the tip
 * @param wanted whether following it cuts something; if not, the tool may pass along it
 * @param oneWay whether it may be cut from the first point to the last only
 */
record Rail(List<Position> points, boolean wanted, boolean oneWay) {
  Rail {
    points = List.copyOf(points);
  }

  Position first() {
    return points.get(0);
  }

  Position last() {
    return points.get(points.size() - 1);
  }

  double lengthMm() {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      sum += points.get(i).distance(points.get(i - 1));
    }
    return sum;
  }

  /** The same line, followed from the other end. */
  Rail reversed() {
    List<Position> back = new ArrayList<>(points);
    java.util.Collections.reverse(back);
    return new Rail(back, wanted, oneWay);
  }

  /**
   * What of this rail, which is at full depth, one pass cuts, and what an earlier pass has cut
   * already, in order along the rail.
   *
   * @param before the pass before
   */
  List<Rail> cutBy(VLevel level, VLevel before) {
    List<Rail> result = new ArrayList<>();
    List<Position> full = withKinks(level, before);
    if (full.size() == 1) {
      double asked = -full.get(0).z();
      boolean deeper = level.depthMm(asked) > before.depthMm(asked) + SAME_MM;
      return List.of(new Rail(List.of(lifted(full.get(0), level)), deeper, oneWay));
    }
    List<Position> run = new ArrayList<>();
    boolean runDeeper = false;
    for (int i = 1; i < full.size(); i++) {
      double middle = -(full.get(i - 1).z() + full.get(i).z()) / 2;
      boolean deeper = level.depthMm(middle) > before.depthMm(middle) + SAME_MM;
      if (!run.isEmpty() && deeper != runDeeper) {
        result.add(new Rail(run, runDeeper, oneWay));
        run = new ArrayList<>();
      }
      if (run.isEmpty()) {
        run.add(lifted(full.get(i - 1), level));
      }
      runDeeper = deeper;
      run.add(lifted(full.get(i), level));
    }
    result.add(new Rail(run, runDeeper, oneWay));
    return result;
  }

  /** Passes that differ by less do the same: a micrometre. */
  private static final double SAME_MM = 1e-3;

  private static Position lifted(Position p, VLevel level) {
    return p.withZ(-level.depthMm(-p.z()));
  }

  /** The points, and those between them where a pass bends. */
  private List<Position> withKinks(VLevel level, VLevel before) {
    double[] kinks = {
      level.leaveMm(),
      level.mostMm() + level.leaveMm(),
      before.leaveMm(),
      before.mostMm() + before.leaveMm()
    };
    java.util.Arrays.sort(kinks);
    List<Position> result = new ArrayList<>();
    result.add(first());
    for (int i = 1; i < points.size(); i++) {
      Position a = points.get(i - 1);
      Position b = points.get(i);
      boolean down = b.z() < a.z();
      for (int k = 0; k < kinks.length; k++) {
        double z = -kinks[down ? k : kinks.length - 1 - k];
        double share = (z - a.z()) / (b.z() - a.z());
        if (Double.isFinite(share) && share > 0 && share < 1) {
          result.add(new Position(a.xy().towards(b.xy(), share), z));
        }
      }
      result.add(b);
    }
    return result;
  }
}
