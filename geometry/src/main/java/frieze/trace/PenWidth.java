package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * How wide a pen drew a line, place by place.
 *
 * <p>Widths are averaged over one usual width of the pen, because the grain of paper and pixels
 * shows in them; towards the ends of a line over as much less as there is.
 */
final class PenWidth {
  /** A line that differs by less than this part of its widest is drawn with one width. */
  private static final double EVEN = 0.2;

  /** Steps are about a half of the pen's usual width long. */
  private static final double STEP = 0.5;

  private static final int MOST_STEPS = 400;

  private final double[] at;
  private final double[] radius;

  private PenWidth(double[] at, double[] radius) {
    this.at = at;
    this.radius = radius;
  }

  /** The width along points. */
  static PenWidth along(List<Point> points, List<Double> radii, boolean closed) {
    int n = points.size() + (closed ? 1 : 0);
    double[] at = new double[n];
    double[] radius = new double[n];
    for (int i = 0; i < n; i++) {
      radius[i] = radii.get(i % points.size());
      at[i] = i == 0 ? 0 : at[i - 1] + points.get(i - 1).distance(points.get(i % points.size()));
    }
    return new PenWidth(at, radius);
  }

  /**
   * The widths at even steps from the start to the end.
   *
   * @param usual of the pen
   * @return empty if they are all nearly the same
   */
  List<Double> evenly(double usual) {
    double length = at[at.length - 1];
    int steps = (int) Math.max(1, Math.min(MOST_STEPS, Math.ceil(length / (STEP * usual))));
    List<Double> widths = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i <= steps; i++) {
      double here = length * i / steps;
      double half = Math.min(usual / 2, Math.min(here, length - here));
      double width = 2 * mean(here - half, here + half);
      least = Math.min(least, width);
      most = Math.max(most, width);
      widths.add(width);
    }
    return most - least < EVEN * most ? List.of() : widths;
  }

  private double mean(double from, double to) {
    if (to <= from) {
      return radius(from);
    }
    double sum = 0;
    double before = from;
    for (double a : at) {
      if (a > from && a < to) {
        sum += (a - before) * radius((before + a) / 2);
        before = a;
      }
    }
    sum += (to - before) * radius((before + to) / 2);
    return sum / (to - from);
  }

  private double radius(double where) {
    int i = 1;
    while (i < at.length - 1 && at[i] < where) {
      i++;
    }
    double step = at[i] - at[i - 1];
    double part = step > 0 ? Math.max(0, Math.min(1, (where - at[i - 1]) / step)) : 0;
    return radius[i - 1] + part * (radius[i] - radius[i - 1]);
  }
}
