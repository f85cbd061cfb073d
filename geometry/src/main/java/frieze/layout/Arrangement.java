package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.FrameMap;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One motif repeated along the band of a panel.
 *
 * <p>The band is the panel's bounds less the inset on all sides; its centre line is the panel's. On
 * a panel that leans the row runs midway between the lower and the upper edge, from the left one to
 * the right one, turned as they are, and no motif comes nearer to any side than the inset. The band
 * is divided into equal columns, or into columns of a given pitch about its middle, and each motif
 * stands in the middle of its own: none reaches into its neighbour's. A band may end within a
 * period: any count of columns is allowed.
 *
 * @param count the number of motifs, not of periods; 0 for as many as fit at the pitch
 * @param insetMm what stays free along all borders
 * @param riseMm how far the middle of the drawn motif lies above the centre line; empty for on it,
 *     or for the middle of the upper half where the centre line is a mirror
 * @param pitchMm from the middle of one column to that of the next; empty to fill the band
 */
public record Arrangement(
    FriezeGroup group, int count, double insetMm, OptionalDouble riseMm, OptionalDouble pitchMm)
    implements Pattern {
  /** Lengths that differ by less are taken as equal: a hundredth of a micrometre. */
  private static final double EQUAL_MM = 1e-5;

  public Arrangement {
    if (!(insetMm >= 0)) {
      throw new IllegalArgumentException("insetMm must be >= 0 but was " + insetMm + " mm");
    }
    if (pitchMm.isPresent() && !(pitchMm.getAsDouble() > 0)) {
      throw new IllegalArgumentException("pitchMm must be > 0 but was " + pitchMm);
    }
  }

  /** An arrangement with the motif in the usual height. */
  public Arrangement(FriezeGroup group, int count, double insetMm) {
    this(group, count, insetMm, OptionalDouble.empty());
  }

  /** An arrangement that fills the band. */
  public Arrangement(FriezeGroup group, int count, double insetMm, OptionalDouble riseMm) {
    this(group, count, insetMm, riseMm, OptionalDouble.empty());
  }

  @Override
  public int alike() {
    return group.rows();
  }

  /**
   * Places a motif.
   *
   * @param size the bounds of its drawing at the size at which it is used
   * @param where the place in the job, for the diagnostics
   * @return the placements from left to right, the upper before the lower
   * @throws frieze.diagnostic.BadInputException if it does not fit, saying by how much
   */
  public List<Placement> place(String motif, Bounds size, Panel panel, SourceSpan where) {
    return place(motif, size, Lane.of(panel, insetMm), panel.heightMm(), where);
  }

  private List<Placement> place(
      String motif, Bounds size, Lane lane, double heightMm, SourceSpan where) {
    Diagnostics found = new Diagnostics();
    checkBand(lane, heightMm, where, found);
    Bounds band = lane.band();
    double rise = rise(lane);
    int columns = columns(size, band);
    if (pitchMm.isPresent()) {
      checkPitch(motif, size, band, columns, where, found);
    } else {
      checkWidth(motif, size, band, where, found);
    }
    checkHeight(motif, size, band, rise, where, found);
    checkMirror(motif, size, rise, where, found);
    found.throwIfErrors();
    return placements(motif, size, lane, columns, 0);
  }

  private double rise(Lane lane) {
    return riseMm.orElse(group.rows() == 2 ? lane.band().height() / 4 : 0);
  }

  /** Checks the count first, then the band, and throws at the first mistake. */
  private void checkBand(Lane lane, double heightMm, SourceSpan where, Diagnostics found) {
    boolean asManyAsFit = count == 0 && pitchMm.isPresent();
    if (!asManyAsFit && (count < 1 || count % group.rows() != 0)) {
      found.error(LayoutCode.BAD_COUNT, where, badCount(), "");
      found.throwIfErrors();
    }
    if (lane.band().isEmpty()) {
      found.error(
          LayoutCode.BAND_TOO_NARROW,
          where,
          "an inset of "
              + Amounts.length(insetMm)
              + " leaves no band on a panel "
              + Amounts.length(heightMm)
              + " high",
          "make the inset smaller");
      found.throwIfErrors();
    }
  }

  @Override
  public boolean mayReachOver() {
    return true;
  }

  @Override
  public List<Placement> reachingOver(String motif, Hull hull, Panel panel, SourceSpan where) {
    Lane lane = Lane.of(panel, insetMm);
    Diagnostics found = new Diagnostics();
    checkBand(lane, panel.heightMm(), where, found);
    Bounds size = hull.bounds();
    double rise = rise(lane);
    checkMirror(motif, size, rise, where, found);
    checkOverlap(motif, size, where, found);
    found.throwIfErrors();
    int columns = Math.max(1, columns(size, lane.band()));
    int more = 0;
    if (count == 0) {
      double pitch = pitchMm.orElseThrow();
      double reach = (lane.band().grown(insetMm).width() + size.width()) / 2;
      more = Math.max(0, (int) Math.ceil((reach - columns * pitch / 2) / pitch));
    }
    return placements(motif, size, lane, columns, more);
  }

  @Override
  public List<Placement> place(String motif, Hull hull, Panel panel, long seed, SourceSpan where) {
    Lane lane = Lane.of(panel, insetMm);
    List<Placement> placed = place(motif, hull.bounds(), lane, panel.heightMm(), where);
    Band.of(panel, insetMm).requireHeld(placed, hull, where);
    return placed;
  }

  /**
   * Fills the columns.
   *
   * @param more columns beyond either end
   */
  private List<Placement> placements(String motif, Bounds size, Lane lane, int columns, int more) {
    double rise = rise(lane);
    Bounds band = lane.band();
    Affine toMiddle = Affine.translation(-size.centre().x(), -size.centre().y());
    double columnMm = pitchMm.orElse(band.width() / columns);
    double start = band.centre().x() - columns * columnMm / 2;
    List<Placement> result = new ArrayList<>();
    for (int column = -more; column < columns + more; column++) {
      double x =
          pitchMm.isPresent()
              ? start + (column + 0.5) * columnMm
              : band.minX() + (column + 0.5) * columnMm;
      for (Symmetry s : group.inColumn(column)) {
        Affine map =
            toMiddle
                .then(Affine.scaling(s.xSign(), s.ySign()))
                .then(Affine.translation(x, band.centre().y() + s.ySign() * rise))
                .then(lane.toPanel());
        result.add(new Placement(motif, result.size() + 1, new FrameMap<>(map)));
      }
    }
    return result;
  }

  private int columns() {
    return count / group.rows();
  }

  private int columns(Bounds size, Bounds band) {
    return count > 0
        ? columns()
        : (int) Math.floor((band.width() - size.width() + EQUAL_MM) / pitchMm.orElseThrow()) + 1;
  }

  private void checkPitch(
      String motif, Bounds size, Bounds band, int columns, SourceSpan where, Diagnostics found) {
    double pitch = pitchMm.orElseThrow();
    checkOverlap(motif, size, where, found);
    double tooLong = (Math.max(1, columns) - 1) * pitch + size.width() - band.width();
    if (tooLong > EQUAL_MM) {
      found.error(
          LayoutCode.MOTIF_TOO_WIDE,
          where,
          Math.max(1, columns)
              + " motifs "
              + motif
              + " at a pitch of "
              + Amounts.length(pitch)
              + " are "
              + Amounts.length(tooLong)
              + " longer than the band of "
              + Amounts.length(band.width()),
          "take fewer, or leave out `count`");
    }
  }

  private void checkOverlap(String motif, Bounds size, SourceSpan where, Diagnostics found) {
    double overlap = size.width() - pitchMm.orElse(Double.POSITIVE_INFINITY);
    if (overlap > EQUAL_MM) {
      found.error(
          LayoutCode.MOTIF_TOO_WIDE,
          where,
          "motif " + motif + " is " + Amounts.length(overlap) + " wider than its pitch",
          "make the motif smaller, or the pitch larger");
    }
  }

  private String badCount() {
    return count < 1
        ? "the count of motifs must be at least 1 but is " + count
        : group.symbol()
            + " sets motifs in pairs above and below the centre line, so that the count must be"
            + " even, but it is "
            + count;
  }

  private void checkWidth(
      String motif, Bounds size, Bounds band, SourceSpan where, Diagnostics found) {
    double tooLong = columns() * size.width() - band.width();
    if (tooLong > EQUAL_MM) {
      int most = (int) Math.floor((band.width() + EQUAL_MM) / size.width());
      found.error(
          LayoutCode.MOTIF_TOO_WIDE,
          where,
          motifs(motif)
              + " side by side, each "
              + Amounts.length(size.width())
              + " wide, are "
              + Amounts.length(tooLong)
              + " longer than the band of "
              + Amounts.length(band.width()),
          most < 1
              ? "make the motif smaller, or the inset"
              : "at most " + most * group.rows() + " fit; or make the motif smaller");
    }
  }

  private String motifs(String motif) {
    return columns() == 1 ? "1 motif " + motif : columns() + " motifs " + motif;
  }

  private void checkHeight(
      String motif, Bounds size, Bounds band, double rise, SourceSpan where, Diagnostics found) {
    double half = size.height() / 2;
    double beyondBorder = Math.abs(rise) + half - band.height() / 2;
    if (beyondBorder > EQUAL_MM) {
      found.error(
          LayoutCode.MOTIF_TOO_HIGH,
          where,
          text(motif, size) + Amounts.length(beyondBorder) + " beyond the band's border",
          "make the motif smaller by twice that, or the inset smaller by that");
    }
  }

  private void checkMirror(
      String motif, Bounds size, double rise, SourceSpan where, Diagnostics found) {
    double beyondMirror = group.rows() == 2 ? size.height() / 2 - Math.abs(rise) : 0;
    if (beyondMirror > EQUAL_MM) {
      found.error(
          LayoutCode.MOTIF_TOO_HIGH,
          where,
          text(motif, size) + Amounts.length(beyondMirror) + " over the centre line, a mirror here",
          "make the motif smaller, or raise it");
    }
  }

  private static String text(String motif, Bounds size) {
    return "motif " + motif + ", " + Amounts.length(size.height()) + " high, reaches ";
  }
}
