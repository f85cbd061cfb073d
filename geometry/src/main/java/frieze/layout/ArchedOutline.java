package frieze.layout;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;

/**
 * The outline of a panel whose upper or lower edge is an arc from corner to corner.
 *
 * @param heightMm of its bounds
 * @param topMm how much higher the middle of the upper edge lies than its ends; 0 for straight
 * @param bottomMm how much higher the middle of the lower edge lies than its ends; 0 for straight
 */
public record ArchedOutline(double widthMm, double heightMm, double topMm, double bottomMm) {
  private static final double STRAIGHT_MM = 1e-6;

  public ArchedOutline {
    if (!(widthMm > 0 && heightMm > 0 && topMm >= 0 && bottomMm >= 0)) {
      throw new IllegalArgumentException(
          "sizes must be > 0 and rises >= 0 mm but were "
              + (widthMm + ", " + heightMm + ", " + topMm + ", " + bottomMm));
    }
  }

  /**
   * Makes the outline, counter-clockwise from the lower left corner, which is the origin.
   *
   * @param where the place in the job, for the diagnostics
   * @throws BadInputException if an arc would be more than half a circle, or nothing is left of the
   *     ends or between the edges
   */
  public Path path(SourceSpan where) {
    double endMm = heightMm - topMm;
    double most = Math.max(topMm, bottomMm);
    if (most > widthMm / 2) {
      throw bad(
          "an arc that rises "
              + Amounts.length(most)
              + " is more than half a circle over a width of "
              + Amounts.length(widthMm),
          where);
    }
    // Between the ends and the middle the height between two arcs only grows, or only shrinks.
    if (Math.min(endMm, heightMm - bottomMm) <= STRAIGHT_MM) {
      throw bad(
          "arcs that rise "
              + Amounts.length(topMm)
              + " and "
              + Amounts.length(bottomMm)
              + " leave nothing of a panel "
              + Amounts.length(heightMm)
              + " high",
          where);
    }
    Point lowerRight = new Point(widthMm, 0);
    Point upperRight = new Point(widthMm, endMm);
    Point upperLeft = new Point(0, endMm);
    List<Segment> sides = new ArrayList<>();
    sides.add(edge(Point.ORIGIN, lowerRight, bottomMm));
    sides.add(new Line(lowerRight, upperRight));
    sides.add(edge(upperRight, upperLeft, topMm));
    sides.add(new Line(upperLeft, Point.ORIGIN));
    return new Path(sides, true);
  }

  /** A level line whose middle lies higher, or lower for a rise below 0: an arc. */
  static Segment edge(Point from, Point to, double riseMm) {
    if (Math.abs(riseMm) < STRAIGHT_MM) {
      return new Line(from, to);
    }
    double half = Math.abs(to.x() - from.x()) / 2;
    double radius = (half * half + riseMm * riseMm) / (2 * riseMm);
    Point centre = new Point((from.x() + to.x()) / 2, from.y() + riseMm - radius);
    double sweep = 4 * StrictMath.atan2(riseMm, half);
    return new Arc(from, to, centre, to.x() > from.x() ? -sweep : sweep);
  }

  private static BadInputException bad(String message, SourceSpan where) {
    return new BadInputException(
        Diagnostic.error(LayoutCode.NO_ARCH, where, message, "make the rise smaller"));
  }
}
