package frieze.plan;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.motion.Box;
import frieze.plan.cut.Batch;
import frieze.plan.cut.Block;
import frieze.plan.cut.Cut;
import frieze.plan.order.CutOrder;
import frieze.shop.Setup;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * Puts all cuts of a panel in order.
 *
 * <p><i>Guarantees</i>
 *
 * <ul>
 *   <li>Where two batches meet, recesses come before grooves and grooves before holes, and the
 *       larger tool before the smaller one; batches of one line of work keep their order.
 *   <li>A cutout comes after all else, so that no part is freed while it has cuts to come.
 *   <li>As few tools are loaded as that allows.
 *   <li>The cuts of a block stay together and in order.
 * </ul>
 */
final class BatchOrder {
  private final List<Batch> batches;
  private final Home home;
  private final List<BitSet> before = new ArrayList<>();
  private final List<Cut> cuts = new ArrayList<>();

  /**
   * Where the tool is when nothing is cut.
   *
   * @param place the panel's left front corner: near it is where most people set zero, over which
   *     programs begin and end
   * @param again whether it goes back there before another tool is loaded
   */
  record Home(Point place, boolean again) {
    static Home of(Setup setup) {
      return new Home(Point.ORIGIN, !setup.machine().toolChanger());
    }
  }

  private BatchOrder(List<Batch> batches, Home home) {
    this.batches = batches;
    this.home = home;
  }

  /** All cuts of some batches, which are given line by line of the work list. */
  static List<Cut> cuts(List<List<Batch>> lines, Home home) {
    List<Batch> all = new ArrayList<>();
    lines.forEach(all::addAll);
    all.removeIf(b -> b.blocks().isEmpty());
    all.sort(
        Comparator.comparing(Batch::stage)
            .thenComparing(b -> b.stage() == Batch.Stage.RECESS ? -b.tool().diameterMm() : 0));
    BatchOrder order = new BatchOrder(all, home);
    order.findConstraints(lines);
    order.run();
    return order.cuts;
  }

  private void findConstraints(List<List<Batch>> lines) {
    Map<Integer, Footprint> footprints = new HashMap<>();
    IntFunction<Footprint> footprint =
        i -> footprints.computeIfAbsent(i, k -> new Footprint(batches.get(k)));
    for (int b = 0; b < batches.size(); b++) {
      BitSet earlier = new BitSet();
      for (int a = 0; a < b; a++) {
        if (isTied(batches.get(a), batches.get(b), lines)
            || footprint.apply(a).meets(footprint.apply(b))) {
          earlier.set(a);
        }
      }
      before.add(earlier);
    }
  }

  private static boolean isTied(Batch a, Batch b, List<List<Batch>> lines) {
    boolean frees = b.stage() == Batch.Stage.CUTOUT && a.stage() != Batch.Stage.CUTOUT;
    return frees || lines.stream().anyMatch(l -> l.contains(a) && l.contains(b));
  }

  private void run() {
    List<Integer> tools = batches.stream().map(b -> b.tool().number()).toList();
    List<Integer> order = ToolLoads.order(tools, before);
    int from = 0;
    while (from < order.size()) {
      int to = from + 1;
      while (to < order.size() && mayMix(order, from, to)) {
        to++;
      }
      List<Block> blocks = new ArrayList<>();
      order.subList(from, to).forEach(b -> blocks.addAll(batches.get(b).blocks()));
      boolean last = to == order.size() || !toolOf(order.get(to)).equals(toolOf(order.get(from)));
      add(blocks, last && (home.again() || to == order.size()));
      from = to;
    }
  }

  /** Whether a batch has the same tool and speed as those before it, and waits for none of them. */
  private boolean mayMix(List<Integer> order, int from, int next) {
    Batch batch = batches.get(order.get(next));
    for (int i = from; i < next; i++) {
      Batch other = batches.get(order.get(i));
      if (!other.tool().equals(batch.tool())
          || other.rpm() != batch.rpm()
          || before.get(order.get(next)).get(order.get(i))) {
        return false;
      }
    }
    return true;
  }

  private Tool toolOf(int batch) {
    return batches.get(batch).tool();
  }

  private void add(List<Block> blocks, boolean goesHome) {
    List<CutOrder.Stop> stops = blocks.stream().map(b -> new CutOrder.Stop(b.ends())).toList();
    Point at = startOf(blocks.get(0).cuts().apply(0).get(0).tool());
    CutOrder.Ends ends =
        new CutOrder.Ends(at, goesHome ? Optional.of(home.place()) : Optional.empty());
    for (CutOrder.Visit visit : CutOrder.order(stops, List.of(), ends, stops.size())) {
      cuts.addAll(blocks.get(visit.stop()).cuts().apply(visit.way()));
    }
  }

  private Point startOf(Tool tool) {
    if (cuts.isEmpty()) {
      return home.place();
    }
    Cut last = cuts.get(cuts.size() - 1);
    return home.again() && !last.tool().equals(tool) ? home.place() : last.end().xy();
  }

  /** Where a batch cuts: boxes of its moves, grown by the tool. */
  private static final class Footprint {
    private final List<List<Bounds>> blocks = new ArrayList<>();
    private final List<Bounds> outer = new ArrayList<>();

    Footprint(Batch batch) {
      for (Block block : batch.blocks()) {
        List<Bounds> boxes = new ArrayList<>();
        Bounds all = Bounds.EMPTY;
        for (Cut cut : block.cuts().apply(0)) {
          for (Cut.Move move : cut.moves()) {
            Box box = move.path().box();
            double grow = widestMm(cut.tool().shape(), -box.minZ());
            Bounds here = new Bounds(box.minX(), box.minY(), box.maxX(), box.maxY()).grown(grow);
            boxes.add(here);
            all =
                all.with(new Point(here.minX(), here.minY()))
                    .with(new Point(here.maxX(), here.maxY()));
          }
        }
        blocks.add(boxes);
        outer.add(all);
      }
    }

    /** The radius of a tool where it enters the stock's top, to a hundredth of its radius. */
    private static double widestMm(ToolShape shape, double depthMm) {
      double radius = shape.diameterMm() / 2;
      int parts = 100;
      for (int i = 1; i < parts; i++) {
        if (shape.heightAtMm(radius * i / parts) > depthMm) {
          return radius * i / parts;
        }
      }
      return radius;
    }

    boolean meets(Footprint other) {
      for (int i = 0; i < blocks.size(); i++) {
        for (int k = 0; k < other.blocks.size(); k++) {
          if (outer.get(i).overlaps(other.outer.get(k))
              && anyOverlap(blocks.get(i), other.blocks.get(k))) {
            return true;
          }
        }
      }
      return false;
    }

    private static boolean anyOverlap(List<Bounds> a, List<Bounds> b) {
      return a.stream().anyMatch(p -> b.stream().anyMatch(p::overlaps));
    }
  }
}
