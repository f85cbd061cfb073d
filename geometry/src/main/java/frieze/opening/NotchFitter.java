package frieze.opening;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.wood.Moisture;
import java.util.List;

/**
 * Finds the notch that a panel needs for a lug, wide enough for its movement in the seasons.
 *
 * <p>The lug stays where it is while the wood moves about the panel's middle: when it swells, the
 * floor and the flank on the middle's side come nearer to the lug, when it shrinks the other flank.
 *
 * <p><em>Guarantees:</em> without a given clearance, the play is left on all three sides of the lug
 * in all seasons, and no less than the gap of its side is cut. A strip beside it that would break
 * off is left out too.
 */
final class NotchFitter {
  /** Each look takes the error of the clearance down by the wood's movement, under 5 %. */
  private static final int LOOKS = 4;

  private static final double ROUNDING_MM = 1e-6;

  /** A narrower strip of wood beside a notch breaks off: common sense, no published value. */
  static final double LEAST_STRIP_MM = 3;

  /** How far a box goes beyond an end of its side, and beyond how that may lean. */
  private static final double OUTSIDE_MM = 10;

  private final Quadrilateral hole;
  private final InsertRequest asked;
  private final List<Double> gaps;
  private final Quadrilateral cut;
  private final Quadrilateral fitted;
  private final Point middle;

  /**
   * Prepares.
   *
   * @param gaps with which the panel is cut
   */
  NotchFitter(Quadrilateral hole, InsertRequest asked, List<Double> gaps) {
    this.hole = hole;
    this.asked = asked;
    this.gaps = gaps;
    this.cut = hole.inset(gaps);
    double sanded = asked.allowances().sandedMm();
    this.fitted = hole.inset(gaps.stream().map(g -> g + sanded).toList());
    Bounds bounds = Bounds.EMPTY;
    for (Point p : fitted.corners()) {
      bounds = bounds.with(p);
    }
    this.middle = bounds.centre();
  }

  /** The notch of a lug, in the frame of the opening. */
  Notch fit(Lug lug) {
    int side = lug.side().number;
    double length = hole.length(side);
    double over = lug.fromMm() + lug.widthMm() - length;
    if (over > ROUNDING_MM) {
      throw BadInputException.of(
          OpeningCode.LUG_BEYOND,
          lug.where(),
          name(lug) + " reaches " + Amounts.length(over) + " beyond the end of its side",
          "the " + lug.side() + " is " + Amounts.length(length) + " between its corners");
    }
    double clearance = lug.clearanceMm().orElseGet(() -> needed(lug));
    List<Point> box = box(hole, lug, clearance, LEAST_STRIP_MM + clearance);
    double first = onEdge(side, box.get(2));
    double last = onEdge(side, box.get(1));
    boolean forwards = lug.side() == Lug.Side.BOTTOM || lug.side() == Lug.Side.RIGHT;
    return new Notch(
        lug,
        box,
        last - first,
        lug.depthMm() + clearance - gaps.get(side),
        forwards ? first : cut.length(side) - last,
        clearance,
        gap(lug, clearance));
  }

  /** Where along the panel's edge a place lies; at its end if it lies beyond. */
  private double onEdge(int side, Point p) {
    double along = p.minus(cut.corner(side)).dot(cut.along(side));
    return Math.max(0, Math.min(cut.length(side), along));
  }

  /** How a message calls a lug. */
  static String name(Lug lug) {
    return "the lug \"" + lug.name() + "\" at the " + lug.side();
  }

  /**
   * A lug grown by a clearance, from its floor out beyond the opening.
   *
   * @param stripMm what would be left between it and an end of its side goes too, if it is narrower
   */
  static List<Point> box(Quadrilateral sides, Lug lug, double clearanceMm, double stripMm) {
    int side = lug.side().number;
    double length = sides.length(side);
    double deep = lug.depthMm() + clearanceMm;
    double from = lug.startMm(length) - clearanceMm;
    double to = from + lug.widthMm() + 2 * clearanceMm;
    double beyond = deep + stripMm + OUTSIDE_MM;
    double first = from < stripMm ? -beyond : from;
    double last = to > length - stripMm ? length + beyond : to;
    return List.of(
        at(sides, side, last, -length),
        at(sides, side, last, deep),
        at(sides, side, first, deep),
        at(sides, side, first, -length));
  }

  private Point at(int side, double alongMm, double deepMm) {
    return at(hole, side, alongMm, deepMm);
  }

  private static Point at(Quadrilateral sides, int side, double alongMm, double deepMm) {
    Point a = sides.along(side);
    Point in = new Point(-a.y(), a.x());
    return sides.corner(side).plus(a.times(alongMm)).plus(in.times(deepMm));
  }

  private double needed(Lug lug) {
    double clearance = gaps.get(lug.side().number);
    for (int look = 0; look < LOOKS; look++) {
      clearance += Math.max(0, asked.playMm() - gap(lug, clearance).leastMm());
    }
    return clearance;
  }

  private Sitting.Gap gap(Lug lug, double clearanceMm) {
    Moisture m = asked.moisture();
    return new Sitting.Gap(
        lug.name(),
        least(lug, clearanceMm, m.nowPct()),
        least(lug, clearanceMm, m.driestPct()),
        least(lug, clearanceMm, m.wettestPct()));
  }

  /** The least gap between the lug and what of the notch's flanks and floor is in the panel. */
  private double least(Lug lug, double clearanceMm, double moisturePct) {
    int side = lug.side().number;
    double fittedMm = clearanceMm + asked.allowances().sandedMm();
    double from = lug.startMm(hole.length(side));
    double to = from + lug.widthMm();
    double deep = lug.depthMm() + fittedMm;
    Affine moves = asked.swelling(middle, moisturePct);
    double least = Double.POSITIVE_INFINITY;
    for (boolean first : List.of(true, false)) {
      double u = first ? from - fittedMm : to + fittedMm;
      if (isInside(at(side, u, deep))) {
        for (double v : new double[] {0, deep}) {
          double moved = alongOf(side, moves.apply(at(side, u, v)));
          least = Math.min(least, first ? from - moved : moved - to);
        }
        least = Math.min(least, hole.depth(side, moves.apply(at(side, u, deep))) - lug.depthMm());
      }
    }
    return least - asked.allowances().coatingMm();
  }

  private boolean isInside(Point p) {
    for (int side = 0; side < 4; side++) {
      if (fitted.depth(side, p) < 0) {
        return false;
      }
    }
    return true;
  }

  private double alongOf(int side, Point p) {
    return p.minus(hole.corner(side)).dot(hole.along(side));
  }
}
