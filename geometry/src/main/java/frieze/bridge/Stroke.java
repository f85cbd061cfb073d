package frieze.bridge;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A line across a gap, from an island to what holds it, before it becomes a bridge.
 *
 * <p>A vein is taken where it leads, however far from the island's middle.
 *
 * @param asideMm how far its start lies from the island's middle
 */
record Stroke(List<Point> line, int hold, boolean alongVein, double asideMm) {
  /** A bridge along a vein may be this much longer than the shortest. */
  private static final double VEIN_FAVOUR = 0.5;

  /** What a start further from the island's middle costs. */
  private static final double ASIDE = 0.1;

  private static final double CHORD_MM = 0.01;

  /** How far a bend of 60 degrees reaches out, in half widths; sharper ones are rounded. */
  private static final double MOST_MITRE = 1.155;

  Point start() {
    return line.get(0);
  }

  Point end() {
    return line.get(line.size() - 1);
  }

  double cost() {
    double sum = 0;
    for (int i = 1; i < line.size(); i++) {
      sum += line.get(i - 1).distance(line.get(i));
    }
    return alongVein ? sum * VEIN_FAVOUR : sum + ASIDE * asideMm;
  }

  /** The direction in which the line leaves its start, outward, of length 1. */
  static Point unit(Point from, Point to) {
    Point d = to.minus(from);
    return d.times(1 / d.norm());
  }

  /** The direction beyond the start. */
  Point beforeStart() {
    return unit(line.get(1), start());
  }

  /** The direction beyond the end. */
  Point afterEnd() {
    return unit(line.get(line.size() - 2), end());
  }

  /** The strip of a width around the line, going on straight by some distances. */
  Region strip(double widthMm, double beforeMm, double afterMm) {
    List<Point> all = new ArrayList<>(line);
    all.set(0, start().plus(beforeStart().times(beforeMm)));
    all.set(all.size() - 1, end().plus(afterEnd().times(afterMm)));
    List<Point> left = new ArrayList<>();
    List<Point> right = new ArrayList<>();
    List<Path> pieces = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Point before = unit(all.get(Math.max(0, i - 1)), all.get(Math.max(1, i)));
      Point after =
          unit(all.get(i == all.size() - 1 ? i - 1 : i), all.get(Math.min(all.size() - 1, i + 1)));
      Point along = unit(Point.ORIGIN, before.plus(after));
      double mitre = Math.min(MOST_MITRE, 1 / along.dot(before));
      Point aside = new Point(-along.y(), along.x()).times(widthMm / 2 * mitre);
      left.add(all.get(i).plus(aside));
      right.add(all.get(i).minus(aside));
      if (1 / along.dot(before) > MOST_MITRE) {
        pieces.add(Path.circle(all.get(i), widthMm / 2));
      }
    }
    Collections.reverse(left);
    right.addAll(left);
    pieces.add(0, Path.polyline(right, true));
    return Region.of(pieces, FillRule.NONZERO, CHORD_MM);
  }
}
