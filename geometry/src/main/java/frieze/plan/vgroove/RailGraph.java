package frieze.plan.vgroove;

import frieze.curve.Point;
import frieze.motion.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * Rails that meet at their ends, and the long strokes that follow them all.
 *
 * <p>A stroke takes the short dead ends first, goes back over what is cut already where that is
 * shorter than lifting, and starts where the least is in the way.
 */
final class RailGraph {
  /** Ends nearer than this meet: a ten-thousandth of a millimetre. */
  private static final double MEET_MM = 1e-4;

  /** Going back along a cut is quicker than lifting up to about here: common feeds and rapids. */
  private static final double BACK_MM = 40;

  private final List<Rail> rails = new ArrayList<>();
  private final List<int[]> ends = new ArrayList<>();
  private final List<List<Integer>> atNode = new ArrayList<>();
  private final List<Boolean> done = new ArrayList<>();
  private final TreeMap<Long, List<Integer>> nodesByCell = new TreeMap<>();
  private final List<Point> nodes = new ArrayList<>();

  void add(Rail rail) {
    int from = node(rail.first().xy());
    int to = rail.points().size() == 1 ? from : node(rail.last().xy());
    rails.add(rail);
    ends.add(new int[] {from, to});
    done.add(!rail.wanted());
    atNode.get(from).add(rails.size() - 1);
    if (to != from) {
      atNode.get(to).add(rails.size() - 1);
    }
  }

  /** The node at a place. */
  private int node(Point p) {
    long column = (long) Math.floor(p.x() / MEET_MM / 2);
    long row = (long) Math.floor(p.y() / MEET_MM / 2);
    for (long i = column - 1; i <= column + 1; i++) {
      for (long j = row - 1; j <= row + 1; j++) {
        for (int node : nodesByCell.getOrDefault(key(i, j), List.of())) {
          if (nodes.get(node).distance(p) <= MEET_MM) {
            return node;
          }
        }
      }
    }
    nodes.add(p);
    atNode.add(new ArrayList<>());
    nodesByCell.computeIfAbsent(key(column, row), k -> new ArrayList<>()).add(nodes.size() - 1);
    return nodes.size() - 1;
  }

  private static long key(long column, long row) {
    return (column << 32) ^ (row & 0xffffffffL);
  }

  /**
   * Follows every rail that is wanted.
   *
   * @param inTheWay how much material stands above the tip at a place, in millimetres
   * @return the rails of each stroke, turned so that each begins where the one before it ends
   */
  List<List<Rail>> strokes(ToDoubleFunction<Position> inTheWay) {
    List<List<Rail>> strokes = new ArrayList<>();
    for (int start = start(inTheWay); start >= 0; start = start(inTheWay)) {
      strokes.add(stroke(start));
    }
    return strokes;
  }

  /** The node with something left to cut and the least in the way; -1 if all is done. */
  private int start(ToDoubleFunction<Position> inTheWay) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int node = 0; node < nodes.size(); node++) {
      for (int rail : atNode.get(node)) {
        if (isOpen(rail, node)) {
          double cost = inTheWay.applyAsDouble(from(rail, node).first());
          if (cost < least - MEET_MM) {
            least = cost;
            best = node;
          }
        }
      }
    }
    return best;
  }

  private boolean isOpen(int rail, int node) {
    return !done.get(rail) && (!rails.get(rail).oneWay() || ends.get(rail)[0] == node);
  }

  private Rail from(int rail, int node) {
    return ends.get(rail)[0] == node ? rails.get(rail) : rails.get(rail).reversed();
  }

  private int other(int rail, int node) {
    return ends.get(rail)[0] == node ? ends.get(rail)[1] : ends.get(rail)[0];
  }

  private List<Rail> stroke(int start) {
    List<Rail> path = new ArrayList<>();
    int at = start;
    while (true) {
      int next = next(at);
      if (next < 0) {
        List<Integer> back = back(at);
        if (back.isEmpty()) {
          return path;
        }
        for (int rail : back) {
          path.add(from(rail, at));
          at = other(rail, at);
        }
        continue;
      }
      done.set(next, true);
      path.add(from(next, at));
      at = other(next, at);
    }
  }

  /** The rail to cut next from a node: dead ends first, then short ones, loops last. */
  private int next(int node) {
    return atNode.get(node).stream()
        .filter(rail -> isOpen(rail, node))
        .min(
            Comparator.<Integer>comparingInt(rail -> rank(rail, node))
                .thenComparingDouble(rail -> rails.get(rail).lengthMm())
                .thenComparingInt(rail -> rail))
        .orElse(-1);
  }

  private int rank(int rail, int node) {
    if (rails.get(rail).oneWay()) {
      return 2;
    }
    return atNode.get(other(rail, node)).size() == 1 ? 0 : 1;
  }

  /** The way over finished rails to the nearest node with something left; empty if it is far. */
  private List<Integer> back(int start) {
    double[] far = new double[nodes.size()];
    int[] by = new int[nodes.size()];
    java.util.Arrays.fill(far, Double.POSITIVE_INFINITY);
    far[start] = 0;
    PriorityQueue<double[]> waiting =
        new PriorityQueue<>(
            Comparator.<double[]>comparingDouble(w -> w[0]).thenComparingDouble(w -> w[1]));
    waiting.add(new double[] {0, start});
    while (!waiting.isEmpty()) {
      double[] entry = waiting.poll();
      int node = (int) entry[1];
      if (entry[0] > far[node]) {
        continue;
      }
      if (next(node) >= 0) {
        return way(start, node, by);
      }
      for (int rail : atNode.get(node)) {
        double length = far[node] + rails.get(rail).lengthMm();
        int to = other(rail, node);
        if (done.get(rail) && length < far[to] && length <= BACK_MM) {
          far[to] = length;
          by[to] = rail;
          waiting.add(new double[] {length, to});
        }
      }
    }
    return List.of();
  }

  private List<Integer> way(int start, int end, int[] by) {
    List<Integer> way = new ArrayList<>();
    for (int node = end; node != start; node = other(by[node], node)) {
      way.add(by[node]);
    }
    java.util.Collections.reverse(way);
    return way;
  }
}
