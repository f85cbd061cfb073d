package frieze.trace;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.region.Disc;
import frieze.region.MedialAxis;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The strokes of a pen that fill a region: the middle line of the region from junction to junction,
 * without what comes from the ends and the sides of the pen.
 *
 * <p>All is measured in half widths of the pen, so that a stroke is two wide.
 *
 * @param strokes of two points or more
 * @param nodes where strokes meet; both ends of a stroke are named in {@code ends}
 * @param radius half the width of the pen
 */
record PenAxis(List<Stroke> strokes, List<Node> nodes, double radius) {
  /** The end of a stroke where no other begins. */
  static final int FREE = -1;

  private static final double STROKE_WIDTH = 2;

  /** Corners of a flat end, at 0.41 from the disc in it, are no strokes. */
  private static final double TOLERANCE = 0.45;

  /** A crossing of two strokes is wider than they are; wider than this is an area. */
  private static final double WIDEST_JUNCTION = 1.7;

  /** Discs at a free end that are smaller than this run into a corner of it. */
  private static final double TAPERED = 0.7;

  /** A pen that is lifted slowly narrows its line by less than this; a corner by 0.7. */
  private static final double STEEP = 0.35;

  /** A stroke that sticks out of a junction by less is none. */
  private static final double SPUR = 1.5;

  /** This much of a stroke beside a junction is drawn aside by it, in radii of the junction. */
  private static final double ASTRAY = 1.3;

  /** The boundary ahead of a free end is no farther than this, in half widths. */
  private static final double FARTHEST_END = 2.5;

  /**
   * A stroke.
   *
   * @param points in order
   * @param radii half its width at each point
   * @param from the node that it starts at, or {@link #FREE}
   * @param to the node that it ends at, or {@link #FREE}
   */
  record Stroke(List<Point> points, List<Double> radii, int from, int to, boolean loop) {}

  /** Where strokes meet. */
  record Node(Point at, double radius) {}

  /**
   * Finds the strokes.
   *
   * @return empty if a part of the region is wider than the widest pen
   */
  static Optional<PenAxis> of(Region region, double widestMm) {
    double mean = 2 * region.area() / region.perimeter();
    if (!(mean > 0) || mean > widestMm) {
      return Optional.empty();
    }
    double scale = STROKE_WIDTH / mean;
    Region scaled = region.transformed(Affine.scaling(scale, scale));
    MedialAxis axis = MedialAxis.of(scaled, TOLERANCE);
    double widest = axis.largest().radiusMm();
    if (widest > WIDEST_JUNCTION * widestMm * scale / 2) {
      return Optional.empty();
    }
    return Optional.of(new Finder(axis, scaled).found().scaled(1 / scale));
  }

  private PenAxis scaled(double by) {
    List<Stroke> all =
        strokes.stream()
            .map(
                s ->
                    new Stroke(
                        s.points().stream().map(p -> p.times(by)).toList(),
                        s.radii().stream().map(r -> r * by).toList(),
                        s.from(),
                        s.to(),
                        s.loop()))
            .toList();
    List<Node> scaled =
        nodes.stream().map(n -> new Node(n.at().times(by), n.radius() * by)).toList();
    return new PenAxis(all, scaled, radius * by);
  }

  /** Works on the discs of an axis. */
  private static final class Finder {
    private final List<List<Disc>> chains = new ArrayList<>();
    private final Map<Point, Integer> degree = new HashMap<>();
    private final Map<Point, Integer> nodeAt = new HashMap<>();
    private final List<Node> nodes = new ArrayList<>();
    private final List<Ring> rings;
    private final double radius;

    Finder(MedialAxis axis, Region region) {
      this.rings = region.rings();
      axis.branches().forEach(b -> chains.add(b.discs()));
      chains.forEach(this::count);
      this.radius = usual();
    }

    private void count(List<Disc> chain) {
      degree.merge(first(chain), 1, Integer::sum);
      degree.merge(last(chain), 1, Integer::sum);
    }

    private static Point first(List<Disc> chain) {
      return chain.get(0).centre();
    }

    private static Point last(List<Disc> chain) {
      return chain.get(chain.size() - 1).centre();
    }

    private boolean free(Point end) {
      return degree.getOrDefault(end, 0) < 2;
    }

    /** The median radius along the axis. */
    private double usual() {
      List<double[]> all = new ArrayList<>();
      double length = 0;
      for (List<Disc> chain : chains) {
        for (int i = 1; i < chain.size(); i++) {
          double step = chain.get(i).centre().distance(chain.get(i - 1).centre());
          all.add(new double[] {chain.get(i).radiusMm(), step});
          length += step;
        }
      }
      all.sort((a, b) -> Double.compare(a[0], b[0]));
      double walked = 0;
      for (double[] one : all) {
        walked += one[1];
        if (walked >= length / 2) {
          return one[0];
        }
      }
      return chains.isEmpty() ? 0 : chains.get(0).get(0).radiusMm();
    }

    PenAxis found() {
      dropSpurs();
      List<Stroke> strokes = new ArrayList<>();
      joinNear();
      for (List<Disc> chain : chains) {
        stroke(chain).ifPresent(strokes::add);
      }
      return new PenAxis(strokes, nodes, radius);
    }

    private void dropSpurs() {
      List<List<Disc>> kept = new ArrayList<>();
      for (List<Disc> chain : chains) {
        List<Disc> cut = tapered(chain);
        boolean spur = free(last(chain)) != free(first(chain));
        Disc junction = chain.get(free(first(chain)) ? chain.size() - 1 : 0);
        if (spur && length(cut) < SPUR * junction.radiusMm()) {
          degree.merge(first(chain), -1, Integer::sum);
          degree.merge(last(chain), -1, Integer::sum);
        } else {
          kept.add(cut);
        }
      }
      chains.clear();
      chains.addAll(kept);
      degree.clear();
      chains.forEach(this::count);
    }

    /** A chain without what runs into a corner at its free ends: it narrows fast there. */
    private List<Disc> tapered(List<Disc> chain) {
      int from = 0;
      int to = chain.size();
      while (free(first(chain)) && from < to - 2 && runsOut(chain.get(from), chain.get(from + 1))) {
        from++;
      }
      while (free(last(chain)) && from < to - 2 && runsOut(chain.get(to - 1), chain.get(to - 2))) {
        to--;
      }
      return chain.subList(from, to);
    }

    private boolean runsOut(Disc end, Disc before) {
      double step = end.centre().distance(before.centre());
      return end.radiusMm() < TAPERED * radius && before.radiusMm() - end.radiusMm() > STEEP * step;
    }

    private static double length(List<Disc> chain) {
      double length = 0;
      for (int i = 1; i < chain.size(); i++) {
        length += chain.get(i).centre().distance(chain.get(i - 1).centre());
      }
      return length;
    }

    /** Makes one node of junctions that lie in each other: two strokes that cross give two. */
    private void joinNear() {
      List<List<Disc>> kept = new ArrayList<>();
      for (List<Disc> chain : chains) {
        Disc a = chain.get(0);
        Disc b = chain.get(chain.size() - 1);
        boolean between = !free(a.centre()) && !free(b.centre()) && !a.equals(b);
        if (between && length(chain) < a.radiusMm() + b.radiusMm()) {
          int node = node(a);
          Integer other = nodeAt.put(b.centre(), node);
          if (other != null && other != node) {
            nodeAt.replaceAll((p, n) -> n.equals(other) ? node : n);
          }
          Node one = nodes.get(node);
          nodes.set(
              node,
              new Node(one.at().towards(b.centre(), 0.5), Math.max(one.radius(), b.radiusMm())));
        } else {
          kept.add(chain);
        }
      }
      chains.clear();
      chains.addAll(kept);
    }

    private int node(Disc disc) {
      return nodeAt.computeIfAbsent(
          disc.centre(),
          p -> {
            nodes.add(new Node(p, disc.radiusMm()));
            return nodes.size() - 1;
          });
    }

    private Optional<Stroke> stroke(List<Disc> chain) {
      if (chain.size() < 2) {
        return Optional.empty();
      }
      boolean loop = first(chain).equals(last(chain)) && degree.getOrDefault(first(chain), 0) == 2;
      if (loop) {
        List<Disc> lap = chain.subList(1, chain.size());
        return Optional.of(new Stroke(centres(lap), radii(lap), FREE, FREE, true));
      }
      int from = free(first(chain)) ? FREE : node(chain.get(0));
      int to = free(last(chain)) ? FREE : node(chain.get(chain.size() - 1));
      List<Disc> discs = new ArrayList<>(chain);
      discs.removeIf(d -> astray(d.centre(), from) || astray(d.centre(), to));
      if (discs.size() < 2) {
        discs = List.of(chain.get(0), chain.get(chain.size() - 1));
      }
      List<Point> whole = new ArrayList<>(centres(discs));
      List<Double> radii = new ArrayList<>(radii(discs));
      if (to == FREE) {
        whole.add(end(discs));
        radii.add(radii.get(radii.size() - 1));
      }
      if (from == FREE) {
        List<Disc> back = new ArrayList<>(discs);
        Collections.reverse(back);
        whole.add(0, end(back));
        radii.add(0, radii.get(0));
      }
      return Optional.of(new Stroke(whole, radii, from, to, false));
    }

    private static List<Point> centres(List<Disc> discs) {
      return discs.stream().map(Disc::centre).toList();
    }

    private static List<Double> radii(List<Disc> discs) {
      return discs.stream().map(Disc::radiusMm).toList();
    }

    /** Where the pen stopped: its round end, as wide as a little before, touches the boundary. */
    private Point end(List<Disc> discs) {
      Point tip = discs.get(discs.size() - 1).centre();
      Disc back = discs.get(0);
      for (Disc d : discs) {
        back = d.centre().distance(tip) >= 2 * radius ? d : back;
      }
      Point before = back.centre();
      double length = before.distance(tip);
      if (length == 0) {
        return tip;
      }
      Point along = tip.minus(before).times(1 / length);
      double ahead = FARTHEST_END * radius;
      for (Ring ring : rings) {
        for (int i = 0; i < ring.points().size(); i++) {
          Point a = ring.points().get(i);
          Point edge = ring.points().get((i + 1) % ring.points().size()).minus(a);
          double det = along.cross(edge);
          double t = a.minus(tip).cross(edge) / det;
          double u = a.minus(tip).cross(along) / det;
          if (det != 0 && t > 0 && u >= 0 && u <= 1) {
            ahead = Math.min(ahead, t);
          }
        }
      }
      return tip.plus(along.times(Math.max(0, ahead - back.radiusMm())));
    }

    private boolean astray(Point p, int node) {
      return node != FREE && p.distance(nodes.get(node).at()) < ASTRAY * nodes.get(node).radius();
    }
  }
}
