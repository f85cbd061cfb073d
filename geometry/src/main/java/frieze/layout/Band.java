package frieze.layout;

import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;

/**
 * What is left of a panel's outline within an inset.
 *
 * <p><em>Approximation:</em> round sides are taken as chords, 5 µm off at most.
 */
final class Band {
  private static final double FLATTEN_MM = 0.005;

  /** Lengths that differ by less are taken as equal: a hundredth of a micrometre. */
  private static final double EQUAL_MM = 1e-5;

  private static final double ROUNDING_MM = 1e-9;

  private final List<Point> ring;

  /** The panel's bounds less the inset. */
  private final Bounds bounds;

  private final double insetMm;

  /** Lines that no motif crosses, each as its corners. */
  private final List<List<Point>> fences;

  /** How a motif may come to lie inside. */
  private final String hint;

  private Band(
      List<Point> ring, Bounds bounds, double insetMm, List<List<Point>> fences, String hint) {
    this.ring = ring;
    this.bounds = bounds;
    this.insetMm = insetMm;
    this.fences = fences;
    this.hint = hint;
  }

  static Band of(Panel panel, double insetMm) {
    return of(new Ground(panel, insetMm));
  }

  static Band of(Ground ground) {
    Panel panel = ground.panel();
    return new Band(
        Flattener.flatten(panel.outline(), FLATTEN_MM),
        panel.outline().bounds().grown(-ground.insetMm()),
        ground.insetMm(),
        ground.fences().stream().map(Band::chords).toList(),
        panel.notches().isEmpty()
            ? "make the motif or the inset smaller"
            : "say under `avoid` whether motifs that meet a notch are shifted or left out");
  }

  /**
   * Requires that motifs lie inside.
   *
   * @param motif the hull of the drawing
   * @param where the place in the job, for the diagnostics
   * @throws BadInputException if one does not, with its number and place
   */
  void requireHeld(List<Placement> placed, Hull motif, SourceSpan where) {
    String fault =
        insetMm == 0
            ? " reaches beyond the panel"
            : " comes nearer to the panel's outline than the inset of " + Amounts.length(insetMm);
    OutOfPlace.refuse(placed, motif, this::holds, where, fault, hint);
  }

  /** The corners of a line, the first one again at the end of a closed one. */
  static List<Point> chords(Path line) {
    List<Point> points = new ArrayList<>(Flattener.flatten(line, FLATTEN_MM));
    if (line.closed()) {
      points.add(points.get(0));
    }
    return points;
  }

  /** Whether a motif that is moved stays inside, or goes no farther out than it was. */
  boolean keeps(Hull before, Hull now) {
    return bounds.with(before.bounds()).grown(ROUNDING_MM).contains(now.bounds())
        && (holds(now) || !holds(before));
  }

  /** Whether a hull lies inside, nowhere nearer to the outline than the inset. */
  boolean holds(Hull hull) {
    Bounds b = hull.bounds();
    if (!bounds.grown(EQUAL_MM).contains(b)) {
      return false;
    }
    for (int i = 0; i < ring.size(); i++) {
      if (!isClear(hull, ring.get(i), ring.get((i + 1) % ring.size()), insetMm)) {
        return false;
      }
    }
    return fences.stream().allMatch(fence -> isClear(hull, fence, insetMm))
        && hull.points().stream().allMatch(this::isInside);
  }

  /** Whether a hull keeps a distance from a line and is not crossed by it. */
  static boolean isClear(Hull hull, List<Point> line, double insetMm) {
    for (int i = 1; i < line.size(); i++) {
      if (!isClear(hull, line.get(i - 1), line.get(i), insetMm)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isClear(Hull hull, Point from, Point to, double insetMm) {
    Bounds near = hull.bounds().grown(insetMm + EQUAL_MM);
    return !Bounds.of(from).with(to).touches(near)
        || (!hull.isCutBy(from, to, EQUAL_MM)
            && hull.distance(Hull.of(List.of(from, to))) >= insetMm - EQUAL_MM);
  }

  /** Whether a point lies inside, or on the outline. */
  private boolean isInside(Point p) {
    boolean inside = false;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      if (new Line(a, b).distance(p) <= EQUAL_MM) {
        return true;
      }
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        inside = !inside;
      }
    }
    return inside;
  }
}
