package frieze.trace;

import frieze.curve.ArcFitter;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One smoothed outline in pixels: closed and smooth, or in runs from corner to corner.
 *
 * @param runs if there are no corners, one run that closes by itself
 * @param scatterPx by how much the points scattered before they were smoothed
 */
record Outline(List<List<Point>> runs, boolean smooth, double scatterPx) {
  private static final double STEP_PX = 0.7;
  private static final int FEWEST = 8;

  /**
   * How sharp a picture is: what smoothing needs to know.
   *
   * @param fit finds how tips end from the ink around them; empty where the outline is not at half
   *     of the ink
   */
  record Grain(double blurPx, double noisePx, double windowPx, Optional<TipFit> fit) {}

  static Outline of(List<Point> crossings, Grain grain) {
    List<Point> even = evenly(crossings);
    double step = length(even) / even.size();
    Smoothing smoothing = new Smoothing(even, step, grain);
    List<Integer> tips = smoothing.sharp(Corners.find(even, step, grain.blurPx(), grain.noisePx()));
    return tips.isEmpty()
        ? new Outline(List.of(smoothing.closed()), true, smoothing.scatterPx())
        : new Outline(smoothing.runs(tips), false, smoothing.scatterPx());
  }

  static double length(List<Point> ring) {
    double length = 0;
    for (int i = 0; i < ring.size(); i++) {
      length += ring.get(i).distance(ring.get((i + 1) % ring.size()));
    }
    return length;
  }

  private static List<Point> evenly(List<Point> ring) {
    double length = length(ring);
    int count = Math.max(FEWEST, (int) Math.round(length / STEP_PX));
    List<Point> even = new ArrayList<>(count);
    double walked = 0;
    int k = 0;
    for (int i = 0; i < ring.size() && k < count; i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      double edge = a.distance(b);
      while (k < count && k * length / count <= walked + edge) {
        double t = edge == 0 ? 0 : (k * length / count - walked) / edge;
        even.add(a.towards(b, t));
        k++;
      }
      walked += edge;
    }
    while (even.size() < count) {
      even.add(ring.get(ring.size() - 1));
    }
    return even;
  }

  List<Point> corners() {
    return smooth ? List.of() : runs.stream().map(r -> r.get(0)).toList();
  }

  /** All points, once round. */
  List<Point> ring() {
    if (smooth) {
      return runs.get(0);
    }
    List<Point> ring = new ArrayList<>();
    runs.forEach(r -> ring.addAll(r.subList(0, r.size() - 1)));
    return ring;
  }

  Outline mapped(PixelMap map) {
    return new Outline(
        runs.stream().map(r -> r.stream().map(map::toMm).toList()).toList(), smooth, scatterPx);
  }

  /** Few lines and arcs within the tolerance of the points. */
  Path fitted(double toleranceMm) {
    if (smooth) {
      return ArcFitter.fit(runs.get(0), true, toleranceMm);
    }
    List<Segment> all = new ArrayList<>();
    for (List<Point> run : runs) {
      if (run.stream().distinct().count() > 1) {
        all.addAll(ArcFitter.fit(run, false, toleranceMm).segments());
      }
    }
    return new Path(all, true);
  }
}
