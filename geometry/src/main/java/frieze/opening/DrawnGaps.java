package frieze.opening;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.region.BoundaryDistance;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Measures the gaps between an opening of any shape and a panel in it, season by season.
 *
 * <p>A gap counts to the bottom, right, top or left by where the nearest steel lies, within 45
 * degrees. Both edges are polygons, so that the least distance between them is at a corner of one
 * of them: the corners of each are measured to the other, and places between the panel's corners,
 * which tell straight sides from what lies around their ends.
 */
final class DrawnGaps {
  private static final List<String> PLACES = List.of("bottom", "right", "top", "left");

  /** From look to look along a straight side. */
  private static final double LOOKS_MM = 0.5;

  private final BoundaryDistance hole;
  private final Region fitted;
  private final Point middle;
  private final InsertRequest asked;
  private final Season now;
  private final Season driest;
  private final Season wettest;

  /** The gaps of one season, by side; infinite where no steel lies that way. */
  private static final class Season {
    private final double[] leastMm = new double[4];
    private double mostMm = Double.NEGATIVE_INFINITY;
    private Point tightest = Point.ORIGIN;
    private double tightestMm = Double.POSITIVE_INFINITY;

    private final Affine toNow;

    Season(Affine moves) {
      this.toNow = moves.inverse();
      Arrays.fill(leastMm, Double.POSITIVE_INFINITY);
    }

    void see(int side, Point at, double gapMm) {
      leastMm[side] = Math.min(leastMm[side], gapMm);
      if (gapMm < tightestMm) {
        tightestMm = gapMm;
        tightest = toNow.apply(at);
      }
    }
  }

  /**
   * Measures.
   *
   * @param hole as drawn, before its coating
   * @param fitted the panel after sanding, at the moisture of now
   * @param middle about which it moves
   */
  DrawnGaps(Region hole, Region fitted, Point middle, InsertRequest asked) {
    this.hole = BoundaryDistance.of(hole);
    this.fitted = fitted;
    this.middle = middle;
    this.asked = asked;
    this.now = measure(asked.moisture().nowPct());
    this.driest = measure(asked.moisture().driestPct());
    this.wettest = measure(asked.moisture().wettestPct());
  }

  /** The least gaps, of the sides that there are. */
  List<Sitting.Gap> sides() {
    List<Sitting.Gap> gaps = new ArrayList<>();
    for (int i = 0; i < PLACES.size(); i++) {
      if (now.leastMm[i] < Double.POSITIVE_INFINITY) {
        gaps.add(
            new Sitting.Gap(PLACES.get(i), now.leastMm[i], driest.leastMm[i], wettest.leastMm[i]));
      }
    }
    return gaps;
  }

  /** Where on the panel as it is now the gap is the least; empty if it is the same all round. */
  Optional<Point> tightest(double sameMm) {
    Season tight = now;
    for (Season season : List.of(driest, wettest)) {
      tight = season.tightestMm < tight.tightestMm ? season : tight;
    }
    return tight.mostMm - tight.tightestMm < sameMm
        ? Optional.empty()
        : Optional.of(tight.tightest);
  }

  /** The widest gap at any place of the panel's edge, in any season. */
  double widestMm() {
    return Math.max(now.mostMm, Math.max(driest.mostMm, wettest.mostMm));
  }

  private Season measure(double moisturePct) {
    Affine moves = asked.swelling(middle, moisturePct);
    Region panel = fitted.transformed(moves);
    Season season = new Season(moves);
    for (Ring ring : panel.rings()) {
      List<Point> points = ring.points();
      for (int i = 0; i < points.size(); i++) {
        along(points.get(i), points.get((i + 1) % points.size()), season);
      }
    }
    BoundaryDistance edge = BoundaryDistance.of(panel);
    for (Point p : hole.region().rings().get(0).points()) {
      Point foot = edge.nearest(p).foot();
      see(foot, p, !edge.contains(p), season);
    }
    return season;
  }

  /** Looks from a straight piece of the panel's edge. */
  private void along(Point from, Point to, Season season) {
    int looks = (int) Math.ceil(from.distance(to) / LOOKS_MM);
    for (int k = 0; k < looks; k++) {
      Point p = from.towards(to, (double) k / looks);
      Point foot = hole.nearest(p).foot();
      boolean clear = hole.contains(p);
      season.mostMm = Math.max(season.mostMm, see(p, foot, clear, season));
    }
  }

  private double see(Point onPanel, Point onHole, boolean clear, Season season) {
    Point out = clear ? onHole.minus(onPanel) : onPanel.minus(onHole);
    double gap = (clear ? 1 : -1) * out.norm() - asked.allowances().coatingMm();
    season.see(side(out), onPanel, gap);
    return gap;
  }

  private static int side(Point out) {
    if (Math.abs(out.y()) >= Math.abs(out.x())) {
      return out.y() < 0 ? 0 : 2;
    }
    return out.x() > 0 ? 1 : 3;
  }
}
