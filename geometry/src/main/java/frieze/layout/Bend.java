package frieze.layout;

import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Bends a drawing along its upright axis, about its middle: the axis becomes an arc of its own
 * length, and what lay square to it still does.
 *
 * <p><em>Guarantees:</em> the middle stays; lengths along the axis and square to it stay, and so
 * does the area of what is symmetric about the axis. A bend by the opposite amount is the mirror
 * image of the bent mirror image.
 *
 * <p><em>Approximation:</em> paths become chords, off by at most the given tolerance; the bent hull
 * is no smaller than that of the bent drawing but for {@link #HULL_SAMPLES} chords a side.
 *
 * @param middle of the drawing
 * @param perMm the curvature; above 0 the ends go to the right
 */
public record Bend(Point middle, double perMm) {
  /** Sides of hulls are bent at so many places. */
  private static final int HULL_SAMPLES = 16;

  /** The bend of what is drawn within bounds. */
  public static Bend of(Bounds drawn, double perMm) {
    return new Bend(drawn.centre(), perMm);
  }

  /**
   * Whether a drawing can be bent so: what lies nearest to the arc's centre is not squeezed to less
   * than half.
   */
  static boolean suits(Bounds drawn, double perMm) {
    return Math.abs(perMm) * drawn.width() <= 1;
  }

  /** Where a point of the drawing goes. */
  public Point apply(Point p) {
    if (perMm == 0) {
      return p;
    }
    double across = p.x() - middle.x();
    double angle = perMm * (p.y() - middle.y());
    double half = StrictMath.sin(angle / 2);
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    return new Point(
        middle.x() + 2 * half * half / perMm + across * cos,
        middle.y() + sin / perMm - across * sin);
  }

  /**
   * Bends a path.
   *
   * @param toleranceMm the most by which the chords depart from it
   */
  public Path apply(Path path, double toleranceMm) {
    if (perMm == 0) {
      return path;
    }
    List<Point> drawn = new ArrayList<>(Flattener.flatten(path, toleranceMm / 2));
    if (path.closed() && !drawn.get(0).equals(drawn.get(drawn.size() - 1))) {
      drawn.add(drawn.get(0));
    }
    double longest = Math.sqrt(4 * toleranceMm / Math.abs(perMm));
    return Path.polyline(bent(drawn, longest), path.closed());
  }

  Hull apply(Hull hull) {
    if (perMm == 0) {
      return hull;
    }
    List<Point> sides = new ArrayList<>(hull.points());
    sides.add(sides.get(0));
    Bounds b = hull.bounds();
    return Hull.of(bent(sides, Math.max(b.width(), b.height()) / HULL_SAMPLES));
  }

  private List<Point> bent(List<Point> line, double longestMm) {
    List<Point> result = new ArrayList<>(List.of(apply(line.get(0))));
    for (int i = 1; i < line.size(); i++) {
      Point from = line.get(i - 1);
      Point to = line.get(i);
      int parts = (int) Math.max(1, Math.ceil(from.distance(to) / longestMm));
      for (int k = 1; k < parts; k++) {
        result.add(apply(from.towards(to, (double) k / parts)));
      }
      result.add(apply(to));
    }
    return result;
  }
}
