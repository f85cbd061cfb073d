package frieze.plan;

import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.EdgeShape;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.plan.cut.PlanCode;
import frieze.plan.edge.EdgePlanner;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.shop.Setup;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Checks that a bit makes the edge that is asked for. */
final class EdgeCheck {
  /** Bits are ground to about half a degree; common practice. */
  private static final double ANGLE_RAD = StrictMath.toRadians(0.5);

  /** A radius that differs by less is the same, in other units. */
  private static final double RADIUS_MM = 0.05;

  private final Design design;
  private final Setup setup;
  private final Tolerances tolerances;
  private final Diagnostics found;

  EdgeCheck(Design design, Setup setup, Tolerances tolerances, Diagnostics found) {
    this.design = design;
    this.setup = setup;
    this.tolerances = tolerances;
    this.found = found;
  }

  void check(Work.Edge edge, WorkCheck checks) {
    boolean fits =
        edge.shape() instanceof EdgeShape.Chamfer chamfer
            ? isChamfered(edge, chamfer, checks)
            : isRounded(edge, checks);
    if (!fits) {
      return;
    }
    checks.checkBlind(edge, edge.tipDepthMm());
    Region part =
        Region.of(List.of(design.panel().outline()), FillRule.NONZERO, tolerances.flattenMm());
    if (Offset.offset(part, -edge.shape().widthMm(), tolerances.offsetMm()).isEmpty()) {
      found.error(
          PlanCode.EDGE_TOO_LARGE,
          edge.where(),
          "a "
              + edge.operation()
              + " "
              + Amounts.length(edge.shape().widthMm())
              + " wide leaves nothing of the panel's face",
          "make it narrower");
      return;
    }
    checkEnds(edge);
    checkTabs(edge);
  }

  private boolean isChamfered(Work.Edge edge, EdgeShape.Chamfer chamfer, WorkCheck checks) {
    if (!(edge.tool().shape() instanceof ToolShape.Vee vee)) {
      checks.unsuited(edge, "a chamfer needs a V-bit");
      return false;
    }
    double asked = 2 * StrictMath.atan2(chamfer.widthMm(), chamfer.downMm());
    if (Math.abs(asked - vee.angleRad()) > ANGLE_RAD) {
      found.error(
          PlanCode.EDGE_BIT,
          edge.where(),
          "a chamfer "
              + Amounts.length(chamfer.widthMm())
              + " wide and "
              + Amounts.length(chamfer.downMm())
              + " down the edge needs a V-bit of "
              + degrees(asked)
              + ", but "
              + edge.tool().name()
              + " has "
              + degrees(vee.angleRad())
              + ": that wide, it goes "
              + Amounts.length(chamfer.widthMm() / StrictMath.tan(vee.angleRad() / 2))
              + " down",
          "use the bit that fits, or leave out \"down\"; 45 degrees needs a bit of 90 deg");
      return false;
    }
    if (Math.abs(vee.angleRad() - Math.PI / 2) > ANGLE_RAD) {
      found.note(
          PlanCode.EDGE_BIT,
          edge.where(),
          edge.tool().name()
              + " does not make a chamfer of 45 deg: "
              + Amounts.length(chamfer.widthMm())
              + " wide on the face, it goes "
              + Amounts.length(chamfer.downMm())
              + " down the edge");
    }
    double more = chamfer.widthMm() * edge.proudMm() / chamfer.downMm();
    return isWideEnough(edge, edge.axisMm() + chamfer.widthMm() + more);
  }

  private boolean isWideEnough(Work.Edge edge, double neededMm) {
    double short0 = neededMm - edge.tool().radiusMm();
    if (short0 <= tolerances.totalMm()) {
      return true;
    }
    found.error(
        PlanCode.EDGE_BIT,
        edge.where(),
        "with its tip "
            + Amounts.length(edge.belowMm())
            + " below the chamfer, tool "
            + edge.tool().name()
            + " would have to be "
            + Amounts.length(2 * neededMm)
            + " wide, but it is "
            + Amounts.length(edge.tool().diameterMm()),
        "use a wider bit, or make the chamfer or \"below\" smaller");
    return false;
  }

  private boolean isRounded(Work.Edge edge, WorkCheck checks) {
    if (!(edge.tool().shape() instanceof ToolShape.RoundOver bit)) {
      checks.unsuited(edge, "a round edge needs a round over bit");
      return false;
    }
    if (Math.abs(bit.cornerMm() - edge.shape().widthMm()) > RADIUS_MM) {
      found.error(
          PlanCode.EDGE_BIT,
          edge.where(),
          "tool "
              + edge.tool().name()
              + " rounds an edge over by "
              + Amounts.length(bit.cornerMm())
              + ", not by "
              + Amounts.length(edge.shape().widthMm()),
          "use the bit that fits; leave out \"radius\" to take the bit's");
      return false;
    }
    return true;
  }

  private void checkEnds(Work.Edge edge) {
    EdgePlanner planner = new EdgePlanner(design.panel(), edge, setup, tolerances);
    Optional<Point> stuck = planner.stuckAt();
    if (stuck.isPresent()) {
      found.error(
          PlanCode.EDGE_NO_END,
          edge.where(),
          "one of the sides has no corner where its edge could end: at "
              + Amounts.place(stuck.get().x(), stuck.get().y())
              + " tool "
              + edge.tool().name()
              + " would still touch the panel "
              + Amounts.length(EdgePlanner.FARTHEST_MM)
              + " farther on",
          "work the edge all round: leave out \"sides\"");
    } else if (!planner.hasRoom()) {
      found.error(
          PlanCode.NO_ROOM_TO_ENTER,
          edge.where(),
          "tool " + edge.tool().name() + " finds no place beside the blank to come down at",
          "");
    }
  }

  /** A tab under the groove beside the panel would be cut thinner from above. */
  private void checkTabs(Work.Edge edge) {
    for (Work work : design.work()) {
      if (work instanceof Work.Cutout cutout
          && cutout.way().on().isEmpty()
          && cutout.tabs().isPresent()) {
        double left = setup.stock().thinnestMm() - edge.tipDepthMm();
        if (left > 0 && left < cutout.tabs().get().thicknessMm()) {
          found.warning(
              PlanCode.EDGE_INTO_TABS,
              edge.where(),
              "beside the panel the tip of "
                  + edge.tool().name()
                  + " runs "
                  + Amounts.length(edge.tipDepthMm())
                  + " deep, which leaves "
                  + Amounts.length(left)
                  + " of tabs "
                  + Amounts.length(cutout.tabs().get().thicknessMm())
                  + " thick",
              "make the tabs no thicker than that, or the edge smaller");
        }
      }
    }
  }

  private static String degrees(double angleRad) {
    return String.format(Locale.ROOT, "%.1f deg", Math.toDegrees(angleRad)).replace(".0", "");
  }
}
