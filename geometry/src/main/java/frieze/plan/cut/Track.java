package frieze.plan.cut;

import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Cubic;
import frieze.curve.EllipticArc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.curve.SegmentPart;
import java.util.ArrayList;
import java.util.List;

/** A path of lines and arcs, measured by its length, that a tool's axis can follow. */
public final class Track {
  /** Pieces shorter than this are left out: a nanometre. */
  private static final double NOTHING_MM = 1e-6;

  /** A new start this close to a joint is moved onto it. */
  private static final double JOINT_MM = 1e-5;

  /** Pieces that meet with a smaller turn have no corner between them. */
  private static final double SMOOTH_RAD = StrictMath.toRadians(2);

  private final Path path;

  /** The length from the start to the end of each segment. */
  private final double[] ends;

  /**
   * Measures a path.
   *
   * @throws IllegalArgumentException if it has other segments than lines and arcs
   */
  public Track(Path path) {
    this.path = path;
    this.ends = new double[path.segments().size()];
    double sum = 0;
    for (int i = 0; i < ends.length; i++) {
      sum += path.segments().get(i).accept(LENGTH);
      ends[i] = sum;
    }
  }

  public Path path() {
    return path;
  }

  public boolean closed() {
    return path.closed();
  }

  /** Whether a track turns at once from one direction to another. */
  public static boolean isCorner(Point a, Point b) {
    return Math.abs(StrictMath.atan2(a.cross(b), a.dot(b))) > SMOOTH_RAD;
  }

  public double lengthMm() {
    return ends[ends.length - 1];
  }

  public Point start() {
    return path.start();
  }

  public Point end() {
    return path.end();
  }

  /** The lengths at which one segment ends and the next begins, the whole length last. */
  public List<Double> joints() {
    List<Double> joints = new ArrayList<>();
    for (double end : ends) {
      joints.add(end);
    }
    return joints;
  }

  /** The place at a length from the start; on a closed track also beyond its length or below 0. */
  public Point pointAt(double atMm) {
    double within = closed() ? atMm - Math.floor(atMm / lengthMm()) * lengthMm() : atMm;
    int i = 0;
    while (i < ends.length - 1 && ends[i] <= within) {
      i++;
    }
    double begin = i == 0 ? 0 : ends[i - 1];
    Segment segment = path.segments().get(i);
    double part = (within - begin) / (ends[i] - begin);
    return part <= 0 ? segment.start() : part >= 1 ? segment.end() : segment.at(part);
  }

  /** The length from the start to the place nearest to a point. */
  public double nearestMm(Point p) {
    double best = Double.POSITIVE_INFINITY;
    double at = 0;
    double begin = 0;
    for (int i = 0; i < ends.length; i++) {
      Segment segment = path.segments().get(i);
      double t = segment instanceof Arc arc ? nearest(arc, p) : ((Line) segment).nearestAt(p);
      double distance = segment.at(t).distance(p);
      if (distance < best) {
        best = distance;
        at = begin + t * (ends[i] - begin);
      }
      begin = ends[i];
    }
    return at;
  }

  private static double nearest(Arc arc, Point p) {
    double turned = p.minus(arc.centre()).angleRad() - arc.startAngleRad();
    double along = arc.counterClockwise() ? turned : -turned;
    along -= Math.floor(along / (2 * Math.PI)) * 2 * Math.PI;
    double sweep = Math.abs(arc.sweepRad());
    if (along <= sweep) {
      return along / sweep;
    }
    return along - sweep < 2 * Math.PI - along ? 1 : 0;
  }

  public Track reversed() {
    return new Track(path.reversed());
  }

  public Track transformed(Affine map) {
    return new Track(path.transformed(map));
  }

  /**
   * The pieces between two lengths from the start. On a closed track both may lie beyond its
   * length: it is followed again and again.
   */
  public List<Segment> slice(double fromMm, double toMm) {
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
          pieces.add(
              SegmentPart.between(
                  whole, (low - begin) / (end - begin), (high - begin) / (end - begin)));
        }
      }
      if (!closed()) {
        break;
      }
    }
    return pieces;
  }

  /** The same closed track, starting at another place, or at a joint next to it. */
  public Track startingAt(double lengthMm) {
    List<Segment> all = path.segments();
    int cut = 0;
    while (cut < ends.length - 1 && ends[cut] <= lengthMm + JOINT_MM) {
      cut++;
    }
    double begin = cut == 0 ? 0 : ends[cut - 1];
    List<Segment> turned = new ArrayList<>();
    if (lengthMm <= begin + JOINT_MM) {
      turned.addAll(all.subList(cut, all.size()));
      turned.addAll(all.subList(0, cut));
    } else if (lengthMm >= ends[cut] - JOINT_MM) {
      return this;
    } else {
      double fraction = (lengthMm - begin) / (ends[cut] - begin);
      turned.add(SegmentPart.between(all.get(cut), fraction, 1));
      turned.addAll(all.subList(cut + 1, all.size()));
      turned.addAll(all.subList(0, cut));
      turned.add(SegmentPart.between(all.get(cut), 0, fraction));
    }
    return new Track(new Path(turned, true));
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
