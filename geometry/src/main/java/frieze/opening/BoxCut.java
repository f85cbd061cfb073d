package frieze.opening;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.curve.SegmentPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Cuts a convex box out of an outline's edge.
 *
 * <p><em>Guarantees:</em> what is left of lines and arcs lies on them, and the cut runs along the
 * box; an outline that the box does not touch stays as it is.
 */
final class BoxCut {
  /** Pieces and sides that are shorter are left out: a nanometre. */
  private static final double NOTHING_MM = 1e-6;

  private final List<Point> box;

  private BoxCut(List<Point> box) {
    this.box = List.copyOf(box);
  }

  /** A stretch of the outline on one side of the box's border. */
  private record Stretch(Segment segment, boolean kept) {}

  /**
   * Cuts.
   *
   * @param outline closed and counter-clockwise, of lines and arcs
   * @param box convex and counter-clockwise
   * @return empty if the outline would fall apart, or nothing would be left of it
   */
  static Optional<Path> of(Path outline, List<Point> box) {
    BoxCut cut = new BoxCut(box);
    List<Stretch> all = new ArrayList<>();
    outline.segments().forEach(s -> all.addAll(cut.stretches(s)));
    if (all.stream().allMatch(Stretch::kept)) {
      return Optional.of(outline);
    }
    List<Integer> starts = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).kept() && !all.get(Math.floorMod(i - 1, all.size())).kept()) {
        starts.add(i);
      }
    }
    return starts.size() == 1 ? Optional.of(cut.around(all, starts.get(0))) : Optional.empty();
  }

  /** What is kept from a place on, and then the way back along the box. */
  private Path around(List<Stretch> all, int start) {
    List<Segment> path = new ArrayList<>();
    for (int i = start; all.get(i % all.size()).kept(); i++) {
      path.add(all.get(i % all.size()).segment());
    }
    Point at = path.get(path.size() - 1).end();
    Point home = path.get(0).start();
    int last = sideOf(home);
    for (int side = sideOf(at); side != last; side = Math.floorMod(side - 1, box.size())) {
      at = along(path, at, box.get(side));
    }
    if (!at.equals(home)) {
      path.add(new Line(at, home));
    }
    return new Path(path, true);
  }

  private static Point along(List<Segment> path, Point from, Point to) {
    if (from.distance(to) <= NOTHING_MM) {
      return from;
    }
    path.add(new Line(from, to));
    return to;
  }

  /** The side of the box that a point lies on: the nearest. */
  private int sideOf(Point p) {
    int nearest = 0;
    for (int i = 1; i < box.size(); i++) {
      if (side(i).distance(p) < side(nearest).distance(p)) {
        nearest = i;
      }
    }
    return nearest;
  }

  private Line side(int i) {
    return new Line(box.get(i), box.get((i + 1) % box.size()));
  }

  private List<Stretch> stretches(Segment whole) {
    TreeSet<Double> at = new TreeSet<>(List.of(0.0, 1.0));
    for (int i = 0; i < box.size(); i++) {
      crossings(whole, side(i)).stream().filter(t -> t > 0 && t < 1).forEach(at::add);
    }
    List<Stretch> stretches = new ArrayList<>();
    double from = 0;
    List<Double> ends = List.copyOf(at.tailSet(0.0, false));
    for (int i = 0; i < ends.size(); i++) {
      double to = ends.get(i);
      boolean kept = !holds(whole.at((from + to) / 2));
      boolean goesOn = i + 1 < ends.size() && kept == !holds(whole.at((to + ends.get(i + 1)) / 2));
      if (!goesOn) {
        stretches.add(new Stretch(SegmentPart.between(whole, from, to), kept));
        from = to;
      }
    }
    return stretches;
  }

  private boolean holds(Point p) {
    for (int i = 0; i < box.size(); i++) {
      Line side = side(i);
      if (side.end().minus(side.start()).cross(p.minus(side.start())) <= 0) {
        return false;
      }
    }
    return true;
  }

  /** Where a piece of the outline crosses the straight line through a side of the box. */
  private static List<Double> crossings(Segment piece, Line side) {
    Point d = side.end().minus(side.start());
    if (piece instanceof Arc arc) {
      double off = d.cross(arc.centre().minus(side.start())) / (arc.radius() * d.norm());
      if (Math.abs(off) >= 1) {
        return List.of();
      }
      double lift = StrictMath.asin(-off);
      return List.of(share(arc, d.angleRad() + lift), share(arc, d.angleRad() + Math.PI - lift));
    }
    double first = d.cross(piece.start().minus(side.start()));
    double last = d.cross(piece.end().minus(side.start()));
    return first == last ? List.of() : List.of(first / (first - last));
  }

  /** Where on an arc a direction from its centre lies. */
  private static double share(Arc arc, double angleRad) {
    double turn = 2 * Math.PI;
    double ahead = (angleRad - arc.startAngleRad()) * Math.signum(arc.sweepRad());
    return (ahead - turn * Math.floor(ahead / turn)) / Math.abs(arc.sweepRad());
  }
}
