package frieze.region;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** An area of the plane, possibly in several parts, possibly with holes, possibly empty. */
public final class Region {
  /** A part no larger than this is rounding, in square millimetres. */
  private static final double SLIVER_MM2 = 1e-12;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** No area at all. */
  public static final Region EMPTY = new Region(FACTORY.createPolygon());

  private final Geometry geometry;

  /** Wraps a valid polygon or multipolygon, in the order of its parts made stable. */
  Region(Geometry polygonal) {
    this.geometry = polygonal.norm();
  }

  /**
   * Makes the area that closed paths enclose. Open paths are closed by a straight line, as for
   * filling in SVG.
   *
   * @param flattenMm the most by which the polygon departs from the curves
   */
  public static Region of(List<Path> paths, FillRule rule, double flattenMm) {
    List<List<Point>> rings = new ArrayList<>();
    for (Path path : paths) {
      rings.add(Flattener.flatten(path, flattenMm));
    }
    return FillRuleResolver.resolve(rings, rule);
  }

  /** Makes the area inside one ring of points. */
  public static Region ofRing(List<Point> ring) {
    return FillRuleResolver.resolve(List.of(ring), FillRule.NONZERO);
  }

  Geometry geometry() {
    return geometry;
  }

  static GeometryFactory factory() {
    return FACTORY;
  }

  public boolean isEmpty() {
    return geometry.isEmpty();
  }

  /** The area in square millimetres. */
  public double area() {
    return geometry.getArea();
  }

  /** The length of all its boundary. */
  public double perimeter() {
    return geometry.getLength();
  }

  public Bounds bounds() {
    Envelope e = geometry.getEnvelopeInternal();
    return e.isNull()
        ? Bounds.EMPTY
        : new Bounds(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY());
  }

  public Region union(Region other) {
    return overlay(other, OverlayNG.UNION);
  }

  /** The area of all regions together. Cost: that of a union of neighbours, then of those. */
  public static Region union(List<Region> regions) {
    List<Geometry> all = regions.stream().filter(r -> !r.isEmpty()).map(r -> r.geometry).toList();
    return switch (all.size()) {
      case 0 -> EMPTY;
      case 1 -> new Region(all.get(0));
      default -> ofPolygons(OverlayNGRobust.union(all));
    };
  }

  public Region intersection(Region other) {
    return overlay(other, OverlayNG.INTERSECTION);
  }

  public Region minus(Region other) {
    return overlay(other, OverlayNG.DIFFERENCE);
  }

  private Region overlay(Region other, int operation) {
    return ofPolygons(OverlayNGRobust.overlay(geometry, other.geometry, operation));
  }

  /**
   * Keeps the polygons of a result and drops what may come with them: points, lines, and slivers of
   * a square nanometre's size that rounding leaves where lines cross.
   */
  static Region ofPolygons(Geometry mixed) {
    List<Polygon> polygons = new ArrayList<>();
    for (int i = 0; i < mixed.getNumGeometries(); i++) {
      if (mixed.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > SLIVER_MM2) {
        polygons.add(polygon);
      }
    }
    return polygons.size() == 1
        ? new Region(polygons.get(0))
        : new Region(FACTORY.createMultiPolygon(polygons.toArray(Polygon[]::new)));
  }

  public Region transformed(Affine m) {
    AffineTransformation map = new AffineTransformation(m.a(), m.c(), m.e(), m.b(), m.d(), m.f());
    return new Region(map.transform(geometry));
  }

  /** Whether a point lies inside or on the boundary. For many points, use {@link #locator}. */
  public boolean contains(Point p) {
    return locator().contains(p);
  }

  /** Whether all of a straight line lies inside or on the boundary. */
  public boolean containsSegment(Point from, Point to) {
    Coordinate[] ends = {new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())};
    return geometry.covers(FACTORY.createLineString(ends));
  }

  /** The stretches of a polyline that lie inside, in its order and direction. */
  public List<List<Point>> inside(List<Point> line) {
    return isEmpty() ? List.of() : new LineCut(this).inside(line);
  }

  /** An index for asking about many points. Cost: O(n log n) once, then O(log n) a point. */
  public Locator locator() {
    if (geometry.isEmpty()) {
      return p -> false;
    }
    IndexedPointInAreaLocator index = new IndexedPointInAreaLocator(geometry);
    return p -> index.locate(new Coordinate(p.x(), p.y())) != Location.EXTERIOR;
  }

  /** Answers whether points lie inside a region or on its boundary. */
  @FunctionalInterface
  public interface Locator {
    boolean contains(Point p);
  }

  /** The connected parts, each with one outer ring. */
  public List<Region> parts() {
    List<Region> parts = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (!geometry.getGeometryN(i).isEmpty()) {
        parts.add(new Region(geometry.getGeometryN(i)));
      }
    }
    return parts;
  }

  /** The part with the largest area, the first of equal ones; empty if there is none. */
  public Region largestPart() {
    Region largest = EMPTY;
    for (Region part : parts()) {
      largest = part.area() > largest.area() ? part : largest;
    }
    return largest;
  }

  /** All rings, the area on their left; outer rings first within each part. */
  public List<Ring> rings() {
    List<Ring> rings = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      Polygon polygon = (Polygon) geometry.getGeometryN(i);
      if (polygon.isEmpty()) {
        continue;
      }
      rings.add(ring(polygon.getExteriorRing(), false));
      for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
        rings.add(ring(polygon.getInteriorRingN(h), true));
      }
    }
    return rings;
  }

  /** The closed lines around the parts and their holes, the area on their right. */
  List<Coordinate[]> lines() {
    List<Coordinate[]> lines = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      Polygon polygon = (Polygon) geometry.getGeometryN(i);
      if (!polygon.isEmpty()) {
        lines.add(polygon.getExteriorRing().getCoordinates());
        for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
          lines.add(polygon.getInteriorRingN(h).getCoordinates());
        }
      }
    }
    return lines;
  }

  private static Ring ring(LinearRing line, boolean hole) {
    Coordinate[] c = line.getCoordinates();
    boolean reverse = org.locationtech.jts.algorithm.Orientation.isCCW(c) == hole;
    List<Point> points = new ArrayList<>(c.length - 1);
    for (int i = 0; i < c.length - 1; i++) {
      Coordinate at = c[reverse ? c.length - 1 - i : i];
      points.add(new Point(at.x, at.y));
    }
    return new Ring(points, hole);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Region region && geometry.equalsExact(region.geometry);
  }

  @Override
  public int hashCode() {
    return geometry.getEnvelopeInternal().hashCode();
  }

  @Override
  public String toString() {
    return geometry.toText();
  }
}
