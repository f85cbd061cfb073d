package frieze.plan.cut;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Segment;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;

/**
 * Strings the moves of one cut together: along tracks, down ramps, across links.
 *
 * <p>A tool goes down into material along its path at {@link #RAMP_RAD}; straight down only where
 * the material is gone already, or if it cuts at its centre and there is no room to ramp.
 */
public final class MoveBuilder {
  /** The slope of a ramp; 2 to 5 degrees are common practice. */
  public static final double RAMP_RAD = StrictMath.toRadians(3);

  /** The height above the stock at which a ramp begins: the top may not be quite flat. */
  public static final double AIR_MM = 0.5;

  /** A closed loop at least this many diameters long is sunk into turn by turn. */
  private static final double SPIRAL_DIAMETERS = Math.PI / 2;

  /** What must be saved, in diameters, before a tool goes back the way it came. */
  private static final double WORTH_DIAMETERS = 4;

  private static final double SAME_MM = 1e-6;

  /** A slope so short turns noticeably when its ends are rounded. */
  private static final double SHORT_MM = 0.3;

  /** A count may be missed by this part before one more is made. */
  private static final double ROUNDING = 1e-9;

  private final Tool tool;
  private Feeds feeds;
  private final List<Cut.Move> moves = new ArrayList<>();
  private Position at;

  public MoveBuilder(Tool tool, Feeds feeds, Position start) {
    this.tool = tool;
    this.feeds = feeds;
    this.at = start;
  }

  public Position at() {
    return at;
  }

  public boolean isEmpty() {
    return moves.isEmpty();
  }

  /** How many moves there are. */
  public int count() {
    return moves.size();
  }

  public Cut cut(String origin) {
    return new Cut(origin, tool, feeds.rpm(), moves);
  }

  /** Whether a tool can get down into solid material somewhere along a run. */
  public static boolean canEnter(Tool tool, double runMm) {
    return tool.cutsAtCentre() || runMm >= tool.radiusMm();
  }

  /** Whether a loop is long enough to sink into turn by turn. */
  public static boolean canSpiral(Tool tool, Track loop) {
    return loop.lengthMm() >= SPIRAL_DIAMETERS * tool.diameterMm();
  }

  /** Moves straight in the plane, through what is cut already or what this move may cut. */
  public void linkTo(Position to) {
    straight(to, feeds.feedMmPerMin());
  }

  /** Goes on with other feeds. */
  public void change(Feeds next) {
    feeds = next;
  }

  /** Moves straight down or up where nothing is in the way, at a feed that the Z axis has. */
  public void verticalTo(double z) {
    straight(at.withZ(z), feeds.plungeMmPerMin());
  }

  /** Follows pieces at the present depth. */
  public void follow(List<Segment> pieces) {
    follow(pieces, at.z(), feeds.feedMmPerMin());
  }

  /** Follows pieces while the depth changes evenly along them. */
  private void follow(List<Segment> pieces, double zEnd, double feed) {
    double total = 0;
    for (Segment piece : pieces) {
      total += length(piece);
    }
    double zStart = at.z();
    double done = 0;
    for (Segment piece : pieces) {
      done += length(piece);
      double z = done >= total ? zEnd : zStart + (zEnd - zStart) * done / total;
      move(piece, z, length(piece) < SHORT_MM ? slower(piece, z, feed) : feed);
    }
  }

  private double slower(Segment piece, double z, double feed) {
    double drop = z - at.z();
    return drop == 0
        ? feed
        : Math.min(feed, feeds.roundedFeedMmPerMin(drop, Math.hypot(length(piece), drop)));
  }

  private void move(Segment piece, double z, double feed) {
    Position to = new Position(piece.end(), z);
    if (piece instanceof Arc arc) {
      moves.add(
          new Cut.Move(
              new Motion.Turn(at, to, Plane.XY, arc.centre().x(), arc.centre().y(), arc.sweepRad()),
              feed));
      at = to;
    } else {
      straight(to, feed);
    }
  }

  private void straight(Position to, double feed) {
    if (at.distance(to) > SAME_MM) {
      moves.add(new Cut.Move(new Motion.Straight(at, to), feed));
      at = to;
    }
  }

  private static double length(Segment piece) {
    return piece instanceof Arc arc ? arc.length() : ((Line) piece).length();
  }

  /**
   * Cuts a closed loop at a depth, sinking along it from the present one, and ends at the place of
   * the loop where it began: on to the end of the lap, or back over the ramp where that is shorter
   * by {@link #WORTH_DIAMETERS}.
   *
   * @param startMm that place, as a length along the loop
   */
  public void spiral(Track loop, double startMm, double z) {
    double lap = loop.lengthMm();
    double rampMm = rampLength(at.z() - z);
    double rampEnd = startMm + rampMm;
    follow(loop.slice(startMm, rampEnd), z, feeds.rampFeedMmPerMin(RAMP_RAD));
    double over = rampMm % lap;
    if (lap - 2 * over > WORTH_DIAMETERS * tool.diameterMm()) {
      follow(loop.slice(rampEnd, rampEnd + lap));
      if (over > SAME_MM) {
        Track back = loop.reversed();
        follow(back.slice(lap - startMm - over, lap - startMm));
      }
    } else {
      follow(loop.slice(rampEnd, rampEnd + 2 * lap - over));
    }
  }

  /**
   * Cuts a closed loop down to a depth and ends where it began: sinking lap by lap without a stop
   * and once more round at the depth, or, where that is shorter, by a {@link #spiral} for each
   * pass.
   *
   * @param limitMm the most that a pass may take
   */
  public void helix(Track loop, double startMm, double z, double limitMm) {
    double lap = loop.lengthMm();
    double drop = at.z() - z;
    int laps = count(drop, Math.min(limitMm, lap * StrictMath.tan(RAMP_RAD)));
    double top = Math.min(0, at.z() - AIR_MM);
    int passes = count(top - z, limitMm);
    if ((laps + 1) * lap > passes * lap + 2 * rampLength(drop)) {
      for (int i = 1; i <= passes; i++) {
        spiral(loop, startMm, i == passes ? z : top + (z - top) * i / passes);
      }
      return;
    }
    double slopeRad = StrictMath.atan2(drop / laps, lap);
    follow(loop.slice(startMm, startMm + laps * lap), z, feeds.rampFeedMmPerMin(slopeRad));
    follow(loop.slice(startMm, startMm + lap));
  }

  /** Follows pieces while rising, or sinking where the material is gone, at a slope. */
  public void slope(List<Segment> pieces, double z, double slopeRad) {
    follow(pieces, z, feeds.rampFeedMmPerMin(slopeRad));
  }

  private static int count(double wholeMm, double partMm) {
    return (int) Math.max(1, Math.ceil(wholeMm / partMm - ROUNDING));
  }

  /**
   * Sinks along a run, to and fro an even number of times, so that it ends at the run's start,
   * which is here, at the depth. What the ramp leaves is for the next pass along the run.
   */
  public void enter(Track run, double z) {
    double left = rampLength(at.z() - z);
    if (left <= 0) {
      return;
    }
    if (run.lengthMm() < tool.radiusMm()) {
      verticalTo(z);
      return;
    }
    int pairs = count(left, 2 * run.lengthMm());
    double least = Math.min(run.lengthMm(), tool.diameterMm());
    double leg = Math.max(left / (2 * pairs), least);
    List<Segment> out = run.slice(0, leg);
    List<Segment> back = run.reversed().slice(run.lengthMm() - leg, run.lengthMm());
    double drop = (at.z() - z) / (2 * pairs);
    double feed = feeds.rampFeedMmPerMin(RAMP_RAD);
    for (int i = 0; i < pairs; i++) {
      follow(out, at.z() - drop, feed);
      follow(back, i == pairs - 1 ? z : at.z() - drop, feed);
    }
  }

  private static double rampLength(double dropMm) {
    return Math.max(0, dropMm) / StrictMath.tan(RAMP_RAD);
  }
}
