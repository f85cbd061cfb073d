package frieze.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * A connected run of segments, each starting exactly where the one before it ends.
 *
 * @param segments at least one
 * @param closed whether the last end is the first start and the path has no ends
 */
public record Path(List<Segment> segments, boolean closed) {
  public Path {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a path needs at least one segment");
    }
    for (int i = 1; i < segments.size(); i++) {
      requireJoined(segments.get(i - 1), segments.get(i));
    }
    if (closed) {
      requireJoined(segments.get(segments.size() - 1), segments.get(0));
    }
  }

  private static void requireJoined(Segment before, Segment after) {
    if (!before.end().equals(after.start())) {
      throw new IllegalArgumentException(
          "segments must join but end at " + before.end() + " and start at " + after.start());
    }
  }

  /** The path through the given points, closed by a last line if asked. */
  public static Path polyline(List<Point> points, boolean closed) {
    List<Segment> lines = new ArrayList<>(points.size());
    for (int i = 1; i < points.size(); i++) {
      lines.add(new Line(points.get(i - 1), points.get(i)));
    }
    Point first = points.get(0);
    Point last = points.get(points.size() - 1);
    if (closed && !first.equals(last)) {
      lines.add(new Line(last, first));
    }
    return new Path(lines, closed);
  }

  /** A whole circle, counter-clockwise from its rightmost point. */
  public static Path circle(Point centre, double radiusMm) {
    return new Path(List.of(Arc.polar(centre, radiusMm, 0, 2 * Math.PI)), true);
  }

  public Point start() {
    return segments.get(0).start();
  }

  public Point end() {
    return segments.get(segments.size() - 1).end();
  }

  /** The same points, travelled the other way. */
  public Path reversed() {
    List<Segment> result = new ArrayList<>(segments.size());
    for (int i = segments.size() - 1; i >= 0; i--) {
      result.add(segments.get(i).reversed());
    }
    return new Path(result, closed);
  }

  /** The image under a map. A mirroring map turns the direction of travel. */
  public Path transformed(Affine map) {
    return new Path(segments.stream().map(s -> s.transformed(map)).toList(), closed);
  }

  public Bounds bounds() {
    Bounds bounds = Bounds.EMPTY;
    for (Segment segment : segments) {
      bounds = bounds.with(segment.bounds());
    }
    return bounds;
  }
}
