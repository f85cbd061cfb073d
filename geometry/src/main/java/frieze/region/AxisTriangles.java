package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import org.locationtech.jts.triangulate.tri.Tri;

/**
 * The triangles of a region's boundary samples that lie inside it: a constrained Delaunay
 * triangulation, whose triangles hang together as the region does.
 */
final class AxisTriangles {
  /** A triangle lower than this is rounding. */
  private static final double FLAT_MM = 1e-9;

  static final int BORDER = -1;

  /** Three samples of each triangle, counter-clockwise. */
  final List<int[]> corners = new ArrayList<>();

  /** The neighbours of each triangle across the sides 01, 12, 20; {@link #BORDER} for none. */
  final List<int[]> neighbours = new ArrayList<>();

  private AxisTriangles() {}

  static AxisTriangles of(AxisSamples s, Region.Locator inside) {
    AxisTriangles result = new AxisTriangles();
    Map<Coordinate, Integer> indices = new HashMap<>();
    List<LinearRing> rings = new ArrayList<>();
    int first = 0;
    for (int i = 0; i < s.size(); i++) {
      indices.put(new Coordinate(s.x[i], s.y[i]), i);
      if (s.next[i] != i + 1) {
        rings.add(ring(s, first, i));
        first = i + 1;
      }
    }
    LinearRing[] holes = rings.subList(1, rings.size()).toArray(LinearRing[]::new);
    Polygon polygon = Region.factory().createPolygon(rings.get(0), holes);
    for (Tri t : new ConstrainedDelaunayTriangulator(polygon).getTriangles()) {
      int[] v = new int[3];
      for (int k = 0; k < 3; k++) {
        v[k] = Objects.requireNonNull(indices.get(t.getCoordinate(k)));
      }
      result.addIfInside(s, inside, new int[] {v[0], v[2], v[1]});
    }
    result.link(s);
    return result;
  }

  private static LinearRing ring(AxisSamples s, int first, int last) {
    Coordinate[] c = new Coordinate[last - first + 2];
    for (int i = first; i <= last; i++) {
      c[i - first] = new Coordinate(s.x[i], s.y[i]);
    }
    c[c.length - 1] = c[0].copy();
    return Region.factory().createLinearRing(c);
  }

  private void addIfInside(AxisSamples s, Region.Locator inside, int[] t) {
    int a = t[0];
    int b = t[1];
    int c = t[2];
    if (isFlat(s, a, b, c)) {
      return;
    }
    Point middle = new Point((s.x[a] + s.x[b] + s.x[c]) / 3, (s.y[a] + s.y[b] + s.y[c]) / 3);
    if (inside.contains(middle)) {
      corners.add(new int[] {a, b, c});
    }
  }

  /** Samples along a straight edge are off it by rounding, and give triangles of no height. */
  private static boolean isFlat(AxisSamples s, int a, int b, int c) {
    double bx = s.x[b] - s.x[a];
    double by = s.y[b] - s.y[a];
    double cx = s.x[c] - s.x[a];
    double cy = s.y[c] - s.y[a];
    double twiceArea = bx * cy - by * cx;
    double longest =
        Math.max(Math.hypot(bx, by), Math.max(Math.hypot(cx, cy), Math.hypot(cx - bx, cy - by)));
    return twiceArea <= FLAT_MM * longest;
  }

  private void link(AxisSamples s) {
    Map<Long, Integer> bySide = new HashMap<>();
    for (int t = 0; t < corners.size(); t++) {
      for (int side = 0; side < 3; side++) {
        bySide.put(key(from(t, side), to(t, side)), t);
      }
    }
    for (int t = 0; t < corners.size(); t++) {
      int[] across = new int[3];
      for (int side = 0; side < 3; side++) {
        int a = from(t, side);
        int b = to(t, side);
        across[side] = s.joined(a, b) ? BORDER : bySide.getOrDefault(key(b, a), BORDER);
      }
      neighbours.add(across);
    }
  }

  private int from(int triangle, int side) {
    return corners.get(triangle)[side];
  }

  private int to(int triangle, int side) {
    return corners.get(triangle)[(side + 1) % 3];
  }

  private static long key(int a, int b) {
    return ((long) a << 32) | b;
  }

  int size() {
    return corners.size();
  }
}
