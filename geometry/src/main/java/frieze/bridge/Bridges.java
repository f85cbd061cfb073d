package frieze.bridge;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Ties the islands of a material to the panel.
 *
 * <p>The rule: the island with the shortest way to what is tied already comes next. It gets one
 * bridge there, the shortest, or one along a vein if that is no more than twice as long; of places
 * that are much the same, the one nearest to the island's middle (10 mm nearer is worth 1 mm). It
 * gets a second one if it reaches further from the first than three bridge widths, since it would
 * swing about it; and a second or third one while the push that the bridges stand is less than
 * asked for. A second bridge leaves on the other side: seen from the island's middle at least 90
 * degrees from the first, a third at least 60 degrees from both; where no place is so far round, at
 * the one that is furthest. Bridges end in metal over their whole width.
 *
 * <p><i>Guarantees:</i> each bridge is as wide as the rules say over its whole length; what could
 * not be tied is told; the count of pieces in the result is made by {@link Pieces}, which shares
 * nothing with the search. Deterministic.
 *
 * <p><i>Approximation:</i> places are tried at up to 240 points of each island's edge. How firmly
 * an island holds that another is tied to is not added up.
 */
public final class Bridges {
  private static final int MOST = 3;
  private static final double SECOND_RAD = Math.PI / 2;
  private static final double THIRD_RAD = Math.PI / 3;

  private final BridgeRules rules;
  private final SourceSpan where;
  private final Islands islands;
  private final BridgeFinder finder;
  private final Diagnostics found = new Diagnostics();
  private final List<List<Stroke>> ways = new ArrayList<>();
  private final List<Bridged.Held> held = new ArrayList<>();

  private Bridges(Region material, List<Path> veins, BridgeRules rules, SourceSpan where) {
    this.rules = rules;
    this.where = where;
    this.islands = Islands.of(material);
    this.finder = new BridgeFinder(material, islands, veins, rules);
  }

  /** Ties the islands of a material without veins. */
  public static Bridged tie(Region material, BridgeRules rules) {
    return tie(material, List.of(), rules, SourceSpan.NONE);
  }

  /**
   * Ties the islands of a material.
   *
   * @param material the panel less its openings; its part with the largest bounds is the panel
   * @param veins centre lines that bridges may follow
   * @param where the place in the job to name
   */
  public static Bridged tie(
      Region material, List<Path> veins, BridgeRules rules, SourceSpan where) {
    if (material.parts().size() <= 1) {
      return new Bridged(material, List.of(), Pieces.count(material), List.of());
    }
    Bridges bridges = new Bridges(material, veins, rules, where);
    bridges.tieAll();
    Region tied = material;
    for (Bridged.Held one : bridges.held) {
      for (Bridge bridge : one.bridges()) {
        tied = tied.union(bridge.area());
      }
    }
    return new Bridged(tied, bridges.held, Pieces.count(tied), bridges.found.sorted());
  }

  private record Next(int island, List<Stroke> ways, Bridge first) {}

  private void tieAll() {
    TreeSet<Integer> loose = new TreeSet<>();
    for (int k = 0; k < islands.parts().size(); k++) {
      ways.add(new ArrayList<>());
      if (k > 0 && isLargeEnough(k)) {
        loose.add(k);
      }
    }
    int joined = 0;
    while (!loose.isEmpty()) {
      for (int island : loose) {
        merge(ways.get(island), finder.strokes(island, joined));
      }
      Optional<Next> next = next(loose);
      if (next.isEmpty()) {
        loose.forEach(this::tellNoPlace);
        return;
      }
      hold(next.get());
      joined = next.get().island();
      loose.remove(joined);
    }
  }

  private static void merge(List<Stroke> into, List<Stroke> more) {
    into.addAll(more);
    into.sort(BridgeFinder.CHEAPEST);
  }

  private boolean isLargeEnough(int island) {
    Region part = islands.parts().get(island);
    double least = rules.widthMm() * rules.widthMm();
    if (part.area() >= least) {
      return true;
    }
    Point at = Islands.middle(part);
    found.error(
        BridgeCode.ISLAND_TOO_SMALL,
        where,
        "an island of "
            + Amounts.area(part.area())
            + " at "
            + Amounts.place(at.x(), at.y())
            + " is smaller than a square of the bridge's width, "
            + Amounts.length(rules.widthMm()),
        "make it larger, or leave it out of the drawing");
    return false;
  }

  /** The loose island with the cheapest way that can be bridged. */
  private Optional<Next> next(Set<Integer> loose) {
    Optional<Next> best = Optional.empty();
    double cheapest = Double.POSITIVE_INFINITY;
    for (int island : loose) {
      for (Stroke way : ways.get(island)) {
        if (way.cost() >= cheapest) {
          break;
        }
        Optional<Bridge> bridge = finder.bridge(island, way);
        if (bridge.isPresent()) {
          cheapest = way.cost();
          best = Optional.of(new Next(island, ways.get(island), bridge.get()));
          break;
        }
      }
    }
    return best;
  }

  private void hold(Next next) {
    Region island = islands.parts().get(next.island());
    List<Bridge> bridges = new ArrayList<>(List.of(next.first()));
    while (bridges.size() < MOST && needsMore(island, bridges)) {
      Optional<Bridge> more = another(next, island, bridges);
      if (more.isEmpty()) {
        break;
      }
      bridges.add(more.get());
    }
    double load = Holding.loadN(island, bridges, rules);
    held.add(new Bridged.Held(island, bridges, load));
    if (load < rules.sideLoadN()) {
      tellWeak(island, bridges.size(), load);
    }
  }

  private boolean needsMore(Region island, List<Bridge> bridges) {
    return (bridges.size() == 1 && Holding.hinges(island, bridges.get(0)))
        || Holding.loadN(island, bridges, rules) < rules.sideLoadN();
  }

  private Optional<Bridge> another(Next next, Region island, List<Bridge> bridges) {
    Point middle = Islands.middle(island);
    double wanted = bridges.size() == 1 ? SECOND_RAD : THIRD_RAD;
    List<Stroke> opposite =
        next.ways().stream()
            .filter(w -> apart(middle, w.start(), bridges) >= wanted)
            .sorted(Comparator.comparingDouble(w -> acrossCost(middle, w, bridges)))
            .toList();
    List<Stroke> furthest =
        next.ways().stream()
            .sorted(Comparator.comparingDouble(w -> -apart(middle, w.start(), bridges)))
            .toList();
    return Stream.concat(opposite.stream(), furthest.stream())
        .flatMap(w -> finder.bridge(next.island(), w).stream())
        .filter(b -> isClear(b, bridges))
        .findFirst();
  }

  /** The cost of one more bridge: a quarter turn less than opposite counts as one width. */
  private double acrossCost(Point middle, Stroke way, List<Bridge> bridges) {
    double missing = Math.PI - apart(middle, way.start(), bridges);
    return way.cost() + rules.widthMm() * missing / (Math.PI / 2);
  }

  /** Whether a bridge leaves a bridge's width of gap beside each of the others. */
  private boolean isClear(Bridge bridge, List<Bridge> others) {
    return others.stream()
        .allMatch(
            o ->
                o.atIsland().distance(bridge.atIsland()) > 2 * rules.widthMm()
                    && o.area().intersection(bridge.area()).isEmpty());
  }

  /** The smallest angle between a place and the bridges, seen from the middle. */
  private static double apart(Point middle, Point at, List<Bridge> bridges) {
    double least = Math.PI;
    Point to = at.minus(middle);
    for (Bridge bridge : bridges) {
      Point other = bridge.atIsland().minus(middle);
      least = Math.min(least, Math.abs(StrictMath.atan2(to.cross(other), to.dot(other))));
    }
    return least;
  }

  private void tellWeak(Region island, int count, double load) {
    Point at = Islands.middle(island);
    found.warning(
        BridgeCode.WEAK_HOLD,
        where,
        String.format(
            Locale.ROOT,
            "the island at %s stands a push of %.0f N with %d bridge%s, but %.0f N are asked for",
            Amounts.place(at.x(), at.y()),
            load,
            count,
            count == 1 ? "" : "s",
            rules.sideLoadN()),
        "use wider bridges or thicker sheet");
  }

  private void tellNoPlace(int island) {
    Point at = Islands.middle(islands.parts().get(island));
    found.error(
        BridgeCode.NO_PLACE,
        where,
        "the island at "
            + Amounts.place(at.x(), at.y())
            + " has no place for a bridge of "
            + Amounts.length(rules.widthMm()),
        "make the bridges narrower, or the island or its surroundings wider");
  }
}
