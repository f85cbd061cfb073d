package frieze.template;

import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.Comparator;
import java.util.List;

/** Finds where a short word can stand beside an outline, so that it is not cut off with it. */
final class LabelPlace {
  /** So wide is a capital letter at most, as a part of its size. */
  private static final double WIDEST_LETTER = 0.85;

  private static final double ROOM_MM = 1.2;

  /** So many places are tried, beside each other and below each other. */
  private static final int TRIES = 40;

  /** Points are at the same height if they differ by less. */
  private static final double LEVEL_MM = 0.5;

  private LabelPlace() {}

  /**
   * A place inside: as far up as may be, and there as near to the middle as may be.
   *
   * @return the lower left corner of the word; above the middle if there is no place
   */
  static Point inside(Path outline, String word, double sizeMm) {
    Region region = Region.of(List.of(outline), FillRule.NONZERO, Tolerances.DEFAULT.flattenMm());
    Bounds b = outline.bounds();
    double width = word.length() * WIDEST_LETTER * sizeMm;
    double middle = b.centre().x();
    for (int line = 0; line < TRIES; line++) {
      double y = b.maxY() - ROOM_MM - sizeMm - line * b.height() / TRIES;
      for (int i = 0; i < TRIES; i++) {
        double aside = (i % 2 == 0 ? 1 : -1) * Math.ceil(i / 2.0) * b.width() / TRIES;
        Bounds box = new Bounds(middle + aside, y, middle + aside + width, y + sizeMm);
        if (holds(region, box.grown(ROOM_MM - LEVEL_MM))) {
          return new Point(box.minX(), box.minY());
        }
      }
    }
    return new Point(middle, b.maxY() + ROOM_MM);
  }

  /** A place above the highest place of an outline, the leftmost if it is level. */
  static Point above(Path outline, double gapMm) {
    double top = outline.bounds().maxY();
    double x =
        Flattener.flatten(outline, Tolerances.DEFAULT.flattenMm()).stream()
            .filter(p -> p.y() > top - LEVEL_MM)
            .min(Comparator.comparingDouble(Point::x))
            .orElseThrow()
            .x();
    return new Point(x, top + gapMm);
  }

  /** Whether a box lies in a region that has no holes. */
  private static boolean holds(Region region, Bounds box) {
    Point a = new Point(box.minX(), box.minY());
    Point b = new Point(box.maxX(), box.minY());
    Point c = new Point(box.maxX(), box.maxY());
    Point d = new Point(box.minX(), box.maxY());
    return region.containsSegment(a, b)
        && region.containsSegment(b, c)
        && region.containsSegment(c, d)
        && region.containsSegment(d, a);
  }
}
