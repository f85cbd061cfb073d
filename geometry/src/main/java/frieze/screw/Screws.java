package frieze.screw;

import frieze.curve.Point;
import frieze.design.BoreWay;
import frieze.design.Work;
import frieze.diagnostic.SourceSpan;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One list of screws, for the steel and for the wood.
 *
 * @param at their places, from the panel's lower left corner, seen from the front
 * @param sizeMm the diameter of a screw over its thread
 * @param steel the holes in the frame
 * @param pilot the holes in the wood
 * @param where the place in the job
 */
public record Screws(List<Point> at, double sizeMm, Steel steel, Pilot pilot, SourceSpan where) {
  public Screws {
    at = List.copyOf(at);
  }

  /**
   * The holes in the frame.
   *
   * @param clearanceMm the diameter of a hole that the screw goes through freely
   * @param slots whether they are drawn out where the wood moves
   * @param held the index of the screw that holds the panel in place; empty for the panel's middle
   */
  public record Steel(double clearanceMm, boolean slots, OptionalInt held) {}

  /**
   * The holes in the wood.
   *
   * @param depthMm of the full diameter
   * @param mills straight bits that may stand in for a drill
   * @param fromBack whether they are bored from the back of the panel
   * @param leaveMm the wood that must stay between a pilot and the other face, or what is carved
   *     there
   */
  public record Pilot(
      double diameterMm,
      double depthMm,
      Tool tool,
      List<Tool> mills,
      boolean fromBack,
      double leaveMm) {
    public Pilot {
      mills = List.copyOf(mills);
    }

    /** The depth of the point of the drill. */
    public double deepestMm() {
      return depthMm + pointMm();
    }

    private double pointMm() {
      return drills() ? tool.shape().heightAtMm(diameterMm / 2) : 0;
    }

    private boolean drills() {
      return tool.shape() instanceof ToolShape.Drill;
    }

    /** How deep a pilot is at a distance from its axis, no more than its radius. */
    public double depthAtMm(double fromAxisMm) {
      return deepestMm() - (drills() ? tool.shape().heightAtMm(fromAxisMm) : 0);
    }
  }

  /** The pilots as work on the face that they are bored from, seen from the front. */
  public Work.Bore bore() {
    BoreWay way = new BoreWay(Optional.empty(), Optional.empty(), pilot.mills(), Optional.empty());
    return new Work.Bore(
        at, pilot.diameterMm(), Optional.of(pilot.depthMm()), pilot.tool(), way, where);
  }

  /** The place that stays while the wood moves. */
  public Point held(Point middle) {
    return steel.held().isPresent() ? at.get(steel.held().getAsInt()) : middle;
  }

  /** The holes in the steel, in the order of the screws; round ones without a movement. */
  public List<SteelHole> steelHoles(Optional<Movement> movement) {
    List<SteelHole> holes = new ArrayList<>();
    for (Point p : at) {
      Optional<Movement> moves = movement.filter(m -> steel.slots());
      holes.add(
          new SteelHole(
              p,
              moves.map(m -> m.driest(p)).orElse(p),
              moves.map(m -> m.wettest(p)).orElse(p),
              steel.clearanceMm()));
    }
    return holes;
  }

  /** The same on the other one of a pair, mirrored left to right. */
  public Screws mirrored(double lengthMm) {
    return new Screws(
        at.stream().map(p -> new Point(lengthMm - p.x(), p.y())).toList(),
        sizeMm,
        steel,
        pilot,
        where);
  }
}
