package frieze.torch;

import frieze.bridge.BridgeRules;
import frieze.bridge.Bridged;
import frieze.bridge.RepeatedBridges;
import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Intents;
import frieze.design.Selection;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.layout.Placement;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.List;

/** Works out what stays of a panel: its outline without its openings. */
final class Material {
  /** Openings this near to the outline touch it. */
  private static final double TOUCH_MM = 0.01;

  private final Design design;
  private final Work.TorchCut work;
  private final Tolerances tolerances;
  private final Diagnostics found;

  Material(Design design, Work.TorchCut work, Tolerances tolerances, Diagnostics found) {
    this.design = design;
    this.work = work;
    this.tolerances = tolerances;
    this.found = found;
  }

  /** The panel without its openings; its parts are islands, but for the largest. */
  Region region() {
    Region panel =
        Region.of(List.of(design.panel().outline()), FillRule.NONZERO, tolerances.flattenMm());
    Region openings = openings();
    Region inner = Offset.offset(panel, -TOUCH_MM, tolerances.offsetMm());
    for (Region beyond : openings.minus(inner).parts()) {
      Point at = beyond.bounds().centre();
      found.error(
          TorchCode.TOUCHES_OUTLINE,
          work.where(),
          "an opening touches or crosses the outline of the panel at "
              + Amounts.place(at.x(), at.y()),
          "make the drawing smaller, or leave more inset");
      break;
    }
    return panel.minus(openings);
  }

  /** The material with its islands tied by bridges, alike for each placement of a motif. */
  Bridged tied(Region material) {
    List<RepeatedBridges.Cutting> cuttings = new ArrayList<>();
    for (Work.Target target : work.on()) {
      Region drawn =
          Selection.area(
              design.motif(target.motif()), target, Affine.IDENTITY, tolerances.flattenMm());
      List<Affine> maps =
          design.placementsOf(target.motif()).stream().map(p -> p.map().affine()).toList();
      cuttings.add(new RepeatedBridges.Cutting(target.motif(), drawn, List.of(), maps));
    }
    BridgeRules usual = BridgeRules.usual(work.torch().thicknessMm());
    BridgeRules rules =
        work.way().bridges().widthMm().isPresent()
            ? usual.withWidth(work.way().bridges().widthMm().getAsDouble())
            : usual;
    return RepeatedBridges.tieWithin(material, cuttings, rules, work.where());
  }

  private Region openings() {
    Region all = Region.EMPTY;
    for (Work.Target target : work.on()) {
      double sum = 0;
      for (Placement placement : design.placementsOf(target.motif())) {
        Affine map = placement.map().affine();
        Region area =
            Selection.area(design.motif(target.motif()), target, map, tolerances.flattenMm());
        sum += area.area();
        if (all.intersection(area).area() > TOUCH_MM) {
          found.warning(
              TorchCode.OPENINGS_OVERLAP,
              work.where(),
              Intents.name(work, placement) + " overlaps another opening: they are cut as one",
              "place fewer, or make them smaller");
        }
        all = all.union(area);
      }
      if (sum == 0) {
        found.error(
            TorchCode.NO_OPENINGS,
            work.where(),
            "torchcut finds no filled areas in " + target.motif(),
            "");
      }
    }
    return all;
  }

  /** The areas that holes of a part enclose. */
  static List<Region> holes(Region part) {
    List<Region> holes = new ArrayList<>();
    for (Ring ring : part.rings()) {
      if (ring.hole()) {
        holes.add(Region.ofRing(ring.points()));
      }
    }
    return holes;
  }
}
