package frieze.plan.bore;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.design.BoreWay;
import frieze.design.Design;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.plan.cut.Block;
import frieze.plan.cut.Cut;
import frieze.plan.cut.DepthPasses;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.PlanCode;
import frieze.plan.order.CutOrder;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Plans the holes of one line of the work list. */
public final class BoreLayout {
  /** Centres this near to each other are one. */
  private static final double SAME_PLACE_MM = 0.01;

  /** Exact quarter turns. */
  private static final List<Affine> QUARTERS =
      List.of(
          Affine.IDENTITY,
          new Affine(0, -1, 1, 0, 0, 0),
          new Affine(-1, 0, 0, -1, 0, 0),
          new Affine(0, 1, -1, 0, 0, 0));

  private final Design design;
  private final Work.Bore bore;
  private final Setup setup;
  private final Diagnostics found;

  public BoreLayout(Design design, Work.Bore bore, Setup setup, Diagnostics found) {
    this.design = design;
    this.bore = bore;
    this.setup = setup;
    this.found = found;
  }

  /** The cuts of each hole. */
  public List<Block> blocks(Feeds feeds) {
    double through = setup.stock().thickestMm() + setup.spoilboardMm();
    double limit = DepthPasses.limitMm(bore.tool(), setup.stock().material());
    boolean fits = BorePlanner.drills(bore.tool(), bore.diameterMm());
    boolean slot = bore.way().slot().isPresent();
    boolean drills = fits && !slot;
    double point = BorePlanner.pointMm(bore.tool());
    if (drills && bore.depthMm().isEmpty() && point > setup.spoilboardMm()) {
      notFull(point - setup.spoilboardMm());
    }
    List<Block> blocks = new ArrayList<>();
    int number = 0;
    for (Point centre : bore.centres()) {
      number++;
      String origin = "bore " + number;
      if (drills) {
        double depth = bore.depthMm().map(d -> d + point).orElse(through);
        blocks.add(Block.of(List.of(BorePlanner.drill(origin, centre, depth, bore.tool(), feeds))));
      } else if (fits) {
        List<Double> depths = DepthPasses.depths(bore.depthMm().orElse(through), limit);
        BorePlanner.Place place = new BorePlanner.Place(origin, centre, 0);
        blocks.add(Block.of(List.of(BorePlanner.slot(place, bore, depths, feeds))));
      } else {
        double depth = bore.depthMm().orElse(through);
        double done = doneMm(centre, depth);
        if (done < depth) {
          BorePlanner.Place place = new BorePlanner.Place(origin, centre, done);
          blocks.add(milled(BorePlanner.mill(place, bore, depth, feeds, limit), centre));
        }
      }
    }
    return blocks;
  }

  /** A round hole may be entered from four sides. */
  private Block milled(Cut cut, Point centre) {
    if (bore.way().slot().isPresent()) {
      return Block.of(List.of(cut));
    }
    List<CutOrder.Way> ends = new ArrayList<>();
    for (Affine turn : QUARTERS) {
      Affine about = about(turn, centre);
      Point from = about.apply(cut.start().xy());
      ends.add(new CutOrder.Way(from, about.apply(cut.end().xy())));
    }
    return new Block(ends, k -> List.of(cut.moved(cut.origin(), about(QUARTERS.get(k), centre))));
  }

  private static Affine about(Affine turn, Point centre) {
    return Affine.translation(-centre.x(), -centre.y())
        .then(turn)
        .then(Affine.translation(centre.x(), centre.y()));
  }

  /** The countersinks of the holes: one plunge each. */
  public static List<Block> countersinks(Work.Bore bore, BoreWay.Countersink sink, Feeds feeds) {
    List<Block> blocks = new ArrayList<>();
    for (Point centre : bore.centres()) {
      String origin = "countersink " + (blocks.size() + 1);
      blocks.add(
          Block.of(List.of(BorePlanner.drill(origin, centre, sink.depthMm(), sink.tool(), feeds))));
    }
    return blocks;
  }

  /** How deep an earlier hole at a place is, at least as wide as this one. */
  private double doneMm(Point centre, double depthMm) {
    return earlier(design, bore)
        .filter(b -> b.centres().stream().anyMatch(c -> c.distance(centre) < SAME_PLACE_MM))
        .mapToDouble(b -> b.depthMm().orElse(depthMm))
        .max()
        .orElse(0);
  }

  /** The bores whose holes are wider, or as wide and less deep: they are made before this one. */
  static Stream<Work.Bore> earlier(Design design, Work.Bore bore) {
    return design.work().stream()
        .filter(Work.Bore.class::isInstance)
        .map(Work.Bore.class::cast)
        .filter(b -> comesBefore(b, bore) && sharesPlace(b, bore));
  }

  /** The work list with its bores put behind those that come before them. */
  public static List<Work> inOrder(List<Work> work) {
    List<Work> ordered = new ArrayList<>();
    List<Work.Bore> bores = new ArrayList<>();
    for (Work item : work) {
      if (item instanceof Work.Bore bore) {
        bores.add(bore);
      } else {
        ordered.add(item);
      }
    }
    bores.sort(
        Comparator.comparingDouble((Work.Bore b) -> -b.diameterMm())
            .thenComparingDouble(b -> depth(b.depthMm())));
    ordered.addAll(bores);
    return ordered;
  }

  private static boolean comesBefore(Work.Bore a, Work.Bore b) {
    if (a.diameterMm() != b.diameterMm()) {
      return a.diameterMm() > b.diameterMm();
    }
    return depth(a.depthMm()) < depth(b.depthMm());
  }

  private static double depth(Optional<Double> depthMm) {
    return depthMm.orElse(Double.POSITIVE_INFINITY);
  }

  private static boolean sharesPlace(Work.Bore a, Work.Bore b) {
    if (a.way().slot().isPresent() || b.way().slot().isPresent()) {
      return false;
    }
    return a.centres().stream()
        .anyMatch(p -> b.centres().stream().anyMatch(q -> p.distance(q) < SAME_PLACE_MM));
  }

  private void notFull(double shortMm) {
    found.warning(
        PlanCode.NOT_FULL_DIAMETER,
        bore.where(),
        "the point of tool "
            + bore.tool().name()
            + " leaves the lowest "
            + Amounts.length(shortMm)
            + " of the holes narrower",
        "finish them from the back, or allow a deeper cut into the spoilboard");
  }
}
