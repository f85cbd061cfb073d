package frieze.layout;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;

/**
 * The hole in a frame that an insert goes into.
 *
 * @param cornerRadiusMm 0 for square corners
 */
public record Opening(double widthMm, double heightMm, double cornerRadiusMm) {
  public Opening {
    if (!(widthMm > 0 && heightMm > 0 && widthMm + heightMm < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "widthMm and heightMm must be > 0 but were " + widthMm + ", " + heightMm + " mm");
    }
    if (!(cornerRadiusMm >= 0)) {
      throw new IllegalArgumentException(
          "cornerRadiusMm must be >= 0 but was " + cornerRadiusMm + " mm");
    }
  }

  /**
   * Makes the insert that leaves the same gap all round: each side is shorter by two gaps, the
   * radius of the corners smaller by one, down to square.
   *
   * @param where the place in the job, for the diagnostics
   * @throws frieze.diagnostic.BadInputException if nothing would be left, or the corners are larger
   *     than the opening
   */
  public Panel panel(String name, double gapMm, SourceSpan where) {
    Diagnostics found = new Diagnostics();
    double shortSideMm = Math.min(widthMm, heightMm);
    if (!(gapMm >= 0 && 2 * gapMm < shortSideMm)) {
      found.error(
          LayoutCode.GAP_LEAVES_NOTHING,
          where,
          "a gap of "
              + Amounts.length(gapMm)
              + " all round leaves nothing of an opening "
              + Amounts.length(shortSideMm)
              + " across",
          "the gap is the play on each side, between 0 and half of the opening");
    }
    if (2 * cornerRadiusMm > shortSideMm) {
      found.error(
          LayoutCode.CORNER_TOO_LARGE,
          where,
          "the corner radius "
              + Amounts.length(cornerRadiusMm)
              + " is "
              + Amounts.length(cornerRadiusMm - shortSideMm / 2)
              + " more than half of the opening's shorter side",
          "measure the radius, not the diameter, of the corner");
    }
    found.throwIfErrors();
    return new Panel(
        name,
        outline(widthMm - 2 * gapMm, heightMm - 2 * gapMm, Math.max(0, cornerRadiusMm - gapMm)));
  }

  /** A rectangle from the origin, counter-clockwise, with round corners where the radius is > 0. */
  static Path outline(double width, double height, double radius) {
    Point[] centres = {
      new Point(width - radius, radius),
      new Point(width - radius, height - radius),
      new Point(radius, height - radius),
      new Point(radius, radius)
    };
    Point[] arrive = {
      new Point(width - radius, 0),
      new Point(width, height - radius),
      new Point(radius, height),
      new Point(0, radius)
    };
    Point[] leave = {
      new Point(width, radius),
      new Point(width - radius, height),
      new Point(0, height - radius),
      new Point(radius, 0)
    };
    List<Segment> segments = new ArrayList<>();
    for (int corner = 0; corner < 4; corner++) {
      Point from = leave[Math.floorMod(corner - 1, 4)];
      if (!from.equals(arrive[corner])) {
        segments.add(new Line(from, arrive[corner]));
      }
      if (radius > 0) {
        segments.add(new Arc(arrive[corner], leave[corner], centres[corner], Math.PI / 2));
      }
    }
    return new Path(segments, true);
  }
}
