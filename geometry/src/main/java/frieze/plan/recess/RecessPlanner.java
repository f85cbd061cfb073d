package frieze.plan.recess;

import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.design.Work;
import frieze.motion.Position;
import frieze.plan.cut.Block;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Easing;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.RimLoad;
import frieze.plan.cut.RimUse;
import frieze.plan.cut.Track;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Makes the cuts that clear an area from its finished loops. */
public final class RecessPlanner {
  private RecessPlanner() {}

  /**
   * Makes the cuts of one part of an area, in as many ways as its first loops can be entered. What
   * they engage is measured in the first way.
   */
  public static RecessCuts.Made made(
      Work.Recess recess, RecessGeometry.Part part, Feeds feeds, List<Double> depths) {
    List<Point> noRoom = noRoom(recess.tool(), part);
    List<List<Cut>> ways = new ArrayList<>();
    int count =
        part.lines().isEmpty() && !part.chains().isEmpty() ? part.chains().get(0).ways().size() : 1;
    for (int way = 0; way < count; way++) {
      ways.add(plain(recess, part, way, feeds, depths));
    }
    if (ways.get(0).isEmpty()) {
      return new RecessCuts.Made(Optional.empty(), noRoom, new RimUse.Tally());
    }
    int floors = ways.get(0).size() - part.walls().size();
    Easing first = easing(recess, part, feeds);
    Map<Integer, List<Cut>> made = new HashMap<>();
    made.put(0, eased(ways.get(0), first, floors, recess, depths));
    Block block =
        new Block(
            ways.stream().map(Block::ends).toList(),
            way ->
                made.computeIfAbsent(
                    way,
                    w -> eased(ways.get(w), easing(recess, part, feeds), floors, recess, depths)));
    return new RecessCuts.Made(Optional.of(block), noRoom, first.tally());
  }

  private static List<Point> noRoom(Tool tool, RecessGeometry.Part part) {
    Stream<Point> lines =
        part.lines().stream()
            .filter(l -> !MoveBuilder.canEnter(tool, l.lengthMm()))
            .map(Track::start);
    Stream<Point> chains =
        part.chains().stream().filter(c -> !canCut(tool, c)).map(c -> c.loops().get(0).start());
    return Stream.concat(lines, chains).toList();
  }

  /** The cuts of a part at their full feeds, each chain entered near where the tool is. */
  private static List<Cut> plain(
      Work.Recess recess, RecessGeometry.Part part, int way, Feeds feeds, List<Double> depths) {
    Tool tool = recess.tool();
    String name = recess.operation();
    List<Cut> cuts = new ArrayList<>();
    for (Track line : part.lines()) {
      if (MoveBuilder.canEnter(tool, line.lengthMm())) {
        cuts.add(along(name, line, tool, feeds, depths));
      }
    }
    for (RecessGeometry.Chain chain : part.chains()) {
      if (canCut(tool, chain)) {
        RecessGeometry.Chain begun =
            cuts.isEmpty()
                ? chain.ways().get(Math.min(way, chain.others().size()))
                : chain.nearest(cuts.get(cuts.size() - 1).end().xy());
        cuts.addAll(cuts(name, begun, tool, feeds, depths));
      }
    }
    for (WallLap lap : part.walls()) {
      cuts.add(lap.cut(name, tool, feeds, recess.depthMm()));
    }
    return cuts;
  }

  private static List<Cut> eased(
      List<Cut> cuts, Easing easing, int floors, Work.Recess recess, List<Double> depths) {
    List<Cut> eased = new ArrayList<>();
    for (Cut cut : cuts) {
      double takes = eased.size() < floors ? depths.get(0) : recess.depthMm();
      eased.add(easing.eased(cut, takes));
    }
    return eased;
  }

  private static Easing easing(Work.Recess recess, RecessGeometry.Part part, Feeds feeds) {
    Predicate<Point> standing =
        part.before().map(RecessGeometry.Before::standing).orElse(p -> true);
    double radius = ClearedAreas.radiusBelow(recess.tool(), recess.depthMm());
    boolean wallOnRight = recess.milling() == Work.Milling.CLIMB;
    return new Easing(recess.tool(), feeds, wallOnRight, new RimLoad(radius, standing)).reporting();
  }

  /** Cuts of a floor, with their feeds lowered where that is asked for. */
  public static List<Cut> eased(List<Cut> cuts, Feeds feeds, List<Double> depths) {
    Tool tool = cuts.get(0).tool();
    RimLoad load = new RimLoad(tool.radiusMm(), p -> true);
    Easing easing = new Easing(tool, feeds, true, load);
    return cuts.stream().map(c -> easing.eased(c, depths.get(0))).toList();
  }

  /** Whether a tool can get down somewhere along a chain. */
  public static boolean canCut(Tool tool, RecessGeometry.Chain chain) {
    return MoveBuilder.canEnter(tool, run(chain).lengthMm());
  }

  /**
   * Clears what one chain of loops covers, pass by pass, without leaving it; a single loop in one
   * helix.
   *
   * @param depths after each pass, equally far apart
   */
  public static List<Cut> cuts(
      String origin, RecessGeometry.Chain chain, Tool tool, Feeds feeds, List<Double> depths) {
    Track first = chain.loops().get(0);
    MoveBuilder moves =
        new MoveBuilder(tool, feeds, new Position(first.start(), MoveBuilder.AIR_MM));
    if (chain.loops().size() == 1 && MoveBuilder.canSpiral(tool, first)) {
      moves.helix(first, 0, -depths.get(depths.size() - 1), depths.get(0));
      return List.of(moves.cut(origin));
    }
    for (double depth : depths) {
      if (!moves.isEmpty()) {
        goBack(moves, chain);
      }
      pass(moves, chain, tool, -depth);
    }
    return List.of(moves.cut(origin));
  }

  /** Clears along a line to and fro, pass by pass, without leaving it. */
  private static Cut along(String origin, Track line, Tool tool, Feeds feeds, List<Double> depths) {
    MoveBuilder moves =
        new MoveBuilder(tool, feeds, new Position(line.start(), MoveBuilder.AIR_MM));
    Track run = line;
    for (double depth : depths) {
      moves.enter(run, -depth);
      moves.follow(run.slice(0, run.lengthMm()));
      run = run.reversed();
    }
    return moves.cut(origin);
  }

  /** From the last loop to the first at the present depth: straight, or over the links. */
  private static void goBack(MoveBuilder moves, RecessGeometry.Chain chain) {
    double z = moves.at().z();
    List<Track> loops = chain.loops();
    for (int i = chain.canReturn() ? 0 : loops.size() - 2; i >= 0; i--) {
      moves.linkTo(new Position(loops.get(i).start(), z));
    }
  }

  private static void pass(MoveBuilder moves, RecessGeometry.Chain chain, Tool tool, double z) {
    Track first = chain.loops().get(0);
    if (MoveBuilder.canSpiral(tool, first)) {
      moves.spiral(first, 0, z);
    } else {
      moves.enter(run(chain), z);
      moves.follow(first.slice(0, first.lengthMm()));
    }
    for (Track loop : chain.loops().subList(1, chain.loops().size())) {
      moves.linkTo(new Position(loop.start(), z));
      moves.follow(loop.slice(0, loop.lengthMm()));
    }
  }

  /** A chain with its links, as one open track. */
  private static Track run(RecessGeometry.Chain chain) {
    List<Segment> all = new ArrayList<>();
    for (Track loop : chain.loops()) {
      if (!all.isEmpty()) {
        Point start = all.get(all.size() - 1).end();
        Point end = loop.start();
        if (!start.equals(end)) {
          all.add(new Line(start, end));
        }
      }
      all.addAll(loop.path().segments());
    }
    return new Track(new Path(all, false));
  }
}
