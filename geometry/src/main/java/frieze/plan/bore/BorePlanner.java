package frieze.plan.bore;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.BoreWay;
import frieze.design.Work;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.plan.cut.DepthPasses;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.Track;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Makes the cuts of round holes: drilled by a tool of their size, milled in circles by a smaller.
 */
public final class BorePlanner {
  /** A tool makes a hole of its own size if the diameters differ by no more than this. */
  public static final double SAME_SIZE_MM = 0.05;

  /** How deep a drill goes before it is cleared, in diameters; common practice. */
  private static final double PECK_DIAMETERS = 1;

  /** Neighbouring circles of a milled hole lie this part of the diameter apart. */
  private static final double STEP_PART = 0.45;

  private BorePlanner() {}

  /** Whether the tool's diameter is the hole's. */
  public static boolean drills(Tool tool, double diameterMm) {
    return Math.abs(tool.diameterMm() - diameterMm) <= SAME_SIZE_MM;
  }

  /** How far the point of a drill lies below its full diameter. */
  static double pointMm(Tool tool) {
    return tool.shape() instanceof ToolShape.Drill drill
        ? drill.heightAtMm(drill.diameterMm() / 2)
        : 0;
  }

  /**
   * Drills a hole.
   *
   * @param depthMm of the tip
   */
  static Cut drill(String origin, Point centre, double depthMm, Tool tool, Feeds feeds) {
    Position top = new Position(centre, MoveBuilder.AIR_MM);
    Motion down = new Motion.Straight(top, top.withZ(-depthMm));
    double peck = PECK_DIAMETERS * tool.diameterMm();
    return new Cut(
        origin,
        tool,
        feeds.rpm(),
        List.of(new Cut.Move(down, feeds.plungeMmPerMin())),
        OptionalDouble.of(depthMm > peck ? peck : 0));
  }

  /**
   * A place to be bored.
   *
   * @param doneMm how deep the hole, at least as wide, is there already
   */
  record Place(String origin, Point centre, double doneMm) {}

  /**
   * Mills a hole: in one helix where one circle makes it, else in circles from the inside out, pass
   * by pass. Begins where an earlier hole at the same place ends.
   *
   * @param limitMm the most that a pass may take
   */
  static Cut mill(Place place, Work.Bore bore, double depthMm, Feeds feeds, double limitMm) {
    Tool tool = bore.tool();
    List<Track> circles = loops(place.centre(), bore);
    Track inner = circles.get(0);
    double top = MoveBuilder.AIR_MM - place.doneMm();
    Feeds first = around(place, bore, inner, feeds);
    MoveBuilder moves = new MoveBuilder(tool, first, new Position(inner.start(), top));
    List<Double> depths = DepthPasses.depths(depthMm - place.doneMm(), limitMm);
    if (circles.size() == 1) {
      moves.helix(inner, 0, -depthMm, depths.get(0));
    }
    for (double depth : circles.size() == 1 ? List.<Double>of() : depths) {
      double z = -place.doneMm() - depth;
      moves.change(first);
      moves.linkTo(new Position(inner.start(), moves.at().z()));
      moves.helix(inner, 0, z, limitMm);
      for (Track circle : circles.subList(1, circles.size())) {
        moves.change(around(place, bore, circle, feeds));
        moves.linkTo(new Position(circle.start(), z));
        moves.follow(circle.slice(0, circle.lengthMm()));
      }
    }
    moves.linkTo(new Position(place.centre().towards(moves.at().xy(), 0.5), moves.at().z()));
    return moves.cut(place.origin());
  }

  /** A circle is shorter than the wall it leaves; a slot is followed at the feed of its sides. */
  private static Feeds around(Place place, Work.Bore bore, Track loop, Feeds feeds) {
    return bore.way().slot().isPresent()
        ? feeds
        : feeds.insideOf(loop.start().distance(place.centre()), bore.tool().radiusMm());
  }

  /** Mills a slot of the tool's own width, to and fro along its middle, pass by pass. */
  static Cut slot(Place place, Work.Bore bore, List<Double> depths, Feeds feeds) {
    BoreWay.Slot slot = bore.way().slot().orElseThrow();
    Track run = new Track(slot.middle(place.centre(), bore.diameterMm()));
    Position start = new Position(run.start(), MoveBuilder.AIR_MM);
    MoveBuilder moves = new MoveBuilder(bore.tool(), feeds, start);
    for (double depth : depths) {
      moves.enter(run, -depth);
      moves.follow(run.slice(0, run.lengthMm()));
      run = run.reversed();
    }
    return moves.cut(place.origin());
  }

  /** Counter-clockwise circles or loops, the wall on the right: climb milling. */
  private static List<Track> loops(Point centre, Work.Bore bore) {
    double width = bore.diameterMm();
    double last = width / 2 - bore.tool().radiusMm();
    int count = (int) Math.max(1, Math.ceil(last / (STEP_PART * bore.tool().diameterMm())));
    List<Track> loops = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      double aside = last * i / count;
      loops.add(
          new Track(
              bore.way()
                  .slot()
                  .map(slot -> slot.around(centre, width, aside))
                  .orElseGet(() -> Path.circle(centre, aside))));
    }
    return loops;
  }
}
