package frieze.plan;

import frieze.curve.Path;
import frieze.motion.Position;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;

/** Makes the cut that frees a part, leaving its tabs. */
final class CutoutPlanner {
  private CutoutPlanner() {}

  /**
   * Follows a closed track down through the stock.
   *
   * <p>Above the tops of the tabs it sinks round and round without a stop. Below, it cuts the
   * stretches between the tabs, and rises straight up and travels over each tab at the height of
   * its top.
   */
  static Cut cut(String origin, Track track, Tool tool, Feeds feeds, Passes passes) {
    double startMm =
        passes.tabs().isEmpty() ? 0 : passes.tabs().get(passes.tabs().size() - 1).toMm();
    Position start =
        new Position(
            track.slice(startMm, startMm + track.lengthMm()).get(0).start(), MoveBuilder.AIR_MM);
    MoveBuilder moves = new MoveBuilder(tool, feeds, start);
    double before = passes.roundMm();
    if (before > 0) {
      moves.helix(track, startMm, -before, passes.limitMm());
    }
    for (double depth : passes.depths()) {
      if (depth > before) {
        betweenTabs(moves, track, passes, Math.max(before, passes.tabDepthMm()), depth);
        before = depth;
      }
    }
    return moves.cut(origin);
  }

  /**
   * The depths of the passes and the tabs in them.
   *
   * @param limitMm the most that a pass may take
   * @param tabs in order along the track; empty for none
   * @param tabDepthMm where the tops of the tabs lie
   */
  record Passes(List<Double> depths, double limitMm, List<TabPlan.Zone> tabs, double tabDepthMm) {
    Passes {
      depths = List.copyOf(depths);
      tabs = List.copyOf(tabs);
    }

    /** How deep it goes before it has to mind the tabs; 0 if it has to at once. */
    double roundMm() {
      return depths.stream()
          .filter(d -> tabs.isEmpty() || d <= tabDepthMm)
          .mapToDouble(d -> d)
          .max()
          .orElse(0);
    }
  }

  private static void betweenTabs(
      MoveBuilder moves, Track track, Passes passes, double cutAlready, double depth) {
    for (Stretch stretch : stretches(track, passes.tabs())) {
      if (-moves.at().z() < cutAlready && cutAlready > passes.tabDepthMm()) {
        moves.verticalTo(-cutAlready);
      }
      moves.enter(stretch.run(), -depth);
      moves.follow(stretch.run().slice(0, stretch.run().lengthMm()));
      moves.verticalTo(-passes.tabDepthMm());
      moves.follow(track.slice(stretch.tab().fromMm(), stretch.tab().toMm()));
    }
  }

  /** What lies between two tabs, and the tab at its end. */
  private record Stretch(Track run, TabPlan.Zone tab) {}

  private static List<Stretch> stretches(Track track, List<TabPlan.Zone> tabs) {
    List<Stretch> stretches = new ArrayList<>();
    double lap = track.lengthMm();
    for (int i = 0; i < tabs.size(); i++) {
      double from = i == 0 ? tabs.get(tabs.size() - 1).toMm() - lap : tabs.get(i - 1).toMm();
      double to = tabs.get(i).fromMm();
      double up = from < 0 ? lap : 0;
      Track run = new Track(new Path(track.slice(from + up, to + up), false));
      stretches.add(new Stretch(run, tabs.get(i)));
    }
    return stretches;
  }
}
