package frieze.torch;

import frieze.curve.Arc;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.plan.cut.Track;
import java.util.ArrayList;
import java.util.List;

/** Finds the corners of a track: joints that turn, and arcs so tight that they are corners. */
final class Corners {
  private static final double TURN_RAD = Math.toRadians(20);
  private static final double TIGHT_MM = 2.5;

  private Corners() {}

  /** The places of the corners along a closed track. */
  static List<Double> of(Track track) {
    List<Segment> pieces = track.path().segments();
    List<Double> joints = track.joints();
    List<Double> corners = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Segment piece = pieces.get(i);
      Segment next = pieces.get((i + 1) % pieces.size());
      double end = joints.get(i);
      if (Math.abs(turnRad(piece, next)) > TURN_RAD) {
        corners.add(end);
      }
      if (piece instanceof Arc arc
          && arc.radius() < TIGHT_MM
          && Math.abs(arc.sweepRad()) > TURN_RAD) {
        corners.add(end - arc.length() / 2);
      }
    }
    return corners;
  }

  /** By how much the way turns where two pieces meet; left is positive. */
  static double turnRad(Segment before, Segment after) {
    Point a = before.tangentAt(1);
    Point b = after.tangentAt(0);
    return StrictMath.atan2(a.cross(b), a.dot(b));
  }

  /** The distance along a closed track to the nearest corner. */
  static double distanceMm(List<Double> corners, double atMm, double lengthMm) {
    double nearest = Double.POSITIVE_INFINITY;
    for (double corner : corners) {
      double away = Math.abs(corner - atMm);
      nearest = Math.min(nearest, Math.min(away, lengthMm - away));
    }
    return nearest;
  }
}
