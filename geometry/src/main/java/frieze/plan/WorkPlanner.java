package frieze.plan;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.BoreWay;
import frieze.design.DepthAlong;
import frieze.design.Design;
import frieze.design.Intents;
import frieze.design.Motif;
import frieze.design.Selection;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.layout.Placement;
import frieze.plan.bore.BoreLayout;
import frieze.plan.bore.BorePlanner;
import frieze.plan.cut.AreaLayout;
import frieze.plan.cut.Batch;
import frieze.plan.cut.Block;
import frieze.plan.cut.DepthPasses;
import frieze.plan.cut.Easing;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.Fitting;
import frieze.plan.cut.Leftover;
import frieze.plan.cut.PlanCode;
import frieze.plan.cut.RimUse;
import frieze.plan.cut.Track;
import frieze.plan.cutout.CutoutLayout;
import frieze.plan.cutout.CutoutReach;
import frieze.plan.edge.EdgePlanner;
import frieze.plan.groove.GroovePlanner;
import frieze.plan.groove.VaryingGroove;
import frieze.plan.recess.ClearedAreas;
import frieze.plan.recess.RecessCuts;
import frieze.plan.recess.RecessLayout;
import frieze.plan.recess.RecessPlanner;
import frieze.plan.vgroove.VGrooveWork;
import frieze.region.Region;
import frieze.shop.Setup;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans one line of the work list after the other.
 *
 * <p>The geometry of a motif is worked out once for each size at which it is placed, at the origin;
 * a placement only moves the finished tracks. Ramps are added after that, because they depend on
 * depth and feed and not on shape.
 */
final class WorkPlanner implements Work.Visitor<List<Batch>> {
  private final Design design;
  private final Setup setup;
  private final Tolerances tolerances;
  private final Diagnostics found;
  private final List<Leftover> leftovers = new ArrayList<>();
  private final List<RimUse> rims = new ArrayList<>();
  private int geometryCalls;

  WorkPlanner(Design design, Setup setup, Tolerances tolerances, Diagnostics found) {
    this.design = design;
    this.setup = setup;
    this.tolerances = tolerances;
    this.found = found;
  }

  List<Leftover> leftovers() {
    return leftovers;
  }

  List<RimUse> rims() {
    return rims;
  }

  int geometryCalls() {
    return geometryCalls;
  }

  private Feeds feeds(Work work) {
    return feeds(work.tool(), work);
  }

  private Feeds feeds(Tool tool, Work work) {
    Feeds feeds = Feeds.choose(tool, setup.stock().material(), setup.machine(), work.where());
    found.addAll(feeds.notes());
    return feeds;
  }

  /** The feeds of a tool in slots, with a note if they are lowered. */
  private Feeds slots(Work work, Feeds full) {
    double takes = DepthPasses.limitMm(work.tool(), setup.stock().material());
    Easing.slotNote(work.operation(), work.tool(), takes)
        .ifPresent(n -> found.note(PlanCode.ENGAGED_AND_SLOWED, work.where(), n));
    return Easing.slots(work.tool(), full, takes);
  }

  /** The feeds of a hole or slot that is milled; a drilled one has no slot. */
  private Feeds milling(Work.Bore bore, Feeds full) {
    boolean drilled =
        BorePlanner.drills(bore.tool(), bore.diameterMm()) && bore.way().slot().isEmpty();
    return drilled ? full : slots(bore, full);
  }

  private List<Double> passes(Tool tool, double depthMm) {
    return DepthPasses.depths(depthMm, DepthPasses.limitMm(tool, setup.stock().material()));
  }

  @Override
  public List<Batch> recess(Work.Recess recess) {
    Feeds feeds = feeds(recess);
    ChipThinning.warning(recess, feeds, setup.stock().material()).ifPresent(found::add);
    List<Double> depths = passes(recess.tool(), recess.depthMm());
    RecessLayout layout =
        new RecessLayout(
            design,
            recess,
            setup.allowance().wallsMm(),
            tolerances,
            part -> RecessPlanner.made(recess, part, feeds, depths));
    RimUse.Tally rim = new RimUse.Tally();
    boolean lastTool = RecessLayout.sameArea(design, recess).noneMatch(r -> isSmaller(r, recess));
    List<Block> blocks = new ArrayList<>();
    for (AreaLayout.Item<RecessCuts> item : layout.items()) {
      for (RecessCuts.Made part : item.result().parts(item.name())) {
        part.noRoom().forEach(at -> noRoom(recess, item.name(), at));
        rim.add(part.rim());
        part.block().ifPresent(blocks::add);
      }
      if (lastTool) {
        report(recess, item.name(), item.result().leftover());
      }
    }
    geometryCalls += layout.geometryCalls();
    report(recess, rim.of(recess.operation() + " " + recess.on().motif(), recess.tool()));
    return List.of(new Batch(recess.tool(), Batch.Stage.RECESS, blocks));
  }

  private void report(Work.Recess recess, RimUse rim) {
    rims.add(rim);
    if (rim.beyond().part() > 0) {
      found.note(PlanCode.ENGAGED_AND_SLOWED, recess.where(), Easing.note(rim));
    }
  }

  private static boolean isSmaller(Work.Recess a, Work.Recess b) {
    return a.tool().radiusMm() < b.tool().radiusMm();
  }

  private void report(Work work, String origin, Region leftover) {
    if (leftover.isEmpty()) {
      return;
    }
    leftovers.add(new Leftover(origin, leftover));
    Region largest = leftover.largestPart();
    Point middle = largest.bounds().centre();
    found.warning(
        PlanCode.NOT_ALL_REACHED,
        work.where(),
        origin
            + ": tool "
            + work.tool().name()
            + " does not reach "
            + (leftover.parts().size() == 1
                ? ""
                : leftover.parts().size()
                    + " places, together "
                    + Amounts.area(leftover.area())
                    + "; the largest has ")
            + Amounts.area(largest.area())
            + " at "
            + Amounts.place(middle.x(), middle.y()),
        "inside corners stay round; a smaller tool reaches farther into them");
  }

  private void noRoom(Work work, String origin, Point at) {
    found.warning(
        PlanCode.NO_ROOM_TO_ENTER,
        work.where(),
        origin
            + ": tool "
            + work.tool().name()
            + " can't plunge and has no room to ramp in at "
            + Amounts.place(at.x(), at.y())
            + "; that place is not cut",
        "use a smaller tool, or one that cuts at its centre");
  }

  @Override
  public List<Batch> vgroove(Work.VGroove vgroove) {
    VGrooveWork planned = new VGrooveWork(design, setup, tolerances, vgroove);
    found.addAll(planned.notes());
    leftovers.addAll(planned.leftovers());
    geometryCalls += planned.geometryCalls();
    return planned.batches();
  }

  @Override
  public List<Batch> groove(Work.Groove groove) {
    Feeds feeds = slots(groove, feeds(groove));
    Map<Integer, GrooveLines> shapes = new HashMap<>();
    List<Block> blocks = new ArrayList<>();
    for (Placement placement : design.placementsOf(groove.on().motif())) {
      GrooveLines lines =
          shapes.computeIfAbsent(
              placement.variant(), v -> grooveLines(groove, design.motifAt(placement)));
      String origin = Intents.name(groove, placement);
      Affine map = placement.map().affine();
      for (Map.Entry<Path, Track> line : lines.tracks().entrySet()) {
        Track placed = line.getValue().transformed(map);
        List<Double> drawn = lines.varyingMm().getOrDefault(line.getKey(), List.of());
        if (!drawn.isEmpty()) {
          varying(groove, origin, placed, drawn.stream().map(w -> w * map.scale()).toList())
              .ifPresent(run -> blocks.add(varied(origin, run, groove, feeds)));
          continue;
        }
        double depth =
            groove.depthMm(lines.widthsMm().getOrDefault(line.getKey(), 0.0) * map.scale());
        if (depth <= 0) {
          continue; // thinner than the tip, which the check has told
        }
        if (GroovePlanner.canCut(groove, placed)) {
          Deep deep = deep(groove, line.getKey(), depth, lines.cleared(), map.scale());
          GroovePlanner.Job job = new GroovePlanner.Job(placed, deep.clearedMm(), deep.depths());
          blocks.add(GroovePlanner.block(origin, job, groove, feeds));
        } else {
          noRoom(groove, origin, placed.start());
        }
      }
    }
    return List.of(new Batch(groove.tool(), Batch.Stage.GROOVE, blocks));
  }

  /** What is worked out once for the lines of a shape. */
  private record GrooveLines(
      Map<Path, Track> tracks,
      Map<Path, Double> widthsMm,
      Map<Path, List<Double>> varyingMm,
      ClearedAreas cleared) {}

  private GrooveLines grooveLines(Work.Groove groove, Motif motif) {
    geometryCalls++;
    return new GrooveLines(
        tracks(groove, motif),
        Selection.widthsMm(motif, groove.on()),
        groove.byWidth() ? Selection.varyingMm(motif, groove.on(), 1) : Map.of(),
        ClearedAreas.of(design, motif, setup.allowance().wallsMm(), tolerances));
  }

  /** A line drawn thick and thin; empty if it is all thinner than the tip, or can't be cut. */
  private Optional<VaryingGroove.Run> varying(
      Work.Groove groove, String origin, Track line, List<Double> drawnMm) {
    DepthAlong depths = DepthAlong.byWidth(groove, drawnMm, line.lengthMm());
    if (depths.mostMm() <= 0) {
      return Optional.empty();
    }
    VaryingGroove.Run run = VaryingGroove.Run.of(line, depths);
    if (!run.canCut(groove.tool())) {
      noRoom(groove, origin, run.line().start());
      return Optional.empty();
    }
    return Optional.of(run);
  }

  private Block varied(String origin, VaryingGroove.Run run, Work.Groove groove, Feeds feeds) {
    double limit = DepthPasses.limitMm(groove.tool(), setup.stock().material());
    return Block.of(List.of(VaryingGroove.cut(origin, run, groove.tool(), feeds, limit)));
  }

  /** The lines of a motif that have a length, each fitted by lines and arcs. */
  private Map<Path, Track> tracks(Work.Groove groove, Motif motif) {
    Map<Path, Track> tracks = new LinkedHashMap<>();
    for (Path path : Selection.lines(motif, groove.on())) {
      Optional<Track> track = Fitting.track(path, tolerances);
      track.ifPresent(t -> tracks.put(path, t));
      if (track.isEmpty()) {
        found.warning(
            PlanCode.LINE_TOO_SHORT,
            groove.where(),
            "a line of no length in " + motif.name() + " is left out",
            "");
      }
    }
    return tracks;
  }

  /** How deep the entry is cleared, and the depths after each pass. */
  private record Deep(double clearedMm, List<Double> depths) {}

  /** The passes of a line, which begin on the floor of a recess where all of it lies on one. */
  private Deep deep(
      Work.Groove groove, Path line, double depth, ClearedAreas cleared, double scale) {
    Tool tool = groove.tool();
    double atEntry = cleared.depthMm(GroovePlanner.entry(groove, line), tool, scale);
    double allAlong = cleared.depthMm(line, tool, scale);
    double from = allAlong < depth ? allAlong : 0;
    List<Double> depths = new ArrayList<>();
    passes(tool, depth - from).forEach(d -> depths.add(from + d));
    depths.set(depths.size() - 1, depth);
    return new Deep(Math.min(atEntry, depths.get(0)), depths);
  }

  @Override
  public List<Batch> cutout(Work.Cutout cutout) {
    if (setup.stock().blank() && cutout.way().on().isEmpty()) {
      return List.of(new Batch(cutout.tool(), Batch.Stage.CUTOUT, List.of()));
    }
    CutoutLayout layout = new CutoutLayout(design, cutout, setup, tolerances, found);
    Feeds feeds = feeds(cutout);
    slots(cutout, feeds); // only to tell: finishing laps keep their feed
    List<Block> blocks = layout.blocks(feeds);
    geometryCalls += layout.geometryCalls();
    CutoutReach.of(design, cutout, setup.allowance().wallsMm(), tolerances)
        .forEach(left -> report(cutout, left.work(), left.area()));
    boolean frees = cutout.way().on().isEmpty();
    return List.of(
        new Batch(cutout.tool(), frees ? Batch.Stage.CUTOUT : Batch.Stage.OPENING, blocks));
  }

  @Override
  public List<Batch> bore(Work.Bore bore) {
    List<Block> blocks =
        new BoreLayout(design, bore, setup, found).blocks(milling(bore, feeds(bore)));
    List<Batch> batches = new ArrayList<>();
    batches.add(new Batch(bore.tool(), Batch.Stage.BORE, blocks));
    for (BoreWay.Countersink sink : bore.way().countersink().stream().toList()) {
      Feeds feeds = feeds(sink.tool(), bore);
      batches.add(
          new Batch(sink.tool(), Batch.Stage.BORE, BoreLayout.countersinks(bore, sink, feeds)));
    }
    return batches;
  }

  /** Before the panel is cut free: the waste around it holds it, and the tip runs in that. */
  @Override
  public List<Batch> edge(Work.Edge edge) {
    EdgePlanner planner = new EdgePlanner(design.panel(), edge, setup, tolerances);
    planner.unreached().ifPresent(left -> unreached(edge, left));
    geometryCalls++;
    Feeds feeds =
        Feeds.choose(
            edge.tool(),
            planner.workingMm(),
            setup.stock().material(),
            setup.machine(),
            edge.where());
    found.addAll(feeds.notes());
    return List.of(new Batch(edge.tool(), Batch.Stage.EDGE, planner.blocks(slots(edge, feeds))));
  }

  private void unreached(Work.Edge edge, Leftover left) {
    leftovers.add(left);
    Region area = left.area();
    Point middle = area.largestPart().bounds().centre();
    found.warning(
        PlanCode.NOT_ALL_REACHED,
        edge.where(),
        left.work()
            + ": tool "
            + edge.tool().name()
            + " does not get into "
            + (area.parts().size() == 1
                ? "an inside corner of the edge"
                : area.parts().size() + " inside corners of the edge; the largest is")
            + " at "
            + Amounts.place(middle.x(), middle.y()),
        "its axis keeps "
            + Amounts.length(edge.axisMm())
            + " from the edge; finish these places by hand");
  }

  /** The check before has refused it. */
  @Override
  public List<Batch> torchCut(Work.TorchCut torchCut) {
    throw new IllegalArgumentException("a spindle can't do " + torchCut.operation());
  }
}
