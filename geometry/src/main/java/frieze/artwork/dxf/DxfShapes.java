package frieze.artwork.dxf;

import frieze.artwork.dxf.DxfSpace.Vector;
import frieze.artwork.dxf.DxfSpline.BrokenSpline;
import frieze.curve.Arc;
import frieze.curve.EllipticArc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws single entities as they are seen from above the drawing.
 *
 * <p>Source: the DXF reference, entities section, as known from memory.
 */
final class DxfShapes {
  private static final double FULL_TURN = 2 * Math.PI;

  /** Bulges below this are straight lines to a double's precision. */
  private static final double STRAIGHT = 1e-12;

  /** Of the size of a spline: what a cubic may depart from it by. */
  private static final double SPLINE_TOLERANCE = 1e-7;

  private static final int FIT_POINTS = 11;

  /** An ellipse of which no more than this part is seen is seen from its edge. */
  private static final double SEEN = 1e-9;

  private DxfShapes() {}

  /** Whether an entity is drawn here. */
  static boolean isShape(String type) {
    return switch (type) {
      case "LINE",
          "ARC",
          "CIRCLE",
          "ELLIPSE",
          "LWPOLYLINE",
          "POLYLINE",
          "SPLINE",
          "SOLID",
          "TRACE" ->
          true;
      default -> false;
    };
  }

  /**
   * Draws a shape.
   *
   * @param space from the frame around it, a block or the drawing, to millimetres
   * @return nothing for a shape without size, or one that is seen from its edge
   * @throws BrokenSpline if the numbers of a spline don't go together
   */
  static Optional<Path> draw(DxfEntity e, DxfSpace space) throws BrokenSpline {
    return switch (e.type()) {
      case "LINE" -> path(lines(List.of(seen(e, 10, space), seen(e, 11, space)), false), false);
      case "ARC" -> flat(e, space, arc(e));
      case "CIRCLE" -> flat(e, space, circle(e));
      case "ELLIPSE" -> ellipse(e, space);
      case "LWPOLYLINE" -> inFrame(e, space, e.number(38, 0), polyline(vertices(e), e));
      case "POLYLINE" -> oldPolyline(e, space);
      case "SPLINE" -> spline(e, space);
      default -> flat(e, space, solid(e));
    };
  }

  private static Point seen(DxfEntity e, int code, DxfSpace space) {
    return space.apply(e.vector(code)).fromAbove();
  }

  private static Optional<Path> path(List<Segment> segments, boolean closed) {
    return segments.isEmpty() ? Optional.empty() : Optional.of(new Path(segments, closed));
  }

  /** A shape in the plane of its own frame, at the height of its first point. */
  private static Optional<Path> flat(DxfEntity e, DxfSpace space, Optional<Path> drawn) {
    return inFrame(e, space, e.number(30, 0), drawn);
  }

  private static Optional<Path> inFrame(
      DxfEntity e, DxfSpace space, double height, Optional<Path> drawn) {
    DxfSpace own = DxfSpace.of(e).then(space);
    return own.onEdge() ? Optional.empty() : drawn.map(p -> p.transformed(own.plane(height)));
  }

  private static List<Segment> lines(List<Point> points, boolean closed) {
    List<Vertex> vertices = points.stream().map(p -> new Vertex(p, 0)).toList();
    return segments(vertices, closed);
  }

  private static Optional<Path> arc(DxfEntity e) {
    double r = e.number(40, 0);
    double from = Math.toRadians(e.number(50, 0));
    double sweep = Math.toRadians(e.number(51, 360)) - from;
    sweep -= FULL_TURN * Math.floor(sweep / FULL_TURN);
    if (!(r > 0)) {
      return Optional.empty();
    }
    boolean full = sweep == 0;
    return path(List.of(Arc.polar(e.point(10), r, from, full ? FULL_TURN : sweep)), full);
  }

  private static Optional<Path> circle(DxfEntity e) {
    double r = e.number(40, 0);
    return r > 0 ? Optional.of(Path.circle(e.point(10), r)) : Optional.empty();
  }

  /** An ellipse has its centre and axis in the frame around it; its turn is about its own z. */
  private static Optional<Path> ellipse(DxfEntity e, DxfSpace space) {
    double ratio = e.number(40, 1);
    double from = e.number(41, 0);
    double sweep = e.number(42, FULL_TURN) - from;
    sweep -= FULL_TURN * Math.floor(sweep / FULL_TURN);
    boolean full = sweep == 0 || FULL_TURN - sweep < 1e-9;
    sweep = full ? FULL_TURN : sweep;
    Vector major = e.vector(11);
    Vector minor = DxfSpace.up(e).cross(major).times(ratio);
    Point centre = seen(e, 10, space);
    Point u = space.direction(major).fromAbove();
    Point v = space.direction(minor).fromAbove();
    double area = u.cross(v);
    if (!(Math.abs(area) > SEEN * space.direction(major).cross(space.direction(minor)).norm())) {
      return Optional.empty();
    }
    Point start = onEllipse(centre, u, v, from);
    Point end = full ? start : onEllipse(centre, u, v, from + sweep);
    boolean round = v.equals(new Point(-u.y(), u.x())) || v.equals(new Point(u.y(), -u.x()));
    Segment arc =
        round
            ? new Arc(start, end, centre, Math.signum(area) * sweep)
            : new EllipticArc(start, end, centre, u, v, from, sweep);
    return path(List.of(arc), full);
  }

  private static Point onEllipse(Point centre, Point u, Point v, double angle) {
    return centre.plus(u.times(StrictMath.cos(angle))).plus(v.times(StrictMath.sin(angle)));
  }

  /** A corner of a polyline; the bulge is the tangent of a quarter of the turn to the next one. */
  private record Vertex(Point at, double bulge) {}

  private static List<Vertex> vertices(DxfEntity e) {
    List<Vertex> vertices = new ArrayList<>();
    double x = Double.NaN;
    double y = 0;
    double bulge = 0;
    for (DxfTag tag : e.tags()) {
      if (tag.code() == 10) {
        if (!Double.isNaN(x)) {
          vertices.add(new Vertex(new Point(x, y), bulge));
        }
        x = e.number(tag);
        y = 0;
        bulge = 0;
      } else if (tag.code() == 20) {
        y = e.number(tag);
      } else if (tag.code() == 42) {
        bulge = e.number(tag);
      }
    }
    if (!Double.isNaN(x)) {
      vertices.add(new Vertex(new Point(x, y), bulge));
    }
    return vertices;
  }

  /** Whether a polyline is a mesh, which has no outline. */
  static boolean isMesh(DxfEntity e) {
    return e.type().equals("POLYLINE") && (e.flag(70, 16) || e.flag(70, 64));
  }

  /** Whether a polyline is drawn wider than a line, in all of it or in a part. */
  static boolean isWide(DxfEntity e) {
    boolean own = e.type().endsWith("POLYLINE") && (positive(e, 40) || positive(e, 41));
    boolean all = e.type().equals("LWPOLYLINE") && positive(e, 43);
    return own || all || e.parts().stream().anyMatch(v -> positive(v, 40) || positive(v, 41));
  }

  private static boolean positive(DxfEntity e, int code) {
    return e.tags().stream().anyMatch(t -> t.code() == code && e.number(t) > 0);
  }

  /** Control points of a smoothed polyline are not on its line. */
  private static Optional<Path> oldPolyline(DxfEntity e, DxfSpace space) {
    boolean inSpace = e.flag(70, 8);
    List<Vertex> vertices = new ArrayList<>();
    for (DxfEntity v : e.parts()) {
      if (v.type().equals("VERTEX") && !v.flag(70, 16)) {
        vertices.add(
            inSpace ? new Vertex(seen(v, 10, space), 0) : new Vertex(v.point(10), v.number(42, 0)));
      }
    }
    Optional<Path> drawn = polyline(vertices, e);
    return inSpace ? drawn : flat(e, space, drawn);
  }

  private static Optional<Path> polyline(List<Vertex> vertices, DxfEntity e) {
    List<Segment> segments = segments(vertices, e.flag(70, 1));
    return path(segments, comesBack(segments));
  }

  private static boolean comesBack(List<Segment> segments) {
    return segments.size() > 1
        && segments.get(0).start().equals(segments.get(segments.size() - 1).end());
  }

  private static List<Segment> segments(List<Vertex> vertices, boolean closed) {
    List<Segment> segments = new ArrayList<>();
    int n = vertices.size();
    for (int i = 0; i < (closed ? n : n - 1); i++) {
      Vertex from = vertices.get(i);
      Point to = vertices.get((i + 1) % n).at();
      if (!from.at().equals(to)) {
        segments.add(bulged(from.at(), to, from.bulge()));
      }
    }
    return segments;
  }

  /** A positive bulge turns counter-clockwise. */
  private static Segment bulged(Point from, Point to, double bulge) {
    if (Math.abs(bulge) < STRAIGHT) {
      return new Line(from, to);
    }
    Point chord = to.minus(from);
    Point left = new Point(-chord.y(), chord.x());
    Point centre = from.towards(to, 0.5).plus(left.times((1 - bulge * bulge) / (4 * bulge)));
    return new Arc(from, to, centre, 4 * StrictMath.atan(bulge));
  }

  private static Optional<Path> solid(DxfEntity e) {
    List<Point> corners = new ArrayList<>(List.of(e.point(10), e.point(11)));
    if (e.has(13)) {
      corners.add(e.point(13));
    }
    corners.add(e.point(12));
    List<Segment> segments = lines(corners, true);
    return path(segments.size() < 3 ? List.of() : segments, true);
  }

  /** Whether a spline has points that it goes through and no control points. */
  static boolean isThroughPoints(DxfEntity e) {
    return e.type().equals("SPLINE") && !e.has(10) && e.has(FIT_POINTS);
  }

  private static List<Point> seenPoints(DxfEntity e, int code, DxfSpace space) {
    return e.vectors(code).stream().map(v -> space.apply(v).fromAbove()).toList();
  }

  /** Its control points are mapped: so is the curve. */
  private static Optional<Path> spline(DxfEntity e, DxfSpace space) throws BrokenSpline {
    List<Segment> segments;
    if (isThroughPoints(e)) {
      segments = ThroughPoints.curve(seenPoints(e, FIT_POINTS, space), e.flag(70, 1));
    } else {
      List<Point> control = seenPoints(e, 10, space);
      double size = 0;
      for (Point p : control) {
        size = Math.max(size, p.distance(control.get(0)));
      }
      segments =
          DxfSpline.of(e.integer(71, 3), e.numbers(40), control, e.numbers(41))
              .cubics(Math.max(size * SPLINE_TOLERANCE, Double.MIN_NORMAL));
    }
    boolean joined =
        !segments.isEmpty()
            && segments.get(0).start().equals(segments.get(segments.size() - 1).end());
    return path(segments, joined);
  }
}
