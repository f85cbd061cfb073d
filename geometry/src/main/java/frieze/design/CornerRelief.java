package frieze.design;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds what is cut beyond inside corners, so that a part with square corners seats in them: a
 * round tool leaves its own radius there.
 *
 * <p>The tool goes on from the place where it would turn until its edge touches the drawn corner:
 * straight into it for an ear, or along the longer of its two sides.
 */
public final class CornerRelief {
  /** Corners that turn less are left round: nothing square seats in them. */
  private static final double LEAST_TURN_RAD = StrictMath.toRadians(45);

  /** Corners that turn more are left round: the relief would reach far into the wood. */
  private static final double MOST_TURN_RAD = StrictMath.toRadians(120);

  /** Sides may be this much too short, by rounding. */
  private static final double ROUNDING_MM = 1e-6;

  private CornerRelief() {}

  /**
   * The relief of one corner.
   *
   * @param corner as drawn
   * @param from where the tool's axis turns
   * @param to where its edge touches the corner
   */
  public record Place(Point corner, Point from, Point to) {
    /** What a tool cuts on the way. */
    public Region swept(double radiusMm, double flattenMm) {
      Point along = to.minus(from);
      Point side = new Point(-along.y(), along.x()).times(radiusMm / along.norm());
      Path outline =
          new Path(
              List.of(
                  new Line(from.minus(side), to.minus(side)),
                  new Arc(to.minus(side), to.plus(side), to, Math.PI),
                  new Line(to.plus(side), from.plus(side)),
                  new Arc(from.plus(side), from.minus(side), from, Math.PI)),
              true);
      return Region.of(List.of(outline), FillRule.NONZERO, flattenMm);
    }
  }

  /**
   * What is relieved.
   *
   * @param places in the order of the outlines
   * @param leftRound corners between straight sides that are too blunt, too sharp, or whose sides
   *     are too short for the tool
   */
  public record Result(List<Place> places, List<Point> leftRound) {
    public Result {
      places = List.copyOf(places);
      leftRound = List.copyOf(leftRound);
    }
  }

  /** Looks at all corners of an area whose walls stay as they are cut. */
  static Result of(Region area, Work.Side side, Corners kind, double radiusMm, double leftMm) {
    return of(area, side, new Lap(kind, radiusMm, leftMm, 0));
  }

  /**
   * Looks at all corners of an area.
   *
   * @param side the tool's: {@code INSIDE} relieves the area's own corners, {@code OUTSIDE} the
   *     notches in it
   */
  public static Result of(Region area, Work.Side side, Lap lap) {
    List<Place> places = new ArrayList<>();
    List<Point> leftRound = new ArrayList<>();
    if (lap.kind() == Corners.ROUND || side == Work.Side.ON_LINE) {
      return new Result(places, leftRound);
    }
    double sign = side == Work.Side.INSIDE ? 1 : -1;
    for (Ring ring : area.rings()) {
      List<Point> points = ring.points();
      for (int i = 0; i < points.size(); i++) {
        Corner corner =
            new Corner(
                points.get(Math.floorMod(i - 1, points.size())),
                points.get(i),
                points.get((i + 1) % points.size()),
                sign);
        boolean isMeant = corner.turnRad() >= LEAST_TURN_RAD;
        boolean canBe = corner.turnRad() <= MOST_TURN_RAD && corner.hasRoom(lap.distanceMm());
        if (isMeant && !canBe) {
          leftRound.add(corner.at);
        } else if (isMeant) {
          places.add(corner.relief(lap));
        }
      }
    }
    return new Result(places, leftRound);
  }

  /**
   * An area with what is cut beyond its corners, all walls finished: those of the relief are then
   * as much farther out as finishing takes off them.
   */
  public static Region relieved(Region area, Work.Cutout cutout, double flattenMm) {
    double radius = cutout.tool().radiusMm();
    double proud = cutout.way().proudMm();
    Work.Side side = cutout.way().side();
    Region result = area;
    for (Place place :
        of(area, side, new Lap(cutout.way().corners(), radius, proud, proud)).places()) {
      Region cut = place.swept(radius + proud, flattenMm);
      result = side == Work.Side.INSIDE ? result.union(cut) : result.minus(cut);
    }
    return result;
  }

  /**
   * How a tool is led past the corners.
   *
   * @param radiusMm the tool's
   * @param leftMm what stays on the wall, and then on that of the relief
   * @param proudMm how much of that the last lap leaves, too, for finishing
   */
  public record Lap(Corners kind, double radiusMm, double leftMm, double proudMm) {
    /** From the outline to the tool's axis. */
    double distanceMm() {
      return radiusMm + leftMm;
    }

    /**
     * How far before the corner a tool must stop that runs along a side with something left on it,
     * so that it leaves the other side's notch no wider than the last lap makes it.
     */
    double shortMm() {
      double more = leftMm - proudMm;
      if (more <= 0) {
        return 0;
      }
      double half = Math.sqrt(Math.max(0, radiusMm * radiusMm - proudMm * proudMm)) - more;
      return proudMm + Math.sqrt(Math.max(0, radiusMm * radiusMm - half * half));
    }
  }

  /** A corner of an outline, seen from the side on which the tool runs. */
  private static final class Corner {
    final Point at;
    private final Point in;
    private final Point out;
    private final double inMm;
    private final double outMm;
    private final double sign;

    Corner(Point before, Point at, Point after, double sign) {
      this.at = at;
      this.sign = sign;
      inMm = before.distance(at);
      outMm = at.distance(after);
      in = at.minus(before).times(1 / inMm);
      out = after.minus(at).times(1 / outMm);
    }

    /** How far the outline turns towards the tool; below 0 where the tool goes round outside. */
    double turnRad() {
      return sign * StrictMath.atan2(in.cross(out), in.dot(out));
    }

    /** Whether the tool touches both sides when it stands in the corner. */
    boolean hasRoom(double distanceMm) {
      double touch = distanceMm * StrictMath.tan(turnRad() / 2);
      return Math.min(inMm, outMm) >= touch - ROUNDING_MM;
    }

    Place relief(Lap lap) {
      double distanceMm = lap.distanceMm();
      double inner = (Math.PI - turnRad()) / 2;
      Point middle = out.minus(in);
      middle = middle.times(1 / middle.norm());
      Point from = at.plus(middle.times(distanceMm / StrictMath.sin(inner)));
      if (lap.kind() == Corners.EAR) {
        return new Place(at, from, at.plus(middle.times(distanceMm)));
      }
      Point along = inMm >= outMm ? in : out;
      Point off = new Point(-along.y(), along.x()).times(sign * distanceMm);
      Point away = inMm >= outMm ? in.times(-1) : out;
      return new Place(at, from, at.plus(off).plus(away.times(lap.shortMm())));
    }
  }
}
