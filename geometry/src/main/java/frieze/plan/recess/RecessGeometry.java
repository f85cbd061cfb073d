package frieze.plan.recess;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Work;
import frieze.plan.cut.Entries;
import frieze.plan.cut.Fitting;
import frieze.plan.cut.Leftover;
import frieze.plan.cut.Track;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The loops that clear an area with a round tool: successive offsets inward, cut from the inside
 * out, the ones along the border last; or lines to and fro, and one loop along the border.
 *
 * <p>Guarantees: the tool's disc stays inside the area; with a stepover of at most the radius every
 * point that the tool can reach is cut, because no point lies farther than the stepover from the
 * loop outside it.
 *
 * <p>Approximation: each offset departs by {@code offsetMm} from the exact one; successive offsets
 * do not add up on the border, which is made by the first of them alone.
 */
public final class RecessGeometry {
  /**
   * A link may cross the border of the places allowed by this many offset tolerances: its ends lie
   * on fitted arcs, which do so too.
   */
  private static final double LINK_TOLERANCES = 3;

  private final Cutter cutter;
  private final Tolerances t;
  private final List<Part> parts = new ArrayList<>();

  /**
   * Loops joined by straight links at depth.
   *
   * @param loops closed, each linked from its start to the start of the next
   * @param canReturn whether the straight way from the last start to the first stays inside
   * @param others the same loops begun at other places, for the order of cuts to choose
   */
  public record Chain(List<Track> loops, boolean canReturn, List<Chain> others) {
    public Chain {
      loops = List.copyOf(loops);
      others = List.copyOf(others);
    }

    /** Loops that are begun where they start. */
    public Chain(List<Track> loops, boolean canReturn) {
      this(loops, canReturn, List.of());
    }

    /** All ways to begin, this one first. */
    public List<Chain> ways() {
      return Stream.concat(Stream.of(this), others.stream()).toList();
    }

    /** The way that begins nearest to a place. */
    public Chain nearest(Point to) {
      return ways().stream()
          .min(Comparator.comparingDouble(c -> c.loops().get(0).start().distance(to)))
          .orElse(this);
    }

    /** This chain elsewhere; a mirror turns the loops, so that the wall stays on its side. */
    public Chain placed(Affine map) {
      return new Chain(
          loops.stream()
              .map(l -> map.isMirroring() ? l.transformed(map).reversed() : l.transformed(map))
              .toList(),
          canReturn,
          others.stream().map(o -> o.placed(map)).toList());
    }
  }

  /**
   * What is cut one after the other: lines to and fro, then loops, then the laps at the wall.
   *
   * @param lines open
   * @param before empty if nothing was cut
   */
  public record Part(
      List<Track> lines, List<Chain> chains, List<WallLap> walls, Optional<Before> before) {
    public Part {
      lines = List.copyOf(lines);
      chains = List.copyOf(chains);
      walls = List.copyOf(walls);
    }

    public Part placed(Affine map) {
      return new Part(
          lines.stream().map(l -> l.transformed(map)).toList(),
          chains.stream().map(c -> c.placed(map)).toList(),
          walls.stream().map(w -> w.placed(map)).toList(),
          before.map(b -> b.placed(map)));
    }
  }

  /**
   * What a larger tool has cut.
   *
   * @param area where it went
   * @param left what it has left there
   */
  record Before(Region area, Region left) {
    public Before placed(Affine map) {
      return new Before(area.transformed(map), left.transformed(map));
    }

    /** Tells whether a place still stands. */
    Predicate<Point> standing() {
      Region.Locator inside = area.locator();
      Region.Locator uncut = left.locator();
      return p -> uncut.contains(p) || !inside.contains(p);
    }
  }

  /**
   * What comes of an area.
   *
   * @param parts in any order
   * @param leftover what the tool does not reach
   */
  public record Result(List<Part> parts, Region leftover) {
    public Result {
      parts = List.copyOf(parts);
    }

    /** The loops of all parts. */
    public List<Chain> chains() {
      return parts.stream().flatMap(p -> p.chains().stream()).toList();
    }

    /** This result elsewhere. */
    public Result placed(Affine map) {
      return new Result(parts.stream().map(p -> p.placed(map)).toList(), leftover.transformed(map));
    }
  }

  private RecessGeometry(Cutter cutter, Tolerances tolerances) {
    this.cutter = cutter;
    this.t = tolerances;
  }

  /**
   * The tool and the way it is led.
   *
   * @param stepoverMm at most the radius
   * @param lines whether it goes to and fro along X, and only around the border in loops
   */
  public record Cutter(double radiusMm, double stepoverMm, Work.Milling milling, boolean lines) {
    /** A tool led in loops. */
    public Cutter(double radiusMm, double stepoverMm, Work.Milling milling) {
      this(radiusMm, stepoverMm, milling, false);
    }

    Cutter inRings() {
      return new Cutter(radiusMm, stepoverMm, milling);
    }
  }

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
  public static Result of(Region area, Region todo, Cutter cutter, Tolerances t) {
    RecessGeometry geometry = new RecessGeometry(cutter, t);
    Optional<Before> before =
        todo.equals(area) ? Optional.empty() : Optional.of(new Before(area, todo));
    for (Node part : Node.nested(geometry.levels(area, todo))) {
      geometry.clear(part, before);
    }
    return new Result(geometry.parts, leftover(area, cutter.radiusMm(), t));
  }

  /** Offsets of the places where the axis must go, from the outside in; of lines only the first. */
  private List<Region> levels(Region area, Region todo) {
    boolean all = todo.equals(area);
    double radius = cutter.radiusMm();
    if (all && !cutter.lines()) {
      return Offset.inwardRings(area, radius, cutter.stepoverMm(), t.offsetMm());
    }
    Region allowed = Offset.offset(area, -radius, t.offsetMm());
    Region near = all ? allowed : Offset.offset(todo, radius, t.offsetMm()).intersection(allowed);
    if (cutter.lines()) {
      return near.isEmpty() ? List.of() : List.of(near);
    }
    return Offset.inwardRings(near, 0, cutter.stepoverMm(), t.offsetMm());
  }

  /** What a round tool leaves of an area. */
  public static Region leftover(Region area, double radiusMm, Tolerances t) {
    Region centres = Offset.offset(area, -radiusMm, t.offsetMm());
    return Leftover.without(area, Offset.offset(centres, radiusMm, t.offsetMm()));
  }

  /** Clears one connected part of the places where the tool's axis may go. */
  private void clear(Node part, Optional<Before> before) {
    Region allowed = Offset.offset(part.region(), LINK_TOLERANCES * t.offsetMm(), t.offsetMm());
    List<Ring> rings = new ArrayList<>();
    insideOut(part, rings);
    List<Chain> chains = chains(rings, allowed);
    List<Track> lines = cutter.lines() ? LineSweep.of(part.region(), cutter, t) : List.<Track>of();
    parts.add(new Part(lines, chains, List.of(), before));
  }

  private List<Chain> chains(List<Ring> rings, Region allowed) {
    List<Chain> chains = new ArrayList<>();
    List<Track> chain = new ArrayList<>();
    for (Ring ring : rings) {
      Track loop = loop(ring, cutter.milling(), t);
      if (!chain.isEmpty()) {
        Point from = chain.get(chain.size() - 1).start();
        loop = loop.startingAt(loop.nearestMm(from));
        if (!allowed.containsSegment(from, loop.start())) {
          chains.add(finished(chain, allowed));
          chain = new ArrayList<>();
        }
      }
      chain.add(loop);
    }
    chains.add(finished(chain, allowed));
    return chains;
  }

  private Chain finished(List<Track> chain, Region allowed) {
    List<Chain> others = new ArrayList<>();
    for (double place : entries(chain)) {
      begunAt(chain, place, allowed).ifPresent(others::add);
    }
    return new Chain(chain, canReturn(chain, allowed), others);
  }

  /** Where else to begin: anywhere on a loop inside others, away from corners on a wall. */
  private List<Double> entries(List<Track> chain) {
    Track first = chain.get(0);
    return chain.size() == 1
        ? Entries.few(first, 2 * cutter.radiusMm()).stream().filter(at -> at > 0).toList()
        : List.of(0.25 * first.lengthMm(), 0.5 * first.lengthMm(), 0.75 * first.lengthMm());
  }

  private static boolean canReturn(List<Track> chain, Region allowed) {
    Point first = chain.get(0).start();
    Point last = chain.get(chain.size() - 1).start();
    return first.equals(last) || allowed.containsSegment(last, first);
  }

  /** The same loops from another place of the first one; empty if a link would leave the area. */
  private static Optional<Chain> begunAt(List<Track> chain, double placeMm, Region allowed) {
    List<Track> loops = new ArrayList<>();
    loops.add(chain.get(0).startingAt(placeMm));
    for (Track loop : chain.subList(1, chain.size())) {
      Point from = loops.get(loops.size() - 1).start();
      Track next = loop.startingAt(loop.nearestMm(from));
      if (!allowed.containsSegment(from, next.start())) {
        return Optional.empty();
      }
      loops.add(next);
    }
    return Optional.of(new Chain(loops, canReturn(loops, allowed)));
  }

  /** Collects the rings of all offsets of a part, each after all that lie inside it. */
  private static void insideOut(Node part, List<Ring> into) {
    part.inner().forEach(inner -> insideOut(inner, into));
    into.addAll(part.region().rings());
  }

  /** A ring has its area on the left and the wall on the right: that is climb milling. */
  static Track loop(Ring ring, Work.Milling milling, Tolerances t) {
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
