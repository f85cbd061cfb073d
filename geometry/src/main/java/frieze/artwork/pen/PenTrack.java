package frieze.artwork.pen;

import frieze.artwork.Stroke;
import frieze.curve.Arc;
import frieze.curve.Flattener;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Walks along both sides of one path and gives the closed outlines of what the pen covers.
 *
 * <p>The outlines are the sum of the outlines of each segment's own band, of each join and of each
 * cap, all turning the same way; so the area is theirs by the nonzero rule, however they overlap.
 *
 * <p><i>Approximation:</i> none for lines, and for arcs wider than the pen's half width; other
 * curves are flattened. <i>Source:</i> SVG 1.1, 11.4; SVG 2, 13.5.
 */
final class PenTrack {
  /** Segments that turn by less than this go on as one; the gap is far below any tolerance. */
  private static final double SMOOTH_RAD = 1e-9;

  /** A corner is cut short on its inner side if it takes less than this of both its lines. */
  private static final double SHARE_OF_LINE = 0.49;

  private final Stroke stroke;
  private final double half;
  private final double tolerance;

  PenTrack(Stroke stroke, double tolerance) {
    this.stroke = stroke;
    this.half = stroke.width() / 2;
    this.tolerance = tolerance;
  }

  /** The outlines around one path, all in the same sense. */
  List<Path> around(Path path) {
    List<Segment> forward = usable(path);
    if (forward.isEmpty()) {
      return List.of();
    }
    List<Segment> backward = new Path(forward, path.closed()).reversed().segments();
    if (path.closed()) {
      return List.of(loop(forward, true), loop(backward, false));
    }
    Track track = new Track(leftStart(forward.get(0)));
    side(forward, false, true, track);
    cap(forward.get(forward.size() - 1), track);
    side(backward, false, false, track);
    cap(backward.get(backward.size() - 1), track);
    return List.of(track.closed());
  }

  /** The outline around a dash without length, in the same sense; none where lines end flat. */
  Optional<Path> around(Dashes.Dot dot) {
    if (stroke.cap() == Stroke.Cap.BUTT) {
      return Optional.empty();
    }
    if (stroke.cap() == Stroke.Cap.ROUND) {
      return Optional.of(new Path(List.of(Arc.polar(dot.at(), half, 0, -2 * Math.PI)), true));
    }
    Point ahead = unit(dot.direction()).times(half);
    Point left = leftOf(ahead);
    Track track = new Track(dot.at().minus(ahead).plus(left));
    track.lineTo(dot.at().plus(ahead).plus(left));
    track.lineTo(dot.at().plus(ahead).minus(left));
    track.lineTo(dot.at().minus(ahead).minus(left));
    return Optional.of(track.closed());
  }

  private Path loop(List<Segment> segments, boolean forward) {
    Segment last = segments.get(segments.size() - 1);
    Corner corner = new Corner(last, segments.get(0), forward);
    Track track = new Track(corner.isShort() ? corner.tip() : leftStart(segments.get(0)));
    side(segments, true, forward, track);
    return track.closed();
  }

  /** Lines and wide arcs as they are, all else as short lines; nothing without length. */
  private List<Segment> usable(Path path) {
    double turn = Flattener.turnForOffset(half, tolerance);
    List<Segment> usable = new ArrayList<>();
    for (Segment s : path.segments()) {
      boolean exact = s instanceof Line || (s instanceof Arc arc && arc.radius() > half * 1.001);
      if (exact) {
        usable.add(s);
        continue;
      }
      List<Point> points = Flattener.flatten(new Path(List.of(s), false), tolerance, turn);
      usable.addAll(Path.polyline(points, false).segments());
    }
    usable.removeIf(s -> s instanceof Line && s.start().equals(s.end()));
    return usable;
  }

  private void side(List<Segment> segments, boolean closed, boolean forward, Track track) {
    int n = segments.size();
    for (int i = 0; i < n; i++) {
      Segment s = segments.get(i);
      if (i == n - 1 && !closed) {
        along(s, leftEnd(s), track);
        return;
      }
      Corner corner = new Corner(s, segments.get((i + 1) % n), forward);
      if (corner.isShort()) {
        along(s, corner.tip(), track);
      } else {
        along(s, leftEnd(s), track);
        corner.join(track);
      }
    }
  }

  private void along(Segment s, Point to, Track track) {
    if (s instanceof Arc arc) {
      track.arcTo(to, arc.centre(), arc.sweepRad());
    } else {
      track.lineTo(to);
    }
  }

  private void cap(Segment last, Track track) {
    Point at = last.end();
    Point ahead = unit(last.tangentAt(1)).times(half);
    Point left = leftOf(ahead);
    Point right = at.minus(left);
    switch (stroke.cap()) {
      case ROUND -> track.arcTo(right, at, -Math.PI);
      case SQUARE -> {
        track.lineTo(at.plus(left).plus(ahead));
        track.lineTo(right.plus(ahead));
        track.lineTo(right);
      }
      case BUTT -> track.lineTo(right);
    }
  }

  private Point leftStart(Segment s) {
    return s.start().plus(leftOf(unit(s.tangentAt(0))).times(half));
  }

  private Point leftEnd(Segment s) {
    return s.end().plus(leftOf(unit(s.tangentAt(1))).times(half));
  }

  private static Point leftOf(Point direction) {
    return new Point(-direction.y(), direction.x());
  }

  private static Point unit(Point direction) {
    return direction.times(1 / direction.norm());
  }

  /** Where one segment meets the next, seen from their left side. */
  private final class Corner {
    private final Segment before;
    private final Segment after;
    private final Point normal1;
    private final Point normal2;
    private final double turn;

    Corner(Segment before, Segment after, boolean forward) {
      this.before = before;
      this.after = after;
      Point t1 = unit(before.tangentAt(1));
      Point t2 = unit(after.tangentAt(0));
      this.normal1 = leftOf(t1);
      this.normal2 = leftOf(t2);
      double angle = StrictMath.atan2(t1.cross(t2), t1.dot(t2));
      boolean back = Math.abs(angle) > Math.PI - SMOOTH_RAD;
      this.turn = back ? Math.copySign(Math.PI, forward ? 1 : -1) : angle;
    }

    /** Whether both lines simply end where their left sides cross. */
    boolean isShort() {
      if (!(before instanceof Line a && after instanceof Line b) || turn <= 0) {
        return false;
      }
      double taken = half * StrictMath.tan(Math.min(turn, Math.PI - SMOOTH_RAD) / 2);
      return taken < SHARE_OF_LINE * Math.min(a.length(), b.length());
    }

    Point tip() {
      Point sum = normal1.plus(normal2);
      return before.end().plus(sum.times(half / (1 + normal1.dot(normal2))));
    }

    void join(Track track) {
      Point to = leftStart(after);
      if (Math.abs(turn) < SMOOTH_RAD) {
        return;
      }
      if (turn > 0) {
        track.lineTo(before.end());
      } else if (stroke.join() == Stroke.Join.ROUND && turn < -SMOOTH_RAD) {
        track.arcTo(to, before.end(), turn);
        return;
      } else if (stroke.join() == Stroke.Join.MITER
          && 1 <= stroke.miterLimit() * StrictMath.cos(turn / 2)) {
        track.lineTo(tip());
      }
      track.lineTo(to);
    }
  }

  /** A growing outline. */
  private static final class Track {
    private final List<Segment> segments = new ArrayList<>();
    private final Point first;
    private Point at;

    Track(Point first) {
      this.first = first;
      this.at = first;
    }

    void lineTo(Point to) {
      if (!to.equals(at)) {
        segments.add(new Line(at, to));
        at = to;
      }
    }

    void arcTo(Point to, Point centre, double sweepRad) {
      segments.add(new Arc(at, to, centre, sweepRad));
      at = to;
    }

    Path closed() {
      lineTo(first);
      return new Path(segments, true);
    }
  }
}
