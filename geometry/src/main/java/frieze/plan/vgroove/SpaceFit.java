package frieze.plan.vgroove;

import frieze.curve.ArcFitter;
import frieze.curve.Line;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.motion.Position;
import java.util.ArrayList;
import java.util.List;

/**
 * Replaces polylines in space by few pieces: lines and arcs where the depth stays the same, lines
 * elsewhere.
 *
 * <p>Guarantees: the walls that a cone leaves along the result lie within the tolerance of those
 * along the polyline; first and last point stay.
 *
 * @param tangent how far a wall moves sideways for each millimetre of depth
 * @param toleranceMm sideways
 */
record SpaceFit(double tangent, double toleranceMm) {
  /** Depths that differ by less are the same: a micrometre. */
  private static final double LEVEL_MM = 1e-3;

  /** Fewer points than this are not worth an arc. */
  private static final int FEWEST_FOR_ARCS = 4;

  /** The pieces along a polyline of at least two points. */
  List<Stroke.Piece> pieces(List<Position> points) {
    List<Stroke.Piece> pieces = new ArrayList<>();
    int from = 0;
    while (from < points.size() - 1) {
      int level = endOfLevel(points, from);
      if (level - from + 1 >= FEWEST_FOR_ARCS) {
        addLevel(points.subList(from, level + 1), pieces);
        from = level;
      } else {
        int to = endOfLine(points, from);
        addLine(points.get(from), points.get(to), pieces);
        from = to;
      }
    }
    return pieces;
  }

  private static int endOfLevel(List<Position> points, int from) {
    int to = from;
    double low = points.get(from).z();
    double high = low;
    while (to + 1 < points.size()) {
      low = Math.min(low, points.get(to + 1).z());
      high = Math.max(high, points.get(to + 1).z());
      if (high - low > LEVEL_MM) {
        break;
      }
      to++;
    }
    return to;
  }

  private void addLevel(List<Position> level, List<Stroke.Piece> into) {
    List<Point> flat = new ArrayList<>();
    for (Position p : level) {
      if (flat.isEmpty() || !flat.get(flat.size() - 1).equals(p.xy())) {
        flat.add(p.xy());
      }
    }
    if (flat.size() < 2) {
      return;
    }
    double z = level.get(level.size() - 1).z();
    double tolerance = toleranceMm - tangent * LEVEL_MM;
    for (Segment segment : ArcFitter.fit(flat, false, tolerance).segments()) {
      into.add(new Stroke.Piece(segment, z));
    }
  }

  private static void addLine(Position from, Position to, List<Stroke.Piece> into) {
    if (!from.equals(to)) {
      into.add(new Stroke.Piece(new Line(from.xy(), to.xy()), to.z()));
    }
  }

  /** The last point that a line reaches so that all between are near it. */
  private int endOfLine(List<Position> points, int from) {
    int to = from + 1;
    while (to + 1 < points.size() && isNear(points, from, to + 1)) {
      to++;
    }
    return to;
  }

  private boolean isNear(List<Position> points, int from, int to) {
    Position a = points.get(from);
    Position b = points.get(to);
    Point along = b.xy().minus(a.xy());
    double square = along.dot(along);
    for (int i = from + 1; i < to; i++) {
      Position p = points.get(i);
      double share = square == 0 ? 0 : p.xy().minus(a.xy()).dot(along) / square;
      if (share < 0 || share > 1) {
        return false;
      }
      double sideways = p.xy().distance(a.xy().plus(along.times(share)));
      double deep = Math.abs(p.z() - (a.z() + share * (b.z() - a.z())));
      if (sideways + tangent * deep > toleranceMm) {
        return false;
      }
    }
    return true;
  }
}
