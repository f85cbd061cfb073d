package frieze.opening;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.layout.LayoutCode;
import frieze.layout.Panel;
import frieze.wood.Moisture;
import frieze.wood.SideFit;
import frieze.wood.WoodCode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * From an opening as it is to the panel that goes in and stays in.
 *
 * <p>The panel follows the four measured sides, each moved inwards by its gap; a top that bows in
 * is taken as a straight side that much lower. The corners are cut concentric with the bead. Wood
 * swells about the panel's middle, along and across the grain.
 *
 * <p><em>Guarantees:</em> without given gaps, each side keeps at least the play at the wettest;
 * each corner is cut with the lesser gap of its two sides; a panel that would bind anywhere is
 * refused. <em>Approximation:</em> gaps at round corners are measured at 17 points of each.
 */
public final class InsertFitter {
  private static final List<String> PLACES =
      List.of(
          "bottom",
          "right",
          "top",
          "left",
          "lower left corner",
          "lower right corner",
          "upper right corner",
          "upper left corner");

  /** A sum of lengths may be wrong by this: a nanometre. */
  private static final double ROUNDING_MM = 1e-6;

  private final FittedOpening opening;
  private final Bead bead;
  private final InsertRequest asked;
  private final List<Lug> lugs;
  private final SourceSpan where;
  private final Diagnostics found = new Diagnostics();

  private InsertFitter(Welded welded, InsertRequest asked, SourceSpan where) {
    this.opening = welded.opening();
    this.bead = welded.bead();
    this.lugs = welded.lugs();
    this.asked = asked;
    this.where = where;
  }

  /**
   * An opening with all that is welded into it.
   *
   * @param bead in the corners
   * @param lugs on the sides
   * @param tapeMm the standard uncertainty of one measurement, for the worst case
   */
  public record Welded(FittedOpening opening, Bead bead, List<Lug> lugs, double tapeMm) {
    public Welded {
      lugs = List.copyOf(lugs);
    }
  }

  /**
   * Fits a panel into an opening without lugs.
   *
   * @param tapeMm the standard uncertainty of one measurement, for the worst case
   * @param where the place in the job, for the diagnostics
   * @throws frieze.diagnostic.BadInputException if nothing is left of the opening, or the panel
   *     would bind, saying where and by how much
   */
  public static Sitting fit(
      String name,
      FittedOpening opening,
      Bead bead,
      double tapeMm,
      InsertRequest asked,
      SourceSpan where) {
    return fit(name, new Welded(opening, bead, List.of(), tapeMm), asked, where);
  }

  /**
   * Fits a panel.
   *
   * @param where the place in the job, for the diagnostics
   * @throws frieze.diagnostic.BadInputException if nothing is left of the opening, a lug cuts the
   *     panel apart, or the panel would bind, saying where and by how much
   */
  public static Sitting fit(String name, Welded welded, InsertRequest asked, SourceSpan where) {
    return new InsertFitter(welded, asked, where).sitting(name, welded.tapeMm());
  }

  private Sitting sitting(String name, double tapeMm) {
    Quadrilateral hole = hole();
    List<Double> gaps = asked.gapsMm().orElseGet(() -> gapsNeeded(hole));
    Quadrilateral cut = hole.inset(gaps);
    if (!cut.runsAs(hole)) {
      found.error(
          LayoutCode.GAP_LEAVES_NOTHING,
          where,
          "the gap of "
              + Amounts.length(Collections.max(gaps))
              + " leaves nothing of an opening "
              + Amounts.length(Math.min(hole.length(1), hole.length(0)))
              + " across",
          "the gap is the play on each side, between 0 and half of the opening");
      found.throwIfErrors();
    }
    Path whole =
        cut.outline(sizes(cut, hole, gaps))
            .orElseThrow(() -> cornersMeet(Math.min(hole.length(1), hole.length(0))));
    NotchFitter fitter = new NotchFitter(hole, asked, gaps);
    List<Notch> notches = lugs.stream().map(fitter::fit).toList();
    Path outline = notched(whole, notches);
    Bounds b = outline.bounds();
    Affine toPanel = Affine.translation(-b.minX(), -b.minY());
    List<Notch> moved = notches.stream().map(n -> n.moved(toPanel)).toList();
    Panel panel =
        new Panel(
            name,
            outline.transformed(toPanel),
            whole.transformed(toPanel),
            moved.stream().map(n -> Path.polyline(n.inPanel(), true)).toList());
    List<Sitting.Gap> all = gaps(hole, gaps);
    boolean wood = asked.alongPerPct() > 0 || asked.acrossPerPct() > 0;
    Sitting sitting =
        new Sitting(panel, opening, bead, tapeMm, all, wood, asked, moved, Optional.empty());
    refuseBinding(sitting);
    return sitting;
  }

  private static Path notched(Path whole, List<Notch> notches) {
    Path left = whole;
    for (Notch notch : notches) {
      left =
          BoxCut.of(left, notch.box())
              .orElseThrow(
                  () ->
                      BadInputException.of(
                          OpeningCode.LUG_PARTS_PANEL,
                          notch.lug().where(),
                          NotchFitter.name(notch.lug())
                              + " cuts the panel apart: with its clearance it is "
                              + Amounts.length(notch.widthMm())
                              + " wide and reaches "
                              + Amounts.length(notch.depthMm())
                              + " into the panel",
                          "measure it again; where a bar goes right across, make two panels"));
    }
    return left;
  }

  private BadInputException cornersMeet(double shortSideMm) {
    return new BadInputException(
        Diagnostic.error(
            LayoutCode.CORNER_TOO_LARGE,
            where,
            "the corners, "
                + Amounts.length(bead.sizeMm())
                + " each, leave nothing of a side of "
                + Amounts.length(shortSideMm),
            "measure the radius, not the diameter, of the corner"));
  }

  private Quadrilateral hole() {
    List<Point> c = opening.corners();
    double lower = Math.max(0, -opening.bowMm());
    return new Quadrilateral(
        List.of(
            c.get(0),
            c.get(1),
            new Point(c.get(2).x(), c.get(2).y() - lower),
            new Point(c.get(3).x(), c.get(3).y() - lower)),
        bead);
  }

  /** The gap of the larger of two opposite sides suits both. */
  private List<Double> gapsNeeded(Quadrilateral hole) {
    double acrossMm = gapNeeded(Math.max(hole.length(1), hole.length(3)), asked.acrossPerPct());
    double alongMm = gapNeeded(Math.max(hole.length(0), hole.length(2)), asked.alongPerPct());
    return List.of(acrossMm, alongMm, acrossMm, alongMm);
  }

  private double gapNeeded(double sizeMm, double perPct) {
    double taken = 2 * (asked.allowances().coatingMm() + asked.playMm());
    return taken >= sizeMm
        ? sizeMm
        : SideFit.withPlay(sizeMm, perPct, asked.moisture(), asked.playMm(), asked.allowances())
            .gapToCutMm();
  }

  /** What each corner of the panel is cut to, so that it keeps the lesser gap of its sides. */
  private List<Double> sizes(Quadrilateral panel, Quadrilateral hole, List<Double> gaps) {
    List<Double> sizes = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double gap = Math.min(gaps.get(i), gaps.get((i + 3) % 4));
      sizes.add(
          bead.shape() == Bead.Shape.ROUND
              ? Math.max(0, bead.sizeMm() - hole.roundedBy(i, panel.corner(i), gap))
              : bevelLeg(panel, hole, i, gap));
    }
    return sizes;
  }

  /** The least leg of a bevel that keeps clear of the opening's own bevel by a gap. */
  private double bevelLeg(Quadrilateral panel, Quadrilateral hole, int corner, double gapMm) {
    if (bead.sizeMm() == 0) {
      return 0;
    }
    double leg = 0;
    // The clearance of a bevel's two ends grows in step with its leg: two looks give the line.
    for (int end = 0; end < 2; end++) {
      double near = bevelClearance(panel, hole, corner, 1, end);
      double far = bevelClearance(panel, hole, corner, 2, end);
      leg = Math.max(leg, 1 + (gapMm - near) / (far - near));
    }
    return leg;
  }

  private double bevelClearance(
      Quadrilateral panel, Quadrilateral hole, int corner, double legMm, int end) {
    Segment bevel = panel.corner(corner, legMm).orElseThrow();
    Point p = end == 0 ? bevel.start() : bevel.end();
    return Quadrilateral.depthOf(hole.corner(corner, bead.sizeMm()).orElseThrow(), p);
  }

  private List<Sitting.Gap> gaps(Quadrilateral hole, List<Double> gaps) {
    double sanded = asked.allowances().sandedMm();
    List<Double> fitted = gaps.stream().map(g -> g + sanded).toList();
    Quadrilateral panel = hole.inset(fitted);
    List<Double> sizes = sizes(panel, hole, fitted);
    Moisture m = asked.moisture();
    double[] now = gapsAt(hole, panel, sizes, m.nowPct());
    double[] driest = gapsAt(hole, panel, sizes, m.driestPct());
    double[] wettest = gapsAt(hole, panel, sizes, m.wettestPct());
    List<Sitting.Gap> all = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      all.add(new Sitting.Gap(PLACES.get(i), now[i], driest[i], wettest[i]));
    }
    return all;
  }

  private double[] gapsAt(
      Quadrilateral hole, Quadrilateral panel, List<Double> sizes, double moisturePct) {
    Bounds bounds = Bounds.EMPTY;
    for (Point p : panel.corners()) {
      bounds = bounds.with(p);
    }
    Affine swelling = asked.swelling(bounds.centre(), moisturePct);
    double[] gaps = new double[8];
    Arrays.fill(gaps, Double.POSITIVE_INFINITY);
    for (int i = 0; i < 4; i++) {
      for (Point p : panel.samples(i, sizes.get(i))) {
        Point moved = swelling.apply(p);
        for (int side = 0; side < 4; side++) {
          gaps[side] = Math.min(gaps[side], hole.depth(side, moved));
        }
        gaps[4 + i] = Math.min(gaps[4 + i], hole.clearance(i, moved));
      }
    }
    for (int i = 0; i < 8; i++) {
      gaps[i] -= asked.allowances().coatingMm();
    }
    return gaps;
  }

  private void refuseBinding(Sitting sitting) {
    Sitting.Gap worst = sitting.tightest();
    sitting.notches().forEach(n -> refuseBinding(sitting, n));
    found.throwIfErrors();
    if (worst.wettestMm() < -ROUNDING_MM) {
      found.error(
          WoodCode.PANEL_BINDS,
          where,
          "the panel \""
              + sitting.panel().name()
              + "\" binds at the "
              + worst.place()
              + ": at its "
              + (sitting.wood() ? "wettest" : "size")
              + " it is "
              + Amounts.length(-worst.wettestMm())
              + " too large there",
          "leave "
              + Amounts.length(asked.playMm() - worst.wettestMm())
              + " more of a gap, or leave out `gap` and let the play decide");
      found.throwIfErrors();
    }
  }

  private void refuseBinding(Sitting sitting, Notch notch) {
    if (notch.leastMm() < -ROUNDING_MM) {
      found.error(
          WoodCode.PANEL_BINDS,
          notch.lug().where(),
          "the panel \""
              + sitting.panel().name()
              + "\" binds on "
              + NotchFitter.name(notch.lug())
              + " by "
              + Amounts.length(-notch.leastMm())
              + " in the worst season",
          "leave "
              + Amounts.length(asked.playMm() - notch.leastMm())
              + " more of a clearance, or leave out `clearance`");
    }
  }
}
