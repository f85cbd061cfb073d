package frieze.opening;

import frieze.curve.Affine;
import frieze.curve.ArcFitter;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.layout.LayoutCode;
import frieze.layout.Panel;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.wood.WoodCode;
import java.util.List;
import java.util.Optional;

/**
 * From an opening whose edge is drawn to the panel that goes in and stays in.
 *
 * <p>With a given gap the panel is the opening less that gap, square to its edge everywhere.
 * Without one, the panel at its wettest and after sanding is the opening less coating and play;
 * before that it is smaller by its swelling, along and across the grain, about its middle, and
 * larger by what is sanded off. So the inset is not the same all round: where the edge faces across
 * the grain at an angle t, a swelling of a along and b across takes {@code a x cos t + b y sin t}
 * more of it at a place x, y from the middle.
 *
 * <p><em>Guarantees:</em> without a given gap, the play is left all round at the driest, now and at
 * the wettest, unless an inner corner is sharper than what is sanded off it; a panel that would
 * bind anywhere is refused. <em>Approximation:</em> the panel's edge departs from the exact one by
 * 3 micrometres at most, and gaps by as much.
 */
public final class DrawnFitter {
  /** Finer than the rest of the budget, because a panel's edge is offset again for its cutter. */
  private static final double FINE_MM = 0.001;

  /** A panel that is nowhere wider than this is none: rounding leaves such strips. */
  private static final double THIN_MM = 0.1;

  /** A sum of lengths may be wrong by this: the approximation of the edge. */
  private static final double ROUNDING_MM = 0.003;

  /** Gaps that differ by less are the same to a maker. */
  private static final double SAME_MM = 0.05;

  private final Path drawn;
  private final Region hole;
  private final InsertRequest asked;
  private final SourceSpan where;

  private DrawnFitter(Path drawn, InsertRequest asked, SourceSpan where) {
    this.drawn = drawn;
    this.asked = asked;
    this.where = where;
    double turn = Flattener.turnForOffset(DrawnHole.TRUSTED_MM, FINE_MM);
    this.hole = Region.ofRing(Flattener.flatten(drawn, FINE_MM / 2, turn));
  }

  /**
   * Fits a panel.
   *
   * @param drawn the opening's edge: closed, counter-clockwise, crossing nothing
   * @param asked one gap for all sides, or none
   * @param where the place in the job, for the diagnostics
   * @throws BadInputException if nothing is left of the opening, the panel falls apart, or it would
   *     bind, saying where and by how much
   */
  public static Sitting fit(String name, Path drawn, InsertRequest asked, SourceSpan where) {
    if (asked.gapsMm().filter(g -> g.stream().distinct().count() != 1).isPresent()) {
      throw new IllegalArgumentException("gapsMm must be equal but were " + asked.gapsMm());
    }
    return new DrawnFitter(drawn, asked, where).sitting(name);
  }

  private Sitting sitting(String name) {
    Region cut = asked.gapsMm().map(g -> inset(g.get(0))).orElseGet(this::needed);
    checkWhole(cut);
    Region fitted = Offset.offset(cut, -asked.allowances().sandedMm(), FINE_MM);
    checkWhole(fitted);
    Path edge = edge(cut);
    Point middle = fitted.bounds().centre();
    DrawnGaps gaps = new DrawnGaps(hole, fitted, middle, asked);
    Bounds b = edge.bounds();
    Affine toPanel = Affine.translation(-b.minX(), -b.minY());
    DrawnHole frame =
        new DrawnHole(
            drawn.transformed(toPanel),
            edge(Offset.offset(hole, DrawnHole.TRUSTED_MM, FINE_MM)).transformed(toPanel),
            largest(fitted, middle).transformed(toPanel),
            gaps.tightest(SAME_MM).map(toPanel::apply),
            gaps.widestMm());
    Sitting sitting =
        new Sitting(
            new Panel(name, edge.transformed(toPanel)),
            FittedOpening.rectangle(drawn.bounds().width(), drawn.bounds().height()),
            Bead.NONE,
            0,
            gaps.sides(),
            asked.alongPerPct() > 0 || asked.acrossPerPct() > 0,
            asked,
            List.of(),
            Optional.of(frame));
    refuseBinding(sitting);
    return sitting;
  }

  /** The outer edge. */
  private static Path edge(Region region) {
    return ArcFitter.fit(region.largestPart().rings().get(0).points(), true, FINE_MM);
  }

  private Region inset(double mm) {
    return Offset.offset(hole, -mm, FINE_MM);
  }

  /** What play and wood need: whatever stays clear of the edge in each season, and the sanding. */
  private Region needed() {
    Region clear = inset(asked.allowances().coatingMm() + asked.playMm());
    if (clear.isEmpty()) {
      return clear;
    }
    Point middle = clear.bounds().centre();
    Region left = clear;
    for (double pct : seasons()) {
      left = left.intersection(clear.transformed(asked.swelling(middle, pct).inverse()));
    }
    return Offset.offset(left, asked.allowances().sandedMm(), FINE_MM);
  }

  private List<Double> seasons() {
    return List.of(asked.moisture().driestPct(), asked.moisture().wettestPct());
  }

  private Path largest(Region fitted, Point middle) {
    Region all = fitted;
    for (double pct : seasons()) {
      all = all.union(fitted.transformed(asked.swelling(middle, pct)));
    }
    return edge(Offset.offset(all, asked.allowances().coatingMm(), FINE_MM));
  }

  private void checkWhole(Region left) {
    boolean nothing = Offset.offset(left, -THIN_MM / 2, FINE_MM).isEmpty();
    int pieces = nothing ? 0 : left.parts().size();
    double shortSideMm = Math.min(drawn.bounds().width(), drawn.bounds().height());
    if (pieces == 0) {
      throw BadInputException.of(
          LayoutCode.GAP_LEAVES_NOTHING,
          where,
          gapText() + ": nothing is left of an opening " + Amounts.length(shortSideMm) + " across",
          "the gap is the play on each side, between 0 and half of the opening");
    }
    if (pieces > 1 || left.rings().size() > 1) {
      throw BadInputException.of(
          OpeningCode.GAP_PARTS_PANEL,
          where,
          gapText()
              + (pieces > 1
                  ? ": the panel falls into " + pieces + " pieces where the opening is narrow"
                  : ": a slit of the panel is closed"),
          "draw the narrow places wider, or make a panel for each piece");
    }
  }

  private String gapText() {
    double coating = asked.allowances().coatingMm();
    return asked
        .gapsMm()
        .map(g -> "a gap of " + Amounts.length(g.get(0)))
        .orElseGet(
            () ->
                "a play of "
                    + Amounts.length(asked.playMm())
                    + (coating > 0 ? ", a coating of " + Amounts.length(coating) : "")
                    + " and what the wood needs");
  }

  private void refuseBinding(Sitting sitting) {
    Sitting.Gap worst = sitting.tightest();
    double least = worst.leastMm();
    if (least < -ROUNDING_MM) {
      throw BadInputException.of(
          WoodCode.PANEL_BINDS,
          where,
          "the panel \""
              + sitting.panel().name()
              + "\" binds at the "
              + worst.place()
              + ": at its "
              + (!sitting.wood() ? "size" : worst.wettestMm() > least ? "driest" : "wettest")
              + " it is "
              + Amounts.length(-least)
              + " beyond the opening there",
          "leave "
              + Amounts.length(asked.playMm() - least)
              + " more of a gap, or leave out `gap` and let the play decide");
    }
  }
}
