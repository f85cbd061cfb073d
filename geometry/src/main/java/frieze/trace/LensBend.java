package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much a lens has bent a picture, as the edges of a sheet in it tell: they are straight.
 *
 * <p><i>Approximation:</i> about 0.2 % of the way from the middle to the corner of the picture up
 * to a bend of 5 %. A sheet that is not flat is taken for a bent one.
 *
 * @param told the share that was told, and is taken out; 0 for none
 * @param found what the edges tell; empty if it was not looked for, or if they do not show
 */
public record LensBend(double told, OptionalDouble found) {
  /** What differs by less is not worth a word. */
  private static final double WORTH = 0.005;

  private static final int SAMPLES = 61;
  private static final double END = 0.06;

  /** How far from a straight line an edge is looked for, in parts of its length. */
  private static final double BAND = 0.03;

  private static final double LEAST_BAND_PX = 6;

  /** Pixels to both sides of an edge whose grey is compared, and by how much it must differ. */
  private static final int SIDE_PX = 4;

  private static final double LEAST_STEP = 0.08;
  private static final double NEAR_PX = 1.5;
  private static final double ENOUGH = 0.7;
  private static final int ROUNDS = 6;

  /** Looks at the edges of a sheet; its corners as pixels from the upper left, in order. */
  static LensBend of(GreyImage image, List<Point> corners, double told) {
    Point middle = new Point(image.width() / 2.0, image.height() / 2.0);
    double corner = middle.dot(middle);
    List<Side> seen = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      bow(image, a, b, outward(a, b, middle))
          .ifPresent(away -> seen.add(new Side(a.minus(middle), b.minus(middle), away)));
    }
    if (seen.size() < 2) {
      return new LensBend(told, OptionalDouble.empty());
    }
    double share = 0;
    for (int round = 0; round < ROUNDS; round++) {
      share = share(seen, share, corner);
    }
    return new LensBend(told, OptionalDouble.of(share));
  }

  /** An edge from the middle of the picture, and by how many pixels it bows outward. */
  private record Side(Point a, Point b, double bow) {
    /** By how many pixels more its ends than its middle move outward, for a bend of 1. */
    double lever(double bend, double corner) {
      Point from = a.times(1 / (1 + bend * a.dot(a) / corner));
      Point to = b.times(1 / (1 + bend * b.dot(b) / corner));
      double half = from.distance(to) / 2;
      return from.dot(outward(from, to, Point.ORIGIN)) * half * half / corner;
    }
  }

  private static double share(List<Side> sides, double before, double corner) {
    double above = 0;
    double below = 0;
    for (Side side : sides) {
      double lever = side.lever(before, corner);
      above -= side.bow() * lever;
      below += lever * lever;
    }
    return below > 0 ? above / below : 0;
  }

  /** Whether the edges tell another bend than was told. */
  public boolean isWorthTelling() {
    return found.isPresent() && Math.abs(found.getAsDouble() - told) >= WORTH;
  }

  /** What is known of it. */
  public String words() {
    String taken = told == 0 ? "none taken out" : percent(told) + " taken out";
    return found.isPresent()
        ? taken + "; the edges of the sheet tell " + percent(found.getAsDouble())
        : taken + "; not measured: only the edges of a sheet would tell";
  }

  static String percent(double share) {
    double rounded = Math.rint(share * 1000) / 10 + 0.0;
    return String.format(Locale.ROOT, "%.1f%%", rounded);
  }

  private static Point outward(Point a, Point b, Point middle) {
    Point along = b.minus(a).times(1 / a.distance(b));
    Point left = new Point(-along.y(), along.x());
    return left.dot(a.minus(middle)) > 0 ? left : left.times(-1);
  }

  /** By how many pixels the middle of an edge lies outside of the line through its ends. */
  private static Optional<Double> bow(GreyImage image, Point a, Point b, Point outward) {
    List<double[]> at = new ArrayList<>();
    double band = Math.max(LEAST_BAND_PX, BAND * a.distance(b));
    for (int i = 0; i < SAMPLES; i++) {
      double t = END + (1 - 2 * END) * i / (SAMPLES - 1);
      edge(image, a.towards(b, t), outward, band).ifPresent(away -> at.add(new double[] {t, away}));
    }
    return at.size() < ENOUGH * SAMPLES ? Optional.empty() : bow(at);
  }

  /** How far outside of a point the strongest step of grey is. */
  private static OptionalDouble edge(GreyImage image, Point p, Point outward, double band) {
    double strongest = 0;
    double where = 0;
    for (double away = -band; away <= band; away += 0.5) {
      double step = 0;
      for (int k = 1; k <= SIDE_PX; k++) {
        step += grey(image, p.plus(outward.times(away + k - 0.5)));
        step -= grey(image, p.plus(outward.times(away - k + 0.5)));
      }
      double size = Math.abs(step) / SIDE_PX;
      if (size > strongest) {
        strongest = size;
        where = away;
      }
    }
    return strongest >= LEAST_STEP ? OptionalDouble.of(where) : OptionalDouble.empty();
  }

  private static double grey(GreyImage image, Point p) {
    int x = Math.max(0, Math.min(image.width() - 1, (int) Math.floor(p.x())));
    int y = Math.max(0, Math.min(image.height() - 1, (int) Math.floor(p.y())));
    return image.value(y * image.width() + x);
  }

  /** A parabola by least squares, again and again without what lies far off. */
  private static Optional<Double> bow(List<double[]> at) {
    List<double[]> kept = at;
    double[] parabola = fit(kept);
    for (int round = 0; round < ROUNDS; round++) {
      double[] now = parabola;
      double usual = Math.max(NEAR_PX, 2 * median(at, now));
      kept = at.stream().filter(s -> off(s, now) <= usual).toList();
      if (kept.size() < ENOUGH * SAMPLES) {
        return Optional.empty();
      }
      parabola = fit(kept);
    }
    return median(kept, parabola) <= NEAR_PX ? Optional.of(-parabola[2] / 4) : Optional.empty();
  }

  private static double off(double[] sample, double[] p) {
    return Math.abs(sample[1] - p[0] - sample[0] * (p[1] + sample[0] * p[2]));
  }

  private static double median(List<double[]> at, double[] parabola) {
    double[] off = at.stream().mapToDouble(s -> off(s, parabola)).toArray();
    Arrays.sort(off);
    return off[off.length / 2];
  }

  private static double[] fit(List<double[]> at) {
    double[][] a = new double[3][4];
    for (double[] s : at) {
      double[] terms = {1, s[0], s[0] * s[0]};
      for (int i = 0; i < 3; i++) {
        for (int k = 0; k < 3; k++) {
          a[i][k] += terms[i] * terms[k];
        }
        a[i][3] += terms[i] * s[1];
      }
    }
    return Light.solve(a);
  }
}
