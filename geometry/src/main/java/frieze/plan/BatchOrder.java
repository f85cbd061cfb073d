package frieze.plan;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.motion.Box;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
  private final List<Planner.Batch> batches;
  private final List<BitSet> before = new ArrayList<>();
  private final List<Cut> cuts = new ArrayList<>();

  private BatchOrder(List<Planner.Batch> batches) {
    this.batches = batches;
  }

  /** All cuts of some batches, which are given line by line of the work list. */
  static List<Cut> cuts(List<List<Planner.Batch>> lines) {
    List<Planner.Batch> all = new ArrayList<>();
    lines.forEach(all::addAll);
    all.removeIf(b -> b.blocks().isEmpty());
    all.sort(
        Comparator.comparing(Planner.Batch::stage)
            .thenComparing(b -> b.stage() == Planner.Stage.RECESS ? -b.tool().diameterMm() : 0));
    BatchOrder order = new BatchOrder(all);
    order.findConstraints(lines);
    order.run();
    return order.cuts;
  }

  private void findConstraints(List<List<Planner.Batch>> lines) {
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

  private static boolean isTied(Planner.Batch a, Planner.Batch b, List<List<Planner.Batch>> lines) {
    boolean frees = b.stage() == Planner.Stage.CUTOUT && a.stage() != Planner.Stage.CUTOUT;
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
      List<List<Cut>> blocks = new ArrayList<>();
      order.subList(from, to).forEach(b -> blocks.addAll(batches.get(b).blocks()));
      add(blocks);
      from = to;
    }
  }

  /** Whether a batch has the same tool and speed as those before it, and waits for none of them. */
  private boolean mayMix(List<Integer> order, int from, int next) {
    Planner.Batch batch = batches.get(order.get(next));
    for (int i = from; i < next; i++) {
      Planner.Batch other = batches.get(order.get(i));
      if (!other.tool().equals(batch.tool())
          || other.rpm() != batch.rpm()
          || before.get(order.get(next)).get(order.get(i))) {
        return false;
      }
    }
    return true;
  }

  private void add(List<List<Cut>> blocks) {
    List<CutOrder.Stop> stops = new ArrayList<>();
    for (List<Cut> block : blocks) {
      Point start = block.get(0).start().xy();
      Point end = block.get(block.size() - 1).end().xy();
      stops.add(new CutOrder.Stop(List.of(new CutOrder.Way(start, end))));
    }
    Point at = cuts.isEmpty() ? new Point(0, 0) : cuts.get(cuts.size() - 1).end().xy();
    for (CutOrder.Visit visit : CutOrder.order(stops, List.of(), at, stops.size())) {
      cuts.addAll(blocks.get(visit.stop()));
    }
  }

  /** Where a batch cuts: boxes of its moves, grown by the tool. */
  private static final class Footprint {
    private final List<List<Bounds>> blocks = new ArrayList<>();
    private final List<Bounds> outer = new ArrayList<>();

    Footprint(Planner.Batch batch) {
      for (List<Cut> block : batch.blocks()) {
        List<Bounds> boxes = new ArrayList<>();
        Bounds all = Bounds.EMPTY;
        for (Cut cut : block) {
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
          if (overlap(outer.get(i), other.outer.get(k))
              && anyOverlap(blocks.get(i), other.blocks.get(k))) {
            return true;
          }
        }
      }
      return false;
    }

    private static boolean anyOverlap(List<Bounds> a, List<Bounds> b) {
      return a.stream().anyMatch(p -> b.stream().anyMatch(q -> overlap(p, q)));
    }

    private static boolean overlap(Bounds a, Bounds b) {
      return a.minX() < b.maxX()
          && b.minX() < a.maxX()
          && a.minY() < b.maxY()
          && b.minY() < a.maxY();
    }
  }
}
