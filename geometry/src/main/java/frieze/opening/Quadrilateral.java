package frieze.opening;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Four straight sides, counter-clockwise from the lower left corner, and what is in the corners.
 *
 * <p>The sides are bottom, right, top, left; corner {@code i} lies before side {@code i}.
 */
record Quadrilateral(List<Point> corners, Bead bead) {
  private static final int ARC_SAMPLES = 16;

  /** A corner without a bead, or with one that would not be seen, is one point. */
  private static final double NOTHING_MM = 1e-9;

  Quadrilateral {
    corners = List.copyOf(corners);
  }

  Point corner(int i) {
    return corners.get(Math.floorMod(i, 4));
  }

  /** The direction along a side. */
  Point along(int side) {
    return corner(side + 1).minus(corner(side)).times(1 / length(side));
  }

  /** How far a point lies inside of a side. */
  double depth(int side, Point p) {
    return along(side).cross(p.minus(corner(side)));
  }

  double length(int side) {
    return corner(side).distance(corner(side + 1));
  }

  /** The same sides moved inwards, and the bead by the lesser of its two sides. */
  Quadrilateral inset(List<Double> gapsMm) {
    List<Point> moved = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      moved.add(meet(i + 3, gapsMm.get((i + 3) % 4), i, gapsMm.get(i)));
    }
    return new Quadrilateral(moved, bead);
  }

  private Point meet(int sideA, double gapA, int sideB, double gapB) {
    Point a = along(sideA);
    Point b = along(sideB);
    Point at = corner(sideB);
    double cross = a.cross(b);
    return at.plus(a.times(-gapB / cross)).plus(b.times(gapA / cross));
  }

  /** Whether the sides still run the way they did, all of some length. */
  boolean runsAs(Quadrilateral before) {
    for (int side = 0; side < 4; side++) {
      if (!(corner(side + 1).minus(corner(side)).dot(before.along(side)) > 0)) {
        return false;
      }
    }
    return true;
  }

  /** The centre of a round bead: its radius away from both sides of a corner. */
  Point centre(int corner, double radiusMm) {
    return meet(corner + 3, radiusMm, corner, radiusMm);
  }

  /** From a corner to where its round bead touches the sides. */
  private double tangentMm(int corner, double radiusMm) {
    Point a = along(corner + 3);
    Point b = along(corner);
    return radiusMm * a.cross(b) / (1 + a.dot(b));
  }

  /**
   * How much smaller than the bead's the radius of a panel's corner may be, so that it is nowhere
   * nearer to the bead than a gap: its arc must not begin before the bead does.
   */
  double roundedBy(int corner, Point panelCorner, double gapMm) {
    Point from = panelCorner.minus(corner(corner));
    double perRadius = tangentMm(corner, 1);
    double one = from.dot(along(corner)) / perRadius;
    double two = -from.dot(along(corner + 3)) / perRadius;
    return Math.min(gapMm, Math.min(one, two));
  }

  /** What a corner is cut to, as an arc or a bevel; empty for a sharp one. */
  Optional<Segment> corner(int corner, double sizeMm) {
    if (sizeMm <= NOTHING_MM) {
      return Optional.empty();
    }
    double reach = bead.shape() == Bead.Shape.ROUND ? tangentMm(corner, sizeMm) : sizeMm;
    Point at = corner(corner);
    Point a = along(corner + 3);
    Point b = along(corner);
    Point from = at.minus(a.times(reach));
    Point to = at.plus(b.times(reach));
    if (bead.shape() == Bead.Shape.BEVELLED) {
      return Optional.of(new Line(from, to));
    }
    double turn = Math.atan2(a.cross(b), a.dot(b));
    return Optional.of(new Arc(from, to, centre(corner, sizeMm), turn));
  }

  /** The closed outline; empty if two corners would meet. */
  Optional<Path> outline(List<Double> sizesMm) {
    List<Segment> segments = new ArrayList<>();
    List<Point> leave = new ArrayList<>();
    List<Point> arrive = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Optional<Segment> cut = corner(i, sizesMm.get(i));
      Point at = corner(i);
      arrive.add(cut.map(Segment::start).orElse(at));
      leave.add(cut.map(Segment::end).orElse(at));
    }
    for (int i = 0; i < 4; i++) {
      corner(i, sizesMm.get(i)).ifPresent(segments::add);
      Point from = leave.get(i);
      Point to = arrive.get((i + 1) % 4);
      if (!(to.minus(from).dot(along(i)) > NOTHING_MM)) {
        return Optional.empty();
      }
      segments.add(new Line(from, to));
    }
    return Optional.of(new Path(segments, true));
  }

  /** Points along what a corner is cut to. */
  List<Point> samples(int corner, double sizeMm) {
    Optional<Segment> cut = corner(corner, sizeMm);
    if (cut.isEmpty()) {
      return List.of(corner(corner));
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= ARC_SAMPLES; i++) {
      points.add(cut.get().at((double) i / ARC_SAMPLES));
    }
    return points;
  }

  /** How far a point near a corner is from its bead and its two sides; below 0 it is beyond. */
  double clearance(int corner, Point p) {
    double one = depth(corner + 3, p);
    double two = depth(corner, p);
    double sides = Math.min(one, two);
    double size = bead.sizeMm();
    if (size <= NOTHING_MM) {
      return sides;
    }
    if (bead.shape() == Bead.Shape.ROUND) {
      Point from = p.minus(centre(corner, size));
      boolean atBead = from.dot(along(corner)) < 0 && from.dot(along(corner + 3)) > 0;
      return atBead ? size - from.norm() : sides;
    }
    Segment bevel = corner(corner, size).orElseThrow();
    return Math.min(sides, depthOf(bevel, p));
  }

  /** How far a point lies inside of a bevel. */
  static double depthOf(Segment bevel, Point p) {
    Point d = bevel.end().minus(bevel.start());
    return d.cross(p.minus(bevel.start())) / d.norm();
  }
}
