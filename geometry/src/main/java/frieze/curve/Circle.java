package frieze.curve;

/** A directed circular arc under test: its circle, and the sector that it covers. */
final class Circle {
  /** A smaller sweep is a line. */
  static final double FLAT_RAD = 1e-7;

  private final double x;
  private final double y;
  private final double radius;
  private final double sweep;

  /** The middle direction of the sector, of unit length. */
  private final double midX;

  private final double midY;

  private Circle(double x, double y, double radius, double sweep, double midX, double midY) {
    this.x = x;
    this.y = y;
    this.radius = radius;
    this.sweep = sweep;
    this.midX = midX;
    this.midY = midY;
  }

  /**
   * The circle through two points, seen from its centre under the sweep (counter-clockwise > 0).
   */
  static Circle through(double ax, double ay, double bx, double by, double sweep) {
    double dx = bx - ax;
    double dy = by - ay;
    double chord = Math.sqrt(dx * dx + dy * dy);
    double radius = chord / 2 / Math.abs(StrictMath.sin(sweep / 2));
    double toCentre = 0.5 / StrictMath.tan(sweep / 2);
    double sign = Math.signum(sweep);
    return new Circle(
        (ax + bx) / 2 - dy * toCentre,
        (ay + by) / 2 + dx * toCentre,
        radius,
        sweep,
        sign * dy / chord,
        -sign * dx / chord);
  }

  Arc arc(Point from, Point to) {
    return new Arc(from, to, new Point(x, y), sweep);
  }

  /** Whether the arc and the polyline of its ends and the vertices between them agree. */
  boolean holds(FitSource s, int first, int last, double tol) {
    if (first > last) {
      double halfChord = Math.abs(radius * StrictMath.sin(sweep / 2));
      return !leavesChord(halfChord * halfChord, tol);
    }
    for (int quarter = 1; quarter <= 3; quarter++) {
      int k = first + (last - first) * quarter / 4;
      if (off(s.x[k], s.y[k]) > tol) {
        return false;
      }
    }
    double half = sweep / 2;
    double sign = Math.signum(sweep);
    double fromX = x + radius * (midX * StrictMath.cos(half) + midY * StrictMath.sin(half));
    double fromY = y + radius * (midY * StrictMath.cos(half) - midX * StrictMath.sin(half));
    double toX = x + radius * (midX * StrictMath.cos(half) - midY * StrictMath.sin(half));
    double toY = y + radius * (midY * StrictMath.cos(half) + midX * StrictMath.sin(half));
    double atX = fromX;
    double atY = fromY;
    double least = radius * StrictMath.cos(half) - tol;
    for (int k = first; k <= last + 1; k++) {
      double nextX = k > last ? toX : s.x[k];
      double nextY = k > last ? toY : s.y[k];
      boolean inside = (nextX - x) * midX + (nextY - y) * midY >= least;
      if (!inside || !edgeHolds(atX, atY, nextX, nextY, sign, tol)) {
        return false;
      }
      atX = nextX;
      atY = nextY;
    }
    return true;
  }

  /** Whether an edge runs the arc's way round, within the tolerance on both sides. */
  boolean edgeHolds(double ax, double ay, double bx, double by, double sign, double tol) {
    double dx = bx - ax;
    double dy = by - ay;
    double px = ax - x;
    double py = ay - y;
    double cross = px * dy - py * dx;
    if (cross * sign <= 0 || off(bx, by) > tol) {
      return false;
    }
    double squared = dx * dx + dy * dy;
    double along = -(px * dx + py * dy);
    if (along <= 0 || along >= squared) {
      return true;
    }
    double nearest = radius - tol;
    return nearest <= 0 || cross * cross >= nearest * nearest * squared;
  }

  private boolean leavesChord(double halfChordSquared, double tol) {
    double sagitta = radius - Math.sqrt(Math.max(0, radius * radius - halfChordSquared));
    return Math.abs(sweep) > Math.PI || sagitta > tol;
  }

  double off(double px, double py) {
    double dx = px - x;
    double dy = py - y;
    return Math.abs(Math.sqrt(dx * dx + dy * dy) - radius);
  }
}
