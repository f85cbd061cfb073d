package frieze.artwork.svg;

import frieze.artwork.text.GlyphPen;
import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Cubic;
import frieze.curve.EllipticArc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Collects drawing commands in user units and makes paths in millimetres of them.
 *
 * <p>Segments without length are dropped; a subpath of nothing else is a dot. A subpath whose ends
 * coincide counts as closed.
 */
final class PathBuilder implements GlyphPen {
  /** Ends closer than this are one point that was rounded: a nanometre. */
  private static final double SAME_POINT_MM = 1e-6;

  /** An ellipse whose radii agree to this fraction was meant to be a circle. */
  private static final double ROUND = 1e-9;

  private final Affine toMm;
  private final List<Path> done = new ArrayList<>();
  private final List<Point> dots = new ArrayList<>();
  private final List<Point> doubled = new ArrayList<>();
  private final List<Point> repeated = new ArrayList<>();
  private List<Segment> subpath = new ArrayList<>();
  private Point subpathStart = Point.ORIGIN;
  private Point current = Point.ORIGIN;
  private int segmentCount;

  /** Whether the pen was set down and drew nothing yet. */
  private boolean fresh;

  /** Whether something was drawn, even without length. */
  private boolean drew;

  PathBuilder(Affine toMm) {
    this.toMm = toMm;
  }

  Point current() {
    return current;
  }

  int segmentCount() {
    return segmentCount;
  }

  @Override
  public void moveTo(Point to) {
    endSubpath(false);
    fresh = true;
    subpathStart = to;
    current = to;
  }

  @Override
  public void lineTo(Point to) {
    add(new Line(current, to), to);
  }

  @Override
  public void cubicTo(Point control1, Point control2, Point to) {
    boolean dot = control1.equals(current) && control2.equals(current) && to.equals(current);
    if (!dot) {
      segmentCount++;
      subpath.add(new Cubic(current, control1, control2, to));
    }
    drew = true;
    current = to;
  }

  @Override
  public void quadraticTo(Point control, Point to) {
    Cubic cubic = Cubic.fromQuadratic(current, control, to);
    cubicTo(cubic.control1(), cubic.control2(), to);
  }

  void arcTo(EndpointArc arc, Point to) {
    if (!to.equals(current)) {
      add(arc.between(current, to), to);
    }
  }

  /** Adds one full turn, starting and ending at the current point. */
  void fullTurn(Segment turn) {
    segmentCount++;
    drew = true;
    subpath.add(turn);
  }

  private void add(Segment segment, Point to) {
    drew = true;
    if (!to.equals(current)) {
      segmentCount++;
      subpath.add(segment);
      current = to;
    } else {
      repeated.add(toMm.apply(to));
    }
  }

  /** Where points of subpaths that have a length stand twice in a row, in millimetres. */
  List<Point> doubled() {
    return doubled;
  }

  @Override
  public void close() {
    drew = drew || fresh;
    endSubpath(true);
    current = subpathStart;
  }

  /** Ends the last subpath and returns all paths with at least one segment. */
  List<Path> finish() {
    endSubpath(false);
    return done;
  }

  /** Where subpaths without length are, in millimetres. */
  List<Point> dots() {
    return dots;
  }

  private void endSubpath(boolean close) {
    boolean isDot = drew && subpath.isEmpty();
    fresh = false;
    drew = false;
    if (isDot) {
      dots.add(toMm.apply(subpathStart));
      segmentCount++;
    }
    if (!subpath.isEmpty()) {
      doubled.addAll(repeated);
    }
    repeated.clear();
    if (subpath.isEmpty()) {
      return;
    }
    List<Segment> mapped = new ArrayList<>(subpath.size() + 1);
    for (Segment segment : subpath) {
      Segment image = segment.transformed(toMm);
      mapped.add(image instanceof EllipticArc arc ? rounded(arc) : image);
    }
    subpath = new ArrayList<>();
    Point first = mapped.get(0).start();
    Segment last = mapped.get(mapped.size() - 1);
    boolean closed = close || last.end().equals(first);
    if (closed && !last.end().equals(first)) {
      if (last.end().distance(first) <= SAME_POINT_MM && mapped.size() > 1) {
        mapped.set(mapped.size() - 1, last.accept(new EndingAt(first)));
      } else {
        mapped.add(new Line(last.end(), first));
      }
    }
    done.add(new Path(mapped, closed));
  }

  /** Makes a circular arc of an elliptic one that came out round. */
  private static Segment rounded(EllipticArc arc) {
    double u = arc.u().norm();
    double v = arc.v().norm();
    boolean round = Math.abs(u - v) <= ROUND * u && Math.abs(arc.u().dot(arc.v())) <= ROUND * u * v;
    if (!round || u == 0) {
      return arc;
    }
    double sweep = arc.u().cross(arc.v()) < 0 ? -arc.sweepRad() : arc.sweepRad();
    return new Arc(arc.start(), arc.end(), arc.centre(), sweep);
  }

  /** Moves the end of a segment by less than a rounding error. */
  private record EndingAt(Point end) implements Segment.Visitor<Segment> {
    @Override
    public Segment line(Line line) {
      return new Line(line.start(), end);
    }

    @Override
    public Segment arc(Arc arc) {
      return new Arc(arc.start(), end, arc.centre(), arc.sweepRad());
    }

    @Override
    public Segment cubic(Cubic cubic) {
      return new Cubic(cubic.start(), cubic.control1(), cubic.control2(), end);
    }

    @Override
    public Segment ellipticArc(EllipticArc arc) {
      return new EllipticArc(
          arc.start(), end, arc.centre(), arc.u(), arc.v(), arc.startRad(), arc.sweepRad());
    }
  }
}
