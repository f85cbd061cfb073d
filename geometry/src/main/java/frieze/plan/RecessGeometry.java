package frieze.plan;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Work;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * The loops that clear an area with a round tool: successive offsets inward, cut from the inside
 * out, the ones along the border last.
 *
 * <p>Guarantees: the tool's disc stays inside the area; with a stepover of at most the radius every
 * point that the tool can reach is cut, because no point lies farther than the stepover from the
 * loop outside it.
 *
 * <p>Approximation: each offset departs by {@code offsetMm} from the exact one; successive offsets
 * do not add up on the border, which is made by the first of them alone.
 */
final class RecessGeometry {
  /**
   * A link may cross the border of the places allowed by this many offset tolerances: its ends lie
   * on fitted arcs, which do so too.
   */
  private static final double LINK_TOLERANCES = 3;

  private final Work.Milling milling;
  private final Tolerances t;
  private final List<Chain> chains = new ArrayList<>();

  /**
   * Loops joined by straight links at depth.
   *
   * @param loops closed, each linked from its start to the start of the next
   * @param canReturn whether the straight way from the last start to the first stays inside
   */
  record Chain(List<Track> loops, boolean canReturn) {
    Chain {
      loops = List.copyOf(loops);
    }

    /** This chain elsewhere; a mirror turns the loops, so that the wall stays on its side. */
    Chain placed(Affine map) {
      return new Chain(
          loops.stream()
              .map(l -> map.isMirroring() ? l.transformed(map).reversed() : l.transformed(map))
              .toList(),
          canReturn);
    }
  }

  /**
   * What comes of an area.
   *
   * @param chains in the order of cutting
   * @param leftover what the tool does not reach
   */
  record Result(List<Chain> chains, Region leftover) {
    /** This result elsewhere. */
    Result placed(Affine map) {
      return new Result(
          chains.stream().map(c -> c.placed(map)).toList(), leftover.transformed(map));
    }
  }

  private RecessGeometry(Work.Milling milling, Tolerances tolerances) {
    this.milling = milling;
    this.t = tolerances;
  }

  /**
   * The tool and the way it is led.
   *
   * @param stepoverMm at most the radius
   */
  record Cutter(double radiusMm, double stepoverMm, Work.Milling milling) {}

  /**
   * Works out the loops.
   *
   * <p>Where the tool's axis may go is the area shrunk by the radius; where it must go is that part
   * of it from which it reaches what is to be done. The loops run along the border of that part and
   * inward from there.
   *
   * @param area what may be cut
   * @param todo what is to be cut: all of the area, or what a larger tool has left
   */
  static Result of(Region area, Region todo, Cutter cutter, Tolerances t) {
    RecessGeometry geometry = new RecessGeometry(cutter.milling(), t);
    double radius = cutter.radiusMm();
    double stepover = cutter.stepoverMm();
    List<Region> levels;
    if (todo.equals(area)) {
      levels = Offset.inwardRings(area, radius, stepover, t.offsetMm());
    } else {
      Region allowed = Offset.offset(area, -radius, t.offsetMm());
      Region near = Offset.offset(todo, radius, t.offsetMm()).intersection(allowed);
      levels = Offset.inwardRings(near, 0, stepover, t.offsetMm());
    }
    for (Node part : Node.nested(levels)) {
      geometry.clear(part);
    }
    return new Result(geometry.chains, leftover(area, radius, t));
  }

  /** What a round tool leaves of an area. */
  static Region leftover(Region area, double radiusMm, Tolerances t) {
    Region centres = Offset.offset(area, -radiusMm, t.offsetMm());
    return Leftover.without(area, Offset.offset(centres, radiusMm, t.offsetMm()));
  }

  /** Clears one connected part of the places where the tool's axis may go. */
  private void clear(Node part) {
    Region allowed = Offset.offset(part.region(), LINK_TOLERANCES * t.offsetMm(), t.offsetMm());
    List<Ring> rings = new ArrayList<>();
    insideOut(part, rings);
    List<Track> chain = new ArrayList<>();
    for (Ring ring : rings) {
      Track loop = loop(ring);
      if (!chain.isEmpty()) {
        Point from = chain.get(chain.size() - 1).start();
        loop = loop.startingAt(loop.nearestMm(from));
        if (!allowed.containsSegment(from, loop.start())) {
          finish(chain, allowed);
          chain = new ArrayList<>();
        }
      }
      chain.add(loop);
    }
    finish(chain, allowed);
  }

  private void finish(List<Track> chain, Region allowed) {
    Point first = chain.get(0).start();
    Point last = chain.get(chain.size() - 1).start();
    chains.add(new Chain(chain, first.equals(last) || allowed.containsSegment(last, first)));
  }

  /** Collects the rings of all offsets of a part, each after all that lie inside it. */
  private static void insideOut(Node part, List<Ring> into) {
    part.inner().forEach(inner -> insideOut(inner, into));
    into.addAll(part.region().rings());
  }

  /** A ring has its area on the left and the wall on the right: that is climb milling. */
  private Track loop(Ring ring) {
    Path path = Fitting.fit(ring.points(), true, t);
    return new Track(milling == Work.Milling.CLIMB ? path : path.reversed());
  }

  /** A connected part of one offset, and the parts of the next offset inside it. */
  private record Node(Region region, List<Node> inner) {
    /** Nests the parts of successive offsets; returns those that nothing surrounds. */
    static List<Node> nested(List<Region> levels) {
      List<Node> outer = List.of();
      List<Node> roots = new ArrayList<>();
      for (Region level : levels) {
        List<Node> nodes = new ArrayList<>();
        for (Region part : level.parts()) {
          Node node = new Node(part, new ArrayList<>());
          nodes.add(node);
          Point inside = part.rings().get(0).points().get(0);
          outer.stream()
              .filter(o -> surrounds(o, inside))
              .findFirst()
              .map(Node::inner)
              .orElse(roots)
              .add(node);
        }
        outer = nodes;
      }
      return roots;
    }

    private static boolean surrounds(Node node, Point inside) {
      return node.region().bounds().contains(inside) && node.region().contains(inside);
    }
  }
}
