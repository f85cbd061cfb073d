package frieze.bridge;

import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.BoundaryDistance;
import frieze.region.Offset;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds where bridges between the parts of a material could lie. */
final class BridgeFinder {
  private static final double VEIN_STEP_MM = 0.25;
  private static final double VEIN_CHORD_MM = 0.02;

  /** An island's edge is tried at this many places, but no closer than {@link #CLOSEST_MM}. */
  private static final int PLACES = 240;

  private static final double CLOSEST_MM = 0.25;

  /** How deep a strip may have to go into metal, in widths, until all of its end is in it. */
  private static final double DEEPEST = 1.0;

  private static final double DEEPER = 0.125;
  private static final double OVERLAP_MM = 0.2;
  private static final double TOLERANCE_MM = 0.01;

  /** The sides of a strip are looked at a little inside. */
  private static final double INSIDE = 0.499;

  static final Comparator<Stroke> CHEAPEST =
      Comparator.comparingDouble((Stroke s) -> s.cost())
          .thenComparingDouble(s -> s.start().x())
          .thenComparingDouble(s -> s.start().y());

  private final List<Region> parts;
  private final BridgeRules rules;
  private final Region material;
  private final List<Region.Locator> locators;
  private final List<BoundaryDistance> distances;
  private final List<Point> middles;
  private final List<List<Stroke>> fromVeins = new ArrayList<>();

  BridgeFinder(Region material, Islands islands, List<Path> veins, BridgeRules rules) {
    this.material = material;
    this.parts = islands.parts();
    this.rules = rules;
    this.locators = parts.stream().map(Region::locator).toList();
    this.middles = parts.stream().map(Islands::middle).toList();
    this.distances = parts.stream().map(BoundaryDistance::of).toList();
    parts.forEach(p -> fromVeins.add(new ArrayList<>()));
    veins.forEach(this::addVein);
  }

  /** All lines from one part to another, cheapest first. */
  List<Stroke> strokes(int island, int hold) {
    List<Stroke> found = new ArrayList<>();
    for (Stroke s : fromVeins.get(island)) {
      if (s.hold() == hold) {
        found.add(s);
      }
    }
    Region from = parts.get(island);
    double step = Math.max(CLOSEST_MM, from.perimeter() / PLACES);
    for (Point at : Islands.edge(from, step)) {
      Point foot = distances.get(hold).nearest(at).foot();
      if (at.distance(foot) > Pieces.CONTACT_MM) {
        found.add(new Stroke(List.of(at, foot), hold, false, at.distance(middles.get(island))));
      }
    }
    found.sort(CHEAPEST);
    return found;
  }

  /** Follows a vein, drawn on at both ends, and keeps where it leads from part to part. */
  private void addVein(Path vein) {
    List<Point> points = walk(vein);
    int last = -1;
    List<Point> gap = new ArrayList<>();
    for (Point p : points) {
      int part = partAt(p);
      if (part < 0) {
        gap.add(p);
        continue;
      }
      if (last >= 0 && part != last && gap.size() > 1) {
        fromVeins.get(last).add(vein(gap, last, part));
        List<Point> back = new ArrayList<>(gap);
        Collections.reverse(back);
        fromVeins.get(part).add(vein(back, part, last));
      }
      last = part;
      gap.clear();
    }
  }

  private Stroke vein(List<Point> gap, int island, int hold) {
    return new Stroke(straightened(gap), hold, true, gap.get(0).distance(middles.get(island)));
  }

  /** The same line with fewer points: those that lie on the chord of what is left out. */
  private static List<Point> straightened(List<Point> line) {
    List<Point> kept = new ArrayList<>(List.of(line.get(0)));
    int from = 0;
    for (int to = 2; to < line.size(); to++) {
      Point chord = line.get(to).minus(line.get(from));
      boolean straight = true;
      for (int k = from + 1; k < to; k++) {
        double off = chord.cross(line.get(k).minus(line.get(from))) / chord.norm();
        straight &= Math.abs(off) <= VEIN_CHORD_MM;
      }
      if (!straight) {
        from = to - 1;
        kept.add(line.get(from));
      }
    }
    kept.add(line.get(line.size() - 1));
    return kept;
  }

  private List<Point> walk(Path vein) {
    List<Point> corners = new ArrayList<>(Flattener.flatten(vein, VEIN_CHORD_MM));
    if (!vein.closed() && rules.veinReachMm() > 0) {
      int n = corners.size();
      Point before = Stroke.unit(corners.get(1), corners.get(0)).times(rules.veinReachMm());
      Point after = Stroke.unit(corners.get(n - 2), corners.get(n - 1)).times(rules.veinReachMm());
      corners.add(corners.get(n - 1).plus(after));
      corners.add(0, corners.get(0).plus(before));
    }
    List<Point> points = new ArrayList<>();
    for (int i = 1; i < corners.size(); i++) {
      Point a = corners.get(i - 1);
      Point b = corners.get(i);
      int steps = Math.max(1, (int) Math.ceil(a.distance(b) / VEIN_STEP_MM));
      for (int k = 0; k < steps; k++) {
        points.add(a.towards(b, (double) k / steps));
      }
    }
    points.add(corners.get(corners.size() - 1));
    return points;
  }

  private int partAt(Point p) {
    for (int k = 0; k < locators.size(); k++) {
      if (locators.get(k).contains(p)) {
        return k;
      }
    }
    return -1;
  }

  /** Makes a bridge of a line, if all of its width ends in metal and it crosses nothing else. */
  Optional<Bridge> bridge(int island, Stroke stroke) {
    OptionalDouble before = depth(stroke.start(), stroke.beforeStart(), island);
    OptionalDouble after = depth(stroke.end(), stroke.afterEnd(), stroke.hold());
    if (before.isEmpty() || after.isEmpty() || crossesOthers(island, stroke)) {
      return Optional.empty();
    }
    Region strip = stroke.strip(rules.widthMm(), before.getAsDouble(), after.getAsDouble());
    Region added = strip.minus(material).largestPart();
    if (added.isEmpty()) {
      return Optional.empty();
    }
    Region area = strip.intersection(Offset.offset(added, OVERLAP_MM, TOLERANCE_MM));
    return Optional.of(new Bridge(stroke.line(), rules.widthMm(), area, stroke.alongVein()));
  }

  /** How far a strip must go on until its middle and both sides lie in a part. */
  private OptionalDouble depth(Point end, Point outward, int part) {
    Point aside = new Point(-outward.y(), outward.x()).times(rules.widthMm() * INSIDE);
    Region.Locator in = locators.get(part);
    for (double deep = DEEPER; deep <= DEEPEST; deep += DEEPER) {
      double mm = deep * rules.widthMm();
      Point at = end.plus(outward.times(mm));
      if (in.contains(at) && in.contains(at.plus(aside)) && in.contains(at.minus(aside))) {
        return OptionalDouble.of(mm);
      }
    }
    return OptionalDouble.empty();
  }

  private boolean crossesOthers(int island, Stroke stroke) {
    List<Point> line = stroke.line();
    for (int i = 1; i < line.size(); i++) {
      Point a = line.get(i - 1);
      Point along = Stroke.unit(a, line.get(i));
      Point aside = new Point(-along.y(), along.x()).times(rules.widthMm() * INSIDE);
      int steps = Math.max(1, (int) Math.ceil(a.distance(line.get(i)) / VEIN_STEP_MM));
      for (int k = 0; k <= steps; k++) {
        Point at = a.towards(line.get(i), (double) k / steps);
        if (other(at, island, stroke.hold())
            || other(at.plus(aside), island, stroke.hold())
            || other(at.minus(aside), island, stroke.hold())) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean other(Point at, int island, int hold) {
    for (int k = 0; k < locators.size(); k++) {
      if (k != island
          && k != hold
          && parts.get(k).bounds().contains(at)
          && locators.get(k).contains(at)) {
        return true;
      }
    }
    return false;
  }
}
