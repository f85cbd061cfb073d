package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tinfour.common.IConstraint;
import org.tinfour.common.LinearConstraint;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;

/**
 * The triangles of a region's boundary samples that lie inside it: a constrained Delaunay
 * triangulation, whose triangles hang together as the region does.
 */
final class AxisTriangles {
  /** The triangulation takes two samples for one that are closer than 1e-5 of this. */
  private static final double NOMINAL_SPACING_MM = 0.01;

  /** A region smaller than this many spacings gets a smaller one. */
  private static final double SPACINGS = 16;

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
    IncrementalTin tin = new IncrementalTin(nominalSpacing(s));
    List<Vertex> vertices = new ArrayList<>(s.size());
    for (int i = 0; i < s.size(); i++) {
      vertices.add(new Vertex(s.x[i], s.y[i], 0, i));
    }
    tin.add(vertices, null);
    tin.addConstraints(constraints(s, vertices), false);
    TriangleCollector.visitTriangles(tin, t -> result.addIfInside(s, inside, t));
    tin.dispose();
    result.link(s);
    return result;
  }

  private static double nominalSpacing(AxisSamples s) {
    double farthest = 0;
    for (int i = 1; i < s.size(); i++) {
      farthest = Math.max(farthest, Math.hypot(s.x[i] - s.x[0], s.y[i] - s.y[0]));
    }
    return Math.min(NOMINAL_SPACING_MM, farthest / SPACINGS);
  }

  private static List<IConstraint> constraints(AxisSamples s, List<Vertex> vertices) {
    List<IConstraint> constraints = new ArrayList<>();
    int first = 0;
    for (int i = 0; i < s.size(); i++) {
      if (s.next[i] != i + 1) {
        List<Vertex> ring = new ArrayList<>(vertices.subList(first, i + 1));
        ring.add(vertices.get(first));
        constraints.add(new LinearConstraint(ring));
        first = i + 1;
      }
    }
    return constraints;
  }

  private void addIfInside(AxisSamples s, Region.Locator inside, Vertex[] t) {
    int a = t[0].getIndex();
    int b = t[1].getIndex();
    int c = t[2].getIndex();
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
