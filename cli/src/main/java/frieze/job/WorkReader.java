package frieze.job;

import frieze.curve.Point;
import frieze.design.BoreWay;
import frieze.design.CutoutWay;
import frieze.design.Fade;
import frieze.design.RecessWay;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.keys.JobCode;
import frieze.keys.Key;
import frieze.keys.Suggestion;
import frieze.keys.Values;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Turns the work list of one panel into {@link Work}. */
final class WorkReader {
  /** The least length of a bridge whose length is left to us; common practice. */
  private static final double LEAST_TAB_MM = 6;

  private final Shop shop;
  private final Stock stock;
  private final Collection<String> placed;
  private final Collection<String> drawn;
  private final Diagnostics found;

  /**
   * @param placed the drawings that are placed on the panel
   * @param drawn the drawings of the job
   */
  WorkReader(
      Shop shop,
      Stock stock,
      Collection<String> placed,
      Collection<String> drawn,
      Diagnostics found) {
    this.shop = shop;
    this.stock = stock;
    this.placed = placed;
    this.drawn = drawn;
    this.found = found;
  }

  /** Reads all items; those with an error are left out. */
  List<Work> read(List<Values> items) {
    List<Work> work = new ArrayList<>();
    items.forEach(item -> read(item).ifPresent(work::add));
    if (work.size() > 1 && work.stream().anyMatch(Work.TorchCut.class::isInstance)) {
      found.error(
          JobCode.ONE_TORCHCUT,
          work.get(1).where(),
          "a torchcut is the only operation of its panel",
          "one torchcut can have several drawings: on: [fern, border]");
    }
    return work;
  }

  private Optional<Work> read(Values item) {
    Optional<Values> groove = item.find(JobKeys.WorkItem.GROOVE);
    if (groove.isPresent()) {
      return groove(groove.get());
    }
    Optional<Values> vgroove = item.find(JobKeys.WorkItem.VGROOVE);
    if (vgroove.isPresent()) {
      return vgroove(vgroove.get());
    }
    Optional<Values> recess = item.find(JobKeys.WorkItem.RECESS);
    if (recess.isPresent()) {
      return recess(recess.get());
    }
    Optional<Values> cutout = item.find(JobKeys.WorkItem.CUTOUT);
    if (cutout.isPresent()) {
      return cutout(cutout.get());
    }
    Optional<Values> torch = item.find(JobKeys.WorkItem.TORCHCUT);
    if (torch.isPresent()) {
      return torch(torch.get());
    }
    Optional<Values> chamfer = item.find(JobKeys.WorkItem.CHAMFER);
    if (chamfer.isPresent()) {
      return tool(chamfer.get()).map(t -> EdgeReader.chamfer(chamfer.get(), t));
    }
    Optional<Values> roundover = item.find(JobKeys.WorkItem.ROUNDOVER);
    if (roundover.isPresent()) {
      return tool(roundover.get()).map(t -> EdgeReader.roundover(roundover.get(), t));
    }
    return bore(item.get(JobKeys.WorkItem.BORE));
  }

  private Optional<Work> torch(Values v) {
    List<String> names = v.find(TorchKeys.ON).orElse(List.of());
    List<Work.Target> on = new ArrayList<>();
    for (String name : names) {
      target(v, name, TorchKeys.ON).ifPresent(on::add);
    }
    Optional<Work> work = new TorchReader(shop, stock, found).read(v, on);
    return on.size() == names.size() ? work : Optional.empty();
  }

  private Optional<Work> groove(Values v) {
    Optional<Work.Target> on = target(v);
    Optional<Tool> tool = tool(v);
    Optional<Double> depth = depth(v, v.find(JobKeys.Operation.DEPTH), JobKeys.Operation.DEPTH);
    if (on.isEmpty() || tool.isEmpty() || depth.isEmpty()) {
      return Optional.empty();
    }
    boolean byWidth = v.get(JobKeys.Operation.BY_WIDTH);
    if (byWidth && v.has(JobKeys.Operation.FADES)) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          v.where(JobKeys.Operation.FADES),
          "a groove \"by width\" takes its depth from the drawing and can't fade as well",
          "leave one of them out; a filled shape that tapers is for vgroove");
      return Optional.empty();
    }
    return fade(v)
        .map(fade -> new Work.Groove(on.get(), tool.get(), depth.get(), fade, byWidth, v.where()));
  }

  /** How a groove runs out, if it does; empty if the keys contradict each other. */
  private Optional<Optional<Fade>> fade(Values v) {
    Optional<Fade.Ends> ends = v.find(JobKeys.Operation.FADES);
    if (ends.isEmpty()) {
      for (Key<?> key : List.of(JobKeys.Operation.FADES_TO, JobKeys.Operation.FADE_OVER)) {
        if (v.has(key)) {
          found.error(
              JobCode.KEYS_EXCLUDE,
              v.where(key),
              "\"" + key.name() + "\" is of no use without \"fades\"",
              "say at which end: start, end or both");
          return Optional.empty();
        }
      }
      return Optional.of(Optional.empty());
    }
    Optional<Double> over = v.find(JobKeys.Operation.FADE_OVER);
    return Optional.of(
        Optional.of(
            new Fade(
                ends.get(),
                v.find(JobKeys.Operation.FADES_TO).orElse(0.0),
                over.map(OptionalDouble::of).orElse(OptionalDouble.empty()))));
  }

  private Optional<Work> vgroove(Values v) {
    Optional<Work.Target> on = target(v);
    Optional<Tool> tool = tool(v);
    Optional<Double> written = v.find(JobKeys.Operation.DEEPEST);
    Optional<Double> deepest = depth(v, written, JobKeys.Operation.DEEPEST);
    Optional<List<Tool>> floor = floorTools(v);
    if (on.isEmpty()
        || tool.isEmpty()
        || floor.isEmpty()
        || deepest.isPresent() != written.isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new Work.VGroove(
            on.get(),
            tool.get(),
            deepest.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            floor.get(),
            v.get(JobKeys.Operation.RIDGES),
            v.get(JobKeys.Operation.LAST_PASS),
            v.get(JobKeys.Operation.CUT),
            v.where()));
  }

  /** The named flat bit, or all that the shop has; empty if there is none of that name. */
  private Optional<List<Tool>> floorTools(Values v) {
    if (v.find(JobKeys.Operation.FLOOR_TOOL).isEmpty()) {
      return Optional.of(flatTools());
    }
    return named(v, v.find(JobKeys.Operation.FLOOR_TOOL).get(), JobKeys.Operation.FLOOR_TOOL)
        .map(List::of);
  }

  private Optional<Work> recess(Values v) {
    Optional<Work.Target> on = target(v);
    Optional<Tool> tool = tool(v);
    Optional<Double> depth = depth(v, v.find(JobKeys.Operation.DEPTH), JobKeys.Operation.DEPTH);
    if (on.isEmpty() || tool.isEmpty() || depth.isEmpty()) {
      return Optional.empty();
    }
    double stepoverMm = v.get(JobKeys.Operation.STEPOVER) * tool.get().diameterMm();
    return Optional.of(
        new Work.Recess(
            on.get(),
            tool.get(),
            depth.get(),
            stepoverMm,
            v.get(JobKeys.Operation.CUT),
            new RecessWay(v.get(JobKeys.Operation.CLEAR), v.get(JobKeys.Operation.LEAVE)),
            v.where()));
  }

  private Optional<Work> cutout(Values v) {
    Optional<Tool> tool = tool(v);
    boolean ofPanel = !v.has(JobKeys.Cutout.ON);
    if (stock.blank() && ofPanel) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          v.where(),
          "the stock is a blank, sawn to size already: there is nothing to cut out",
          "leave out the cutout, or \"blank: yes\" of the stock");
      return Optional.empty();
    }
    Optional<Work.Target> on =
        v.find(JobKeys.Cutout.ON).flatMap(name -> target(v, name, JobKeys.Cutout.ON));
    Optional<Values> hold = v.find(JobKeys.Cutout.HOLD);
    Optional<Double> skin = hold.flatMap(h -> h.find(JobKeys.Hold.SKIN));
    Optional<Tabs> tabs =
        skin.isPresent() ? Optional.empty() : hold.flatMap(h -> tool.flatMap(t -> tabs(h, t)));
    boolean unheld = tool.isPresent() && hold.isPresent() && skin.isEmpty() && tabs.isEmpty();
    if (unheld || (!ofPanel && on.isEmpty())) {
      return Optional.empty();
    }
    Work.Side usual = ofPanel ? Work.Side.OUTSIDE : Work.Side.INSIDE;
    CutoutWay way =
        new CutoutWay(
            on,
            v.find(JobKeys.Cutout.SIDE).orElse(usual),
            v.get(JobKeys.Cutout.LEAVE),
            v.get(JobKeys.Cutout.STEPS),
            skin.orElse(0.0),
            v.get(JobKeys.Cutout.CORNERS));
    return tool.map(t -> new Work.Cutout(t, tabs, v.get(JobKeys.Operation.CUT), way, v.where()));
  }

  /**
   * Without a width a tab is as long as the tool is wide, because a larger one pulls harder, and
   * twice that along the grain, where wood is about half as strong. Source: common practice.
   */
  private Optional<Tabs> tabs(Values v, Tool tool) {
    double thicknessMm = v.get(JobKeys.Hold.THICKNESS);
    if (thicknessMm >= stock.thinnestMm()) {
      found.error(
          JobCode.TOO_DEEP,
          v.where(JobKeys.Hold.THICKNESS),
          "bridges "
              + Amounts.length(thicknessMm)
              + " thick leave nothing to cut of a stock "
              + Amounts.length(stock.thinnestMm())
              + " thick",
          "make them thinner than the stock");
      return Optional.empty();
    }
    double width = v.find(JobKeys.Hold.WIDTH).orElse(Math.max(LEAST_TAB_MM, tool.diameterMm()));
    return Optional.of(
        new Tabs(
            v.get(JobKeys.Hold.TABS),
            width,
            v.find(JobKeys.Hold.WIDTH).orElse(2 * width),
            thicknessMm,
            v.get(JobKeys.Hold.ENDS)));
  }

  private Optional<Work> bore(Values v) {
    Optional<Tool> tool = tool(v);
    Optional<Double> written = v.find(BoreKeys.DEPTH);
    Optional<Double> depth = depth(v, written, BoreKeys.DEPTH);
    if (tool.isEmpty() || (written.isPresent() && depth.isEmpty())) {
      return Optional.empty();
    }
    List<Point> centres =
        v.get(BoreKeys.AT).stream()
            .map(p -> new Point(p.get(JobKeys.Place.X), p.get(JobKeys.Place.Y)))
            .toList();
    double diameterMm = v.find(BoreKeys.DIAMETER).orElse(tool.get().diameterMm());
    return boreWay(v, tool.get())
        .map(way -> new Work.Bore(centres, diameterMm, depth, tool.get(), way, v.where()));
  }

  /** What holes have beside; empty if a countersink names no tool of the shop. */
  private Optional<BoreWay> boreWay(Values v, Tool tool) {
    Optional<Values> asked = v.find(BoreKeys.COUNTERSINK);
    Optional<BoreWay.Countersink> sink = asked.flatMap(this::countersink);
    if (asked.isPresent() && sink.isEmpty()) {
      return Optional.empty();
    }
    Optional<BoreWay.Slot> slot =
        v.find(BoreKeys.SLOT)
            .map(
                s -> new BoreWay.Slot(s.get(BoreKeys.Slot.LENGTH), s.get(BoreKeys.Slot.DIRECTION)));
    return Optional.of(new BoreWay(sink, slot, mills(tool), Optional.empty()));
  }

  /** The straight bits that may stand in for a tool: for a drill, all of the shop. */
  List<Tool> mills(Tool tool) {
    return tool.shape() instanceof ToolShape.Drill ? flatTools() : List.of();
  }

  /** The tool that a key names; empty after an error. */
  Optional<Tool> tool(Values v, Key<String> key) {
    return named(v, v.get(key), key);
  }

  private Optional<BoreWay.Countersink> countersink(Values v) {
    return named(v, v.get(BoreKeys.Countersink.TOOL), BoreKeys.Countersink.TOOL)
        .map(
            tool ->
                new BoreWay.Countersink(
                    v.get(BoreKeys.Countersink.DIAMETER), v.get(BoreKeys.Countersink.ANGLE), tool));
  }

  private List<Tool> flatTools() {
    return shop.tools().stream().filter(t -> t.shape() instanceof ToolShape.Flat).toList();
  }

  private Optional<Work.Target> target(Values v) {
    return target(v, v.get(JobKeys.Operation.ON), JobKeys.Operation.ON);
  }

  private Optional<Work.Target> target(Values v, String on, Key<?> key) {
    if (placed.contains(on)) {
      return Optional.of(new Work.Target(on, v.find(JobKeys.Operation.PICK)));
    }
    SourceSpan where = v.where(key);
    if (drawn.contains(on)) {
      found.error(
          JobCode.NOT_PLACED,
          where,
          "the drawing \"" + on + "\" is not placed on this panel",
          "add it to the panel's design: - place: " + on);
    } else {
      found.error(
          JobCode.NO_SUCH_ARTWORK,
          where,
          "no drawing named \"" + on + "\" in this job",
          Suggestion.hint(on, Stream.concat(drawn.stream(), placed.stream()).distinct().toList()));
    }
    return Optional.empty();
  }

  private Optional<Tool> tool(Values v) {
    return tool(v, JobKeys.Operation.TOOL);
  }

  private Optional<Tool> named(Values v, String name, Key<String> key) {
    Optional<Tool> tool = shop.tool(name);
    if (tool.isEmpty()) {
      found.error(
          JobCode.NO_SUCH_TOOL,
          v.where(key),
          "no tool named \"" + name + "\" in the shop",
          Suggestion.hint(name, shop.toolNames()));
    }
    return tool;
  }

  private Optional<Double> depth(Values v, Optional<Double> depth, Key<Double> key) {
    if (depth.isEmpty() || depth.get() < stock.thinnestMm()) {
      return depth;
    }
    found.error(
        JobCode.TOO_DEEP,
        v.where(key),
        "a depth of "
            + Amounts.length(depth.get())
            + " goes through the stock, which is "
            + Amounts.length(stock.thinnestMm())
            + " thick where it is thinnest",
        "make it less than the stock's thickness");
    return Optional.empty();
  }
}
