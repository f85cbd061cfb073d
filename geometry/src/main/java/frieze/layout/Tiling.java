package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Frame;
import frieze.curve.FrameMap;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;

/**
 * A motif repeated over a panel by one of the seventeen wallpaper groups.
 *
 * <p>The cells are as wide as a whole number of them fills the band. One cell's lower left corner
 * lies such that the band's middle is a corner or the middle of a cell. Only whole motifs are
 * placed, one that would reach over the band's border is left out; or all that touch the panel, to
 * be cut at a border.
 *
 * <p><em>Guarantees:</em> every operation of the group takes each placed motif to a placed motif,
 * or to one that is left out at the border.
 *
 * @param columns how many cells fill the band's width
 * @param rows how many fill its height, for cells whose height is free; empty for nearly square
 *     ones
 * @param at the middle of the motif in the cell, as shares of its sides; empty for the place where
 *     the motifs stand farthest apart
 * @param turnRad how far the drawing is turned before it is repeated
 */
public record Tiling(
    WallpaperGroup group,
    int columns,
    OptionalInt rows,
    double insetMm,
    Optional<Point> at,
    double turnRad)
    implements Pattern {
  private static final double EQUAL_MM = 1e-5;

  /** How many places are looked at along each side of a cell. */
  private static final int LOOKS = 12;

  public Tiling {
    if (columns < 1 || rows.orElse(1) < 1 || !(insetMm >= 0)) {
      throw new IllegalArgumentException(
          "columns, rows must be >= 1 and insetMm >= 0 but were "
              + (columns + ", " + rows.orElse(1) + ", " + insetMm));
    }
  }

  @Override
  public boolean picksPlaces() {
    return true;
  }

  @Override
  public boolean mayReachOver() {
    return true;
  }

  @Override
  public List<Placement> reachingOver(String motif, Hull hull, Panel panel, SourceSpan where) {
    Bounds all = panel.outline().bounds();
    return placed(motif, hull, panel, all, h -> h.bounds().overlaps(all), where);
  }

  @Override
  public List<Placement> place(String motif, Hull hull, Panel panel, long seed, SourceSpan where) {
    Band within = Band.of(panel, insetMm);
    Bounds band = panel.outline().bounds().grown(-insetMm);
    return placed(motif, hull, panel, band, within::holds, where);
  }

  /**
   * Places the motifs that are kept.
   *
   * @param reach where their middles lie
   */
  private List<Placement> placed(
      String motif, Hull hull, Panel panel, Bounds reach, Predicate<Hull> kept, SourceSpan where) {
    Bounds band = panel.outline().bounds().grown(-insetMm);
    Diagnostics found = new Diagnostics();
    if (band.isEmpty()) {
      found.error(
          LayoutCode.BAND_TOO_NARROW,
          where,
          "an inset of " + Amounts.length(insetMm) + " leaves nothing of the panel",
          "make the inset smaller");
      found.throwIfErrors();
    }
    Affine basis = basis(band);
    Affine drawn = drawn(hull);
    Hull shape = hull.transformed(drawn);
    Point place = at.orElseGet(() -> farthestApart(shape, basis));
    List<Placement> result = new ArrayList<>();
    for (Affine map : maps(basis, place, reach)) {
      if (kept.test(shape.transformed(map))) {
        FrameMap<Frame.Artwork, Frame.Panel> whole = new FrameMap<>(drawn.then(map));
        result.add(new Placement(motif, result.size() + 1, whole));
      }
    }
    if (result.isEmpty()) {
      found.error(
          LayoutCode.NOTHING_PLACED,
          where,
          "no whole motif "
              + motif
              + ", "
              + Amounts.length(shape.bounds().width())
              + " by "
              + Amounts.length(shape.bounds().height())
              + ", lies inside the band of "
              + Amounts.length(band.width())
              + " by "
              + Amounts.length(band.height()),
          "make the motif or the inset smaller, or take more columns");
      found.throwIfErrors();
    }
    return result;
  }

  private Affine drawn(Hull hull) {
    Point c = hull.bounds().centre();
    return Affine.translation(-c.x(), -c.y()).then(Affine.rotation(turnRad));
  }

  /** From cell coordinates to the panel; the band's middle is where the pattern is centred. */
  Affine basis(Bounds band) {
    double width = band.width() / columns;
    int high = rows.orElse(Math.max(1, (int) Math.rint(band.height() / width)));
    double height = band.height() / high;
    Point middle = band.centre();
    Affine sides =
        switch (group.cell()) {
          case OBLIQUE, RECTANGLE, CENTRED -> new Affine(width, 0, 0, height, 0, 0);
          case SQUARE -> new Affine(width, 0, 0, width, 0, 0);
          case HEXAGON -> new Affine(width, 0, -width / 2, width * Math.sqrt(3) / 2, 0, 0);
        };
    double x = group.cell() == WallpaperGroup.Cell.HEXAGON ? 0 : Math.floorMod(columns, 2) / 2.0;
    double y =
        group.cell() == WallpaperGroup.Cell.SQUARE || group.cell() == WallpaperGroup.Cell.HEXAGON
            ? x
            : Math.floorMod(high, 2) / 2.0;
    Point corner = sides.apply(new Point(x, y));
    return sides.then(Affine.translation(middle.x() - corner.x(), middle.y() - corner.y()));
  }

  /** All maps of a motif with its middle at the origin whose middles lie in the band. */
  private List<Affine> maps(Affine basis, Point place, Bounds band) {
    Affine toCell = basis.inverse();
    Bounds cells = Bounds.EMPTY;
    for (double x : new double[] {band.minX(), band.maxX()}) {
      for (double y : new double[] {band.minY(), band.maxY()}) {
        cells = cells.with(toCell.apply(new Point(x, y)));
      }
    }
    List<Affine> maps = new ArrayList<>();
    for (int j = (int) Math.floor(cells.minY()) - 2; j <= cells.maxY() + 2; j++) {
      for (int i = (int) Math.floor(cells.minX()) - 2; i <= cells.maxX() + 2; i++) {
        for (PlaneSymmetry s : group.operations()) {
          maps.add(map(basis, s, place, i, j));
        }
      }
    }
    return maps;
  }

  private static Affine map(Affine basis, PlaneSymmetry s, Point place, int i, int j) {
    Affine linear = linear(basis, s);
    Point in = s.inCell().apply(place);
    Point to = basis.apply(new Point(in.x() + i, in.y() + j));
    return linear.then(Affine.translation(to.x(), to.y()));
  }

  /** The turn or mirror of an operation, in millimetres; exact where it is one of the axes. */
  private static Affine linear(Affine basis, PlaneSymmetry s) {
    Affine b = new Affine(basis.a(), basis.b(), basis.c(), basis.d(), 0, 0);
    return b.inverse().then(new Affine(s.xx(), s.yx(), s.xy(), s.yy(), 0, 0)).then(b);
  }

  /**
   * Looks on a grid in the cell for the place where the hulls are farthest apart; of equal ones
   * near its middle.
   */
  private Point farthestApart(Hull shape, Affine basis) {
    Point middle = new Point(0.5, 0.5);
    List<Point> places = new ArrayList<>();
    for (int u = 0; u < LOOKS; u++) {
      for (int v = 0; v < LOOKS; v++) {
        places.add(new Point((double) u / LOOKS, (double) v / LOOKS));
      }
    }
    places.sort(Comparator.comparingDouble(middle::distance));
    Point best = middle;
    double most = -1;
    for (Point place : places) {
      double least = leastDistance(shape, basis, place, most);
      if (least > most + EQUAL_MM) {
        most = least;
        best = place;
      }
    }
    return best;
  }

  private double leastDistance(Hull shape, Affine basis, Point place, double enoughMm) {
    Bounds b = shape.bounds();
    double size = Math.hypot(b.width(), b.height());
    List<PlaneSymmetry> operations = group.operations();
    Affine first = map(basis, operations.get(0), place, 0, 0);
    Hull own = shape.transformed(first);
    double least = Double.POSITIVE_INFINITY;
    for (int j = -2; j <= 2; j++) {
      for (int i = -2; i <= 2; i++) {
        for (PlaneSymmetry s : operations) {
          Affine other = map(basis, s, place, i, j);
          double middles = Math.hypot(other.e() - first.e(), other.f() - first.f());
          boolean itself = i == 0 && j == 0 && s.equals(operations.get(0));
          if (!itself && middles - size < least) {
            least = Math.min(least, own.distance(shape.transformed(other)));
          }
          if (least <= enoughMm) {
            return least;
          }
        }
      }
    }
    return least;
  }
}
