package frieze.plan.cut;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
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
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Works out areas at all placements of their motif: once for each size, and once more for each
 * group of placements that overlap, which become one area.
 *
 * @param <R> what is worked out of an area
 */
public final class AreaLayout<R> {
  private final Design design;
  private final String operation;
  private final Work.Target on;
  private final Tolerances tolerances;
  private final Motif motif;
  private final Function<Region, R> geometry;
  private final BiFunction<R, Affine, R> placing;
  private final Map<Shape, Region> areas = new HashMap<>();
  private final Map<Shape, R> results = new HashMap<>();
  private boolean mirrorsApart;
  private boolean turnsApart;
  private int geometryCalls;

  /** What comes of one placement, or of several that overlap, in the panel frame. */
  public record Item<R>(String name, R result) {}

  /** What is worked out once: a variant of the motif under a map. */
  private record Shape(int variant, Affine map) {}

  /** A placement, its bounds on the panel, and the group it belongs to. */
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

  /**
   * Prepares a layout.
   *
   * @param operation what names begin with
   * @param on the areas
   * @param geometry makes the result of an area
   * @param placing moves a result; the map keeps lengths but may mirror
   */
  public AreaLayout(
      Design design,
      String operation,
      Work.Target on,
      Tolerances tolerances,
      Function<Region, R> geometry,
      BiFunction<R, Affine, R> placing) {
    this.design = design;
    this.operation = operation;
    this.on = on;
    this.tolerances = tolerances;
    this.motif = design.motif(on.motif());
    this.geometry = geometry;
    this.placing = placing;
  }

  /** Works mirrored placements out on their own, so that no map given to the placing mirrors. */
  public AreaLayout<R> mirrorsApart() {
    mirrorsApart = true;
    return this;
  }

  /**
   * Works turned placements out on their own, once for each direction, so that the maps given to
   * the placing only move.
   */
  public AreaLayout<R> turnsApart() {
    turnsApart = true;
    return this;
  }

  public int geometryCalls() {
    return geometryCalls;
  }

  /** The items in the order of their first placements. */
  public List<Item<R>> items() {
    Map<Placement, List<Placed>> groups = groups();
    List<Item<R>> items = new ArrayList<>();
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

  /** The area in the shape of a placement, at the origin. */
  private Region area(Shape shape) {
    return areas.computeIfAbsent(
        shape,
        s -> Selection.area(motif.variant(s.variant()), on, s.map(), tolerances.flattenMm()));
  }

  private Shape shape(Placement placement) {
    return new Shape(placement.variant(), inShape(placement));
  }

  /** What of a placement's map is done before the area is worked out. */
  private Affine inShape(Placement placement) {
    Affine map = placement.map().affine();
    if (turnsApart) {
      return new Affine(map.a(), map.b(), map.c(), map.d(), 0, 0);
    }
    double size = map.scale();
    return Affine.scaling(size, mirrorsApart && map.isMirroring() ? -size : size);
  }

  /** What is left of a placement's map to be done afterwards. */
  private Affine rigid(Placement placement) {
    Affine map = placement.map().affine();
    return turnsApart
        ? Affine.translation(map.e(), map.f())
        : inShape(placement).inverse().then(map);
  }

  private Region placedArea(Placement placement) {
    return area(shape(placement)).transformed(rigid(placement));
  }

  private Item<R> alone(Placement placement) {
    R result = results.computeIfAbsent(shape(placement), s -> worked(area(s)));
    String name = operation + " " + placement.motif() + " " + placement.number();
    return new Item<>(name, placing.apply(result, rigid(placement)));
  }

  private Item<R> together(List<Placed> group) {
    Region all = Region.EMPTY;
    StringBuilder name = new StringBuilder(operation + " " + motif.name());
    for (Placed placed : group) {
      all = all.union(placedArea(placed.placement));
      name.append(placed == group.get(0) ? " " : " + ").append(placed.placement.number());
    }
    return new Item<>(name.toString(), worked(all));
  }

  private R worked(Region area) {
    geometryCalls++;
    return geometry.apply(area);
  }

  /** Groups placements whose areas overlap; each group under the placement that comes first. */
  private Map<Placement, List<Placed>> groups() {
    List<Placed> all = new ArrayList<>();
    for (Placement placement : design.placementsOf(motif.name())) {
      Region area = area(shape(placement));
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
    Bounds image = Bounds.EMPTY;
    for (Point corner : b.corners()) {
      image = image.with(map.apply(corner));
    }
    return image;
  }
}
