package frieze.plan.cutout;

import frieze.curve.Point;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.plan.cut.PlanCode;
import frieze.plan.cut.Track;
import frieze.shop.Material;
import frieze.shop.Setup;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Places the tabs of one cutout where there is waste beyond the slot for them to hold on to.
 *
 * <p>The waste counts from the slot's far side to the nearest edge of the stock. It must be as wide
 * as the tool's radius: common practice, a narrower strip bends or breaks. Within an opening the
 * part around it holds, so there any place will do.
 */
final class TabPlaces {
  /** At how many places of an outline it is looked for waste. */
  private static final int SAMPLES = 256;

  private final Work.Cutout cutout;
  private final Setup setup;
  private final Diagnostics found;

  TabPlaces(Work.Cutout cutout, Setup setup, Diagnostics found) {
    this.cutout = cutout;
    this.setup = setup;
    this.found = found;
  }

  /** The zones of tabs, with room for a slope at both ends. */
  Optional<List<TabPlan.Zone>> place(Tabs tabs, Track track, double slopeMm) {
    return place(tabs, track, slopeMm, this::isHeld);
  }

  private Optional<List<TabPlan.Zone>> place(
      Tabs tabs, Track track, double slopeMm, Predicate<Point> held) {
    boolean grain = setup.stock().material().kind() != Material.Kind.SHEET;
    if (grain && tabs.alongGrainMm() > tabs.widthMm()) {
      double longer = (tabs.alongGrainMm() - tabs.widthMm()) / 2;
      Optional<List<TabPlan.Zone>> wide = place(tabs, track, slopeMm, longer, held);
      if (wide.isPresent()) {
        return wide.map(
            zones ->
                zones.stream()
                    .map(z -> TabPlan.isAlongGrain(track, z) ? z : z.shorter(longer))
                    .toList());
      }
    }
    return place(tabs, track, slopeMm, 0, held);
  }

  /** Zones for tabs that are longer by so much at both ends. */
  private Optional<List<TabPlan.Zone>> place(
      Tabs tabs, Track track, double slopeMm, double longerMm, Predicate<Point> held) {
    boolean grain = setup.stock().material().kind() != Material.Kind.SHEET;
    double diameter = cutout.tool().diameterMm();
    double zone = tabs.widthMm() + diameter + 2 * slopeMm + 2 * longerMm;
    return TabPlan.place(track, tabs.count(), zone, diameter, new TabPlan.Ground(grain, held))
        .map(zones -> zones.stream().map(z -> z.shorter(slopeMm)).toList());
  }

  /** Tabs with upright ends; none after an error. */
  List<TabPlan.Zone> upright(Tabs tabs, Track track) {
    Optional<List<TabPlan.Zone>> zones = place(tabs, track, 0);
    if (zones.isEmpty() && place(tabs, track, 0, p -> true).isPresent()) {
      noWaste(tabs.count() + " tabs", track);
    } else if (zones.isEmpty()) {
      found.error(
          PlanCode.TABS_DO_NOT_FIT,
          cutout.where(),
          tabs.count()
              + " tabs of "
              + Amounts.length(tabs.widthMm())
              + " do not fit on an outline "
              + Amounts.length(track.lengthMm())
              + " long, which begins at "
              + Amounts.place(track.start().x(), track.start().y()),
          "ask for fewer or narrower tabs");
    }
    return zones.orElse(List.of());
  }

  /** A skin must hang on to waste somewhere. */
  void checkSkin(Track track) {
    if (samples(track).stream().noneMatch(this::isHeld)) {
      noWaste("a skin", track);
    }
  }

  private void noWaste(String what, Track track) {
    Point worst = track.start();
    for (Point p : samples(track)) {
      worst = wasteMm(p) < wasteMm(worst) ? p : worst;
    }
    double waste = wasteMm(worst);
    found.error(
        PlanCode.NOTHING_TO_HOLD_ON,
        cutout.where(),
        what
            + " would hold on to nothing: at "
            + Amounts.place(worst.x(), worst.y())
            + " of the panel the slot of tool "
            + cutout.tool().name()
            + ", "
            + Amounts.length(cutout.tool().diameterMm())
            + " wide, "
            + (waste > 0
                ? "leaves only " + Amounts.length(waste) + " of the stock"
                : "reaches " + Amounts.length(-waste) + " beyond the stock's edge")
            + ", and too little of the outline has the "
            + Amounts.length(leastMm())
            + " of waste beside it that are needed",
        "use a larger stock, a smaller tool or fewer tabs, or hold the panel by screws or"
            + " double-sided tape");
  }

  private static List<Point> samples(Track track) {
    return IntStream.range(0, SAMPLES)
        .mapToObj(i -> track.pointAt(track.lengthMm() * i / SAMPLES))
        .toList();
  }

  private boolean isHeld(Point axis) {
    return cutout.way().side() == Work.Side.INSIDE || wasteMm(axis) >= leastMm();
  }

  private double leastMm() {
    return cutout.tool().radiusMm();
  }

  /** What stands between the slot and the nearest edge of the stock; below 0 beyond it. */
  private double wasteMm(Point axis) {
    double x = axis.x() + setup.panelXMm();
    double y = axis.y() + setup.panelYMm();
    double edge =
        Math.min(
            Math.min(x, setup.stock().lengthMm() - x), Math.min(y, setup.stock().widthMm() - y));
    return edge - cutout.tool().radiusMm();
  }
}
