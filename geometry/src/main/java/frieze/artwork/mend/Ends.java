package frieze.artwork.mend;

import frieze.curve.Arc;
import frieze.curve.Cubic;
import frieze.curve.EllipticArc;
import frieze.curve.Line;
import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.Optional;

/** Moves the ends of segments a little. */
final class Ends {
  /** A segment is moved at its end only if it is this many times longer than the move. */
  private static final double LONG = 8;

  private Ends() {}

  /** The segment with its end moved; empty if more of it would move than its end. */
  static Optional<Segment> endingAt(Segment segment, Point end) {
    double move = segment.end().distance(end);
    if (segment.start().distance(segment.end()) < LONG * move) {
      return Optional.empty();
    }
    return segment.accept(new Moved(end));
  }

  /** The segment with its start moved; empty if more of it would move than its start. */
  static Optional<Segment> startingAt(Segment segment, Point start) {
    return endingAt(segment.reversed(), start).map(Segment::reversed);
  }

  private record Moved(Point end) implements Segment.Visitor<Optional<Segment>> {
    @Override
    public Optional<Segment> line(Line line) {
      return Optional.of(new Line(line.start(), end));
    }

    /**
     * The arc of the same turn over the new chord. It grows in proportion to the chord, so one that
     * is nearly a whole circle is left alone.
     */
    @Override
    public Optional<Segment> arc(Arc arc) {
      Point chord = end.minus(arc.start());
      if (chord.norm() < arc.radius()) {
        return Optional.empty();
      }
      Point left = new Point(-chord.y(), chord.x());
      double half = arc.sweepRad() / 2;
      double rise = StrictMath.cos(half) / StrictMath.sin(half) / 2;
      Point centre = arc.start().towards(end, 0.5).plus(left.times(rise));
      return Optional.of(new Arc(arc.start(), end, centre, arc.sweepRad()));
    }

    @Override
    public Optional<Segment> cubic(Cubic c) {
      Point control = c.control2().plus(end.minus(c.end()));
      return Optional.of(new Cubic(c.start(), c.control1(), control, end));
    }

    /**
     * The place of a point on an ellipse follows from its angle; only a line can bridge the gap.
     */
    @Override
    public Optional<Segment> ellipticArc(EllipticArc arc) {
      return Optional.empty();
    }
  }
}
