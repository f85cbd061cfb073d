package frieze.plan;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.BoreWay;
import frieze.design.Design;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.plan.bore.BorePlanner;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.PlanCode;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.shop.Setup;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Checks the holes of one line of the work list before anything is planned. */
final class BoreCheck {
  /** A bit and a screw's head have one angle if they differ by no more than half a degree. */
  private static final double SAME_ANGLE_RAD = StrictMath.toRadians(0.5);

  private final Design design;
  private final Setup setup;
  private final WorkCheck common;
  private final Diagnostics found;

  BoreCheck(Design design, Setup setup, WorkCheck common, Diagnostics found) {
    this.design = design;
    this.setup = setup;
    this.common = common;
    this.found = found;
  }

  void check(Work.Bore bore) {
    double depth = bore.depthMm().orElse(setup.stock().thickestMm() + setup.spoilboardMm());
    if (bore.depthMm().isPresent()) {
      common.checkBlind(bore, depth);
    } else {
      common.checkTool(bore, depth);
    }
    double slotMm = bore.way().slot().map(BoreWay.Slot::lengthMm).orElse(Double.MAX_VALUE);
    if (slotMm <= bore.diameterMm() + BorePlanner.SAME_SIZE_MM) {
      badSlot(bore, "a slot " + Amounts.length(slotMm) + " long is no longer than wide");
      return;
    }
    checkOnPanel(bore);
    checkTool(bore);
    bore.way().countersink().ifPresent(sink -> checkSink(bore, sink));
    bore.way().drill().ifPresent(drill -> milled(bore, drill));
  }

  private void checkTool(Work.Bore bore) {
    Tool tool = bore.tool();
    boolean fits = BorePlanner.drills(tool, bore.diameterMm());
    boolean slot = bore.way().slot().isPresent();
    if (tool.diameterMm() > bore.diameterMm() + BorePlanner.SAME_SIZE_MM) {
      found.error(
          PlanCode.HOLE_TOO_SMALL,
          bore.where(),
          "a hole of "
              + Amounts.length(bore.diameterMm())
              + " can't be made by tool "
              + tool.name()
              + ", which is "
              + Amounts.length(tool.diameterMm() - bore.diameterMm())
              + " wider",
          "use a smaller tool");
    } else if (slot && !(tool.shape() instanceof ToolShape.Flat)) {
      common.unsuited(bore, "a slot needs a straight bit");
    } else if (slot) {
      checkRamp(bore);
    } else if (fits && !tool.cutsAtCentre() && !(tool.shape() instanceof ToolShape.Drill)) {
      common.unsuited(
          bore, "it does not cut at its centre, and the hole leaves it no room to ramp");
    } else if (!fits && !(tool.shape() instanceof ToolShape.Flat)) {
      common.unsuited(bore, "a hole larger than the tool needs a straight bit");
    }
  }

  private void checkRamp(Work.Bore bore) {
    double run = bore.way().slot().orElseThrow().lengthMm() - bore.diameterMm();
    if (!MoveBuilder.canEnter(bore.tool(), run)) {
      common.unsuited(
          bore, "it does not cut at its centre, and the slot leaves it no room to ramp");
    }
  }

  private void checkSink(Work.Bore bore, BoreWay.Countersink sink) {
    Tool tool = sink.tool();
    double depth = sink.depthMm();
    if (!(tool.shape() instanceof ToolShape.Vee vee)) {
      badSink(bore, "tool " + tool.name() + " is no V-bit", "use one of the head's angle");
    } else if (Math.abs(vee.angleRad() - sink.angleRad()) > SAME_ANGLE_RAD) {
      badSink(
          bore,
          String.format(
              Locale.ROOT,
              "the screw's head has %.1f degrees but tool %s has %.1f",
              StrictMath.toDegrees(sink.angleRad()),
              tool.name(),
              StrictMath.toDegrees(vee.angleRad())),
          "use a V-bit of the head's angle; 90 and 82 degrees are usual");
    } else if (bore.way().slot().isPresent()) {
      badSink(bore, "a screw with a sunk head can't move in a slot", "use a flat or a round head");
    } else if (sink.diameterMm() <= bore.diameterMm()) {
      badSink(
          bore,
          "a head of " + Amounts.length(sink.diameterMm()) + " is no wider than the hole",
          "write the diameter of the screw's head");
    } else if (sink.diameterMm() > tool.diameterMm()
        || depth > Math.min(tool.fluteLengthMm(), tool.reachMm())) {
      badSink(
          bore,
          "tool "
              + tool.name()
              + " is too small for a head of "
              + Amounts.length(sink.diameterMm()),
          "use a wider V-bit");
    } else if (depth >= setup.stock().thinnestMm()) {
      badSink(
          bore,
          "a countersink " + Amounts.length(depth) + " deep goes through the stock",
          "use a smaller head");
    }
  }

  private void badSink(Work.Bore bore, String message, String hint) {
    found.error(PlanCode.BAD_COUNTERSINK, bore.where(), message, hint);
  }

  private void badSlot(Work.Bore bore, String message) {
    found.error(
        PlanCode.BAD_SLOT,
        bore.where(),
        message + "; its width is " + Amounts.length(bore.diameterMm()),
        "its length counts from end to end");
  }

  private void milled(Work.Bore bore, Tool drill) {
    found.warning(
        PlanCode.MILLED_NOT_DRILLED,
        bore.where(),
        String.format(
            Locale.ROOT,
            "tool %s may turn at %.0f rpm at most and the spindle does not go that low:"
                + " tool %s mills the holes in a helix",
            drill.name(),
            drill.maxRpm(),
            bore.tool().name()),
        "");
  }

  /** The whole of each hole, its countersink and both ends of a slot lie on the panel. */
  private void checkOnPanel(Work.Bore bore) {
    double widest =
        Math.max(
            bore.diameterMm(),
            bore.way().countersink().map(BoreWay.Countersink::diameterMm).orElse(0.0));
    Region allowed = bore.way().inWaste() ? stock() : panel();
    Region.Locator inside =
        Offset.offset(allowed, -widest / 2, Tolerances.DEFAULT.offsetMm()).locator();
    for (Point centre : bore.centres()) {
      if (!ends(bore, centre).allMatch(inside::contains)) {
        found.error(
            PlanCode.HOLE_OFF_PANEL,
            bore.where(),
            "a hole of "
                + Amounts.length(widest)
                + " at "
                + Amounts.place(centre.x(), centre.y())
                + " reaches over the edge of the panel, which is "
                + Amounts.length(design.panel().lengthMm())
                + " by "
                + Amounts.length(design.panel().heightMm()),
            "move it inwards, or make it smaller");
      }
    }
  }

  private Region panel() {
    return Region.of(
        List.of(design.panel().outline()), FillRule.NONZERO, Tolerances.DEFAULT.flattenMm());
  }

  /** All of the stock, in the panel frame. */
  private Region stock() {
    Point corner = setup.stockFromPanel().inverse().apply(Point.ORIGIN);
    Point far = corner.plus(new Point(setup.stock().lengthMm(), setup.stock().widthMm()));
    return Region.ofRing(
        List.of(corner, new Point(far.x(), corner.y()), far, new Point(corner.x(), far.y())));
  }

  private static Stream<Point> ends(Work.Bore bore, Point centre) {
    if (bore.way().slot().isEmpty()) {
      return Stream.of(centre);
    }
    Path middle = bore.way().slot().get().middle(centre, bore.diameterMm());
    return Stream.of(middle.start(), middle.end());
  }
}
