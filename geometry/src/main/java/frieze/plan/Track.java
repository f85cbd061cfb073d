package frieze.plan;

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

/** A path of lines and arcs, measured by its length, that a tool's axis can follow. */
final class Track {
  /** Pieces shorter than this are left out: a nanometre. */
  private static final double NOTHING_MM = 1e-6;

  /** A new start this close to a joint is moved onto it. */
  private static final double JOINT_MM = 1e-5;

  private final Path path;

  /** The length from the start to the end of each segment. */
  private final double[] ends;

  /**
   * Measures a path.
   *
   * @throws IllegalArgumentException if it has other segments than lines and arcs
   */
  Track(Path path) {
    this.path = path;
    this.ends = new double[path.segments().size()];
    double sum = 0;
    for (int i = 0; i < ends.length; i++) {
      sum += path.segments().get(i).accept(LENGTH);
      ends[i] = sum;
    }
  }

  Path path() {
    return path;
  }

  boolean closed() {
    return path.closed();
  }

  double lengthMm() {
    return ends[ends.length - 1];
  }

  Point start() {
    return path.start();
  }

  Point end() {
    return path.end();
  }

  /** The lengths at which one segment ends and the next begins, the whole length last. */
  List<Double> joints() {
    List<Double> joints = new ArrayList<>();
    for (double end : ends) {
      joints.add(end);
    }
    return joints;
  }

  Track reversed() {
    return new Track(path.reversed());
  }

  Track transformed(Affine map) {
    return new Track(path.transformed(map));
  }

  /**
   * The pieces between two lengths from the start. On a closed track both may lie beyond its
   * length: it is followed again and again.
   */
  List<Segment> slice(double fromMm, double toMm) {
    List<Segment> pieces = new ArrayList<>();
    double lap = 0;
    if (closed()) {
      lap = Math.floor(fromMm / lengthMm()) * lengthMm();
    }
    for (; lap < toMm - NOTHING_MM; lap += lengthMm()) {
      for (int i = 0; i < ends.length; i++) {
        double begin = lap + (i == 0 ? 0 : ends[i - 1]);
        double end = lap + ends[i];
        double low = Math.max(begin, fromMm);
        double high = Math.min(end, toMm);
        if (high - low > NOTHING_MM) {
          Segment whole = path.segments().get(i);
          pieces.add(part(whole, (low - begin) / (end - begin), (high - begin) / (end - begin)));
        }
      }
      if (!closed()) {
        break;
      }
    }
    return pieces;
  }

  private static Segment part(Segment whole, double from, double to) {
    if (from == 0 && to == 1) {
      return whole;
    }
    if (whole instanceof Arc arc) {
      return new Arc(arc.at(from), arc.at(to), arc.centre(), arc.sweepRad() * (to - from));
    }
    return new Line(whole.at(from), whole.at(to));
  }

  /** The same closed track, starting at another place, or at a joint next to it. */
  Track startingAt(double lengthMm) {
    double at = lengthMm;
    for (double joint : ends) {
      if (Math.abs(joint - lengthMm) < JOINT_MM) {
        at = joint;
      }
    }
    return at <= JOINT_MM || at >= lengthMm()
        ? this
        : new Track(new Path(slice(at, at + lengthMm()), true));
  }

  private static final Segment.Visitor<Double> LENGTH =
      new Segment.Visitor<>() {
        @Override
        public Double line(Line line) {
          return line.length();
        }

        @Override
        public Double arc(Arc arc) {
          return arc.length();
        }

        @Override
        public Double cubic(Cubic cubic) {
          throw new IllegalArgumentException("a track can't hold " + cubic);
        }

        @Override
        public Double ellipticArc(EllipticArc arc) {
          throw new IllegalArgumentException("a track can't hold " + arc);
        }
      };
}
