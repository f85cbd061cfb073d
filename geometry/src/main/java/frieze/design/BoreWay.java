package frieze.design;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Optional;

/**
 * What a bore has beside plain round holes.
 *
 * @param mills the straight bits that may mill the holes if the spindle can't turn slowly enough
 *     for the drill
 * @param drill the drill that was asked for, if a mill has taken its place
 * @param inWaste whether the holes may lie beside the panel, anywhere on the stock
 */
public record BoreWay(
    Optional<Countersink> countersink,
    Optional<Slot> slot,
    List<Tool> mills,
    Optional<Tool> drill,
    boolean inWaste) {
  /** Round holes, by the tool alone. */
  public static final BoreWay PLAIN =
      new BoreWay(Optional.empty(), Optional.empty(), List.of(), Optional.empty());

  public BoreWay {
    mills = List.copyOf(mills);
  }

  /** Holes that lie on the panel. */
  public BoreWay(
      Optional<Countersink> countersink,
      Optional<Slot> slot,
      List<Tool> mills,
      Optional<Tool> drill) {
    this(countersink, slot, mills, drill, false);
  }

  /** Plain holes anywhere on the stock, for pins. */
  public static BoreWay inWaste(List<Tool> mills) {
    return new BoreWay(Optional.empty(), Optional.empty(), mills, Optional.empty(), true);
  }

  /** The same, with a mill in place of a drill. */
  public BoreWay insteadOf(Tool slowDrill) {
    return new BoreWay(countersink, slot, mills, Optional.of(slowDrill), inWaste);
  }

  /** The same, mirrored left to right. */
  BoreWay mirrored() {
    Optional<Slot> turned = slot.map(s -> new Slot(s.lengthMm(), StrictMath.PI - s.directionRad()));
    return new BoreWay(countersink, turned, mills, drill, inWaste);
  }

  /**
   * A cone for a screw's head, cut by a V-bit of its angle in one plunge.
   *
   * @param diameterMm of the head, at the stock's top
   * @param angleRad the full angle of the head
   */
  public record Countersink(double diameterMm, double angleRad, Tool tool) {
    /**
     * How deep the bit's tip goes so that the cone is as wide as the head at the top: half of what
     * the head is wider than the tip, over the tangent of half the angle.
     */
    public double depthMm() {
      double tipMm = tool.shape() instanceof ToolShape.Vee vee ? vee.tipMm() : 0;
      return (diameterMm - tipMm) / 2 / StrictMath.tan(angleRad / 2);
    }
  }

  /**
   * A hole drawn out to a slot, so that wood may move below a screw.
   *
   * @param lengthMm from end to end
   * @param directionRad from the X axis, counter-clockwise
   */
  public record Slot(double lengthMm, double directionRad) {
    /**
     * The line on which the centres of a tool of the slot's width lie, from one end to the other.
     *
     * @param widthMm less than the length
     */
    public Path middle(Point centre, double widthMm) {
      Point half = Point.polar(new Point(0, 0), (lengthMm - widthMm) / 2, directionRad);
      return Path.polyline(List.of(centre.minus(half), centre.plus(half)), false);
    }

    /**
     * A line around the middle, counter-clockwise, from the middle of one side: two straight sides
     * and two half circles.
     *
     * @param widthMm of the slot
     * @param asideMm how far from the middle line it runs
     */
    public Path around(Point centre, double widthMm, double asideMm) {
      Path middle = middle(centre, widthMm);
      Point side = Point.polar(new Point(0, 0), asideMm, directionRad - Math.PI / 2);
      Point a = middle.start();
      Point b = middle.end();
      return new Path(
          List.of(
              new Line(centre.plus(side), b.plus(side)),
              new Arc(b.plus(side), b.minus(side), b, Math.PI),
              new Line(b.minus(side), a.minus(side)),
              new Arc(a.minus(side), a.plus(side), a, Math.PI),
              new Line(a.plus(side), centre.plus(side))),
          true);
    }
  }
}
