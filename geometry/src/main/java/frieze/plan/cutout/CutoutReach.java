package frieze.plan.cutout;

import frieze.curve.Tolerances;
import frieze.design.CornerRelief;
import frieze.design.Design;
import frieze.design.Work;
import frieze.plan.cut.AreaLayout;
import frieze.plan.cut.Leftover;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;

/**
 * What a cutout leaves standing beside its wall, because its tool is too thick to come there: slits
 * and inside corners.
 */
public final class CutoutReach {
  /** Half of the width of what is rounding. */
  private static final double NOISE_MM = 0.02;

  private CutoutReach() {}

  /**
   * What stays at the panel's outline, or at each placement of a motif.
   *
   * @param proudMm how far the walls stand off the drawn outline, into the waste
   */
  public static List<Leftover> of(
      Design design, Work.Cutout cutout, double proudMm, Tolerances tolerances) {
    if (cutout.way().side() == Work.Side.ON_LINE) {
      return List.of();
    }
    if (cutout.way().on().isEmpty()) {
      Region part =
          Region.of(List.of(design.panel().outline()), FillRule.NONZERO, tolerances.flattenMm());
      Region left = unreached(part, cutout, proudMm, tolerances);
      String name = cutout.operation() + " " + design.panel().name();
      return left.isEmpty() ? List.of() : List.of(new Leftover(name, left));
    }
    AreaLayout<Region> layout =
        new AreaLayout<>(
            design,
            cutout.operation(),
            cutout.way().on().get(),
            tolerances,
            area -> unreached(area, cutout, proudMm, tolerances),
            Region::transformed);
    List<Leftover> all = new ArrayList<>();
    for (AreaLayout.Item<Region> item : layout.items()) {
      if (!item.result().isEmpty()) {
        all.add(new Leftover(item.name(), item.result()));
      }
    }
    return all;
  }

  /**
   * What stays of the waste beside an area, within the tool's reach of its slot.
   *
   * @param area what is to be free: a part if the tool runs outside, else an opening
   * @param proudMm how far the walls stand off the area's edge, into the waste
   */
  public static Region unreached(
      Region area, Work.Cutout cutout, double proudMm, Tolerances tolerances) {
    double tolerance = tolerances.offsetMm();
    double radius = cutout.tool().radiusMm();
    boolean outside = cutout.way().side() == Work.Side.OUTSIDE;
    double off = outside ? proudMm : -proudMm;
    Region wall = off == 0 ? area : Offset.offset(area, off, tolerance);
    Region axis = Offset.offset(wall, outside ? radius : -radius, tolerance);
    if (outside && cutout.way().on().isEmpty() && !axis.isEmpty()) {
      axis = Region.ofRing(axis.rings().get(0).points()); // no bit comes into a pocket
    }
    Region reached = Offset.offset(axis, outside ? -radius : radius, tolerance);
    Region left = outside ? reached.minus(wall) : wall.minus(reached);
    CornerRelief.Lap lap = new CornerRelief.Lap(cutout.way().corners(), radius, proudMm, proudMm);
    for (CornerRelief.Place place : CornerRelief.of(area, cutout.way().side(), lap).places()) {
      left = left.minus(place.swept(radius, tolerances.flattenMm()));
    }
    return opened(Leftover.without(left, Region.EMPTY), tolerance);
  }

  /** Parts that are more than rounding may have slivers of rounding along the wall. */
  private static Region opened(Region left, double tolerance) {
    return Offset.offset(Offset.offset(left, -NOISE_MM, tolerance), NOISE_MM, tolerance);
  }
}
