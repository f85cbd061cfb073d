package frieze.plan.edge;

import frieze.curve.Arc;
import frieze.curve.Bounds;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.curve.Tolerances;
import frieze.design.EdgeRuns;
import frieze.design.EdgeShape;
import frieze.design.Work;
import frieze.layout.Panel;
import frieze.motion.Position;
import frieze.plan.cut.Block;
import frieze.plan.cut.Cut;
import frieze.plan.cut.DepthPasses;
import frieze.plan.cut.Entries;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.Fitting;
import frieze.plan.cut.Leftover;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.Outline;
import frieze.plan.cut.Track;
import frieze.plan.order.CutOrder;
import frieze.region.BoundaryDistance;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.shop.Material;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Makes the cuts that take off the corner between a panel's face and its edge.
 *
 * <p>The tool's axis runs beside the edge, at the distance that its tip needs, always at the same
 * distance: passes differ in depth alone, so that no pass can cut more than the last one.
 *
 * <ul>
 *   <li>In a board with waste all round it sinks turn by turn along its path; on single sides it
 *       ramps down beyond the panel's corner.
 *   <li>On a sawn blank it comes down in the air outside, and runs to the edge and away from it on
 *       arcs that touch its path.
 *   <li>All passes run the same way, so that the edge is milled one way.
 * </ul>
 */
public final class EdgePlanner {
  /** A pass may be so deep for its working diameter in hardwood; common practice. */
  private static final double HARDWOOD_PART = 0.5;

  /** What is left free between a bit that comes down beside a blank and the blank, if it may. */
  private static final double ASIDE_MM = 1.5;

  /** A bit may be as much nearer when it comes down: there it takes less than a micrometre. */
  private static final double GRAZE_MM = 0.06;

  /** How far a tool goes on beyond the end of a side, at most. */
  public static final double FARTHEST_MM = 60;

  private static final double STEP_MM = 0.05;
  private static final int PLACES = 48;
  private static final double NOTHING_MM = 1e-9;

  /** Half of the width of what is rounding. */
  private static final double NOISE_MM = 0.01;

  private final Panel panel;
  private final Work.Edge edge;
  private final Setup setup;
  private final Tolerances tolerances;
  private final Region part;
  private final BoundaryDistance fromPart;
  private final Track axis;

  public EdgePlanner(Panel panel, Work.Edge edge, Setup setup, Tolerances tolerances) {
    this.panel = panel;
    this.edge = edge;
    this.setup = setup;
    this.tolerances = tolerances;
    this.part = Region.of(List.of(panel.outline()), FillRule.NONZERO, tolerances.flattenMm());
    this.fromPart = BoundaryDistance.of(part);
    this.axis = axis(panel.outline());
  }

  private Track axis(Path outline) {
    return edge.axisMm() > NOTHING_MM
        ? Outline.outside(outline, edge.axisMm(), tolerances)
        : Fitting.track(outline, tolerances).orElseThrow();
  }

  /**
   * The diameter that a bit is taken for: that of a V-bit in the middle of its slope, and of a
   * round over bit at its tip, where it is weakest.
   */
  public double workingMm() {
    boolean slope = edge.shape() instanceof EdgeShape.Chamfer;
    return 2 * edge.axisMm() + (slope ? edge.shape().widthMm() : 0);
  }

  private List<Double> depths() {
    boolean hard = setup.stock().material().kind() == Material.Kind.HARDWOOD;
    double limit = (hard ? HARDWOOD_PART : 1) * workingMm();
    double most = Math.min(DepthPasses.limitMm(edge.tool(), setup.stock().material()), limit);
    return DepthPasses.depths(edge.tipDepthMm(), most);
  }

  /** What of the corner stays because the axis can't come to the edge there. */
  public Optional<Leftover> unreached() {
    double axisMm = edge.axisMm();
    if (axisMm <= NOTHING_MM) {
      return Optional.empty();
    }
    double tolerance = tolerances.offsetMm();
    Region grown = Offset.offset(part, axisMm, tolerance);
    Region filled = Region.ofRing(grown.rings().get(0).points());
    Region closed = Offset.offset(filled, -axisMm, tolerance);
    double width = edge.shape().widthMm();
    Region kept = Offset.offset(part, -width, tolerance);
    Region asked = edge.allRound() ? part : part.intersection(near(width));
    Region left =
        Leftover.without(asked.intersection(Offset.offset(closed, -width, tolerance)), kept);
    // Parts that are more than rounding may have slivers of rounding along the edge.
    Region clean = Offset.offset(Offset.offset(left, -NOISE_MM, tolerance), NOISE_MM, tolerance);
    return clean.isEmpty()
        ? Optional.empty()
        : Optional.of(new Leftover(edge.operation() + " " + panel.name(), clean));
  }

  /** The places that lie beside the sides that are worked. */
  private Region near(double widthMm) {
    List<Region> beside = new ArrayList<>();
    for (Path run : EdgeRuns.of(panel, edge.sides(), tolerances.flattenMm())) {
      for (Segment s : run.segments()) {
        Point along = s.end().minus(s.start());
        Point in = new Point(-along.y(), along.x()).times(2 * widthMm / along.norm());
        beside.add(
            Region.ofRing(List.of(s.start(), s.end(), s.end().plus(in), s.start().plus(in))));
      }
    }
    return Region.union(beside);
  }

  public List<Block> blocks(Feeds feeds) {
    String origin = edge.operation() + " " + panel.name();
    if (edge.allRound()) {
      Track loop = directed(axis);
      return setup.stock().blank()
          ? List.of(fromOutside(origin, loop, feeds))
          : List.of(sinking(origin, loop, feeds));
    }
    List<Block> blocks = new ArrayList<>();
    for (Path run : EdgeRuns.of(panel, edge.sides(), tolerances.flattenMm())) {
      blocks.add(Block.of(along(origin, directed(passing(run)), feeds)));
    }
    return blocks;
  }

  /** The part lies on the left of a path that runs as its outline does. */
  private Track directed(Track track) {
    return edge.milling() == Work.Milling.CLIMB ? track.reversed() : track;
  }

  private Block sinking(String origin, Track loop, Feeds feeds) {
    List<Double> depths = depths();
    List<Track> ways =
        Entries.of(loop, edge.tool().diameterMm()).stream().map(loop::startingAt).toList();
    return new Block(
        ways.stream().map(w -> new CutOrder.Way(w.start(), w.start())).toList(),
        k -> {
          Position start = new Position(ways.get(k).start(), MoveBuilder.AIR_MM);
          MoveBuilder moves = new MoveBuilder(edge.tool(), feeds, start);
          moves.helix(ways.get(k), 0, -edge.tipDepthMm(), depths.get(0));
          return List.of(moves.cut(origin));
        });
  }

  private Block fromOutside(String origin, Track loop, Feeds feeds) {
    List<List<Cut>> ways = new ArrayList<>();
    for (double at : places(loop)) {
      Track lap = loop.startingAt(at);
      Segment first = lap.path().segments().get(0);
      Leads leads = new Leads(first, edge, leadMm());
      if (isRoomFor(leads)) {
        ways.add(depths().stream().map(d -> lap(origin, lap, leads, d, feeds)).toList());
      }
    }
    return Block.anyOf(ways);
  }

  private Cut lap(String origin, Track lap, Leads leads, double depth, Feeds feeds) {
    Position start = new Position(leads.in().start(), MoveBuilder.AIR_MM);
    MoveBuilder moves = new MoveBuilder(edge.tool(), feeds, start);
    moves.verticalTo(-depth);
    moves.follow(List.of(leads.in()));
    moves.follow(lap.slice(0, lap.lengthMm()));
    moves.follow(List.of(leads.out()));
    return moves.cut(origin);
  }

  /** Places to come to a loop from outside: those away from corners, or any. */
  private List<Double> places(Track loop) {
    List<Double> good = Entries.of(loop, edge.tool().diameterMm());
    List<Double> all =
        IntStream.range(0, PLACES).mapToObj(i -> loop.lengthMm() * i / PLACES).toList();
    return good.stream().anyMatch(at -> isClearAt(loop, at)) ? good : all;
  }

  private boolean isClearAt(Track loop, double at) {
    Segment first = loop.startingAt(at).path().segments().get(0);
    return isRoomFor(new Leads(first, edge, leadMm()));
  }

  /** Whether the tool comes down off the blank, its axis no farther beside it than its radius. */
  private boolean isRoomFor(Leads leads) {
    return isClear(leads.in().start())
        && isClear(leads.out().end())
        && beyondMm(leads.in()) <= edge.tool().radiusMm() + NOISE_MM / 10
        && beyondMm(leads.out()) <= edge.tool().radiusMm() + NOISE_MM / 10;
  }

  /** How far an arc reaches beyond the rectangle of the blank. */
  private double beyondMm(Arc lead) {
    Bounds blank = part.bounds();
    Bounds arc = lead.bounds();
    return Math.max(
        Math.max(blank.minX() - arc.minX(), arc.maxX() - blank.maxX()),
        Math.max(blank.minY() - arc.minY(), arc.maxY() - blank.maxY()));
  }

  /** How wide the tool is at the face, from its axis. */
  private double besideMm() {
    return edge.axisMm() + edge.shape().widthMm();
  }

  /**
   * The radius of the arcs to and from the edge: the tool comes down where it is off the blank, and
   * its axis no farther outside than its own radius.
   */
  private double leadMm() {
    return Math.min(edge.tool().radiusMm() - edge.axisMm(), edge.shape().widthMm() + ASIDE_MM);
  }

  private boolean isClear(Point place) {
    return -fromPart.signed(place) >= besideMm() - GRAZE_MM;
  }

  /** Quarters of a circle outside the part, to the start of a lap and on from there. */
  private record Leads(Arc in, Arc out) {
    Leads(Segment first, Work.Edge edge, double radiusMm) {
      this(arc(first, edge, radiusMm, true), arc(first, edge, radiusMm, false));
    }

    private static Arc arc(Segment first, Work.Edge edge, double radiusMm, boolean before) {
      Point tangent = first.tangentAt(0);
      Point along = tangent.times(1 / tangent.norm());
      boolean outsideOnRight = edge.milling() != Work.Milling.CLIMB;
      Point right = new Point(along.y(), -along.x());
      Point centre = first.start().plus(right.times(outsideOnRight ? radiusMm : -radiusMm));
      double sweep = outsideOnRight ? -Math.PI / 2 : Math.PI / 2;
      return before
          ? new Arc(centre.minus(along.times(radiusMm)), first.start(), centre, sweep)
          : new Arc(first.start(), centre.plus(along.times(radiusMm)), centre, sweep);
    }
  }

  /** One cut for each pass, all the same way. */
  private List<Cut> along(String origin, Track track, Feeds feeds) {
    List<Cut> cuts = new ArrayList<>();
    double before = 0;
    for (double depth : depths()) {
      double air = setup.stock().blank() ? MoveBuilder.AIR_MM : MoveBuilder.AIR_MM - before;
      MoveBuilder moves = new MoveBuilder(edge.tool(), feeds, new Position(track.start(), air));
      if (setup.stock().blank()) {
        moves.verticalTo(-depth);
      } else {
        moves.enter(track, -depth);
      }
      moves.follow(track.slice(0, track.lengthMm()));
      cuts.add(moves.cut(origin));
      before = depth;
    }
    return cuts;
  }

  /** The axis along a side, straight on at both ends until the tool is off the panel. */
  private Track passing(Path run) {
    Segment first = run.segments().get(0);
    Segment last = run.segments().get(run.segments().size() - 1);
    Point from = beside(first.start(), first);
    Point to = beside(last.end(), last);
    double begin = axis.nearestMm(from);
    double end = axis.nearestMm(to);
    double lap = axis.lengthMm();
    List<Segment> between = axis.slice(begin, end > begin ? end : end + lap);
    List<Segment> all = new ArrayList<>();
    Point start = between.get(0).start();
    Point stop = between.get(between.size() - 1).end();
    all.add(new Line(start.plus(out(first, true)), start));
    all.addAll(between);
    all.add(new Line(stop, stop.plus(out(last, false))));
    return new Track(new Path(all, false));
  }

  private Point beside(Point corner, Segment side) {
    Point along = side.end().minus(side.start());
    return corner.plus(new Point(along.y(), -along.x()).times(edge.axisMm() / along.norm()));
  }

  private Point out(Segment side, boolean before) {
    Point corner = before ? side.start() : side.end();
    return way(side, before).times(beyondMm(beside(corner, side), side, before).orElseThrow());
  }

  private static Point way(Segment side, boolean before) {
    Point along = side.end().minus(side.start());
    return along.times((before ? -1 : 1) / along.norm());
  }

  /** How far the axis must go on from a place until the tool is off the panel; empty if too far. */
  private OptionalDouble beyondMm(Point from, Segment side, boolean before) {
    for (double beyond = STEP_MM; beyond <= FARTHEST_MM; beyond += STEP_MM) {
      if (isClear(from.plus(way(side, before).times(beyond)))) {
        return OptionalDouble.of(beyond);
      }
    }
    return OptionalDouble.empty();
  }

  /** An end of a side at which the tool can't come off the panel. */
  public Optional<Point> stuckAt() {
    for (Path run :
        edge.allRound()
            ? List.<Path>of()
            : EdgeRuns.of(panel, edge.sides(), tolerances.flattenMm())) {
      Segment first = run.segments().get(0);
      Segment last = run.segments().get(run.segments().size() - 1);
      if (beyondMm(beside(first.start(), first), first, true).isEmpty()) {
        return Optional.of(first.start());
      }
      if (beyondMm(beside(last.end(), last), last, false).isEmpty()) {
        return Optional.of(last.end());
      }
    }
    return Optional.empty();
  }

  /** Whether a sawn blank can be come to from outside. */
  public boolean hasRoom() {
    Track loop = directed(axis);
    return !(edge.allRound() && setup.stock().blank())
        || places(loop).stream().anyMatch(at -> isClearAt(loop, at));
  }
}
