package frieze.plan;

import frieze.motion.Position;
import frieze.shop.Tool;
import java.util.List;

/** Makes the cuts of a tool that follows lines. */
final class GroovePlanner {
  private GroovePlanner() {}

  /** Whether a tool can get into a line without a plunge that it can't make. */
  static boolean canCut(Tool tool, Track line) {
    return MoveBuilder.canEnter(tool, line.lengthMm());
  }

  /**
   * Follows one line at all depths without leaving it: round and round a closed one, to and fro on
   * an open one.
   */
  static Cut cut(String origin, Track line, Tool tool, Feeds feeds, List<Double> depths) {
    MoveBuilder moves =
        new MoveBuilder(tool, feeds, new Position(line.start(), MoveBuilder.AIR_MM));
    if (line.closed() && MoveBuilder.canSpiral(tool, line)) {
      moves.helix(line, 0, -depths.get(depths.size() - 1), depths.get(0));
      return moves.cut(origin);
    }
    Track run = line;
    for (double depth : depths) {
      moves.enter(run, -depth);
      moves.follow(run.slice(0, run.lengthMm()));
      run = line.closed() ? run : run.reversed();
    }
    return moves.cut(origin);
  }
}
