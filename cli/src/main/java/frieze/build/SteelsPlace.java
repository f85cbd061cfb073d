package frieze.build;

import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.opening.DrawnHole;
import frieze.opening.OpeningCode;
import frieze.opening.Sitting;
import frieze.plan.cut.Leftover;
import frieze.plan.cutout.CutoutReach;
import frieze.region.FillRule;
import frieze.region.MedialAxis;
import frieze.region.Region;
import java.util.List;

/**
 * Checks that a panel for an opening whose edge is drawn is cut free wherever the steel reaches
 * into its outline: a gap is worth nothing where the bit can't go.
 */
final class SteelsPlace {
  /** Widths are told to this. */
  private static final double FINE_MM = 0.01;

  private SteelsPlace() {}

  static void check(Sitting sitting, Design design, Diagnostics found) {
    for (DrawnHole hole : sitting.drawn().stream().toList()) {
      for (Work each : design.work()) {
        if (each instanceof Work.Cutout cutout
            && cutout.way().on().isEmpty()
            && cutout.way().side() == Work.Side.OUTSIDE) {
          check(hole, design, cutout, found);
        }
      }
    }
  }

  private static void check(DrawnHole hole, Design design, Work.Cutout cutout, Diagnostics found) {
    Tolerances t = Tolerances.DEFAULT;
    Region open = Region.of(List.of(hole.edge()), FillRule.NONZERO, t.flattenMm());
    for (Leftover left : CutoutReach.of(design, cutout, cutout.way().proudMm(), t)) {
      for (Region place : left.area().parts()) {
        Region steel = Leftover.without(place, open);
        if (!steel.isEmpty()) {
          tell(place, steel.largestPart(), cutout, found);
        }
      }
    }
  }

  private static void tell(Region left, Region steel, Work.Cutout cutout, Diagnostics found) {
    Point at = steel.bounds().centre();
    found.error(
        OpeningCode.WOOD_IN_STEELS_PLACE,
        cutout.where(),
        "tool "
            + cutout.tool().name()
            + ", "
            + Amounts.length(cutout.tool().diameterMm())
            + " thick, does not get into the panel's outline at "
            + Amounts.place(at.x(), at.y())
            + ": wood up to "
            + Amounts.length(widthMm(left))
            + " wide stays there, "
            + Amounts.length(widthMm(steel))
            + " of it where the opening's steel is",
        "use a smaller tool or a larger gap");
  }

  /** The diameter of the largest circle in an area, to a hundredth of a millimetre. */
  private static double widthMm(Region area) {
    double radius = MedialAxis.of(area, FINE_MM / 2).largest().radiusMm();
    return Math.rint(2 * radius / FINE_MM) * FINE_MM;
  }
}
