package frieze.trace;

import frieze.artwork.Piece;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.FillRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Puts holes together with the outline around them. */
final class Nesting {
  private Nesting() {}

  /** One piece for each outer outline, largest first, named outline-1, outline-2 ... */
  static List<Piece> pieces(List<Path> paths, double toleranceMm) {
    List<Ring> rings = new ArrayList<>();
    for (Path path : paths) {
      List<Point> points = Flattener.flatten(path, toleranceMm);
      rings.add(new Ring(path, points, area(points), new ArrayList<>()));
    }
    List<Ring> outer =
        rings.stream()
            .filter(r -> r.area > 0)
            .sorted((a, b) -> Double.compare(b.area, a.area))
            .toList();
    rings.stream().filter(r -> r.area < 0).forEach(hole -> assign(hole, outer));
    List<Piece> pieces = new ArrayList<>();
    for (Ring ring : outer) {
      List<Path> all = new ArrayList<>();
      all.add(ring.path);
      all.addAll(ring.holes);
      pieces.add(
          new Piece(
              "outline-" + (pieces.size() + 1),
              List.of("traced"),
              all,
              Optional.of(FillRule.EVEN_ODD),
              OptionalDouble.empty()));
    }
    return pieces;
  }

  private record Ring(Path path, List<Point> points, double area, List<Path> holes) {}

  /** The smallest outline around a hole; outlines are sorted from the largest. */
  private static void assign(Ring hole, List<Ring> outer) {
    for (int i = outer.size() - 1; i >= 0; i--) {
      if (outer.get(i).area > -hole.area && inside(hole.points.get(0), outer.get(i).points)) {
        outer.get(i).holes.add(hole.path);
        return;
      }
    }
  }

  static double area(List<Point> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return twice / 2;
  }

  private static boolean inside(Point p, List<Point> ring) {
    boolean odd = false;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        odd = !odd;
      }
    }
    return odd;
  }
}
