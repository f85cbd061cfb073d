package frieze.field;

import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.ToolShape;
import java.util.List;

/**
 * The lowest height that tools reach at a point, found by trying positions along every move: shares
 * nothing with the stock field but the vocabulary.
 */
final class BruteForce {
  private static final int STEPS = 400;
  private static final int NARROWINGS = 80;
  private static final int HOLLOW_STEPS = 3;

  private BruteForce() {}

  record Cut(Motion path, ToolShape shape) {}

  /** The height at a point, 0 where nothing is cut. */
  static double heightMm(List<Cut> cuts, double x, double y) {
    double lowest = 0;
    for (Cut cut : cuts) {
      lowest = Math.min(lowest, heightMm(cut, x, y));
    }
    return lowest;
  }

  /** Tries steps along the path, then narrows down around each of the best ones. */
  private static double heightMm(Cut cut, double x, double y) {
    double reach = cut.shape.diameterMm() / 2;
    double stepMm = cut.path.lengthMm() / STEPS;
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= STEPS; i++) {
      double f = (double) i / STEPS;
      double distance = distance(cut.path.at(f), x, y);
      if (distance > reach + 2 * stepMm) {
        continue;
      }
      best = Math.min(best, value(cut, f, x, y));
      best = Math.min(best, narrowed(cut, f, x, y));
    }
    return best;
  }

  /** Ternary search for the nearest, and within reach for the lowest, around a fraction. */
  private static double narrowed(Cut cut, double f, double x, double y) {
    double low = Math.max(0, f - 1.0 / STEPS);
    double high = Math.min(1, f + 1.0 / STEPS);
    double nearest = least(low, high, t -> distance(cut.path.at(t), x, y));
    if (distance(cut.path.at(nearest), x, y) > cut.shape.diameterMm() / 2) {
      return Double.POSITIVE_INFINITY;
    }
    double from = limit(cut, nearest, low, x, y);
    double to = limit(cut, nearest, high, x, y);
    double lowest = least(from, to, t -> value(cut, t, x, y));
    double best =
        Math.min(Math.min(value(cut, from, x, y), value(cut, to, x, y)), value(cut, lowest, x, y));
    return cut.shape instanceof ToolShape.RoundOver bit
        ? Math.min(best, hollow(cut, bit, nearest, from, to, x, y))
        : best;
  }

  /**
   * A hollow has several lowest places: its tip's rim, and others that are tried in small steps.
   */
  private static double hollow(
      Cut cut,
      ToolShape.RoundOver bit,
      double nearest,
      double from,
      double to,
      double x,
      double y) {
    double best = Double.POSITIVE_INFINITY;
    if (distance(cut.path.at(nearest), x, y) <= bit.tipMm() / 2) {
      Disc tip = new Disc(x, y, bit.tipMm() / 2);
      best = Math.min(best, value(cut, limit(cut, nearest, from, tip), x, y));
      best = Math.min(best, value(cut, limit(cut, nearest, to, tip), x, y));
    }
    for (int i = 0; i < HOLLOW_STEPS; i++) {
      double low = from + (to - from) * i / HOLLOW_STEPS;
      double high = from + (to - from) * (i + 1) / HOLLOW_STEPS;
      double at = least(low, high, t -> value(cut, t, x, y));
      best = Math.min(best, value(cut, at, x, y));
    }
    return best;
  }

  /** The fraction farthest from {@code inside} towards {@code end} that still reaches the point. */
  private static double limit(Cut cut, double inside, double end, double x, double y) {
    return limit(cut, inside, end, new Disc(x, y, cut.shape.diameterMm() / 2));
  }

  private record Disc(double x, double y, double reach) {}

  private static double limit(Cut cut, double inside, double end, Disc disc) {
    double x = disc.x;
    double y = disc.y;
    double reach = disc.reach;
    if (distance(cut.path.at(end), x, y) <= reach) {
      return end;
    }
    double in = inside;
    double out = end;
    for (int i = 0; i < NARROWINGS; i++) {
      double middle = (in + out) / 2;
      if (distance(cut.path.at(middle), x, y) <= reach) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  private interface Function {
    double at(double t);
  }

  private static double least(double low, double high, Function function) {
    double a = low;
    double b = high;
    for (int i = 0; i < NARROWINGS; i++) {
      double third = (b - a) / 3;
      if (function.at(a + third) <= function.at(b - third)) {
        b -= third;
      } else {
        a += third;
      }
    }
    return (a + b) / 2;
  }

  private static double value(Cut cut, double f, double x, double y) {
    Position p = cut.path.at(f);
    double distance = distance(p, x, y);
    return distance > cut.shape.diameterMm() / 2
        ? Double.POSITIVE_INFINITY
        : p.z() + cut.shape.heightAtMm(distance);
  }

  private static double distance(Position p, double x, double y) {
    return Math.sqrt((p.x() - x) * (p.x() - x) + (p.y() - y) * (p.y() - y));
  }
}
