package frieze.artwork.pen;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.artwork.Clip;
import frieze.artwork.Limits;
import frieze.artwork.Piece;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Cuts the pieces of a drawing down to what their clips let show.
 *
 * <p><i>Guarantees:</i> what a clip does not cut keeps its exact paths; of what is cut, lines and
 * arcs of areas stay lines and arcs; lines keep their direction. A piece that is filled and drawn
 * along its outline becomes two when it is cut, since its line does not follow the clip.
 *
 * <p><i>Approximation:</i> other curves of what is cut are within the tolerance.
 *
 * <p><i>Cost:</i> that of the intersection of each piece with its clips, bounded.
 */
public final class Clipping {
  private final String source;
  private final double tolerance;
  private final IdentityHashMap<Clip, Window> windows = new IdentityHashMap<>();
  private final List<Piece> kept = new ArrayList<>();
  private long compared;

  /** The numbers of the windows that cut the piece before, and what shows through all of them. */
  private List<Integer> lastCutting = List.of();

  private Region lastShows = Region.EMPTY;

  /** The area of a clip, the paths it was made of, and how many points those have. */
  private record Window(int number, Region area, List<Path> sources, long points, boolean isBox) {
    boolean surelyHolds(Bounds b) {
      Bounds box = area.bounds();
      return isBox
          && b.minX() >= box.minX()
          && b.minY() >= box.minY()
          && b.maxX() <= box.maxX()
          && b.maxY() <= box.maxY();
    }
  }

  private Clipping(String source, double toleranceMm) {
    this.source = source;
    this.tolerance = toleranceMm;
  }

  /** Whether something in a drawing is to be cut. */
  public static boolean isNeeded(Artwork artwork) {
    return artwork.pieces().stream().anyMatch(p -> !p.clips().isEmpty());
  }

  /**
   * Cuts all pieces.
   *
   * @param toleranceMm the most by which what is cut departs from the exact outline
   * @throws BadInputException if that is too much work
   */
  public static Artwork of(Artwork artwork, double toleranceMm) {
    if (!isNeeded(artwork)) {
      return artwork;
    }
    Clipping clipping = new Clipping(artwork.source(), toleranceMm);
    artwork.pieces().forEach(clipping::cut);
    return new Artwork(artwork.source(), clipping.kept, artwork.sizeAssumed(), artwork.notes());
  }

  private void cut(Piece piece) {
    List<Window> cutting = new ArrayList<>();
    Bounds bounds = piece.bounds();
    for (Clip clip : piece.clips()) {
      Window window = window(clip);
      if (!window.surelyHolds(bounds)) {
        cutting.add(window);
      }
    }
    if (cutting.isEmpty()) {
      kept.add(whole(piece));
      return;
    }
    Region area = piece.fill().isPresent() ? area(piece) : Region.EMPTY;
    countWork(points(piece.paths()));
    cutting.forEach(window -> countWork(window.points()));
    Region shows = shows(cutting);
    boolean areaCut = !area.minus(shows).isEmpty();
    boolean lineCut = piece.stroke().isPresent() && !holdsLines(shows, piece);
    if (!areaCut && !lineCut) {
      kept.add(whole(piece));
      return;
    }
    if (piece.fill().isPresent()) {
      addArea(piece, area.intersection(shows), cutting);
    }
    if (piece.stroke().isPresent()) {
      addLines(piece, shows);
    }
  }

  private Region shows(List<Window> cutting) {
    List<Integer> numbers = cutting.stream().map(Window::number).toList();
    if (!numbers.equals(lastCutting)) {
      lastShows = cutting.get(0).area();
      for (Window window : cutting.subList(1, cutting.size())) {
        lastShows = lastShows.intersection(window.area());
      }
      lastCutting = numbers;
    }
    return lastShows;
  }

  private static Piece whole(Piece piece) {
    return new Piece(piece.label(), piece.paths(), piece.fill(), piece.stroke());
  }

  private Window window(Clip clip) {
    Window known = windows.get(clip);
    if (known != null) {
      return known;
    }
    List<Region> parts = new ArrayList<>();
    List<Path> sources = new ArrayList<>();
    for (Piece pane : clip.panes()) {
      Region part = area(pane);
      sources.addAll(pane.paths());
      for (Clip inner : pane.clips()) {
        Window window = window(inner);
        countWork(window.points());
        part = part.intersection(window.area());
        sources.addAll(window.sources());
      }
      parts.add(part);
    }
    Region area = Region.union(parts);
    Bounds b = area.bounds();
    boolean isBox =
        area.rings().size() == 1
            && area.rings().get(0).points().size() == 4
            && area.area() == b.width() * b.height();
    Window made = new Window(windows.size(), area, sources, points(sources), isBox);
    windows.put(clip, made);
    return made;
  }

  /** Points of the polygons that paths become. */
  private long points(List<Path> paths) {
    return paths.stream().mapToLong(path -> Flattener.flatten(path, tolerance).size()).sum();
  }

  private void countWork(long points) {
    compared += points;
    if (compared > Limits.MAX_CLIPPED_POINTS) {
      throw new BadInputException(
          Diagnostic.error(
              ArtworkCode.TOO_BIG,
              SourceSpan.file(source),
              "the clips of the drawing are compared with more than "
                  + Limits.MAX_CLIPPED_POINTS
                  + " points",
              "cut the outlines in the drawing program, or simplify the clips"));
    }
  }

  private Region area(Piece piece) {
    return Region.of(piece.paths(), piece.fill().orElse(FillRule.NONZERO), tolerance);
  }

  private boolean holdsLines(Region shows, Piece piece) {
    for (Path path : piece.paths()) {
      List<Point> line = line(path);
      List<List<Point>> inside = shows.inside(line);
      if (inside.size() != 1 || length(inside.get(0)) < length(line) - tolerance) {
        return false;
      }
    }
    return true;
  }

  private static double length(List<Point> line) {
    double sum = 0;
    for (int i = 1; i < line.size(); i++) {
      sum += line.get(i).distance(line.get(i - 1));
    }
    return sum;
  }

  /** The points along a path, the first one again at the end if it is closed. */
  private List<Point> line(Path path) {
    List<Point> line = new ArrayList<>(Flattener.flatten(path, tolerance));
    if (path.closed()) {
      line.add(line.get(0));
    }
    return line;
  }

  private void addArea(Piece piece, Region left, List<Window> cutting) {
    if (!left.isEmpty()) {
      List<Path> sources = new ArrayList<>(piece.paths());
      cutting.forEach(window -> sources.addAll(window.sources()));
      List<Path> paths = new ExactRings(sources, tolerance).of(left);
      kept.add(new Piece(piece.label(), paths, Optional.of(FillRule.NONZERO), Optional.empty()));
    }
  }

  private void addLines(Piece piece, Region shows) {
    List<Path> left = new ArrayList<>();
    for (Path path : piece.paths()) {
      List<Point> line = line(path);
      List<List<Point>> inside = new ArrayList<>(shows.inside(line));
      if (path.closed() && inside.size() == 1 && inside.get(0).size() == line.size()) {
        left.add(path);
        continue;
      }
      if (path.closed() && inside.size() > 1) {
        joinEnds(inside, path.start());
      }
      inside.stream()
          .filter(s -> length(s) > tolerance)
          .forEach(s -> left.add(Path.polyline(s, false)));
    }
    if (!left.isEmpty()) {
      kept.add(new Piece(piece.label(), left, Optional.empty(), piece.stroke()));
    }
  }

  /** The last stretch of a closed line goes on with the first if both are at its start. */
  private static void joinEnds(List<List<Point>> inside, Point start) {
    List<Point> last = inside.get(inside.size() - 1);
    List<Point> first = inside.get(0);
    if (first.get(0).equals(start) && last.get(last.size() - 1).equals(start)) {
      List<Point> joined = new ArrayList<>(last);
      joined.addAll(first.subList(1, first.size()));
      inside.set(0, joined);
      inside.remove(inside.size() - 1);
    }
  }
}
