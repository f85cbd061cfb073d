package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Smooths one outline between its corners, and puts the corners back where blur has rounded them.
 *
 * <p>Each point is replaced by the parabola through its neighbours of the same run, and moved away
 * from the centre of curvature by what the blur has taken: half the curvature times the variance. A
 * corner is where the curves of its two sides meet.
 */
final class Smoothing {
  /** A corner is no farther than this from the rounded tip, in blurs. */
  private static final double FARTHEST_TIP = 8;

  private static final int NEWTON_STEPS = 20;

  /** A side is straight if a line fits nearly as well as a parabola. */
  private static final double NEARLY = 1.3;

  private static final double STRAIGHT_PX = 0.03;

  /** A wider window is taken if the points scatter in it by no more than in a narrow one. */
  private static final double ALIKE = 1.15;

  private static final double FINE_PX = 0.012;

  private static final int WIDENINGS = 3;

  /** Sides that meet still farther out have no corner between them. */
  static final double TIP_ROUND = 1.6;

  private static final double TIP_SLACK_PX = 0.4;
  private static final double TIP_SCATTER = 4;

  /** One that is rounded by more than this, but not evenly, is no corner. */
  private static final double ROUND_PX = 5;

  /** A tip that lacks more than this part of the sides that were looked at is not understood. */
  private static final double MOST_MISSING = 0.7;

  private final Map<Where, Optional<Tip>> corners = new HashMap<>();
  private final List<Point> points;
  private final int n;
  private final double step;
  private final double sigma;
  private final int half;
  private final double scatter;
  private final Optional<TipFit> fit;

  Smoothing(List<Point> points, double stepPx, Outline.Grain grain) {
    this.points = points;
    this.n = points.size();
    this.step = stepPx;
    this.sigma = grain.blurPx();
    this.fit = grain.fit();
    this.half = Math.max(2, (int) Math.round(grain.windowPx() / stepPx));
    this.scatter = scatter();
  }

  /** By how much the points scatter around parabolas, in pixels: the median along the outline. */
  private double scatter() {
    int reach = Math.min(half, Math.max(2, n / 8));
    double[] rms = new double[n];
    for (int i = 0; i < n; i++) {
      rms[i] = Stretch.fit(points, i, i - reach, i + reach, 2).rms();
    }
    Arrays.sort(rms);
    return rms[n / 2];
  }

  double scatterPx() {
    return scatter;
  }

  /** Smooths an outline without corners. */
  List<Point> closed() {
    List<Point> smooth = new ArrayList<>(n);
    int most = Math.max(2, n / 8);
    for (int i = 0; i < n; i++) {
      smooth.add(smoothed(i, i - most, i + most));
    }
    return smooth;
  }

  /**
   * Those of the tips that blur alone can have rounded; the others are round in the drawing.
   *
   * <p>How far a sharp corner is seen from where its sides meet tells {@link Wedge}.
   */
  List<Integer> sharp(List<Integer> tips) {
    List<Run> runs = between(tips);
    List<Integer> sharp = new ArrayList<>();
    for (int k = 0; k < tips.size(); k++) {
      Run before = runs.get((k + tips.size() - 1) % tips.size());
      if (corner(before, runs.get(k), tips.get(k)).isPresent()) {
        sharp.add(tips.get(k));
      }
    }
    return sharp;
  }

  /**
   * Where a corner was before the blur; empty if blur does not explain how round it is.
   *
   * <p>Looked for first in the ink around it, then, where {@link TipFit} finds none that leaves it
   * so, by how far its sides would meet from where it is seen.
   */
  private Optional<Tip> corner(Run before, Run after, int tip) {
    return corners.computeIfAbsent(new Where(before, after, tip), this::corner);
  }

  /** A tip and the runs that it lies between. */
  private record Where(Run before, Run after, int tip) {}

  private Optional<Tip> corner(Where where) {
    Stretch first = end(where.before(), false, where.before().to());
    Stretch last = end(where.after(), true, where.after().from());
    Point in = first.direction(0);
    Point out = last.direction(0);
    Tip.Sides sides = new Tip.Sides(meeting(where.before(), where.after(), where.tip()), in, out);
    Point seen = at(where.tip());
    double expected = sigma * sides.wedge().sharpSeenAt();
    double away = sides.met().distance(seen);
    double slack = TIP_SLACK_PX + TIP_SCATTER * scatter;
    double backwards = sides.met().minus(seen).dot(in.minus(out));
    if (backwards < -slack) {
      return Optional.empty();
    }
    if (fit.isPresent()) {
      Optional<TipFit.Fit> fitted =
          fit.get().fit(sides.start(first, last), around(where, sides.met()));
      if (fitted.isPresent()) {
        TipShape shape = fitted.get().shape();
        double shown = MOST_MISSING * Math.min(shownPx(where.before()), shownPx(where.after()));
        boolean good = shape.missing() <= shown && fit.get().isGood(fitted.get());
        if (good) {
          return Optional.of(Tip.of(shape));
        }
        if (shape.ending() == TipShape.Ending.ROUND
            && shape.missing() > Math.min(shown, ROUND_PX)) {
          return Optional.empty();
        }
      }
    }
    return away > TIP_ROUND * expected + slack
        ? Optional.empty()
        : Optional.of(sides.blurred(seen, sigma, scatter, slack));
  }

  /** How much of a side is looked at to find how its tip ends. */
  private double shownPx(Run run) {
    int points = Math.min(run.to() - run.first(), run.last() - run.from());
    return Math.min(TipFit.ALONG_PX, step * points);
  }

  /** The outline around a tip, and the way from there to where its sides meet. */
  private List<Point> around(Where where, Point met) {
    List<Point> around = new ArrayList<>();
    int far = (int) Math.round(TipFit.ALONG_PX / step);
    int from = -Math.min(far, where.before().to() - where.before().first());
    int to = Math.min(far, where.after().last() - where.after().from());
    for (int i = from; i <= to; i++) {
      around.add(at(where.tip() + i));
    }
    Point seen = at(where.tip());
    double away = met.distance(seen);
    for (double walked = 0; walked < away; walked += step) {
      around.add(seen.towards(met, walked / away));
    }
    return around;
  }

  private List<Run> between(List<Integer> tips) {
    List<Run> runs = new ArrayList<>();
    for (int k = 0; k < tips.size(); k++) {
      int from = tips.get(k);
      int to = k + 1 < tips.size() ? tips.get(k + 1) : tips.get(0) + n;
      runs.add(new Run(from, to, spoilt(from), spoilt(to)));
    }
    return runs;
  }

  /**
   * Smooths the runs between corners.
   *
   * @param tips the indices of the corners, in order
   * @return one run for each corner, two for a blunt one, from it to the next one; ends that meet
   *     are the same point
   */
  List<List<Point>> runs(List<Integer> tips) {
    int count = tips.size();
    List<Run> runs = between(tips);
    List<Tip> corners = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      Point seen = at(tips.get(k));
      corners.add(
          corner(runs.get((k + count - 1) % count), runs.get(k), tips.get(k)).orElse(Tip.at(seen)));
    }
    List<List<Point>> smooth = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      Tip from = corners.get(k);
      if (from.blunt()) {
        smooth.add(from.points());
      }
      smooth.add(smooth(runs.get(k), from, corners.get((k + 1) % count)));
    }
    return smooth;
  }

  /** A run of points between two corners, and how many at each end are of no use. */
  private record Run(int from, int to, int spoiltAtStart, int spoiltAtEnd) {
    int first() {
      return Math.min(from + spoiltAtStart, from + (to - from) / 3);
    }

    int last() {
      return Math.max(to - spoiltAtEnd, to - (to - from) / 3);
    }
  }

  /** How many points beside a corner the blur has spoilt: the sharper, the more. */
  private int spoilt(int tip) {
    int k = (int) Math.ceil(4 * sigma / step);
    Point before = at(tip).minus(at(tip - k));
    Point after = at(tip + k).minus(at(tip));
    double inner = Math.PI - Math.abs(Corners.angle(before, after));
    double sine = Math.max(0.25, StrictMath.sin(inner / 2));
    return (int) Math.ceil(Corners.SPOILT * sigma / sine / step);
  }

  private Point at(int i) {
    return points.get(Math.floorMod(i, n));
  }

  private Stretch end(Run run, boolean start, int centre) {
    int reach = Math.max(3, 2 * half);
    int from = start ? run.first() : Math.max(run.first(), run.last() - reach);
    int to = start ? Math.min(run.last(), run.first() + reach) : run.last();
    Stretch line = Stretch.fit(points, centre, from, to, 1);
    if (to - from < 5) {
      return line;
    }
    Stretch parabola = Stretch.fit(points, centre, from, to, 2);
    return line.rms() <= NEARLY * parabola.rms() + STRAIGHT_PX ? line : parabola;
  }

  private Point meeting(Run before, Run after, int tip) {
    Stretch a = end(before, false, before.to());
    Stretch b = end(after, true, after.from());
    double u = 0;
    double v = 0;
    for (int i = 0; i < NEWTON_STEPS; i++) {
      Point miss = b.at(v).minus(a.at(u));
      Point du = a.velocity(u);
      Point dv = b.velocity(v);
      double det = du.cross(dv);
      if (det == 0) {
        break;
      }
      u += miss.cross(dv) / det;
      v += miss.cross(du) / det;
      if (!(Math.abs(u) < n && Math.abs(v) < n)) {
        return at(tip);
      }
    }
    Point met = a.at(u);
    boolean found = met.distance(b.at(v)) < STRAIGHT_PX;
    return found && met.distance(at(tip)) <= FARTHEST_TIP * sigma ? met : at(tip);
  }

  private List<Point> smooth(Run run, Tip start, Tip end) {
    List<Point> smooth = new ArrayList<>();
    smooth.add(start.last());
    int first = run.first();
    int last = run.last();
    while (first < last && start.covers(at(first))) {
      first++;
    }
    while (first < last && end.covers(at(last))) {
      last--;
    }
    if (last - first >= 2) {
      smooth.addAll(start.after(smoothed(first, first, last)));
      for (int i = first; i <= last; i++) {
        smooth.add(smoothed(i, first, last));
      }
      smooth.addAll(end.before(smoothed(last, first, last)));
    }
    smooth.add(end.first());
    return smooth;
  }

  /** The widest window that a parabola fits as well as a narrow one: a line may be long. */
  private Point smoothed(int i, int first, int last) {
    Stretch best = window(i, first, last, half);
    double limit = Math.max(FINE_PX, ALIKE * scatter);
    int reach = half;
    for (int k = 0; k < WIDENINGS && 2 * reach < last - first; k++) {
      reach *= 2;
      Stretch wider = window(i, first, last, reach);
      if (wider.rms() > limit) {
        break;
      }
      best = wider;
    }
    return corrected(best, 0);
  }

  private Stretch window(int i, int first, int last, int reach) {
    int from = Math.max(first, i - reach);
    int to = Math.min(last, i + reach);
    if (to - from < 2 * reach) {
      from = Math.max(first, Math.min(from, to - 2 * reach));
      to = Math.min(last, Math.max(to, from + 2 * reach));
    }
    return Stretch.fit(points, i, from, to, to - from < 4 ? 1 : 2);
  }

  private Point corrected(Stretch fitted, double u) {
    Point along = fitted.direction(u);
    double inward = fitted.curvature(u) * sigma * sigma / 2;
    double most = sigma / 2;
    double by = Math.max(-most, Math.min(most, inward));
    return fitted.at(u).plus(new Point(along.y(), -along.x()).times(by));
  }
}
