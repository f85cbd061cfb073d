package frieze.region;

import frieze.curve.Point;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Discs and which of them are neighbours on the axis. */
final class AxisGraph {
  /** Neighbours closer than this are one, in millimetres. */
  private static final double MERGE_MM = 1e-4;

  /** How far along the axis a disc is looked for that holds a leaf's. */
  private static final int HOPS = 4;

  private final List<Disc> discs = new ArrayList<>();
  private final List<TreeSet<Integer>> neighbours = new ArrayList<>();

  /** By how much dropped discs stick out of the disc that stands for them. */
  private final List<Double> carried = new ArrayList<>();

  private final List<Boolean> alive = new ArrayList<>();

  int add(Disc disc) {
    discs.add(disc);
    neighbours.add(new TreeSet<>());
    carried.add(0.0);
    alive.add(true);
    return discs.size() - 1;
  }

  Disc disc(int node) {
    return discs.get(node);
  }

  void join(int a, int b) {
    if (a != b) {
      neighbours.get(a).add(b);
      neighbours.get(b).add(a);
    }
  }

  private double apart(int a, int b) {
    return discs.get(a).centre().distance(discs.get(b).centre());
  }

  private void remove(int node) {
    for (int other : neighbours.get(node)) {
      neighbours.get(other).remove(node);
    }
    neighbours.get(node).clear();
    alive.set(node, false);
  }

  /** Makes one node of neighbours in one place; the smaller number stays. */
  void merge() {
    for (int a = 0; a < discs.size(); a++) {
      Deque<Integer> waiting = new ArrayDeque<>(neighbours.get(a));
      while (alive.get(a) && !waiting.isEmpty()) {
        int b = waiting.poll();
        if (b > a && alive.get(b) && apart(a, b) <= MERGE_MM) {
          List<Integer> others = new ArrayList<>(neighbours.get(b));
          remove(b);
          for (int other : others) {
            join(a, other);
          }
          waiting.addAll(others);
        }
      }
    }
  }

  /**
   * Drops each leaf whose disc lies within a disc nearby grown by the tolerance, and so on inward.
   * What was dropped before is counted with the disc that stands for it.
   */
  void prune(double toleranceMm) {
    Deque<Integer> leaves = new ArrayDeque<>();
    for (int node = 0; node < discs.size(); node++) {
      if (neighbours.get(node).size() == 1) {
        leaves.add(node);
      }
    }
    while (!leaves.isEmpty()) {
      int leaf = leaves.poll();
      if (!alive.get(leaf) || neighbours.get(leaf).size() != 1) {
        continue;
      }
      int next = neighbours.get(leaf).first();
      int heir = heir(leaf, toleranceMm);
      if (heir != leaf) {
        carried.set(heir, Math.max(carried.get(heir), leastSticksOut(leaf, heir)));
        remove(leaf);
        if (neighbours.get(next).size() == 1) {
          leaves.add(next);
        }
      }
    }
  }

  /** A node near a leaf whose grown disc holds the leaf's; the leaf itself if there is none. */
  private int heir(int leaf, double toleranceMm) {
    TreeSet<Integer> near = new TreeSet<>(neighbours.get(leaf));
    for (int hop = 0; hop < HOPS; hop++) {
      for (int node : near) {
        if (node != leaf && leastSticksOut(leaf, node) <= toleranceMm) {
          return node;
        }
      }
      TreeSet<Integer> further = new TreeSet<>();
      near.forEach(node -> further.addAll(neighbours.get(node)));
      near.addAll(further);
    }
    return leaf;
  }

  /** By how much a leaf's disc sticks out of those on the edges at another node. */
  private double leastSticksOut(int leaf, int heir) {
    Disc from = discs.get(heir);
    double radius = discs.get(leaf).radiusMm() + carried.get(leaf);
    Point centre = discs.get(leaf).centre();
    double least = centre.distance(from.centre()) + radius - from.radiusMm();
    for (int other : neighbours.get(heir)) {
      if (other != leaf) {
        Disc to = discs.get(other);
        Point edge = to.centre().minus(from.centre());
        double t = centre.minus(from.centre()).dot(edge) / edge.dot(edge);
        double along = Math.max(0, Math.min(1, t));
        double apart = centre.distance(from.centre().towards(to.centre(), along));
        double there = from.radiusMm() + along * (to.radiusMm() - from.radiusMm());
        least = Math.min(least, apart + radius - there);
      }
    }
    return least;
  }

  /** The chains between ends and junctions, and closed ones; a lone node is a chain of itself. */
  List<List<Disc>> chains() {
    List<List<Disc>> chains = new ArrayList<>();
    Set<Long> done = new TreeSet<>();
    for (int pass = 0; pass < 2; pass++) {
      for (int node = 0; node < discs.size(); node++) {
        boolean through = neighbours.get(node).size() == 2;
        if (!alive.get(node) || (pass == 0 && through)) {
          continue;
        }
        if (neighbours.get(node).isEmpty()) {
          if (pass == 0) {
            chains.add(List.of(discs.get(node)));
          }
          continue;
        }
        for (int first : neighbours.get(node)) {
          if (!done.contains(key(node, first))) {
            chains.add(follow(node, first, done));
          }
        }
      }
    }
    return chains;
  }

  private List<Disc> follow(int start, int first, Set<Long> done) {
    List<Disc> chain = new ArrayList<>();
    chain.add(discs.get(start));
    int before = start;
    int at = first;
    while (true) {
      done.add(key(before, at));
      done.add(key(at, before));
      chain.add(discs.get(at));
      if (at == start || neighbours.get(at).size() != 2) {
        return chain;
      }
      int low = neighbours.get(at).first();
      int next = low == before ? neighbours.get(at).last() : low;
      before = at;
      at = next;
    }
  }

  private static long key(int from, int to) {
    return ((long) from << 32) | to;
  }
}
