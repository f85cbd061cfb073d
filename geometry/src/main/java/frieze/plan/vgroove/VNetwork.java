package frieze.plan.vgroove;

import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.motion.Position;
import frieze.region.BoundaryDistance;
import frieze.region.Disc;
import frieze.region.MedialAxis;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where the tip of a V-bit goes, at full depth, so that its walls meet the outline of one connected
 * area: along the middle line where the area is narrow, and round the floor where it is wide.
 *
 * <p>Depths follow from the exact distance to the outline: {@code (distance - tip radius) /
 * tan(half angle)}, never more than the floor's.
 */
final class VNetwork {
  /**
   * What pruning may leave of the outline, in tolerances of flattening: with one, each vertex of a
   * flattened curve would count as a corner.
   */
  private static final double PRUNE = 2;

  private final VCutter bit;
  private final Tolerances t;
  private final boolean climb;
  private final List<Rail> rails = new ArrayList<>();

  /** Places on the loops where a middle line ends, for each loop. */
  private final List<Loop> loops = new ArrayList<>();

  private double deepestMm;
  private double widestMm;

  /** A closed line at the floor's depth, and where other rails meet it. */
  private record Loop(List<Point> points, List<Joint> joints) {}

  private record Joint(int edge, double along, Point place) {}

  private VNetwork(VCutter bit, Tolerances tolerances, boolean climb) {
    this.bit = bit;
    this.t = tolerances;
    this.climb = climb;
  }

  /**
   * Finds the rails of a connected area.
   *
   * @param atFloor where the tip may stand at the floor's depth
   * @param inner more closed lines to follow at the floor's depth, within that
   */
  static VNetwork of(
      Region part, Region atFloor, List<Ring> inner, VCutter bit, Tolerances t, boolean climb) {
    VNetwork network = new VNetwork(bit, t, climb);
    for (Ring ring : atFloor.rings()) {
      network.loops.add(new Loop(ring.points(), new ArrayList<>()));
    }
    if (!network.loops.isEmpty()) {
      network.deepestMm = bit.floorMm();
    }
    MedialAxis axis = MedialAxis.of(part, PRUNE * t.flattenMm());
    network.widestMm = axis.largest().radiusMm();
    axis.branches().forEach(branch -> network.follow(branch.discs()));
    for (Ring ring : inner) {
      network.loops.add(new Loop(ring.points(), new ArrayList<>()));
    }
    network.link(atFloor);
    network.addLoops();
    return network;
  }

  /** All rails, each at its full depth. */
  List<Rail> rails() {
    return List.copyOf(rails);
  }

  double deepestMm() {
    return deepestMm;
  }

  /** The radius of the largest disc in the area. */
  double widestMm() {
    return widestMm;
  }

  /**
   * Adds the stretches of a branch where the bit fits and the floor is not reached. What is wider
   * than that by less than the tolerances is followed too: there a floor may be too thin to be
   * found.
   */
  private void follow(List<Disc> discs) {
    double least = bit.tipRadiusMm();
    double most = bit.floorWallMm() + t.totalMm();
    if (discs.size() == 1) {
      double r = discs.get(0).radiusMm();
      if (r >= least && r <= most) {
        add(List.of(tip(discs.get(0))));
      }
      return;
    }
    List<Position> run = new ArrayList<>();
    for (int i = 1; i < discs.size(); i++) {
      Disc a = discs.get(i - 1);
      Disc b = discs.get(i);
      double ra = a.radiusMm();
      double rb = b.radiusMm();
      double enter = (rb > ra ? least - ra : most - ra) / (rb - ra);
      double leave = (rb > ra ? most - ra : least - ra) / (rb - ra);
      boolean level = ra == rb;
      if (level ? ra < least || ra > most : enter > 1 || leave < 0) {
        continue;
      }
      double from = level ? 0 : Math.max(0, enter);
      double to = level ? 1 : Math.min(1, leave);
      if (run.isEmpty() || from > 0) {
        flush(run);
        run.add(tip(between(a, b, from)));
      }
      run.add(tip(between(a, b, to)));
      if (to < 1) {
        flush(run);
      }
    }
    flush(run);
  }

  private static Disc between(Disc a, Disc b, double share) {
    if (share == 0) {
      return a;
    }
    return share == 1
        ? b
        : new Disc(
            a.centre().towards(b.centre(), share),
            a.radiusMm() + share * (b.radiusMm() - a.radiusMm()));
  }

  private Position tip(Disc disc) {
    double depth = Math.max(0, Math.min(bit.floorMm(), bit.depthMm(disc.radiusMm())));
    return new Position(disc.centre(), -depth);
  }

  private void flush(List<Position> run) {
    if (run.size() > 1) {
      add(run);
    }
    run.clear();
  }

  /** Adds a run of the middle line; where it ends on the floor it is led onto a loop. */
  private void add(List<Position> run) {
    List<Position> points = new ArrayList<>(run);
    for (Position p : run) {
      deepestMm = Math.max(deepestMm, -p.z());
    }
    join(points.get(0)).ifPresent(p -> points.add(0, p));
    if (run.size() > 1) {
      join(points.get(points.size() - 1)).ifPresent(points::add);
    }
    rails.add(new Rail(points, true, false));
  }

  /** The place on a loop where a run ends that ends at the floor's depth. */
  private java.util.Optional<Position> join(Position end) {
    if (loops.isEmpty() || -end.z() < bit.floorMm() - t.totalMm() / bit.tangent()) {
      return java.util.Optional.empty();
    }
    Loop nearest = loops.get(0);
    Joint best = nearest(nearest, end.xy());
    for (Loop loop : loops) {
      Joint joint = nearest(loop, end.xy());
      if (joint.place().distance(end.xy()) < best.place().distance(end.xy())) {
        best = joint;
        nearest = loop;
      }
    }
    if (best.place().distance(end.xy()) > JOIN_MM) {
      return java.util.Optional.empty();
    }
    nearest.joints().add(best);
    Position there = new Position(best.place(), -bit.floorMm());
    return there.equals(end) ? java.util.Optional.empty() : java.util.Optional.of(there);
  }

  /** A middle line that ends farther from a loop than this ends elsewhere. */
  private static final double JOIN_MM = 0.05;

  private static Joint nearest(Loop loop, Point p) {
    int n = loop.points().size();
    Joint best = new Joint(0, 0, loop.points().get(0));
    for (int i = 0; i < n; i++) {
      Point a = loop.points().get(i);
      Point b = loop.points().get((i + 1) % n);
      Point along = b.minus(a);
      double share = p.minus(a).dot(along) / along.dot(along);
      double clamped = Math.max(0, Math.min(1, share));
      Point place = clamped == 0 ? a : clamped == 1 ? b : a.towards(b, clamped);
      if (place.distance(p) < best.place().distance(p)) {
        best = new Joint(i, clamped, place);
      }
    }
    return best;
  }

  /** Joins each loop but the first to the nearest one before it, where the way keeps clear. */
  private void link(Region atFloor) {
    if (loops.size() < 2) {
      return;
    }
    BoundaryDistance border = BoundaryDistance.of(atFloor);
    for (int i = 1; i < loops.size(); i++) {
      Point from = loops.get(i).points().get(0);
      Loop to = loops.get(0);
      Joint best = nearest(to, from);
      for (Loop loop : loops.subList(0, i)) {
        Joint joint = nearest(loop, from);
        if (joint.place().distance(from) < best.place().distance(from)) {
          best = joint;
          to = loop;
        }
      }
      if (keepsClear(border, from, best.place())) {
        to.joints().add(best);
        loops.get(i).joints().add(new Joint(0, 0, from));
        Position a = new Position(from, -bit.floorMm());
        Position b = new Position(best.place(), -bit.floorMm());
        if (!a.equals(b)) {
          rails.add(new Rail(List.of(a, b), true, false));
        }
      }
    }
  }

  /** Whether a way at the floor's depth is short and stays where the bit may stand. */
  private boolean keepsClear(BoundaryDistance border, Point from, Point to) {
    if (from.distance(to) > MOST_LINK_MM) {
      return false;
    }
    for (int i = 1; i < LINK_SAMPLES; i++) {
      if (border.signed(from.towards(to, (double) i / LINK_SAMPLES)) < -t.offsetMm()) {
        return false;
      }
    }
    return true;
  }

  private static final double MOST_LINK_MM = 3;
  private static final int LINK_SAMPLES = 16;

  /** Adds the loops, cut at their joints, with the wall on the side that the milling asks for. */
  private void addLoops() {
    for (Loop loop : loops) {
      List<Joint> joints = distinct(loop);
      for (int k = 0; k < joints.size(); k++) {
        Rail rail = stretch(loop.points(), joints.get(k), joints.get((k + 1) % joints.size()));
        boolean empty = rail.points().size() < 2 || rail.lengthMm() == 0;
        if (!empty) {
          rails.add(climb ? rail : rail.reversed());
        }
      }
    }
  }

  /** The joints of a loop in order, each place once; its first point if there are none. */
  private static List<Joint> distinct(Loop loop) {
    List<Joint> sorted = new ArrayList<>();
    for (Joint joint : loop.joints()) {
      boolean atEnd = joint.along() == 1;
      int edge = atEnd ? (joint.edge() + 1) % loop.points().size() : joint.edge();
      sorted.add(new Joint(edge, atEnd ? 0 : joint.along(), joint.place()));
    }
    sorted.sort(Comparator.comparingInt(Joint::edge).thenComparingDouble(Joint::along));
    List<Joint> result = new ArrayList<>();
    for (Joint joint : sorted) {
      if (result.isEmpty() || !result.get(result.size() - 1).place().equals(joint.place())) {
        result.add(joint);
      }
    }
    return result.isEmpty() ? List.of(new Joint(0, 0, loop.points().get(0))) : result;
  }

  /** The stretch of a loop from one joint to the next, or all round if they are one. */
  private Rail stretch(List<Point> points, Joint from, Joint to) {
    List<Position> run = new ArrayList<>();
    double z = -bit.floorMm();
    int n = points.size();
    run.add(new Position(from.place(), z));
    boolean ahead =
        to.edge() > from.edge() || (to.edge() == from.edge() && to.along() > from.along());
    int steps = to.edge() - from.edge() + (ahead ? 0 : n);
    for (int k = 1; k <= steps; k++) {
      Position vertex = new Position(points.get((from.edge() + k) % n), z);
      if (!vertex.equals(run.get(run.size() - 1))) {
        run.add(vertex);
      }
    }
    Position end = new Position(to.place(), z);
    if (!end.equals(run.get(run.size() - 1)) || run.size() == 1) {
      run.add(end);
    }
    return new Rail(run, true, true);
  }
}
