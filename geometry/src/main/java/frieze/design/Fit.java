package frieze.design;

import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.layout.LayoutCode;
import frieze.layout.Placement;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Checks where the placed motifs lie: on the panel, and clear of each other.
 *
 * <p>Areas are compared as they are drawn, lines by their bounds.
 */
public final class Fit {
  /** Overlaps smaller than this are rounding. */
  private static final double NOTHING_MM2 = 0.01;

  /** A motif may reach beyond the outline by this much: rounding. */
  private static final double NOTHING_MM = 0.01;

  private final Design design;
  private final double flattenMm;
  private final SourceSpan where;
  private final Diagnostics found;
  private final Region outline;

  private record Placed(Placement placement, Bounds bounds) {
    String name() {
      return placement.motif() + " " + placement.number();
    }
  }

  private Fit(Design design, double flattenMm, SourceSpan where, Diagnostics found) {
    this.design = design;
    this.flattenMm = flattenMm;
    this.where = where;
    this.found = found;
    this.outline = Region.of(List.of(design.panel().outline()), FillRule.NONZERO, flattenMm);
  }

  /**
   * Reports motifs that reach beyond the panel, as errors, and motifs that overlap, as warnings.
   *
   * @param where the place in the job to name
   */
  public static void check(Design design, double flattenMm, SourceSpan where, Diagnostics found) {
    new Fit(design, flattenMm, where, found).check();
  }

  private void check() {
    List<Placed> all = new ArrayList<>();
    for (Placement placement : design.placements()) {
      Placed placed = new Placed(placement, bounds(placement));
      if (!placed.bounds().isEmpty()) {
        all.add(placed);
        checkBorder(placed);
      }
    }
    all.sort(Comparator.comparingDouble(p -> p.bounds().minX()));
    for (int i = 0; i < all.size(); i++) {
      for (int k = i + 1; k < all.size() && touchAlongX(all.get(i), all.get(k)); k++) {
        checkOverlap(all.get(i), all.get(k));
      }
    }
  }

  private static boolean touchAlongX(Placed a, Placed b) {
    return b.bounds().minX() <= a.bounds().maxX();
  }

  private Bounds bounds(Placement placement) {
    Bounds bounds = Bounds.EMPTY;
    for (Piece piece : design.motifAt(placement).artwork().pieces()) {
      for (Path path : piece.paths()) {
        bounds = bounds.with(placement.map().apply(path).bounds());
      }
    }
    return bounds;
  }

  private Region area(Placement placement) {
    Affine map = placement.map().affine();
    Region area = Region.EMPTY;
    for (Piece piece : design.motifAt(placement).artwork().pieces()) {
      if (piece.fill().isPresent()) {
        List<Path> paths = piece.paths().stream().map(p -> p.transformed(map)).toList();
        area = area.union(Region.of(paths, piece.fill().get(), flattenMm));
      }
    }
    return area;
  }

  private void checkBorder(Placed placed) {
    Bounds panel = design.panel().outline().bounds();
    Bounds b = placed.bounds();
    double beyond =
        Math.max(
            Math.max(panel.minX() - b.minX(), b.maxX() - panel.maxX()),
            Math.max(panel.minY() - b.minY(), b.maxY() - panel.maxY()));
    if (beyond > NOTHING_MM) {
      border(placed.name() + " reaches " + Amounts.length(beyond) + " beyond the panel");
      return;
    }
    if (isInCorner(b)) {
      Region outside = area(placed.placement()).minus(outline);
      if (outside.area() > NOTHING_MM2) {
        Point at = outside.bounds().centre();
        border(
            placed.name()
                + " reaches beyond the panel's outline at "
                + Amounts.place(at.x(), at.y())
                + " by an area of "
                + Amounts.area(outside.area()));
      }
    }
  }

  /** Whether a corner of the bounds lies outside the outline, so that the shape itself decides. */
  private boolean isInCorner(Bounds b) {
    return !b.corners().stream().allMatch(outline::contains);
  }

  private void border(String message) {
    found.error(
        LayoutCode.BEYOND_BORDER, where, message, "make the motif smaller, or the inset larger");
  }

  private void checkOverlap(Placed a, Placed b) {
    if (a.bounds().minY() > b.bounds().maxY() || b.bounds().minY() > a.bounds().maxY()) {
      return;
    }
    Region both = area(a.placement()).intersection(area(b.placement()));
    if (both.area() > NOTHING_MM2) {
      Point at = both.bounds().centre();
      found.warning(
          LayoutCode.MOTIFS_OVERLAP,
          where,
          a.name()
              + " and "
              + b.name()
              + " overlap by "
              + Amounts.area(both.area())
              + " at "
              + Amounts.place(at.x(), at.y()),
          "a recess that both share is cut as one");
    }
  }
}
