package frieze.sheet;

import frieze.curve.Arc;
import frieze.curve.Cubic;
import frieze.curve.EllipticArc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.List;

/** Writes paths as SVG path data, in their own frame; circles stay circles. */
public final class SvgPath implements Segment.Visitor<Void> {
  private static final int DIGITS = 3;

  /** An ellipse is drawn with this many chords to the turn; it is a picture, not a program. */
  private static final int CHORDS = 72;

  /** Near 180 degrees a rounded radius would tell little of where the centre is. */
  private static final double MOST_IN_ONE_RAD = Math.toRadians(120);

  private final StringBuilder d = new StringBuilder();

  private SvgPath() {}

  public static String data(List<Path> paths) {
    SvgPath writer = new SvgPath();
    for (Path path : paths) {
      writer.d.append('M');
      writer.point(path.start());
      path.segments().forEach(s -> s.accept(writer));
      if (path.closed()) {
        writer.d.append('Z');
      }
    }
    return writer.d.toString();
  }

  private void point(Point p) {
    d.append(number(p.x())).append(' ').append(number(p.y()));
  }

  static String number(double value) {
    return Measures.decimals(value, DIGITS);
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only writes
  public Void line(Line line) {
    d.append('L');
    point(line.end());
    return null;
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only writes
  public Void arc(Arc arc) {
    if (Math.abs(arc.sweepRad()) > MOST_IN_ONE_RAD) {
      partOf(arc, arc.at(0.5));
    }
    partOf(arc, arc.end());
    return null;
  }

  /** A part never turns by more than 180 degrees. */
  private void partOf(Arc arc, Point to) {
    String r = number(arc.radius());
    d.append('A').append(r).append(' ').append(r);
    d.append(arc.counterClockwise() ? " 0 0 1 " : " 0 0 0 ");
    point(to);
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only writes
  public Void cubic(Cubic cubic) {
    d.append('C');
    point(cubic.control1());
    d.append(' ');
    point(cubic.control2());
    d.append(' ');
    point(cubic.end());
    return null;
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only writes
  public Void ellipticArc(EllipticArc arc) {
    int chords = (int) Math.ceil(Math.abs(arc.sweepRad()) / (2 * Math.PI) * CHORDS);
    for (int i = 1; i <= chords; i++) {
      d.append('L');
      point(arc.at((double) i / chords));
    }
    return null;
  }
}
