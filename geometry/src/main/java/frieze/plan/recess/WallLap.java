package frieze.plan.recess;

import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.Track;
import frieze.region.Region;
import java.util.List;
import java.util.Optional;

/**
 * One lap along a wall that takes what was left on it: in on an arc that touches the wall's track,
 * round, and out on another.
 *
 * @param in from a cleared place
 * @param lap closed, from where the way in ends
 * @param out to a cleared place
 */
record WallLap(Track in, Track lap, Track out) {
  /** How far the arcs turn: they then leave the wall by half their radius. */
  private static final double TURN_RAD = Math.PI / 3;

  private static final double STEP_MM = 0.5;

  /** The radii that are tried, in radii of the tool. */
  private static final double[] RADII = {1, 0.6, 0.35, 0.2};

  /** A straight way in begins this much farther from the wall than what was left on it. */
  private static final double BESIDE = 1.02;

  /** The wall's track from a place on, and the direction away from the wall there, of length 1. */
  private record Spot(Track lap, Point away) {
    Point touch() {
      return lap.start();
    }
  }

  /**
   * Looks for a place to come in.
   *
   * @param wall the closed track along the wall
   * @param onLeft whether the area is on its left
   * @param cleared where the axis may stand at the floor without touching anything
   * @return empty if the wall's track is nowhere beside a cleared place
   */
  static Optional<WallLap> find(
      Track wall, boolean onLeft, Region cleared, double radiusMm, double leftMm) {
    Region.Locator free = cleared.locator();
    for (double part : RADII) {
      double radius = part * radiusMm;
      boolean farEnough = radius * (1 - Math.cos(TURN_RAD)) > leftMm;
      for (double at = STEP_MM / 2; farEnough && at < wall.lengthMm(); at += STEP_MM) {
        WallLap lap = onArcs(spot(wall, at, onLeft), onLeft, radius);
        if (free.contains(lap.in().start()) && free.contains(lap.out().end())) {
          return Optional.of(lap);
        }
      }
    }
    for (double at = STEP_MM / 2; at < wall.lengthMm(); at += STEP_MM) {
      Spot spot = spot(wall, at, onLeft);
      Point beside = spot.touch().plus(spot.away().times(BESIDE * leftMm));
      if (free.contains(beside)) {
        return Optional.of(
            around(spot, new Line(beside, spot.touch()), new Line(spot.touch(), beside)));
      }
    }
    return Optional.empty();
  }

  private static Spot spot(Track wall, double atMm, boolean onLeft) {
    Track lap = wall.startingAt(atMm);
    Point along = lap.path().segments().get(0).tangentAt(0);
    Point left = new Point(-along.y(), along.x()).times((onLeft ? 1 : -1) / along.norm());
    return new Spot(lap, left);
  }

  private static WallLap onArcs(Spot spot, boolean onLeft, double radiusMm) {
    Point centre = spot.touch().plus(spot.away().times(radiusMm));
    double sweep = onLeft ? TURN_RAD : -TURN_RAD;
    Point back = spot.away().times(-radiusMm);
    Point from = centre.plus(Affine.rotation(-sweep).apply(back));
    Point to = centre.plus(Affine.rotation(sweep).apply(back));
    return around(
        spot, new Arc(from, spot.touch(), centre, sweep), new Arc(spot.touch(), to, centre, sweep));
  }

  private static WallLap around(Spot spot, Segment in, Segment out) {
    return new WallLap(
        new Track(new Path(List.of(in), false)),
        spot.lap(),
        new Track(new Path(List.of(out), false)));
  }

  /** This lap elsewhere; a mirror turns it, so that the wall stays on its side. */
  WallLap placed(Affine map) {
    Track i = in.transformed(map);
    Track l = lap.transformed(map);
    Track o = out.transformed(map);
    return map.isMirroring()
        ? new WallLap(o.reversed(), l.reversed(), i.reversed())
        : new WallLap(i, l, o);
  }

  /** Makes the cut at a depth at which all but what was left on the wall is gone. */
  Cut cut(String origin, frieze.shop.Tool tool, Feeds feeds, double depthMm) {
    MoveBuilder moves =
        new MoveBuilder(tool, feeds, new frieze.motion.Position(in.start(), -depthMm));
    moves.follow(in.path().segments());
    moves.follow(lap.slice(0, lap.lengthMm()));
    moves.follow(out.path().segments());
    return moves.cut(origin);
  }
}
