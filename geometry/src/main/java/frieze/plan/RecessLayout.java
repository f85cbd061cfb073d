package frieze.plan;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Intents;
import frieze.design.Motif;
import frieze.design.Selection;
import frieze.design.Work;
import frieze.layout.Placement;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Works out a recess at all placements of its motif: once for each size, and once more for each
 * group of placements that overlap, which become one area.
 */
final class RecessLayout {
  private final Design design;
  private final Work.Recess recess;
  private final Tolerances tolerances;
  private final Motif motif;
  private final Map<Double, Region> areas = new HashMap<>();
  private final Map<Double, RecessGeometry.Result> results = new HashMap<>();
  private int geometryCalls;

  /** What is cut for one placement, or for several that overlap, in the panel frame. */
  record Item(String name, List<RecessGeometry.Chain> chains, Region leftover) {}

  /** A placement, its bounds on the panel, and the number of the group it belongs to. */
  private static final class Placed {
    private final Placement placement;
    private final Bounds bounds;
    private Placed leader = this;

    Placed(Placement placement, Bounds bounds) {
      this.placement = placement;
      this.bounds = bounds;
    }

    Placed leader() {
      return leader == this ? this : leader.leader();
    }
  }

  RecessLayout(Design design, Work.Recess recess, Tolerances tolerances) {
    this.design = design;
    this.recess = recess;
    this.tolerances = tolerances;
    this.motif = design.motif(recess.on().motif());
  }

  int geometryCalls() {
    return geometryCalls;
  }

  /** The items in the order of their first placements. */
  List<Item> items() {
    Map<Placement, List<Placed>> groups = groups();
    List<Item> items = new ArrayList<>();
    for (Placement placement : design.placementsOf(motif.name())) {
      List<Placed> group = groups.getOrDefault(placement, List.of());
      if (group.size() == 1) {
        items.add(alone(placement));
      } else if (group.size() > 1) {
        items.add(together(group));
      }
    }
    return items;
  }

  /** The area at the size of a placement, at the origin. */
  private Region area(double size) {
    return areas.computeIfAbsent(
        size,
        s -> Selection.area(motif, recess.on(), Affine.scaling(s, s), tolerances.flattenMm()));
  }

  /** What is left of a placement when its size is taken out. */
  private static Affine rigid(Placement placement) {
    Affine map = placement.map().affine();
    return Affine.scaling(1 / map.scale(), 1 / map.scale()).then(map);
  }

  private Region placedArea(Placement placement) {
    return area(placement.map().affine().scale()).transformed(rigid(placement));
  }

  private Item alone(Placement placement) {
    RecessGeometry.Result result =
        results.computeIfAbsent(placement.map().affine().scale(), s -> geometry(area(s)));
    Affine rigid = rigid(placement);
    return new Item(
        Intents.name(recess, placement),
        result.chains().stream().map(c -> c.placed(rigid)).toList(),
        result.leftover().transformed(rigid));
  }

  private Item together(List<Placed> group) {
    Region all = Region.EMPTY;
    StringBuilder name = new StringBuilder(recess.operation() + " " + motif.name());
    for (Placed placed : group) {
      all = all.union(placedArea(placed.placement));
      name.append(placed == group.get(0) ? " " : " + ").append(placed.placement.number());
    }
    RecessGeometry.Result result = geometry(all);
    return new Item(name.toString(), result.chains(), result.leftover());
  }

  private RecessGeometry.Result geometry(Region area) {
    geometryCalls++;
    double radius = recess.tool().radiusMm();
    double stepover = Math.min(recess.stepoverMm(), radius);
    OptionalDouble larger =
        sameArea(design, recess)
            .mapToDouble(r -> r.tool().radiusMm())
            .filter(r -> r > radius)
            .min();
    Region todo =
        larger.isPresent() ? RecessGeometry.leftover(area, larger.getAsDouble(), tolerances) : area;
    RecessGeometry.Cutter cutter = new RecessGeometry.Cutter(radius, stepover, recess.milling());
    return RecessGeometry.of(area, todo, cutter, tolerances);
  }

  /** The other recesses of the same area to the same depth: each tool takes what is left. */
  static Stream<Work.Recess> sameArea(Design design, Work.Recess recess) {
    return design.work().stream()
        .filter(Work.Recess.class::isInstance)
        .map(Work.Recess.class::cast)
        .filter(r -> r.on().equals(recess.on()) && r.depthMm() == recess.depthMm());
  }

  /** Groups placements whose areas overlap; each group under the placement that comes first. */
  private Map<Placement, List<Placed>> groups() {
    List<Placed> all = new ArrayList<>();
    for (Placement placement : design.placementsOf(motif.name())) {
      Region area = area(placement.map().affine().scale());
      all.add(new Placed(placement, bounds(area.bounds(), rigid(placement))));
    }
    List<Placed> byX = new ArrayList<>(all);
    byX.sort(Comparator.comparingDouble(p -> p.bounds.minX()));
    for (int i = 0; i < byX.size(); i++) {
      for (int k = i + 1;
          k < byX.size() && byX.get(k).bounds.minX() <= byX.get(i).bounds.maxX();
          k++) {
        joinIfOverlapping(byX.get(i), byX.get(k));
      }
    }
    Map<Placed, List<Placed>> byLeader = new HashMap<>();
    for (Placed placed : all) {
      byLeader.computeIfAbsent(placed.leader(), l -> new ArrayList<>()).add(placed);
    }
    Map<Placement, List<Placed>> groups = new HashMap<>();
    byLeader.values().forEach(group -> groups.put(group.get(0).placement, group));
    return groups;
  }

  private void joinIfOverlapping(Placed a, Placed b) {
    boolean near = a.bounds.minY() <= b.bounds.maxY() && b.bounds.minY() <= a.bounds.maxY();
    if (near
        && a.leader() != b.leader()
        && !placedArea(a.placement).intersection(placedArea(b.placement)).isEmpty()) {
      b.leader().leader = a.leader();
    }
  }

  /** The bounds of a turned and moved rectangle: never too small. */
  private static Bounds bounds(Bounds b, Affine map) {
    return Bounds.of(map.apply(new Point(b.minX(), b.minY())))
        .with(map.apply(new Point(b.maxX(), b.minY())))
        .with(map.apply(new Point(b.minX(), b.maxY())))
        .with(map.apply(new Point(b.maxX(), b.maxY())));
  }
}
