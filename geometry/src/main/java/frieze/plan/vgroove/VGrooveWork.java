package frieze.plan.vgroove;

import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostic;
import frieze.plan.cut.AreaLayout;
import frieze.plan.cut.Batch;
import frieze.plan.cut.Block;
import frieze.plan.cut.Cut;
import frieze.plan.cut.DepthPasses;
import frieze.plan.cut.Easing;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.Leftover;
import frieze.plan.cut.PlanCode;
import frieze.plan.recess.RecessGeometry;
import frieze.plan.recess.RecessPlanner;
import frieze.region.Region;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Plans one V-groove of the work list at all its placements.
 *
 * <p>{@link #batches} tells the story: the areas are worked out once for each size, then moved; the
 * floors are cleared with flat tools first, and the V-bit follows.
 */
public final class VGrooveWork {
  private final Setup setup;
  private final Work.VGroove work;
  private final Tolerances tolerances;
  private final List<AreaLayout.Item<VGrooveGeometry.Result>> items;
  private final int geometryCalls;
  private final List<Diagnostic> notes = new ArrayList<>();
  private final List<Leftover> leftovers = new ArrayList<>();
  private final List<Batch> batches;

  public VGrooveWork(Design design, Setup setup, Tolerances tolerances, Work.VGroove work) {
    this.setup = setup;
    this.work = work;
    this.tolerances = tolerances;
    boolean hard = setup.stock().material().kind() == Material.Kind.HARDWOOD;
    double limit = VLevel.limitMm(DepthPasses.limitMm(work.tool(), setup.stock().material()), hard);
    AreaLayout<VGrooveGeometry.Result> layout =
        new AreaLayout<>(
                design,
                work.operation(),
                work.on(),
                tolerances,
                new VGrooveGeometry(work, limit, setup.allowance().faceMm(), tolerances)::of,
                VGrooveGeometry.Result::placed)
            .mirrorsApart();
    this.items = layout.items();
    this.geometryCalls = layout.geometryCalls();
    this.batches = plan();
    items.forEach(this::report);
    checkDepth();
  }

  public List<Batch> batches() {
    return batches;
  }

  public List<Diagnostic> notes() {
    return notes;
  }

  public List<Leftover> leftovers() {
    return leftovers;
  }

  public int geometryCalls() {
    return geometryCalls;
  }

  private List<Batch> plan() {
    List<Batch> all = new ArrayList<>();
    floors().forEach((tool, blocks) -> all.add(floor(tool, blocks)));
    Feeds feeds = feeds(work.tool());
    List<List<Cut>> blocks = new ArrayList<>();
    for (AreaLayout.Item<VGrooveGeometry.Result> item : items) {
      for (List<Stroke> strokes : item.result().parts()) {
        blocks.add(
            strokes.stream()
                .map(s -> VGroovePlanner.cut(item.name(), s, work.tool(), feeds))
                .toList());
      }
    }
    all.add(new Batch(work.tool(), Batch.Stage.GROOVE, Block.each(blocks)));
    return all;
  }

  private record FloorChain(String name, RecessGeometry.Chain chain) {}

  private Map<Tool, List<FloorChain>> floors() {
    Map<Tool, List<FloorChain>> byTool = new LinkedHashMap<>();
    for (AreaLayout.Item<VGrooveGeometry.Result> item : items) {
      VGrooveGeometry.Floor floor = item.result().floor();
      for (RecessGeometry.Chain chain : floor.chains()) {
        byTool
            .computeIfAbsent(floor.tool().orElseThrow(), t -> new ArrayList<>())
            .add(new FloorChain(item.name() + ", floor", chain));
      }
    }
    return byTool;
  }

  private Batch floor(Tool tool, List<FloorChain> chains) {
    Feeds feeds = feeds(tool);
    List<Double> depths =
        DepthPasses.depths(
            work.floorMm() + setup.allowance().faceMm(),
            DepthPasses.limitMm(tool, setup.stock().material()));
    List<Block> blocks = new ArrayList<>();
    for (FloorChain one : chains) {
      if (RecessPlanner.canCut(tool, one.chain())) {
        List<List<Cut>> ways =
            one.chain().ways().stream()
                .map(chain -> RecessPlanner.cuts(one.name(), chain, tool, feeds, depths))
                .toList();
        blocks.add(Easing.block(ways, c -> RecessPlanner.eased(c, feeds, depths)));
      } else {
        Point at = one.chain().loops().get(0).start();
        notes.add(
            Diagnostic.warning(
                PlanCode.NO_ROOM_TO_ENTER,
                work.where(),
                one.name()
                    + ": tool "
                    + tool.name()
                    + " can't plunge and has no room to ramp in at "
                    + Amounts.place(at.x(), at.y())
                    + "; that place is not cleared",
                "use a smaller tool, or one that cuts at its centre"));
      }
    }
    return new Batch(tool, Batch.Stage.RECESS, blocks);
  }

  private Feeds feeds(Tool tool) {
    Feeds feeds = Feeds.choose(tool, setup.stock().material(), setup.machine(), work.where());
    notes.addAll(feeds.notes());
    return feeds;
  }

  /** Says where the flat tip does not fit in. */
  private void report(AreaLayout.Item<VGrooveGeometry.Result> item) {
    Region left = item.result().unreached();
    if (left.isEmpty()) {
      return;
    }
    leftovers.add(new Leftover(item.name(), left));
    Region largest = left.largestPart();
    Point at = largest.bounds().centre();
    notes.add(
        Diagnostic.warning(
            PlanCode.THINNER_THAN_TIP,
            work.where(),
            item.name()
                + ": the flat tip of "
                + work.tool().name()
                + " does not fit into "
                + left.parts().size()
                + " places, together "
                + Amounts.area(left.area())
                + "; the largest has "
                + Amounts.area(largest.area())
                + " at "
                + Amounts.place(at.x(), at.y()),
            "a bit with a finer tip reaches farther into them"));
  }

  /** Says how deep it goes where that is a surprise. */
  private void checkDepth() {
    double deepest = items.stream().mapToDouble(i -> i.result().deepestMm()).max().orElse(0);
    double widest = items.stream().mapToDouble(i -> i.result().widestMm()).max().orElse(0);
    double wanted = VCutter.of(work.tool(), work.floorMm(), 0).depthMm(widest);
    double thickness = setup.stock().thinnestMm();
    String hint = "give \"deepest\" for a flat floor, or take a bit with a wider angle";
    if (deepest >= thickness) {
      notes.add(
          Diagnostic.error(
              PlanCode.DEPTH_BEYOND_STOCK,
              work.where(),
              "vgroove goes "
                  + Amounts.length(deepest)
                  + " deep but the stock is "
                  + Amounts.length(thickness)
                  + " thick at its thinnest",
              hint));
    } else if (deepest > work.tool().fluteLengthMm() + tolerances.totalMm()) {
      notes.add(
          Diagnostic.error(
              PlanCode.TOOL_TOO_SHORT,
              work.where(),
              "vgroove goes "
                  + Amounts.length(deepest)
                  + " below the stock's top, with what finishing takes off the face; tool "
                  + work.tool().name()
                  + " cuts "
                  + Amounts.length(work.tool().fluteLengthMm()),
              hint));
    } else if (wanted > work.bitReachMm() + tolerances.totalMm()
        && work.floorMm() == work.bitReachMm()) {
      notes.add(
          Diagnostic.warning(
              PlanCode.FLAT_FLOOR,
              work.where(),
              "the widest place asks for a depth of "
                  + Amounts.length(wanted)
                  + ", but "
                  + work.tool().name()
                  + " cuts only "
                  + Amounts.length(work.bitReachMm())
                  + " deep: it gets a flat floor there",
              hint));
    }
  }
}
