package frieze.artwork.source;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.artwork.Clip;
import frieze.artwork.Limits;
import frieze.artwork.Piece;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.region.Crowding;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Refuses drawings whose outlines would take too long, before the work is begun. */
final class Effort {
  private static final Crowding.Limits MOST =
      new Crowding.Limits(Limits.MAX_CROSSINGS, Limits.MAX_PAIRS);

  private final Artwork artwork;
  private final double toleranceMm;
  private final List<List<Point>> lines = new ArrayList<>();
  private final Set<Clip> clips = Collections.newSetFromMap(new IdentityHashMap<>());
  private int points;

  private Effort(Artwork artwork, double toleranceMm) {
    this.artwork = artwork;
    this.toleranceMm = toleranceMm;
  }

  /**
   * Looks through all outlines and clips of a drawing.
   *
   * @param toleranceMm with which they will be turned into polygons
   * @throws BadInputException if there are too many points or crossings
   */
  static void check(Artwork artwork, double toleranceMm) {
    Effort effort = new Effort(artwork, toleranceMm);
    artwork.pieces().forEach(effort::add);
    if (Crowding.isBeyond(MOST, effort.lines)) {
      throw effort.tooBig(
          String.format(
              Locale.ROOT,
              "its outlines cross in more than %d places, or more than %d pairs of their stretches"
                  + " lie beside each other",
              MOST.crossings(),
              MOST.pairs()),
          "remove hatching and what lies on top of each other, or split the drawing");
    }
  }

  private void add(Piece piece) {
    piece.paths().forEach(this::add);
    for (Clip clip : piece.clips()) {
      if (clips.add(clip)) {
        clip.panes().forEach(this::add);
      }
    }
  }

  private void add(Path path) {
    List<Point> line = new ArrayList<>();
    line.add(path.start());
    for (Segment segment : path.segments()) {
      List<Point> more = Flattener.flatten(new Path(List.of(segment), false), toleranceMm);
      line.addAll(more.subList(1, more.size()));
      count(more.size() - 1, path.start());
    }
    lines.add(line);
  }

  private void count(int more, Point near) {
    points += more;
    if (points > Limits.MAX_POINTS) {
      throw tooBig(
          String.format(
              Locale.ROOT,
              "as polygons within %.3g mm its outlines have more than %d points; the limit is"
                  + " passed in the one that starts at (mm) %.3f, %.3f",
              toleranceMm,
              Limits.MAX_POINTS,
              near.x(),
              near.y()),
          "check the size of the drawing; simplify or split it");
    }
  }

  private BadInputException tooBig(String message, String hint) {
    return new BadInputException(
        Diagnostic.error(ArtworkCode.TOO_BIG, SourceSpan.file(artwork.source()), message, hint));
  }
}
