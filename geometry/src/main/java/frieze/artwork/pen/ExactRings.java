package frieze.artwork.pen;

import frieze.curve.Arc;
import frieze.curve.Flattener;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds the lines and arcs again of which the outline of a region was made.
 *
 * <p><i>Guarantees:</i> a stretch of the outline that stems from an arc is an arc about the same
 * centre; one that stems from a line is on that line.
 */
final class ExactRings {
  /** A vertex is taken out of a straight run if it is off by less than this. */
  private static final double STRAIGHT_MM = 1e-9;

  /** Two curves that cross are met after a few rounds, ones that touch never need to be. */
  private static final int ROUNDS = 60;

  private final double tolerance;
  private final List<Circle> circles = new ArrayList<>();
  private final Map<Point, Set<Integer>> at = new HashMap<>();

  private record Circle(Point centre, double radius) {
    double miss(Point p) {
      return Math.abs(p.distance(centre) - radius);
    }
  }

  /** A run of edges on one circle, or one straight edge (circle -1). */
  private record Run(int circle, List<Point> points) {
    Point first() {
      return points.get(0);
    }

    Point last() {
      return points.get(points.size() - 1);
    }
  }

  /**
   * Notes where the arcs of the sources are.
   *
   * @param sources what the region was made of
   * @param tolerance with which they were flattened
   */
  ExactRings(List<Path> sources, double tolerance) {
    this.tolerance = tolerance;
    for (Path path : sources) {
      for (Segment s : path.segments()) {
        if (s instanceof Arc arc && arc.radius() > tolerance) {
          circles.add(new Circle(arc.centre(), arc.radius()));
          for (Point p : Flattener.flatten(new Path(List.of(arc), false), tolerance)) {
            at.computeIfAbsent(p, k -> new HashSet<>()).add(circles.size() - 1);
          }
        }
      }
    }
  }

  /** The outlines of a region, the area on their left. */
  List<Path> of(Region region) {
    return region.rings().stream().map(this::path).toList();
  }

  private Path path(Ring ring) {
    List<Run> runs = runs(ring.points());
    if (runs.size() == 1 && runs.get(0).circle() >= 0) {
      Circle c = circles.get(runs.get(0).circle());
      double sweep = Math.copySign(2 * Math.PI, sweep(runs.get(0), c.centre()));
      double from = runs.get(0).first().minus(c.centre()).angleRad();
      return new Path(List.of(Arc.polar(c.centre(), c.radius(), from, sweep)), true);
    }
    int n = runs.size();
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      corners.add(corner(runs.get((i + n - 1) % n), runs.get(i)));
    }
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      add(runs.get(i), corners.get(i), corners.get((i + 1) % n), segments);
    }
    return new Path(segments, true);
  }

  private void add(Run run, Point from, Point to, List<Segment> into) {
    List<Point> points = new ArrayList<>(run.points());
    points.set(0, from);
    points.set(points.size() - 1, to);
    if (run.circle() >= 0) {
      Circle c = circles.get(run.circle());
      double sweep = sweep(new Run(run.circle(), points), c.centre());
      double least = 1e-7 * c.radius();
      if (c.miss(from) <= least && c.miss(to) <= least && sweep != 0) {
        into.add(new Arc(from, to, c.centre(), sweep));
        return;
      }
    }
    for (int i = 1; i < points.size(); i++) {
      if (!points.get(i).equals(points.get(i - 1))) {
        into.add(new Line(points.get(i - 1), points.get(i)));
      }
    }
  }

  private static double sweep(Run run, Point centre) {
    double sum = 0;
    for (int i = 1; i < run.points().size(); i++) {
      Point a = run.points().get(i - 1).minus(centre);
      Point b = run.points().get(i).minus(centre);
      sum += StrictMath.atan2(a.cross(b), a.dot(b));
    }
    return sum;
  }

  /** The point on both runs that is near to where they met when flattened. */
  private Point corner(Run before, Run after) {
    Point there = after.first();
    if (before.circle() < 0 && after.circle() < 0) {
      return there;
    }
    Point p = there;
    for (int round = 0; round < ROUNDS; round++) {
      p = before.circle() < 0 ? onto(after, onto(before, p)) : onto(before, onto(after, p));
    }
    return p.distance(there) > 4 * tolerance ? there : p;
  }

  private Point onto(Run run, Point p) {
    if (run.circle() >= 0) {
      Circle c = circles.get(run.circle());
      Point out = p.minus(c.centre());
      return c.centre().plus(out.times(c.radius() / out.norm()));
    }
    Point along = run.last().minus(run.first());
    double t = p.minus(run.first()).dot(along) / along.dot(along);
    return run.first().plus(along.times(t));
  }

  private List<Run> runs(List<Point> ring) {
    int n = ring.size();
    int[] on = new int[n];
    for (int i = 0; i < n; i++) {
      on[i] = circleOf(ring.get(i), ring.get((i + 1) % n));
    }
    int start = 0;
    while (start < n && !breaks(ring, on, start)) {
      start++;
    }
    boolean whole = start == n;
    start = whole ? 0 : start;
    List<Run> runs = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      int i = (start + k) % n;
      if (k == 0 || breaks(ring, on, i)) {
        runs.add(new Run(on[i], new ArrayList<>(List.of(ring.get(i)))));
      }
      List<Point> points = runs.get(runs.size() - 1).points();
      if (on[i] < 0 && points.size() > 1) {
        points.remove(points.size() - 1);
      }
      points.add(ring.get((i + 1) % n));
    }
    return runs;
  }

  /** Whether a new run starts at a vertex. */
  private static boolean breaks(List<Point> ring, int[] on, int i) {
    int n = on.length;
    int before = on[(i + n - 1) % n];
    if (before != on[i]) {
      return true;
    }
    if (before >= 0) {
      return false;
    }
    Point a = ring.get((i + n - 1) % n);
    Point b = ring.get((i + 1) % n);
    Point along = b.minus(a);
    Point to = ring.get(i).minus(a);
    return Math.abs(along.cross(to)) > STRAIGHT_MM * along.norm() || along.dot(to) < 0;
  }

  private int circleOf(Point p, Point q) {
    List<Integer> candidates = new ArrayList<>(at.getOrDefault(p, Set.of()));
    at.getOrDefault(q, Set.of()).stream()
        .filter(k -> !candidates.contains(k))
        .forEach(candidates::add);
    candidates.sort(null);
    int best = -1;
    double least = 2 * tolerance;
    Point middle = p.towards(q, 0.5);
    for (int k : candidates) {
      Circle c = circles.get(k);
      double miss = Math.max(c.miss(p), Math.max(c.miss(q), c.miss(middle) - tolerance));
      if (miss < least) {
        least = miss;
        best = k;
      }
    }
    return best;
  }
}
