package frieze.bridge;

import frieze.curve.Point;
import frieze.region.Disc;
import frieze.region.MedialAxis;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The stretches of a middle line whose discs are smaller than a limit. */
final class NarrowRuns {
  /** Discs that are smaller by less are as large as the limit: rounding. */
  private static final double EQUAL_MM = 1e-6;

  /** A disc no larger than this is the tip of a corner. */
  private static final double TIP_MM = 1e-3;

  /** A branch into a corner is no longer than this many radii where it starts. */
  private static final double CORNER_RADII = 3;

  private final double limitMm;
  private final Map<Point, Integer> numbers = new HashMap<>();
  private final List<Disc> discs = new ArrayList<>();
  private final List<List<Integer>> neighbours = new ArrayList<>();
  private final List<Run> points = new ArrayList<>();
  private final List<Run> stretches = new ArrayList<>();
  private boolean[] left = {};

  /** One stretch; for a point, its tip and the length that is lost. */
  record Run(Point place, double widthMm, double lengthMm) {}

  NarrowRuns(MedialAxis axis, double limitMm) {
    this.limitMm = limitMm;
    for (MedialAxis.Branch branch : axis.branches()) {
      List<Disc> d = branch.discs();
      node(d.get(0));
      for (int i = 1; i < d.size(); i++) {
        join(d.get(i - 1), d.get(i));
      }
    }
    left = new boolean[discs.size()];
    for (int n = 0; n < left.length; n++) {
      left[n] = isNarrow(n);
    }
    for (int n = 0; n < left.length; n++) {
      if (left[n] && discs.get(n).radiusMm() <= TIP_MM && neighbours.get(n).size() == 1) {
        tip(n);
      }
    }
    for (int n = 0; n < left.length; n++) {
      if (left[n]) {
        stretch(n);
      }
    }
  }

  private int node(Disc disc) {
    return numbers.computeIfAbsent(
        disc.centre(),
        c -> {
          discs.add(disc);
          neighbours.add(new ArrayList<>());
          return discs.size() - 1;
        });
  }

  /** Joins neighbours, with one more between them where the size passes the limit. */
  private void join(Disc a, Disc b) {
    boolean passes = (a.radiusMm() < limitMm) != (b.radiusMm() < limitMm);
    double at = (limitMm - a.radiusMm()) / (b.radiusMm() - a.radiusMm());
    if (passes && at > 0 && at < 1) {
      Disc between = new Disc(a.centre().towards(b.centre(), at), limitMm);
      edge(node(a), node(between));
      edge(node(between), node(b));
    } else {
      edge(node(a), node(b));
    }
  }

  private void edge(int a, int b) {
    if (a != b) {
      neighbours.get(a).add(b);
      neighbours.get(b).add(a);
    }
  }

  private boolean isNarrow(int node) {
    return discs.get(node).radiusMm() < limitMm - EQUAL_MM;
  }

  private double apart(int a, int b) {
    return discs.get(a).centre().distance(discs.get(b).centre());
  }

  /** Walks from a tip to where the line is wide enough, or to a junction. */
  private void tip(int tip) {
    List<Integer> walked = new ArrayList<>();
    int before = -1;
    int at = tip;
    double length = 0;
    while (isNarrow(at) && neighbours.get(at).size() <= 2) {
      walked.add(at);
      int next = -1;
      for (int n : neighbours.get(at)) {
        next = n != before ? n : next;
      }
      if (next < 0) {
        return;
      }
      length += apart(at, next);
      before = at;
      at = next;
    }
    if (!isNarrow(at)) {
      double lost = discs.get(tip).centre().distance(discs.get(at).centre()) - limitMm;
      points.add(new Run(discs.get(tip).centre(), 0, lost));
    } else if (length > CORNER_RADII * discs.get(at).radiusMm()) {
      return;
    }
    walked.forEach(n -> left[n] = false);
  }

  /** Gathers what hangs together and is narrow. */
  private void stretch(int start) {
    Deque<Integer> waiting = new ArrayDeque<>(List.of(start));
    left[start] = false;
    int least = start;
    double length = 0;
    while (!waiting.isEmpty()) {
      int at = waiting.poll();
      least = discs.get(at).radiusMm() < discs.get(least).radiusMm() ? at : least;
      for (int n : neighbours.get(at)) {
        // Each inner edge is met from both ends.
        length += isNarrow(n) ? apart(at, n) / 2 : apart(at, n);
        if (left[n]) {
          left[n] = false;
          waiting.add(n);
        }
      }
    }
    Disc d = discs.get(least);
    stretches.add(new Run(d.centre(), 2 * d.radiusMm(), length));
  }

  /** Corners and points; lengths may be too small to matter. */
  List<Run> points() {
    return points;
  }

  List<Run> stretches() {
    return stretches;
  }

  double totalLengthMm() {
    double sum = 0;
    for (int a = 0; a < discs.size(); a++) {
      for (int b : neighbours.get(a)) {
        sum += apart(a, b) / 2;
      }
    }
    return sum;
  }
}
