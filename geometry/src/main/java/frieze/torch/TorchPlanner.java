package frieze.torch;

import frieze.bridge.Bridged;
import frieze.bridge.KerfLimits;
import frieze.bridge.Pieces;
import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.TorchWay;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.region.BoundaryDistance;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns a design into what a torch does.
 *
 * <p>{@link #plan} tells the story: what stays, where its copies lie, the holes of one of them, the
 * outlines of all, the order.
 */
public final class TorchPlanner {
  private final Design design;
  private final Setup setup;
  private final Tolerances tolerances;
  private final Work.TorchCut work;
  private final Diagnostics found = new Diagnostics();

  private TorchPlanner(Design design, Setup setup, Tolerances tolerances) {
    this.design = design;
    this.setup = setup;
    this.tolerances = tolerances;
    if (design.work().size() != 1 || !(design.work().get(0) instanceof Work.TorchCut torchCut)) {
      throw new IllegalArgumentException("work must be one torchcut but was " + design.work());
    }
    this.work = torchCut;
  }

  /**
   * Plans a sheet.
   *
   * @throws frieze.diagnostic.BadInputException with everything that can't be cut
   */
  public static TorchPlan plan(Design design, Setup setup, Tolerances tolerances) {
    return new TorchPlanner(design, setup, tolerances).plan();
  }

  private TorchPlan plan() {
    new SheetCheck(design, setup, work, found).check();
    Material stays = new Material(design, work, tolerances, found);
    Region material = stays.withoutDross(stays.region());
    found.throwIfErrors();
    Region part = onePiece(held(stays, material));
    prove(part);
    found.throwIfErrors();
    List<KerfLimits.Trouble> troubles = kerfLimits(part);
    found.throwIfErrors();
    List<Point> places =
        SheetRows.places(work.way().rows(), design.panel().lengthMm(), design.panel().heightMm());
    HoleCuts holes = new HoleCuts(work, tolerances, found);
    List<TorchPath> ofOne = holes.of(part);
    Region asCut = holes.remaining(part);
    List<TorchPath> paths = new ArrayList<>();
    List<Region> parts = new ArrayList<>();
    List<Joint> joints = new ArrayList<>();
    List<KerfLimits.Trouble> limits = new ArrayList<>();
    for (int copy = 0; copy < places.size(); copy++) {
      Affine shift = Affine.translation(places.get(copy).x(), places.get(copy).y());
      parts.add(asCut.transformed(shift));
      holes.joints().forEach(j -> joints.add(j.transformed(shift)));
      troubles.forEach(t -> limits.add(t.movedBy(shift)));
      for (TorchPath path : ofOne) {
        paths.add(Shift.of(path, shift, copyName(copy, places.size())));
      }
    }
    if (work.way().outline()) {
      paths.addAll(outlines(parts, joints));
    }
    found.throwIfErrors();
    if (paths.isEmpty()) {
      found.error(TorchCode.NOTHING_TO_CUT, work.where(), "nothing is left to cut", "");
      found.throwIfErrors();
    }
    List<TorchPath> ordered =
        TorchOrder.of(
            paths, Nests.of(outline().minus(material), places), work.torch().thicknessMm());
    return new TorchPlan(work.torch(), ordered, parts, joints, limits, found.sorted());
  }

  /** The material with its islands tied. */
  private Region held(Material stays, Region material) {
    if (!work.way().bridges().wanted()) {
      return material;
    }
    Bridged bridged = stays.tied(material);
    found.addAll(bridged.found());
    found.throwIfErrors();
    return Fillets.of(bridged, work.torch().kerfMm(), tolerances.offsetMm());
  }

  static String copyName(int copy, int of) {
    return of == 1 ? "" : ", panel " + (copy + 1);
  }

  private Region outline() {
    return Region.of(List.of(design.panel().outline()), FillRule.NONZERO, tolerances.flattenMm());
  }

  private List<KerfLimits.Trouble> kerfLimits(Region part) {
    TorchWay.Limits limits = work.way().limits();
    List<KerfLimits.Trouble> troubles =
        KerfLimits.find(
            outline(),
            part,
            work.torch().kerfMm(),
            limits.leastWebMm().orElse(setup.stock().thickestMm()));
    found.addAll(KerfLimits.diagnostics(troubles, limits.strict(), work.where()));
    return troubles;
  }

  /** The largest part of the material; the others would fall out. */
  private Region onePiece(Region material) {
    Region largest = material.largestPart();
    for (Region part : material.parts()) {
      if (!part.equals(largest)) {
        Point at = part.bounds().centre();
        found.error(
            TorchCode.LOOSE_ISLAND,
            work.where(),
            "an island of "
                + Amounts.area(part.area())
                + " inside an opening would fall out at "
                + Amounts.place(at.x(), at.y()),
            "tie it to the panel in the drawing, or pick the pieces without it");
      }
    }
    return largest;
  }

  /** Counts the pieces of the part by a way that shares nothing with how it was made. */
  private void prove(Region part) {
    int pieces = Pieces.count(part);
    if (pieces != 1) {
      found.error(
          TorchCode.LOOSE_ISLAND,
          work.where(),
          "the panel would come out in " + pieces + " pieces",
          "tie them in the drawing, or pick the pieces without them");
    }
  }

  private List<TorchPath> outlines(List<Region> parts, List<Joint> joints) {
    Region all = Region.EMPTY;
    for (Region part : parts) {
      all = all.union(part);
    }
    SheetEdge sheet = new SheetEdge(setup, work.torch().kerfMm());
    LeadFinder leads =
        new LeadFinder(work.torch(), work.way(), BoundaryDistance.of(all), sheet::allows);
    OutlineCuts outlines = new OutlineCuts(work, tolerances, leads, found);
    List<TorchPath> paths = new ArrayList<>();
    for (int copy = 0; copy < parts.size(); copy++) {
      String name = "torchcut outline" + copyName(copy, parts.size());
      paths.addAll(outlines.of(name, parts.get(copy)));
    }
    joints.addAll(outlines.joints());
    return paths;
  }
}
