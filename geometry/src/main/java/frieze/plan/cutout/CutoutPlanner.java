package frieze.plan.cutout;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.Track;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Makes the cut along an outline, leaving its tabs.
 *
 * <p>Above the tops of the tabs it sinks round and round without a stop. Below, it cuts the
 * stretches between the tabs, rises and travels over each tab at the height of its top, and leaves
 * along the cut while it rises. What was left on the wall is taken last, in one lap or several at
 * the whole depth, each entered and left on arcs that touch its track, within the slot that is cut
 * already.
 */
public final class CutoutPlanner {
  /** The slope of a ramped tab's ends. */
  public static final double TAB_SLOPE_RAD = StrictMath.toRadians(30);

  private static final double SAME_MM = 1e-6;

  private final Tool tool;
  private final Feeds feeds;
  private final Passes passes;

  CutoutPlanner(Tool tool, Feeds feeds, Passes passes) {
    this.tool = tool;
    this.feeds = feeds;
    this.passes = passes;
  }

  /**
   * The depths of the passes and the tabs in them.
   *
   * @param limitMm the most that a pass may take
   * @param tabs in order along the roughing track; empty for none
   * @param tabDepthMm where the tops of the tabs lie
   * @param ramped whether the ends of the tabs slope
   */
  record Passes(
      List<Double> depths,
      double limitMm,
      List<TabPlan.Zone> tabs,
      double tabDepthMm,
      boolean ramped) {
    Passes {
      depths = List.copyOf(depths);
      tabs = List.copyOf(tabs);
    }

    /** The same on the track begun at another place, which lies on no tab. */
    Passes from(double startMm, double lapMm) {
      List<TabPlan.Zone> there = new ArrayList<>();
      for (TabPlan.Zone tab : tabs) {
        double from = tab.fromMm() - startMm;
        from -= Math.floor(from / lapMm) * lapMm;
        there.add(new TabPlan.Zone(from, from + tab.lengthMm()));
      }
      there.sort(Comparator.comparingDouble(TabPlan.Zone::fromMm));
      return new Passes(depths, limitMm, there, tabDepthMm, ramped);
    }

    /** How deep it goes before it has to mind the tabs; 0 if it has to at once. */
    double roundMm() {
      return depths.stream()
          .filter(d -> tabs.isEmpty() || d <= tabDepthMm)
          .mapToDouble(d -> d)
          .max()
          .orElse(0);
    }

    double wholeMm() {
      return depths.get(depths.size() - 1);
    }

    /** How far beyond a tab's end its slope reaches at a depth. */
    double slopeMm(double depthMm) {
      return ramped ? (depthMm - tabDepthMm) / StrictMath.tan(TAB_SLOPE_RAD) : 0;
    }
  }

  /**
   * The cut along an outline.
   *
   * @param roughMoves how many of its first moves are not of the finishing laps
   */
  record Made(Cut cut, int roughMoves) {}

  Made cut(String origin, CutoutLayout.Lap lap) {
    Track track = lap.rough();
    List<TabPlan.Zone> tabs = passes.tabs();
    double startMm = tabs.isEmpty() ? 0 : tabs.get(tabs.size() - 1).toMm();
    MoveBuilder moves =
        new MoveBuilder(tool, feeds, new Position(track.pointAt(startMm), MoveBuilder.AIR_MM));
    double before = passes.roundMm();
    if (before > 0) {
      moves.helix(track, startMm, -before, passes.limitMm());
    }
    for (double depth : passes.depths()) {
      if (depth > before) {
        betweenTabs(moves, track, Math.max(before, passes.tabDepthMm()), depth);
        before = depth;
      }
    }
    int rough = moves.count();
    for (Track wall : lap.finish()) {
      finish(moves, track, startMm, wall);
    }
    if (lap.finish().isEmpty()) {
      leave(moves, track, startMm);
      rough = moves.count();
    }
    return new Made(moves.cut(origin), rough);
  }

  /** Goes on along what is cut while rising, so that the tool never stands against the wall. */
  private static void leave(MoveBuilder moves, Track track, double startMm) {
    double rise = MoveBuilder.AIR_MM - moves.at().z();
    double along = rise / StrictMath.tan(TAB_SLOPE_RAD);
    moves.slope(track.slice(startMm, startMm + along), MoveBuilder.AIR_MM, TAB_SLOPE_RAD);
  }

  private void betweenTabs(MoveBuilder moves, Track track, double cutAlready, double depth) {
    double slope = passes.slopeMm(depth);
    for (Stretch stretch : stretches(track, passes.tabs(), slope)) {
      Track run = stretch.run();
      moves.follow(track.slice(stretch.fromMm() - slope, stretch.fromMm()));
      if (-moves.at().z() < cutAlready && cutAlready > passes.tabDepthMm()) {
        moves.verticalTo(-cutAlready);
      }
      moves.enter(run, -depth);
      if (slope > 0) {
        List<Segment> up = track.slice(stretch.fromMm() - slope, stretch.fromMm());
        moves.slope(reversed(up), -passes.tabDepthMm(), TAB_SLOPE_RAD);
        moves.slope(up, -depth, TAB_SLOPE_RAD);
      }
      moves.follow(run.slice(0, run.lengthMm()));
      rise(moves, track.slice(stretch.tab().fromMm() - slope, stretch.tab().fromMm()));
      moves.follow(track.slice(stretch.tab().fromMm(), stretch.tab().toMm()));
    }
  }

  private void rise(MoveBuilder moves, List<Segment> slope) {
    if (passes.ramped()) {
      moves.slope(slope, -passes.tabDepthMm(), TAB_SLOPE_RAD);
    } else {
      moves.verticalTo(-passes.tabDepthMm());
    }
  }

  private static List<Segment> reversed(List<Segment> pieces) {
    return new Path(pieces, false).reversed().segments();
  }

  /** Takes what is left on the wall, or a part of it; the tool stands on the roughing track. */
  private void finish(MoveBuilder moves, Track rough, double startMm, Track wall) {
    double whole = passes.wholeMm();
    double slope = passes.slopeMm(whole);
    double first = passes.tabs().isEmpty() ? 0 : slope;
    Lead lead = new Lead(rough, startMm + first, wall, tool.diameterMm());
    if (moves.at().z() == -whole) {
      // The lap before ended a little farther along the same straight stretch.
      moves.linkTo(new Position(rough.pointAt(startMm + first), -whole));
    } else if (slope > 0 && !passes.tabs().isEmpty()) {
      moves.slope(rough.slice(startMm, startMm + first), -whole, TAB_SLOPE_RAD);
    } else {
      moves.verticalTo(-whole);
    }
    moves.follow(lead.in());
    double at = lead.wallMm();
    double lap = wall.lengthMm();
    for (TabPlan.Zone tab : passes.tabs()) {
      double from = ahead(wall.nearestMm(rough.pointAt(tab.fromMm())), at, lap);
      double to = ahead(wall.nearestMm(rough.pointAt(tab.toMm())), from, lap);
      moves.follow(wall.slice(at, from - slope));
      rise(moves, wall.slice(from - slope, from));
      moves.follow(wall.slice(from, to));
      goDown(moves, rough, wall, to);
      at = to + slope;
    }
    moves.follow(wall.slice(at, lead.wallMm() + lap));
    moves.follow(lead.out());
  }

  /**
   * From above the end of a tab down to the whole depth: on the roughing track, where all is cut,
   * because a tool may not be able to plunge even into the little that is left on the wall.
   */
  private void goDown(MoveBuilder moves, Track rough, Track wall, double tabEndMm) {
    double whole = passes.wholeMm();
    double slope = passes.slopeMm(whole);
    double beside = rough.nearestMm(wall.pointAt(tabEndMm));
    moves.linkTo(new Position(rough.pointAt(beside), moves.at().z()));
    if (slope == 0) {
      moves.verticalTo(-whole);
      moves.linkTo(new Position(wall.pointAt(tabEndMm), -whole));
      return;
    }
    moves.slope(rough.slice(beside, beside + slope), -whole, TAB_SLOPE_RAD);
    moves.linkTo(new Position(wall.pointAt(tabEndMm + slope), -whole));
    List<Segment> down = wall.slice(tabEndMm, tabEndMm + slope);
    moves.slope(reversed(down), -passes.tabDepthMm(), TAB_SLOPE_RAD);
    moves.slope(down, -whole, TAB_SLOPE_RAD);
  }

  /** A place on a closed track, met when going on from another. */
  private static double ahead(double placeMm, double fromMm, double lapMm) {
    double laps = Math.ceil((fromMm - placeMm) / lapMm - SAME_MM);
    return placeMm + laps * lapMm;
  }

  /** The way from the roughing track to the wall's and back. */
  private static final class Lead {
    private final List<Segment> in = new ArrayList<>();
    private final List<Segment> out = new ArrayList<>();
    private final double wallMm;

    /** Tries arcs on a straight stretch; straight ways across elsewhere. */
    Lead(Track rough, double startMm, Track wall, double radiusMm) {
      Point from = rough.pointAt(startMm);
      double beside = wall.nearestMm(from);
      double apart = wall.pointAt(beside).distance(from);
      double along = Math.sqrt(Math.max(0, 2 * apart * radiusMm - apart * apart));
      double meet = beside + along;
      Point touch = wall.pointAt(meet);
      Point after = rough.pointAt(rough.nearestMm(wall.pointAt(meet + along)));
      Optional<Arc> arcIn = arc(wall, beside, meet, from, touch);
      Optional<Arc> arcOut = arc(wall, meet, meet + along, after, touch);
      boolean room = arcIn.isPresent() && arcOut.isPresent();
      wallMm = room ? meet : beside;
      if (room) {
        in.add(arcIn.get());
        out.add(new Path(List.of(arcOut.get()), false).reversed().segments().get(0));
      } else {
        in.add(new Line(from, wall.pointAt(beside)));
        out.add(new Line(wall.pointAt(beside), from));
      }
    }

    /** The arc from a point off a straight stretch that touches it at another point. */
    private static Optional<Arc> arc(
        Track wall, double lowMm, double highMm, Point from, Point touch) {
      List<Segment> pieces = wall.slice(lowMm, highMm);
      if (pieces.size() != 1 || !(pieces.get(0) instanceof Line line)) {
        return Optional.empty();
      }
      Point tangent = line.end().minus(line.start());
      tangent = tangent.times(1 / tangent.norm());
      Point chord = from.minus(touch);
      double side = Math.signum(tangent.cross(chord));
      Point normal = new Point(-tangent.y(), tangent.x()).times(side);
      double radius = chord.dot(chord) / (2 * chord.dot(normal));
      Point centre = touch.plus(normal.times(radius));
      Point a = from.minus(centre);
      Point b = touch.minus(centre);
      double sweep = StrictMath.atan2(a.cross(b), a.dot(b));
      return Math.abs(sweep) < Math.PI / 2
          ? Optional.of(new Arc(from, touch, centre, sweep))
          : Optional.empty();
    }

    List<Segment> in() {
      return in;
    }

    List<Segment> out() {
      return out;
    }

    double wallMm() {
      return wallMm;
    }
  }

  /** What lies between the slopes of two tabs, where it begins, and the tab at its end. */
  private record Stretch(Track run, double fromMm, TabPlan.Zone tab) {}

  private static List<Stretch> stretches(Track track, List<TabPlan.Zone> tabs, double slopeMm) {
    List<Stretch> stretches = new ArrayList<>();
    double lap = track.lengthMm();
    for (int i = 0; i < tabs.size(); i++) {
      double from = i == 0 ? tabs.get(tabs.size() - 1).toMm() - lap : tabs.get(i - 1).toMm();
      double up = from < slopeMm ? lap : 0;
      double first = from + up + slopeMm;
      Track run =
          new Track(new Path(track.slice(first, tabs.get(i).fromMm() + up - slopeMm), false));
      stretches.add(new Stretch(run, first, tabs.get(i)));
    }
    return stretches;
  }
}
