package frieze.torch;

import frieze.bridge.BridgeRules;
import frieze.bridge.Bridged;
import frieze.bridge.RepeatedBridges;
import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Intents;
import frieze.design.Motif;
import frieze.design.Selection;
import frieze.design.TorchWay;
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

  /** Islands below this are dross; common practice, no published value. */
  static final double DROSS_MM2 = 2;

  /** Openings below this are gaps by rounding. */
  private static final double SPECK_MM2 = 0.1;

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

  /** The material without specks of metal, and of opening, that nobody drew; tells of each. */
  Region withoutDross(Region material) {
    Region kept = material;
    for (Region part : material.parts()) {
      if (part.area() < DROSS_MM2) {
        kept = kept.minus(part);
        tellDross("an island", part, " is dropped: it would burn or fall");
      }
    }
    for (Region hole : holes(kept)) {
      if (hole.area() < SPECK_MM2) {
        kept = kept.union(hole);
        tellDross("an opening", hole, " is left out: it is where drawn areas just miss each other");
      }
    }
    return kept;
  }

  private void tellDross(String what, Region speck, String done) {
    Point at = speck.bounds().centre();
    found.warning(
        TorchCode.DROSS,
        work.where(),
        what
            + " of only "
            + Amounts.area(speck.area())
            + " at "
            + Amounts.place(at.x(), at.y())
            + done,
        "if you want it, draw it larger");
  }

  /**
   * The material with its islands tied by bridges, alike for each placement of a motif. Lines of a
   * motif that are not filled are its veins.
   */
  Bridged tied(Region material) {
    List<RepeatedBridges.Cutting> cuttings = new ArrayList<>();
    for (Work.Target target : work.on()) {
      for (List<Placement> alike : design.shapesOf(target.motif()).values()) {
        Motif motif = design.motifAt(alike.get(0));
        Region drawn = Selection.area(motif, target, Affine.IDENTITY, tolerances.flattenMm());
        List<Affine> maps = alike.stream().map(p -> p.map().affine()).toList();
        cuttings.add(new RepeatedBridges.Cutting(target.motif(), drawn, veins(motif), maps));
      }
    }
    BridgeRules usual = BridgeRules.usual(work.torch().thicknessMm());
    TorchWay.Bridging asked = work.way().bridges();
    BridgeRules rules =
        usual
            .withWidth(asked.widthMm().orElse(usual.widthMm()))
            .withSideLoad(asked.sideLoadN().orElse(usual.sideLoadN()));
    return RepeatedBridges.tieWithin(material, cuttings, rules, work.where());
  }

  private static List<Path> veins(Motif motif) {
    return motif.artwork().pieces().stream()
        .filter(p -> p.stroke().isPresent() && p.fill().isEmpty())
        .flatMap(p -> p.paths().stream())
        .toList();
  }

  private Region openings() {
    Region all = Region.EMPTY;
    for (Work.Target target : work.on()) {
      double sum = 0;
      for (Placement placement : design.placementsOf(target.motif())) {
        Affine map = placement.map().affine();
        Region area =
            Selection.area(design.motifAt(placement), target, map, tolerances.flattenMm());
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
