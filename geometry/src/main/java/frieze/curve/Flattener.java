package frieze.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * Turns curves into polylines whose points lie on the curves.
 *
 * <p><i>Guarantees</i>
 *
 * <ul>
 *   <li>Each chord lies within the tolerance of its stretch of the curve, and the curve within the
 *       tolerance of the chord.
 *   <li>Ends of segments are vertices, exactly.
 *   <li>A reversed path gives the reversed points, to rounding.
 * </ul>
 *
 * <p><i>Approximation:</i> because the points lie on the curve, a bulging outline comes out small
 * and so does a hole: each by at most the tolerance, two thirds of it on average.
 *
 * <p><i>Cost:</i> an arc of radius R takes {@code sweep / (2 acos(1 - tolerance / R))} chords,
 * which is the least; an ellipse as many as a circle of its larger radius.
 */
public final class Flattener {
  /**
   * So small a part of the radius is lost beside 1; the first term of the series is exact there.
   */
  private static final double ALMOST_STRAIGHT = 1e-12;

  /** Turning is not refined below this length: a cusp turns at once. */
  private static final double SHORTEST_CHORD_MM = 1e-4;

  private Flattener() {}

  /**
   * Flattens a path.
   *
   * @param toleranceMm the most by which a chord departs from its curve
   * @return the points; for a closed path without the first one repeated
   */
  public static List<Point> flatten(Path path, double toleranceMm) {
    return flatten(path, toleranceMm, Math.PI);
  }

  /**
   * Flattens a path and also limits how far the curve's direction turns along one chord.
   *
   * <p>An outline that will be offset outward by d keeps its tolerance there if the turn is at most
   * {@link #turnForOffset}.
   *
   * @param toleranceMm the most by which a chord departs from its curve
   * @param turnRad the most by which the direction turns along a chord; cusps excepted
   * @return the points; for a closed path without the first one repeated
   */
  public static List<Point> flatten(Path path, double toleranceMm, double turnRad) {
    requirePositive("toleranceMm", toleranceMm);
    requirePositive("turnRad", turnRad);
    List<Point> points = new ArrayList<>();
    points.add(path.start());
    PieceCount count = new PieceCount(toleranceMm, Math.min(turnRad, Math.PI));
    for (Segment segment : path.segments()) {
      flatten(segment, count, points);
    }
    if (path.closed() && points.size() > 1) {
      points.remove(points.size() - 1);
    }
    return points;
  }

  /** The turn at which an arc of the offset's radius departs from its chord by the tolerance. */
  public static double turnForOffset(double distanceMm, double toleranceMm) {
    return Math.sqrt(2 * toleranceMm / Math.max(distanceMm, toleranceMm));
  }

  private static void requirePositive(String name, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + value);
    }
  }

  private static void flatten(Segment segment, PieceCount count, List<Point> into) {
    int pieces = segment.accept(count);
    boolean curved = !(segment instanceof Line) && !(segment instanceof Arc);
    for (int i = 1; i <= pieces; i++) {
      double from = (double) (i - 1) / pieces;
      double to = (double) i / pieces;
      if (curved) {
        refine(segment, from, to, count.turnRad(), into);
      }
      into.add(i == pieces ? segment.end() : segment.at(to));
    }
  }

  /** Halves a chord until its curve turns little enough. */
  private static void refine(Segment s, double from, double to, double turnRad, List<Point> into) {
    Point before = s.tangentAt(from);
    Point after = s.tangentAt(to);
    double turn = Math.abs(StrictMath.atan2(before.cross(after), before.dot(after)));
    if (turn <= turnRad || s.at(from).distance(s.at(to)) < SHORTEST_CHORD_MM) {
      return;
    }
    double middle = (from + to) / 2;
    refine(s, from, middle, turnRad, into);
    into.add(s.at(middle));
    refine(s, middle, to, turnRad, into);
  }

  /** How many chords of equal parameter keep within the tolerance. */
  private record PieceCount(double toleranceMm, double turnRad)
      implements Segment.Visitor<Integer> {
    @Override
    public Integer line(Line line) {
      return 1;
    }

    @Override
    public Integer arc(Arc arc) {
      double step = Math.min(turnRad, step(arc.radius()));
      return count(Math.abs(arc.sweepRad()) / step);
    }

    @Override
    public Integer ellipticArc(EllipticArc arc) {
      return count(Math.abs(arc.sweepRad()) / step(arc.largestRadius()));
    }

    private double step(double radiusMm) {
      double part = toleranceMm / radiusMm;
      return part < ALMOST_STRAIGHT
          ? 2 * Math.sqrt(2 * part)
          : 2 * StrictMath.acos(Math.max(0, 1 - part));
    }

    /** The second derivative bounds the sagitta by its largest value / 8 / n^2. */
    @Override
    public Integer cubic(Cubic c) {
      Point atStart = c.start().minus(c.control1().times(2)).plus(c.control2());
      Point atEnd = c.control1().minus(c.control2().times(2)).plus(c.end());
      double second = 6 * Math.max(atStart.norm(), atEnd.norm());
      return count(Math.sqrt(second / 8 / toleranceMm));
    }

    /** Rounds up, but not for the rounding error of a quotient. */
    private static int count(double pieces) {
      return Math.max(1, (int) Math.ceil(pieces * (1 - 1e-12)));
    }
  }
}
