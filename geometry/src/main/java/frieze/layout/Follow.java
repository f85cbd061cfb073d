package frieze.layout;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.ArcLength;
import frieze.curve.Bounds;
import frieze.curve.FrameMap;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * One motif repeated along a curved line, each turned as the line runs.
 *
 * <p><em>Guarantees:</em> the middles of the motifs, or the feet of those that stand beside the
 * line, are equally far apart, measured along it; where motifs differ in size, in proportion to it.
 * On a closed line a whole number of periods goes round. No motif lies nearer to the panel's
 * outline than the inset.
 *
 * @param course the line
 * @param drawn the line of a drawing, or two of them, once {@link #resolved} has found them
 * @param count the number of motifs; 0 for as many as the pitch gives
 * @param riseMm how far the middle of the drawn motif lies to the left of travel; empty for on the
 *     line, or for half of its height where the line is a mirror
 * @param pitchMm from one motif to the next along the line; empty to fill it
 * @param stretched whether the pitch is changed until a whole number fills the line
 */
public record Follow(
    Course course,
    List<Path> drawn,
    FriezeGroup group,
    int count,
    double insetMm,
    OptionalDouble riseMm,
    OptionalDouble pitchMm,
    boolean stretched)
    implements Pattern {
  private static final double EQUAL_MM = 1e-5;

  /** Which line is followed. */
  public sealed interface Course {}

  /** The longest line of a drawing that lies with its middle on the panel's. */
  public record Drawn(String drawing, Optional<String> pick) implements Course {}

  /**
   * An arc from the left border to the right one, its middle higher or lower than its ends.
   *
   * @param riseMm how much higher; below 0 for lower
   */
  public record Arch(double riseMm) implements Course {}

  /**
   * The line midway between the panel's lower and upper edge.
   *
   * @param swelling whether each motif is as large as the band between them is high at its place,
   *     and as drawn where it is highest
   */
  public record Between(boolean swelling) implements Course {}

  /**
   * The line midway between the two longest lines of a drawing that lies with its middle on the
   * panel's.
   *
   * @param swelling as for {@link Between}
   */
  public record BetweenLines(String drawing, Optional<String> pick, boolean swelling)
      implements Course {}

  public Follow {
    drawn = List.copyOf(drawn);
    if (count < 1 && pitchMm.isEmpty()) {
      throw new IllegalArgumentException("count or pitchMm must be given");
    }
    if (!(insetMm >= 0 && pitchMm.orElse(1) > 0)) {
      throw new IllegalArgumentException(
          "insetMm must be >= 0 and pitchMm > 0 but were " + insetMm + ", " + pitchMm);
    }
  }

  /** A pattern whose line has not been looked for yet. */
  public Follow(
      Course course,
      FriezeGroup group,
      int count,
      double insetMm,
      OptionalDouble riseMm,
      OptionalDouble pitchMm,
      boolean stretched) {
    this(course, List.of(), group, count, insetMm, riseMm, pitchMm, stretched);
  }

  @Override
  public int alike() {
    return group.rows();
  }

  @Override
  public Pattern resolved(Function<String, Artwork> drawings, SourceSpan where) {
    if (course instanceof Drawn from) {
      return withLines(drawings.apply(from.drawing()), from.drawing(), from.pick(), 1, where);
    }
    if (course instanceof BetweenLines from) {
      return withLines(drawings.apply(from.drawing()), from.drawing(), from.pick(), 2, where);
    }
    return this;
  }

  private Follow withLines(
      Artwork artwork, String name, Optional<String> pick, int wanted, SourceSpan where) {
    Point middle = artwork.bounds().centre();
    List<Path> longest =
        artwork.pieces().stream()
            .filter(p -> pick.isEmpty() || p.label().answersTo(pick.get()))
            .map(Piece::paths)
            .flatMap(List::stream)
            .filter(p -> p.segments().stream().anyMatch(s -> !s.bounds().isEmpty()))
            .sorted(Comparator.comparingDouble(p -> -ArcLength.of(p).lengthMm()))
            .limit(wanted)
            .map(p -> p.transformed(Affine.translation(-middle.x(), -middle.y())))
            .toList();
    if (longest.size() < wanted) {
      throw BadInputException.of(
          LayoutCode.NO_LINE,
          where,
          "the drawing "
              + name
              + " has no such "
              + (wanted == 1
                  ? "line to follow"
                  : "two lines to go between, but " + (longest.isEmpty() ? "none" : "only one")),
          "`pick` takes an id, class, colour or group of the drawing");
    }
    return new Follow(course, longest, group, count, insetMm, riseMm, pitchMm, stretched);
  }

  @Override
  public List<Path> fences(Panel panel) {
    return course instanceof BetweenLines
        ? List.of(onPanel(panel, 0), onPanel(panel, 1))
        : List.of();
  }

  @Override
  public boolean mayReachOver() {
    return true;
  }

  @Override
  public List<Placement> reachingOver(String motif, Hull hull, Panel panel, SourceSpan where) {
    Guide along = guide(panel, where);
    // The middles of the first and the last may lie at the ends of the line.
    int columns = columns(0, along.lengthMm(), along.isClosed(), where);
    double pitch = pitch(along.lengthMm(), columns, along.isClosed());
    List<Placement> placed = placements(motif, hull.bounds(), along, columns, pitch);
    pair(panel, where).ifPresent(p -> p.requireClear(placed, hull, insetMm, where));
    return placed;
  }

  private boolean fills(boolean closed) {
    return pitchMm.isEmpty() || stretched || (closed && count == 0);
  }

  private double pitch(double lengthMm, int columns, boolean closed) {
    return fills(closed) ? lengthMm / columns : pitchMm.orElseThrow();
  }

  @Override
  public List<Placement> place(String motif, Hull hull, Panel panel, long seed, SourceSpan where) {
    Guide along = guide(panel, where);
    Bounds size = hull.bounds();
    int columns = columns(size.width(), along.lengthMm(), along.isClosed(), where);
    double pitch = pitch(along.lengthMm(), columns, along.isClosed());
    checkWidth(motif, size.width(), pitch, columns, along.lengthMm(), where);
    Band band = Band.of(panel, insetMm);
    List<Placement> placed = placements(motif, size, along, columns, pitch);
    Optional<LinePair> pair = pair(panel, where);
    boolean mayBeFewer = count == 0 && !fills(along.isClosed());
    while (mayBeFewer && placed.size() > group.rows() && !areInside(placed, hull, band, pair)) {
      columns--;
      placed = placements(motif, size, along, columns, pitch);
    }
    band.requireHeld(placed, hull, where);
    List<Placement> last = placed;
    pair.ifPresent(p -> p.requireClear(last, hull, insetMm, where));
    return placed;
  }

  private List<Placement> placements(
      String motif, Bounds size, Guide along, int columns, double pitch) {
    double first = along.isClosed() ? 0 : (along.lengthMm() - (columns - 1) * pitch) / 2;
    double rise = riseMm.orElse(group.rows() == 2 ? size.height() / 2 : 0);
    Affine toMiddle = Affine.translation(-size.centre().x(), -size.centre().y());
    List<Placement> result = new ArrayList<>();
    for (int column = 0; column < columns; column++) {
      Guide.Place at = along.at(first + column * pitch);
      for (Symmetry s : group.inColumn(column)) {
        Affine map =
            toMiddle
                .then(Affine.scaling(s.xSign(), s.ySign()))
                .then(Affine.translation(0, s.ySign() * rise))
                .then(Affine.scaling(at.size(), at.size()))
                .then(Affine.rotation(at.directionRad()))
                .then(Affine.translation(at.point().x(), at.point().y()));
        result.add(new Placement(motif, result.size() + 1, new FrameMap<>(map)));
      }
    }
    return result;
  }

  private boolean areInside(List<Placement> placed, Hull hull, Band band, Optional<LinePair> pair) {
    return placed.stream()
        .map(p -> p.hull(hull))
        .allMatch(h -> band.holds(h) && pair.filter(p -> !p.isClear(h, insetMm)).isEmpty());
  }

  private Guide guide(Panel panel, SourceSpan where) {
    if (course instanceof Between between) {
      return Midway.of(panel, insetMm, between.swelling(), where);
    }
    if (course instanceof BetweenLines between) {
      return Midway.of(pair(panel, where).orElseThrow(), insetMm, between.swelling(), where);
    }
    return Guide.Even.of(line(panel, where));
  }

  private Optional<LinePair> pair(Panel panel, SourceSpan where) {
    return course instanceof BetweenLines
        ? Optional.of(LinePair.of(onPanel(panel, 0), onPanel(panel, 1), where))
        : Optional.empty();
  }

  /** A line of the drawing, whose middle lies on the panel's. */
  private Path onPanel(Panel panel, int line) {
    if (drawn.size() <= line) {
      throw new IllegalStateException("the line has not been looked for");
    }
    Point middle = panel.outline().bounds().centre();
    return drawn.get(line).transformed(Affine.translation(middle.x(), middle.y()));
  }

  private Path line(Panel panel, SourceSpan where) {
    Bounds band = panel.outline().bounds().grown(-insetMm);
    if (course instanceof Arch arch) {
      if (band.isEmpty()) {
        throw BadInputException.of(
            LayoutCode.BAND_TOO_NARROW,
            where,
            "an inset of " + Amounts.length(insetMm) + " leaves nothing of the panel",
            "make the inset smaller");
      }
      return arc(band, arch.riseMm(), where);
    }
    return onPanel(panel, 0);
  }

  /** The arc of a chord from left to right, half of its rise above the middle, half below. */
  private static Path arc(Bounds band, double rise, SourceSpan where) {
    double half = band.width() / 2;
    if (Math.abs(rise) > half) {
      throw BadInputException.of(
          LayoutCode.BAND_TOO_NARROW,
          where,
          "an arch that rises "
              + Amounts.length(Math.abs(rise))
              + " is more than half a circle over a width of "
              + Amounts.length(band.width()),
          "at most half of the width");
    }
    Point c = band.centre();
    Point start = new Point(band.minX(), c.y() - rise / 2);
    Point end = new Point(band.maxX(), c.y() - rise / 2);
    boolean straight = Math.abs(rise) < EQUAL_MM;
    return new Path(List.of(ArchedOutline.edge(start, end, straight ? 0 : rise)), false);
  }

  private int columns(double widthMm, double lengthMm, boolean closed, SourceSpan where) {
    int period = group.columnsPerPeriod();
    if (count == 0) {
      double ideal = lengthMm / pitchMm.orElseThrow();
      if (closed) {
        return period * Math.max(1, (int) Math.rint(ideal / period));
      }
      return stretched
          ? Math.max(1, (int) Math.rint(ideal))
          : Math.max(
              1, (int) Math.floor((lengthMm - widthMm + EQUAL_MM) / pitchMm.orElseThrow()) + 1);
    }
    int columns = count / group.rows();
    boolean whole = count % group.rows() == 0 && (!closed || columns % period == 0);
    if (!whole) {
      int step = closed ? period * group.rows() : group.rows();
      throw BadInputException.of(
          LayoutCode.BAD_COUNT,
          where,
          "the count of "
              + group.symbol()
              + (closed ? " round a closed line" : "")
              + " must be a multiple of "
              + step
              + ", but it is "
              + count,
          "take " + Math.max(step, count / step * step) + " or " + (count / step + 1) * step);
    }
    return columns;
  }

  private static void checkWidth(
      String motif, double width, double pitch, int columns, double length, SourceSpan where) {
    double tooLong = (columns - 1) * pitch + width - length;
    if (width > pitch + EQUAL_MM && columns > 1) {
      throw BadInputException.of(
          LayoutCode.MOTIF_TOO_WIDE,
          where,
          "motif "
              + motif
              + " is "
              + Amounts.length(width - pitch)
              + " wider than its share of the line, "
              + Amounts.length(pitch),
          "at most " + (int) Math.floor((length + EQUAL_MM) / width) + " stand side by side");
    }
    if (tooLong > EQUAL_MM) {
      throw BadInputException.of(
          LayoutCode.MOTIF_TOO_WIDE,
          where,
          "the motifs "
              + motif
              + " are "
              + Amounts.length(tooLong)
              + " longer than the line of "
              + Amounts.length(length),
          "take fewer, or leave out `count`");
    }
  }
}
