package frieze.trace;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import frieze.curve.Arc;
import frieze.curve.ArcFitter;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.fixtures.OpenIcons;
import frieze.region.Region;
import frieze.region.Ring;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Artwork of known shape. */
final class Motifs {
  static final double FLAT_MM = 0.0005;
  private static final double SEAM_MM = 1e-6;

  private Motifs() {}

  /** Rings with the area on their left, the lower left corner of their bounds at the origin. */
  record Motif(String name, List<List<Point>> rings, Bounds bounds) {
    static Motif of(String name, Region drawn) {
      Region region = seamless(drawn);
      Bounds b = region.bounds();
      List<List<Point>> rings = new ArrayList<>();
      region
          .rings()
          .forEach(
              r ->
                  rings.add(
                      r.points().stream()
                          .map(p -> p.minus(new Point(b.minX(), b.minY())))
                          .toList()));
      return new Motif(name, rings, new Bounds(0, 0, b.width(), b.height()));
    }

    /** The true corners. */
    List<Point> corners(double leastTurnRad) {
      List<Point> corners = new ArrayList<>();
      for (List<Point> ring : rings) {
        for (int i = 0; i < ring.size(); i++) {
          Point before = ring.get(i).minus(ring.get(Math.floorMod(i - 1, ring.size())));
          Point after = ring.get((i + 1) % ring.size()).minus(ring.get(i));
          Point from = ring.get(i).minus(walked(ring, i, -1));
          Point to = walked(ring, i, 1).minus(ring.get(i));
          if (Math.abs(Corners.angle(before, after)) > leastTurnRad
              && Math.abs(Corners.angle(from, to)) > leastTurnRad) {
            corners.add(ring.get(i));
          }
        }
      }
      return corners;
    }

    /** Half a millimetre along the ring: steps much smaller than that are no corners to be seen. */
    private static Point walked(List<Point> ring, int i, int sign) {
      double left = 5 / Trial.PX_PER_MM;
      Point at = ring.get(i);
      for (int k = 1; k < ring.size(); k++) {
        Point next = ring.get(Math.floorMod(i + sign * k, ring.size()));
        double edge = at.distance(next);
        if (edge >= left) {
          return at.towards(next, left / edge);
        }
        left -= edge;
        at = next;
      }
      return at;
    }

    /** How many lines and arcs the arc fitter needs for the exact outlines. */
    int segments(double toleranceMm) {
      return rings.stream()
          .mapToInt(r -> ArcFitter.fit(r, true, toleranceMm).segments().size())
          .sum();
    }
  }

  /** Areas that touch are one: what is left between them by rounding is in no picture. */
  private static Region seamless(Region region) {
    List<Path> snapped = new ArrayList<>();
    for (Ring ring : region.rings()) {
      List<Point> points = ring.points().stream().map(Motifs::onGrid).distinct().toList();
      snapped.add(Path.polyline(points, true));
    }
    return Region.of(snapped, NONZERO, FLAT_MM);
  }

  private static Point onGrid(Point p) {
    return new Point(Math.rint(p.x() / SEAM_MM) * SEAM_MM, Math.rint(p.y() / SEAM_MM) * SEAM_MM);
  }

  static Motif circle() {
    return Motif.of(
        "circle", Region.of(List.of(Path.circle(Point.ORIGIN, 20.03)), NONZERO, FLAT_MM));
  }

  private static final frieze.region.FillRule NONZERO = frieze.region.FillRule.NONZERO;

  /** Two arcs of radius 40 mm that meet in two tips, turned so that no axis is special. */
  static Motif leaf() {
    Point a = Point.polar(Point.ORIGIN, 25, 0.3);
    Point b = Point.polar(Point.ORIGIN, 25, 0.3 + Math.PI);
    double toCentre = Math.sqrt(40 * 40 - 25 * 25);
    Point one = Point.polar(Point.ORIGIN, toCentre, 0.3 + Math.PI / 2);
    Point two = Point.polar(Point.ORIGIN, toCentre, 0.3 - Math.PI / 2);
    double sweep = 2 * Math.asin(25.0 / 40);
    Path leaf = new Path(List.of(new Arc(b, a, one, sweep), new Arc(a, b, two, sweep)), true);
    return Motif.of("leaf", Region.of(List.of(leaf), NONZERO, FLAT_MM));
  }

  static Motif ginkgo() {
    try {
      byte[] file =
          Files.readAllBytes(java.nio.file.Path.of("../docs/examples/hall-bench/ginkgo.svg"));
      Artwork all = new SvgReader().read("ginkgo.svg", file);
      return Motif.of("ginkgo", all.withHeight(60).filled(FLAT_MM));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Open icons, 60 mm in their larger direction. */
  static List<Motif> icons(int count) {
    List<Motif> motifs = new ArrayList<>();
    for (Map.Entry<String, byte[]> icon : new LinkedHashMap<>(OpenIcons.sample(count)).entrySet()) {
      try {
        Artwork art = SvgReader.withScale(1).read(icon.getKey(), icon.getValue());
        Bounds b = art.bounds();
        Artwork sized = b.width() > b.height() ? art.withWidth(60) : art.withHeight(60);
        motifs.add(Motif.of(icon.getKey().replaceAll(".*/", ""), sized.filled(FLAT_MM)));
      } catch (BadInputException e) {
        throw new AssertionError(icon.getKey(), e);
      }
    }
    return motifs;
  }
}
