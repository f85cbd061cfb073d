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

/**
 * Cuts a path into the stretches that a dashed pen draws.
 *
 * <p>On a closed path, a dash that ends where another starts is one with it. <i>Source:</i> SVG
 * 1.1, 11.4.
 */
final class Dashes {
  /** A dash that ends within this part of the pattern of a corner ends at it. */
  private static final double ROUNDING = 1e-9;

  /** More dashes than this on a path are no pattern that can be cut. */
  static final int MOST = 20_000;

  /**
   * What a dashed pen draws.
   *
   * @param dots dashes without length
   * @param tooMany whether the line is whole since it would have more than {@link #MOST} dashes
   */
  record Drawn(List<Path> dashes, List<Dot> dots, boolean tooMany) {
    private static Drawn whole(Path path, boolean tooMany) {
      return new Drawn(List.of(path), List.of(), tooMany);
    }
  }

  /** A dash without length; the direction is that of the line. */
  record Dot(Point at, Point direction) {}

  private final List<Double> pattern;
  private final double period;
  private final double tolerance;
  private final List<List<Segment>> drawn = new ArrayList<>();
  private final List<Dot> dots = new ArrayList<>();
  private int index;
  private double left;
  private boolean on;

  /** Whether the pen was down where the last segment ended. */
  private boolean onAtEnd;

  private Dashes(Stroke stroke, double tolerance) {
    this.pattern = stroke.dashes();
    this.period = pattern.stream().mapToDouble(Double::doubleValue).sum();
    this.tolerance = tolerance;
    start(stroke.dashOffset());
  }

  /** The stretches that are drawn; the path itself if the line is whole. */
  static Drawn of(Path path, Stroke stroke, double tolerance) {
    double period = stroke.dashes().stream().mapToDouble(Double::doubleValue).sum();
    if (!(period > 0)) {
      return Drawn.whole(path, false);
    }
    Dashes dashes = new Dashes(stroke, tolerance);
    List<Segment> exact = dashes.measurable(path);
    double length = exact.stream().mapToDouble(Dashes::length).sum();
    if (length / period * stroke.dashes().size() > MOST) {
      return Drawn.whole(path, true);
    }
    return new Drawn(dashes.cut(exact, path.closed()), dashes.dots, false);
  }

  /** About how many dashes a path will have; none if it is drawn whole. */
  static int count(Path path, Stroke stroke, double tolerance) {
    double period = stroke.dashes().stream().mapToDouble(Double::doubleValue).sum();
    if (!(period > 0)) {
      return 0;
    }
    List<Segment> exact = new Dashes(stroke, tolerance).measurable(path);
    double parts =
        exact.stream().mapToDouble(Dashes::length).sum() / period * stroke.dashes().size();
    return parts > MOST ? 0 : (int) (parts / 2);
  }

  private void start(double offset) {
    double into = offset % (2 * period);
    into = into < 0 ? into + 2 * period : into;
    on = true;
    left = pattern.get(0);
    while (into > left || (into == left && left > 0)) {
      into -= left;
      next();
    }
    left -= into;
  }

  private void next() {
    index = (index + 1) % pattern.size();
    left = pattern.get(index);
    on = !on;
  }

  private List<Segment> measurable(Path path) {
    List<Segment> exact = new ArrayList<>();
    for (Segment s : path.segments()) {
      if (s instanceof Line || s instanceof Arc) {
        exact.add(s);
      } else {
        List<Point> points = Flattener.flatten(new Path(List.of(s), false), tolerance);
        exact.addAll(Path.polyline(points, false).segments());
      }
    }
    exact.removeIf(s -> length(s) == 0);
    return exact;
  }

  private List<Path> cut(List<Segment> segments, boolean closed) {
    boolean startsOn = on;
    if (on) {
      drawn.add(new ArrayList<>());
    }
    segments.forEach(this::cut);
    drawn.removeIf(List::isEmpty);
    boolean wraps = closed && startsOn && onAtEnd && !drawn.isEmpty();
    if (wraps && drawn.size() == 1) {
      List<Segment> only = drawn.get(0);
      boolean whole = only.get(only.size() - 1).end().equals(only.get(0).start());
      return List.of(new Path(only, whole));
    }
    if (wraps) {
      List<Segment> last = drawn.remove(drawn.size() - 1);
      last.addAll(drawn.get(0));
      drawn.set(0, last);
    }
    return drawn.stream().map(d -> new Path(d, false)).toList();
  }

  private void cut(Segment s) {
    double length = length(s);
    double rounding = ROUNDING * period;
    double done = 0;
    Point from = s.start();
    while (length - done > left + rounding) {
      double to = done + left;
      Point end = s.at(to / length);
      if (on && left == 0 && pattern.get(index) == 0) {
        dots.add(new Dot(end, s.tangentAt(to / length)));
      }
      draw(s, new Stretch(from, end, (to - done) / length));
      done = to;
      from = end;
      next();
      if (on) {
        drawn.add(new ArrayList<>());
      }
    }
    draw(s, new Stretch(from, s.end(), (length - done) / length));
    onAtEnd = on;
    left -= length - done;
    if (Math.abs(left) <= rounding && pattern.get(index) > 0) {
      next();
      if (on) {
        drawn.add(new ArrayList<>());
      }
    }
  }

  private record Stretch(Point from, Point to, double share) {}

  private void draw(Segment s, Stretch part) {
    boolean wholeTurn = s instanceof Arc && part.share() == 1;
    if (!on || (part.from().equals(part.to()) && !wholeTurn)) {
      return;
    }
    Segment piece =
        s instanceof Arc arc
            ? new Arc(part.from(), part.to(), arc.centre(), arc.sweepRad() * part.share())
            : new Line(part.from(), part.to());
    drawn.get(drawn.size() - 1).add(piece);
  }

  private static double length(Segment s) {
    return s instanceof Arc arc ? arc.length() : s.start().distance(s.end());
  }
}
