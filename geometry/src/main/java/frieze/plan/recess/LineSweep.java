package frieze.plan.recess;

import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.curve.Tolerances;
import frieze.plan.cut.Track;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Lines to and fro along X over the places where a tool's axis may go, for what a loop along their
 * border does not clear.
 *
 * <p>Guarantees: the axis stays in these places; each of them farther than the radius from their
 * border is no farther than half a stepover, along Y, from a line. For the lines end at the radius
 * less half a stepover from the border, so that a place as far from the border as the radius still
 * has the end of a line within half a stepover.
 */
final class LineSweep {
  /** What the ends of the lines reach farther than they must, in tolerances of an offset. */
  private static final double OVERLAP_TOLERANCES = 10;

  private final Region places;
  private final double stepMm;
  private final List<Track> tracks = new ArrayList<>();

  private LineSweep(Region places, double stepMm) {
    this.places = places;
    this.stepMm = stepMm;
  }

  /** A stretch of a line inside the places where lines may be. */
  private record Stretch(double y, double fromX, double toX) {
    boolean overlaps(Stretch other) {
      return fromX < other.toX && other.fromX < toX;
    }

    Point end(boolean right) {
      return new Point(right ? toX : fromX, y);
    }
  }

  /** The lines, joined at their ends wherever the straight way stays inside the places. */
  static List<Track> of(Region places, RecessGeometry.Cutter cutter, Tolerances t) {
    double step = cutter.stepoverMm();
    double margin = cutter.radiusMm() - step / 2 - OVERLAP_TOLERANCES * t.offsetMm();
    Region inner = Offset.offset(places, -Math.max(0, margin), t.offsetMm());
    LineSweep sweep = new LineSweep(places, step);
    inner.parts().forEach(sweep::clear);
    return sweep.tracks;
  }

  private void clear(Region part) {
    List<List<Stretch>> rows = new ArrayList<>();
    for (double y : heights(part.bounds().minY(), part.bounds().maxY())) {
      rows.add(stretches(part, y));
    }
    for (int row = 0; row < rows.size(); row++) {
      while (!rows.get(row).isEmpty()) {
        follow(rows, row);
      }
    }
  }

  /** Lines no farther apart than the step; the outer ones half a step inside. */
  private List<Double> heights(double lowMm, double highMm) {
    double span = highMm - lowMm - stepMm;
    if (span <= 0) {
      return List.of((lowMm + highMm) / 2);
    }
    int gaps = (int) Math.ceil(span / stepMm);
    List<Double> heights = new ArrayList<>();
    for (int i = 0; i <= gaps; i++) {
      heights.add(lowMm + stepMm / 2 + span * i / gaps);
    }
    return heights;
  }

  private static List<Stretch> stretches(Region part, double y) {
    List<Double> crossings = new ArrayList<>();
    for (Ring ring : part.rings()) {
      List<Point> points = ring.points();
      Point before = points.get(points.size() - 1);
      for (Point p : points) {
        if ((before.y() > y) != (p.y() > y)) {
          crossings.add(
              before.x() + (p.x() - before.x()) * (y - before.y()) / (p.y() - before.y()));
        }
        before = p;
      }
    }
    crossings.sort(Comparator.naturalOrder());
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      stretches.add(new Stretch(y, crossings.get(i), crossings.get(i + 1)));
    }
    return stretches;
  }

  /** Takes stretches row by row, to and fro, as long as the next can be reached at depth. */
  private void follow(List<List<Stretch>> rows, int first) {
    List<Segment> way = new ArrayList<>();
    Stretch at = rows.get(first).remove(0);
    boolean right = true;
    add(way, at.end(false), at.end(true));
    for (int row = first + 1; row < rows.size(); row++) {
      Optional<Stretch> next = next(rows.get(row), at, right);
      if (next.isEmpty()) {
        break;
      }
      rows.get(row).remove(next.get());
      add(way, at.end(right), next.get().end(right));
      add(way, next.get().end(right), next.get().end(!right));
      at = next.get();
      right = !right;
    }
    if (!way.isEmpty()) {
      tracks.add(new Track(new Path(way, false)));
    }
  }

  private Optional<Stretch> next(List<Stretch> row, Stretch at, boolean right) {
    return row.stream()
        .filter(s -> s.overlaps(at) && places.containsSegment(at.end(right), s.end(right)))
        .min(Comparator.comparingDouble(s -> s.end(right).distance(at.end(right))));
  }

  private static void add(List<Segment> way, Point from, Point to) {
    if (!from.equals(to)) {
      way.add(new Line(from, to));
    }
  }
}
