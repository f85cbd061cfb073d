package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The middle line of a region: the centres of the discs that touch its boundary at two places or
 * more.
 *
 * <p><i>Guarantees</i>
 *
 * <ul>
 *   <li>Each radius is the distance from its centre to the boundary, to rounding.
 *   <li>The axis of each connected part is connected, and goes round each hole.
 *   <li>It reaches into each convex corner that the discs would else leave uncovered by more than
 *       the tolerance, to its tip, where the radius is 0.
 *   <li>Between straight walls, and between a wall and a reflex corner (a parabola), centres lie on
 *       the exact axis within 1 micrometre.
 *   <li>Only what adds nothing is pruned: a leaf goes if its disc, and all that it stands for, lies
 *       within a disc nearby grown by the tolerance. So the remaining discs, grown by the
 *       tolerance, cover what all of them covered.
 * </ul>
 *
 * <p><i>Approximation:</i> straight lines between centres leave the axis by about {@value
 * #CHORD_MM} mm. Where walls face almost the same way, as at the end of a curved outline's axis,
 * only the radius is certain, not how far the axis reaches.
 *
 * <p><i>Cost:</i> O(n log n) in the boundary's length over the spacing of samples.
 *
 * <p><i>Source:</i> the dual of a constrained Delaunay triangulation of boundary samples for what
 * hangs together with what; exact distances to edges for where it lies.
 */
public final class MedialAxis {
  /** Longest stretch between samples of the boundary. */
  private static final double SPACING_MM = 0.5;

  /** Chords of the axis are halved until their middles are as near as this. */
  private static final double CHORD_MM = 0.0005;

  private static final int DEEPEST_SPLIT = 8;

  private final List<Branch> branches;
  private final int parts;

  private MedialAxis(List<Branch> branches, int parts) {
    this.branches = List.copyOf(branches);
    this.parts = parts;
  }

  /**
   * A stretch of the axis from one end or junction to the next.
   *
   * @param part which connected part of the region it belongs to, from 0
   * @param discs in order; a loop without junctions ends with its first disc; one disc alone if the
   *     axis of the part is one point
   */
  public record Branch(int part, List<Disc> discs) {
    public Branch {
      discs = List.copyOf(discs);
    }
  }

  /**
   * Finds the axis of a region.
   *
   * @param toleranceMm how much of the region's edge the discs may leave uncovered by pruning; more
   *     than the tolerance at which curves were flattened, or each vertex counts as a corner
   */
  public static MedialAxis of(Region region, double toleranceMm) {
    if (!(toleranceMm > 0)) {
      throw new IllegalArgumentException("toleranceMm must be > 0 but was " + toleranceMm + " mm");
    }
    List<Branch> branches = new ArrayList<>();
    List<Region> parts = region.parts();
    for (int k = 0; k < parts.size(); k++) {
      for (List<Disc> chain : ofPart(parts.get(k), toleranceMm)) {
        branches.add(new Branch(k, chain));
      }
    }
    return new MedialAxis(branches, parts.size());
  }

  public List<Branch> branches() {
    return branches;
  }

  /** How many connected parts the region has. */
  public int parts() {
    return parts;
  }

  /** The largest disc of all, or radius 0 for an empty region. */
  public Disc largest() {
    Disc largest = new Disc(Point.ORIGIN, 0);
    for (Branch branch : branches) {
      for (Disc disc : branch.discs()) {
        largest = disc.radiusMm() > largest.radiusMm() ? disc : largest;
      }
    }
    return largest;
  }

  private static List<List<Disc>> ofPart(Region part, double toleranceMm) {
    BoundaryDistance boundary = BoundaryDistance.of(part);
    AxisSamples samples = AxisSamples.of(part, SPACING_MM);
    AxisTriangles triangles = AxisTriangles.of(samples, boundary::contains);
    AxisNodes nodes = new AxisNodes(samples, triangles, boundary, toleranceMm);
    AxisGraph graph = new AxisGraph();
    for (int t = 0; t < triangles.size(); t++) {
      graph.add(nodes.place(t));
    }
    for (int t = 0; t < triangles.size(); t++) {
      for (int neighbour : triangles.neighbours.get(t)) {
        if (neighbour != AxisTriangles.BORDER) {
          graph.join(t, neighbour);
        }
      }
    }
    reachIntoCorners(samples, triangles, graph, toleranceMm);
    graph.merge();
    graph.prune(toleranceMm);
    Retraction retraction = new Retraction(boundary);
    List<List<Disc>> chains = new ArrayList<>();
    for (List<Disc> chain : graph.chains()) {
      chains.add(refined(chain, retraction));
    }
    return chains;
  }

  /**
   * Joins each convex corner that discs would not reach to the disc that comes nearest.
   *
   * <p>A disc of radius r that touches both sides of a corner which turns by a stays {@code r (1 /
   * cos(a/2) - 1)} away from its tip.
   */
  private static void reachIntoCorners(
      AxisSamples s, AxisTriangles triangles, AxisGraph graph, double toleranceMm) {
    int[] nearest = new int[s.size()];
    double[] gaps = new double[s.size()];
    double[] radii = new double[s.size()];
    Arrays.fill(gaps, Double.POSITIVE_INFINITY);
    for (int t = 0; t < triangles.size(); t++) {
      Disc disc = graph.disc(t);
      Point c = disc.centre();
      for (int v : triangles.corners.get(t)) {
        double gap = Math.hypot(s.x[v] - c.x(), s.y[v] - c.y()) - disc.radiusMm();
        radii[v] = Math.max(radii[v], disc.radiusMm());
        if (gap < gaps[v]) {
          gaps[v] = gap;
          nearest[v] = t;
        }
      }
    }
    for (int v = 0; v < s.size(); v++) {
      double turn = s.turn(v);
      double away = radii[v] * (1 / Math.cos(turn / 2) - 1);
      if (turn > 0 && away > toleranceMm) {
        int tip = graph.add(new Disc(new Point(s.x[v], s.y[v]), 0));
        graph.join(nearest[v], tip);
      }
    }
  }

  private static List<Disc> refined(List<Disc> chain, Retraction retraction) {
    List<Disc> result = new ArrayList<>();
    result.add(chain.get(0));
    for (int i = 1; i < chain.size(); i++) {
      split(chain.get(i - 1), chain.get(i), retraction, 0, result);
      result.add(chain.get(i));
    }
    return result;
  }

  private static void split(Disc a, Disc b, Retraction retraction, int depth, List<Disc> into) {
    Point middle = a.centre().towards(b.centre(), 0.5);
    Disc there = depth < DEEPEST_SPLIT ? retraction.onto(middle) : null;
    if (there == null) {
      return;
    }
    double away = there.centre().distance(middle);
    double straight = Math.abs(there.radiusMm() - (a.radiusMm() + b.radiusMm()) / 2);
    boolean astray = away > a.centre().distance(b.centre()) / 2;
    if (astray || (away <= CHORD_MM && straight <= CHORD_MM)) {
      return;
    }
    split(a, there, retraction, depth + 1, into);
    into.add(there);
    split(there, b, retraction, depth + 1, into);
  }
}
