package frieze.design;

import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Cuts the line of a groove whose depth changes along it into stretches of nearly one depth. */
final class FadingIntents {
  /** The most by which the depth changes on a stretch. */
  private static final double STEP_MM = 0.02;

  private final String name;
  private final Work.Groove groove;
  private final DepthAlong depths;
  private final List<Intent> done = new ArrayList<>();
  private List<Point> stretch = new ArrayList<>();
  private double least;
  private double most;

  private FadingIntents(String name, Work.Groove groove, DepthAlong depths) {
    this.name = name;
    this.groove = groove;
    this.depths = depths;
  }

  /**
   * The stretches of one line.
   *
   * @param depths the depths along it, from its length
   */
  static List<Intent> of(
      String name,
      Path line,
      Work.Groove groove,
      DoubleFunction<DepthAlong> depths,
      double flattenMm) {
    List<Point> points = Flattener.flatten(line, flattenMm);
    double length = 0;
    for (int i = 1; i < points.size(); i++) {
      length += points.get(i - 1).distance(points.get(i));
    }
    FadingIntents made = new FadingIntents(name, groove, depths.apply(length));
    double at = 0;
    for (int i = 1; i < points.size(); i++) {
      at = made.edge(points.get(i - 1), points.get(i), at);
    }
    made.close();
    return made.done;
  }

  /** Goes along an edge that starts at a length, and tells the length at its end. */
  private double edge(Point from, Point to, double at) {
    double whole = from.distance(to);
    List<Double> stops = new ArrayList<>();
    for (double bend : depths.atMm()) {
      if (bend > at && bend < at + whole) {
        stops.add(bend);
      }
    }
    stops.add(at + whole);
    double begin = at;
    for (double end : stops) {
      double drop = Math.abs(depthMm(end) - depthMm(begin));
      int parts = (int) Math.max(1, Math.ceil(drop / STEP_MM));
      for (int k = 0; k < parts; k++) {
        double a = begin + (end - begin) * k / parts;
        double b = begin + (end - begin) * (k + 1) / parts;
        part(
            from.towards(to, (a - at) / whole),
            from.towards(to, (b - at) / whole),
            depthMm(a),
            depthMm(b));
      }
      begin = end;
    }
    return at + whole;
  }

  private void part(Point from, Point to, double fromMm, double toMm) {
    double low = Math.min(fromMm, toMm);
    double high = Math.max(fromMm, toMm);
    boolean joins = !stretch.isEmpty() && Math.max(most, high) - Math.min(least, low) <= STEP_MM;
    if (!joins) {
      close();
      stretch.add(from);
      least = low;
      most = high;
    }
    stretch.add(to);
    least = Math.min(least, low);
    most = Math.max(most, high);
  }

  private void close() {
    if (!stretch.isEmpty() && most > 0) {
      Path path = Path.polyline(stretch, false);
      done.add(new Intent.Groove(name, List.of(path), least, most, groove.tool()));
    }
    stretch = new ArrayList<>();
  }

  private double depthMm(double at) {
    return depths.depthMm(at);
  }
}
