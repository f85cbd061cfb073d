package frieze.torch;

import frieze.curve.Arc;
import frieze.curve.Segment;
import frieze.plan.cut.Track;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds where a closed track turns within a short way: at a joint, or over a run of tight arcs and
 * bits that follow each other.
 */
final class Bends {
  /** A piece so short is part of the bend beside it, whatever it is. */
  private static final double BIT_MM = 0.2;

  private Bends() {}

  /**
   * A run of pieces, or a joint between two.
   *
   * @param fromMm along the track
   * @param toMm beyond the track's length for a run over its start
   * @param turnRad how far it turns in all, joints and all; left is positive
   */
  record Bend(double fromMm, double toMm, double turnRad) {
    double lengthMm() {
      return toMm - fromMm;
    }

    double middleMm() {
      return (fromMm + toMm) / 2;
    }
  }

  /**
   * The bends of a closed track, in order.
   *
   * @param tightMm arcs up to this radius are tight
   */
  static List<Bend> of(Track track, double tightMm) {
    List<Segment> pieces = track.path().segments();
    List<Double> ends = track.joints();
    int n = pieces.size();
    int first = 0;
    while (first < n && isPart(pieces.get(first), tightMm)) {
      first++;
    }
    List<Bend> bends = new ArrayList<>();
    int i = 0;
    while (i < n) {
      int at = (first + i) % n;
      double from = endMm(ends, first + i);
      double turn = Corners.turnRad(pieces.get(at), pieces.get((at + 1) % n));
      int next = i + 1;
      while (next < n && isPart(pieces.get((first + next) % n), tightMm)) {
        Segment piece = pieces.get((first + next) % n);
        turn += piece instanceof Arc arc ? arc.sweepRad() : 0;
        turn += Corners.turnRad(piece, pieces.get((first + next + 1) % n));
        next++;
      }
      bends.add(new Bend(from, endMm(ends, first + next - 1), turn));
      i = next;
    }
    return bends;
  }

  private static double endMm(List<Double> ends, int piece) {
    int n = ends.size();
    int laps = piece / n;
    return ends.get(piece % n) + laps * ends.get(n - 1);
  }

  private static boolean isPart(Segment piece, double tightMm) {
    return piece instanceof Arc arc
        ? arc.radius() <= tightMm || arc.length() < BIT_MM
        : piece.start().distance(piece.end()) < BIT_MM;
  }
}
