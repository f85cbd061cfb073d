package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
  private static final double TIP_ROUND = 1.6;

  private static final double TIP_SLACK_PX = 0.4;
  private static final double TIP_SCATTER = 4;

  /** A sharp tip is seen where it must be, but for this, and for the scatter of its sides. */
  private static final double BLUNT_PX = 0.25;

  private static final double BLUNT_SCATTER = 4;

  /** Wider corners are not looked at for a blunt tip: each of its two corners would hardly turn. */
  private static final double MOST_BLUNT_RAD = Math.toRadians(50);

  /** A tip is blunt if so many standard deviations of its area are cut off. */
  private static final double SURE = 2;

  private static final double LEAST_CUT_PX = 0.7;

  private final List<Point> points;
  private final int n;
  private final double step;
  private final double sigma;
  private final int half;
  private final double scatter;
  private final Optional<TipProfile> profile;

  Smoothing(List<Point> points, double stepPx, Outline.Grain grain) {
    this.points = points;
    this.n = points.size();
    this.step = stepPx;
    this.sigma = grain.blurPx();
    this.profile = grain.profile();
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
   * <p>A tip that is seen farther from where its sides would meet than a sharp one is blunt: it was
   * cut off square, or nearly so, by less than a side that shows. Then there are two corners. One
   * that is seen nearer has sides that bend on the way to it, as in a cusp; it lies where it must
   * to be seen so.
   */
  private Optional<Tip> corner(Run before, Run after, int tip) {
    Point met = meeting(before, after, tip);
    Stretch first = end(before, false, before.to());
    Stretch last = end(after, true, after.from());
    Point in = first.direction(0);
    Point out = last.direction(0);
    double half = (Math.PI - Math.abs(Corners.angle(in, out))) / 2;
    Wedge wedge = new Wedge(half);
    double expected = sigma * wedge.sharpSeenAt();
    double away = met.distance(at(tip));
    double slack = TIP_SLACK_PX + TIP_SCATTER * scatter;
    if (away > TIP_ROUND * expected + slack || met.minus(at(tip)).dot(in.minus(out)) < -slack) {
      return Optional.empty();
    }
    double scatters = BLUNT_PX + BLUNT_SCATTER * scatter / StrictMath.sin(half);
    if (profile.isPresent() && half <= MOST_BLUNT_RAD) {
      boolean straight = first.isStraight() && last.isStraight();
      Optional<Tip> read = read(profile.get(), new Sides(met, in, out, half), straight);
      if (read.isPresent()) {
        return read;
      }
    }
    boolean askew = expected > TIP_ROUND * away + slack; // the sides are not what they seem
    if (half > MOST_BLUNT_RAD || askew || Math.abs(away - expected) <= scatters) {
      return Optional.of(new Tip(met, met));
    }
    if (away < expected) {
      Point outward = in.minus(out).times(1 / in.minus(out).norm());
      Point tipMost = at(tip).plus(outward.times(expected));
      return Optional.of(new Tip(tipMost, tipMost));
    }
    double cut = sigma * wedge.cutFor(away / sigma) / StrictMath.cos(half);
    return Optional.of(new Tip(met.minus(in.times(cut)), met.plus(out.times(cut))));
  }

  /** Two sides of a tip: where they meet, their directions, and half of the angle between them. */
  private record Sides(Point met, Point in, Point out, double half) {
    Point outward() {
      return in.minus(out).times(1 / in.minus(out).norm());
    }
  }

  /**
   * A corner from the ink along its middle; empty if that is not what blur and noise leave of two
   * straight sides. How sides that bend run on to the tip is not known, so that for them a sharp
   * tip of some other angle is tried before a blunt one.
   */
  private Optional<Tip> read(TipProfile ink, Sides sides, boolean straight) {
    Wedge wedge = new Wedge(sides.half());
    double slack = scatter / StrictMath.sin(sides.half());
    TipProfile.Fit blunt = ink.blunt(sides.met(), sides.outward(), wedge, slack);
    if (!straight || !ink.isGood(blunt)) {
      TipProfile.Fit sharp = ink.sharp(sides.met(), sides.outward(), wedge, sigma);
      if (ink.isGood(sharp) && sharp.left() <= blunt.left()) {
        Point apex = sides.met().minus(sides.outward().times(sharp.apex() * sigma));
        return Optional.of(new Tip(apex, apex));
      }
    }
    if (!ink.isGood(blunt)) {
      return Optional.empty();
    }
    Point apex = sides.met().minus(sides.outward().times(blunt.apex() * sigma));
    double cutPx = Math.sqrt(blunt.shape()) * sigma;
    if (blunt.shape() < SURE * blunt.deviation() || cutPx < LEAST_CUT_PX) {
      return Optional.of(new Tip(apex, apex));
    }
    double along = cutPx / StrictMath.cos(sides.half());
    return Optional.of(
        new Tip(apex.minus(sides.in().times(along)), apex.plus(sides.out().times(along))));
  }

  /** The two corners of a blunt tip, in order; the same point twice for a sharp one. */
  private record Tip(Point first, Point last) {
    boolean blunt() {
      return !first.equals(last);
    }
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
          corner(runs.get((k + count - 1) % count), runs.get(k), tips.get(k))
              .orElse(new Tip(seen, seen)));
    }
    List<List<Point>> smooth = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      Tip from = corners.get(k);
      if (from.blunt()) {
        smooth.add(List.of(from.first(), from.last()));
      }
      smooth.add(smooth(runs.get(k), from.last(), corners.get((k + 1) % count).first()));
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
    return (int) Math.ceil(2 * sigma / sine / step);
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

  private List<Point> smooth(Run run, Point start, Point end) {
    List<Point> smooth = new ArrayList<>();
    smooth.add(start);
    int first = run.first();
    int last = run.last();
    if (last - first >= 2) {
      for (int i = first; i <= last; i++) {
        smooth.add(smoothed(i, first, last));
      }
    }
    smooth.add(end);
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
