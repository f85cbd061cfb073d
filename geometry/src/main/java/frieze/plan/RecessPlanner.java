package frieze.plan;

import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.motion.Position;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;

/** Makes the cuts that clear an area from its finished loops. */
final class RecessPlanner {
  private RecessPlanner() {}

  /** Whether a tool can get down somewhere along a chain. */
  static boolean canCut(Tool tool, RecessGeometry.Chain chain) {
    return MoveBuilder.canEnter(tool, run(chain).lengthMm());
  }

  /** Clears what one chain of loops covers, pass by pass. */
  static List<Cut> cuts(
      String origin, RecessGeometry.Chain chain, Tool tool, Feeds feeds, List<Double> depths) {
    List<Cut> cuts = new ArrayList<>();
    Track first = chain.loops().get(0);
    MoveBuilder moves =
        new MoveBuilder(tool, feeds, new Position(first.start(), MoveBuilder.AIR_MM));
    for (double depth : depths) {
      if (!moves.isEmpty()) {
        if (chain.canReturn()) {
          moves.linkTo(new Position(first.start(), moves.at().z()));
        } else {
          cuts.add(moves.cut(origin));
          moves = new MoveBuilder(tool, feeds, new Position(first.start(), moves.at().z()));
        }
      }
      pass(moves, chain, tool, -depth);
    }
    cuts.add(moves.cut(origin));
    return cuts;
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
