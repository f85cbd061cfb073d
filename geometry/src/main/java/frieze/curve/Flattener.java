package frieze.curve;

import java.util.ArrayList;
import java.util.List;

/** Turns curves into polylines whose points lie on the curves. */
public final class Flattener {
  private Flattener() {}

  /**
   * Flattens a path.
   *
   * @param toleranceMm the most by which a chord departs from its curve
   * @return the points; for a closed path without the first one repeated
   */
  public static List<Point> flatten(Path path, double toleranceMm) {
    List<Point> points = new ArrayList<>();
    points.add(path.start());
    for (Segment segment : path.segments()) {
      flatten(segment, toleranceMm, points);
    }
    if (path.closed() && points.size() > 1) {
      points.remove(points.size() - 1);
    }
    return points;
  }

  private static void flatten(Segment segment, double toleranceMm, List<Point> into) {
    int pieces = segment.accept(new PieceCount(toleranceMm));
    for (int i = 1; i < pieces; i++) {
      into.add(segment.at((double) i / pieces));
    }
    into.add(segment.end());
  }

  /** How many chords of equal parameter keep within the tolerance. */
  private record PieceCount(double toleranceMm) implements Segment.Visitor<Integer> {
    @Override
    public Integer line(Line line) {
      return 1;
    }

    @Override
    public Integer arc(Arc arc) {
      return around(arc.radius(), arc.sweepRad());
    }

    @Override
    public Integer ellipticArc(EllipticArc arc) {
      return around(Math.hypot(arc.u().norm(), arc.v().norm()), arc.sweepRad());
    }

    private int around(double radiusMm, double sweepRad) {
      double halfStep = Math.acos(Math.max(0, 1 - toleranceMm / radiusMm));
      return Math.max(1, (int) Math.ceil(Math.abs(sweepRad) / (2 * halfStep)));
    }

    /** The second derivative bounds the sagitta by its largest value / 8 / n^2. */
    @Override
    public Integer cubic(Cubic c) {
      Point atStart = c.start().minus(c.control1().times(2)).plus(c.control2());
      Point atEnd = c.control1().minus(c.control2().times(2)).plus(c.end());
      double second = 6 * Math.max(atStart.norm(), atEnd.norm());
      return Math.max(1, (int) Math.ceil(Math.sqrt(second / 8 / toleranceMm)));
    }
  }
}
