package frieze.screw;

import frieze.curve.Flattener;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Intent;
import frieze.region.BoundaryDistance;
import frieze.region.Region;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How deep a pilot and one thing that is carved go together, at the place where that is most: the
 * pilot counted from the back, the carving from the front.
 *
 * <p><em>Approximation:</em> never too little. For what a V-bit carves it is a bound: as if the
 * depth grew from the pilot's axis to its wall as fast as it can.
 */
final class Together implements Intent.Visitor<Double> {
  /** Nothing is carved above the pilot. */
  static final double APART = Double.NEGATIVE_INFINITY;

  private static final int STEPS = 256;

  private final Point axis;
  private final double radiusMm;
  private final Screws.Pilot pilot;

  Together(Point axis, Screws.Pilot pilot) {
    this.axis = axis;
    this.radiusMm = pilot.diameterMm() / 2;
    this.pilot = pilot;
  }

  /**
   * The most over circles about the axis.
   *
   * @param nearestMm how near to the axis the carving comes
   * @param peakMm the distance from the axis at which most is carved
   * @param carvedMm the most that is carved at a distance from the axis
   */
  private double most(double nearestMm, double peakMm, DoubleUnaryOperator carvedMm) {
    if (nearestMm >= radiusMm) {
      return APART;
    }
    double most = at(Math.max(nearestMm, Math.min(radiusMm, peakMm)), carvedMm);
    for (int i = 0; i <= STEPS; i++) {
      most = Math.max(most, at(nearestMm + (radiusMm - nearestMm) * i / STEPS, carvedMm));
    }
    return most;
  }

  private double at(double fromAxisMm, DoubleUnaryOperator carvedMm) {
    double carved = carvedMm.applyAsDouble(fromAxisMm);
    return carved > 0 ? pilot.depthAtMm(fromAxisMm) + carved : APART;
  }

  @Override
  public Double recess(Intent.Recess recess) {
    return recess.region().isEmpty()
        ? APART
        : most(outsideMm(recess.region()), 0, at -> recess.depthMm());
  }

  @Override
  public Double vrecess(Intent.VRecess vrecess) {
    if (vrecess.region().isEmpty()) {
      return APART;
    }
    double inside = BoundaryDistance.of(vrecess.region()).signed(axis);
    ToolShape.Vee vee = (ToolShape.Vee) vrecess.tool().shape();
    double toFloor = vrecess.floorMm() * StrictMath.tan(vee.angleRad() / 2) - inside;
    return most(Math.max(0, -inside), toFloor, at -> vrecess.depthMm(inside + at));
  }

  @Override
  public Double groove(Intent.Groove groove) {
    double toLine = Double.POSITIVE_INFINITY;
    for (Path line : groove.lines()) {
      toLine = Math.min(toLine, distance(line));
    }
    double distance = toLine;
    ToolShape shape = groove.tool().shape();
    return most(
        Math.max(0, distance - groove.tool().radiusMm()),
        distance,
        at -> groove.depthMm() - shape.heightAtMm(Math.max(0, distance - at)));
  }

  @Override
  public Double through(Intent.Through through) {
    if (through.part().isEmpty()) {
      return APART;
    }
    double inside = BoundaryDistance.of(through.part()).signed(axis);
    double nearest =
        switch (through.side()) {
          case OUTSIDE -> Math.max(inside, -inside - through.slotMm());
          case INSIDE -> -inside;
          case ON_LINE -> Math.abs(inside) - through.slotMm() / 2;
        };
    return most(Math.max(0, nearest), 0, at -> Double.POSITIVE_INFINITY);
  }

  @Override
  public Double hole(Intent.Hole hole) {
    double distance = hole.centre().distance(axis);
    double radius = hole.diameterMm() / 2;
    boolean drilled = hole.tool().shape() instanceof ToolShape.Drill;
    double point = drilled ? hole.tool().shape().heightAtMm(radius) : 0;
    return most(
        Math.max(0, distance - radius),
        distance,
        at -> {
          double fromAxis = Math.max(0, distance - at);
          double higher = drilled ? hole.tool().shape().heightAtMm(fromAxis) : 0;
          return hole.depthMm() + point - higher;
        });
  }

  @Override
  public Double insetGroove(Intent.InsetGroove groove) {
    double toLine = Math.abs(BoundaryDistance.of(groove.part()).signed(axis) - groove.insetMm());
    ToolShape shape = groove.tool().shape();
    return most(
        Math.max(0, toLine - groove.tool().radiusMm()),
        toLine,
        at -> groove.depthMm() - shape.heightAtMm(Math.max(0, toLine - at)));
  }

  /** As if all sides were worked: a screw in an edge is as good as in the edge beside it. */
  @Override
  public Double edge(Intent.Edge edge) {
    double inside = BoundaryDistance.of(edge.part()).signed(axis);
    return most(
        Math.max(0, inside - edge.shape().widthMm()),
        inside,
        at -> edge.shape().depthMm(Math.max(0, inside - at)));
  }

  /** How far the axis lies outside of a region. */
  private double outsideMm(Region region) {
    return Math.max(0, -BoundaryDistance.of(region).signed(axis));
  }

  private double distance(Path line) {
    List<Point> points = Flattener.flatten(line, Tolerances.DEFAULT.flattenMm());
    double best = Double.POSITIVE_INFINITY;
    int count = line.closed() ? points.size() : points.size() - 1;
    for (int i = 0; i < count; i++) {
      best =
          Math.min(
              best, new Line(points.get(i), points.get((i + 1) % points.size())).distance(axis));
    }
    return best;
  }
}
