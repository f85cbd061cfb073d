package frieze.plan.recess;

import frieze.curve.Tolerances;
import frieze.design.Work;
import frieze.plan.cut.Leftover;
import frieze.plan.cut.Track;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Adds the laps that take last what was left on the walls of an area. */
final class WallFinish {
  /**
   * Where more than this many times the stock to be left is left, as in a narrow place, it is cut
   * at once to size.
   */
  private static final double MOST_LEFT = 2;

  private WallFinish() {}

  /**
   * Adds the laps, after all else.
   *
   * @param area to its real size
   * @param rough the area less what is left on the wall
   * @param cleared what clears the rough one
   */
  static RecessGeometry.Result added(
      Region area,
      Region rough,
      RecessGeometry.Result cleared,
      RecessGeometry.Cutter cutter,
      double leaveMm,
      Tolerances t) {
    double radius = cutter.radiusMm();
    Region walls = Offset.offset(area, -radius, t.offsetMm());
    Region places = Offset.offset(rough, -radius, t.offsetMm());
    Region reach = Offset.offset(walls, radius, t.offsetMm());
    Region beside = Offset.offset(places, radius + MOST_LEFT * leaveMm, t.offsetMm());
    Region narrow = Leftover.without(reach, beside);
    List<RecessGeometry.Chain> chains = new ArrayList<>(cleared.chains());
    if (!narrow.isEmpty()) {
      chains.addAll(RecessGeometry.of(area, narrow, cutter.inRings(), t).chains());
    }
    Region.Locator done = Offset.offset(narrow, radius, t.offsetMm()).locator();
    List<WallLap> laps = new ArrayList<>();
    for (Ring ring : walls.rings()) {
      Track wall = RecessGeometry.loop(ring, cutter.milling(), t);
      boolean onLeft = cutter.milling() == Work.Milling.CLIMB;
      Optional<WallLap> lap = WallLap.find(wall, onLeft, places, radius, leaveMm);
      lap.ifPresent(laps::add);
      if (lap.isEmpty() && !ring.points().stream().allMatch(done::contains)) {
        chains.add(new RecessGeometry.Chain(List.of(wall), true));
      }
    }
    List<Track> lines = cleared.parts().stream().flatMap(p -> p.lines().stream()).toList();
    Optional<RecessGeometry.Before> before =
        cleared.parts().stream().flatMap(p -> p.before().stream()).findFirst();
    return new RecessGeometry.Result(
        List.of(new RecessGeometry.Part(lines, chains, laps, before)),
        RecessGeometry.leftover(area, radius, t));
  }
}
