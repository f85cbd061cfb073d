package frieze.artwork.mend;

import frieze.artwork.Artwork;
import frieze.artwork.Label;
import frieze.artwork.Piece;
import frieze.artwork.Stroke;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.region.FillRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Joins bare lines whose ends nearly meet: those without width, as all of a technical drawing.
 *
 * <p>Lines are joined that answer to the same names. One that closes encloses an area, by the
 * even-odd rule.
 *
 * <p><i>Guarantees:</i> no point moves by more than the gap; arcs stay arcs; each end is joined to
 * at most one other.
 */
final class JoinEnds {
  private record Alike(Label label, Stroke stroke) {}

  private final double gapMm;
  private final List<Mend> mends;

  JoinEnds(double gapMm, List<Mend> mends) {
    this.gapMm = gapMm;
    this.mends = mends;
  }

  Artwork apply(Artwork artwork) {
    Map<Alike, List<Path>> lines = new LinkedHashMap<>();
    List<Piece> result = new ArrayList<>();
    for (Piece piece : artwork.pieces()) {
      if (piece.fill().isEmpty() && isBare(piece)) {
        Alike key = new Alike(piece.label(), piece.stroke().get());
        lines.computeIfAbsent(key, k -> new ArrayList<>()).addAll(piece.paths());
      } else {
        result.add(piece);
      }
    }
    lines.forEach((key, paths) -> add(key, joined(paths), result));
    return new Artwork(artwork.source(), result, artwork.sizeAssumed(), artwork.notes());
  }

  /** Lines with a width are drawn as meant, and pens lifted on purpose stay lifted. */
  static boolean isBare(Piece piece) {
    return piece.stroke().isPresent() && piece.stroke().get().width() == 0;
  }

  private static void add(Alike key, List<Path> paths, List<Piece> result) {
    List<Path> closed = paths.stream().filter(Path::closed).toList();
    List<Path> lines = paths.stream().filter(p -> !p.closed()).toList();
    if (!lines.isEmpty()) {
      result.add(new Piece(key.label(), lines, Optional.empty(), Optional.of(key.stroke())));
    }
    if (closed.isEmpty()) {
      return;
    }
    for (int i = 0; i < result.size(); i++) {
      Piece piece = result.get(i);
      boolean same =
          piece.fill().equals(Optional.of(FillRule.EVEN_ODD))
              && piece.label().equals(key.label())
              && piece.stroke().equals(Optional.of(key.stroke()));
      if (same) {
        List<Path> all = new ArrayList<>(piece.paths());
        all.addAll(closed);
        result.set(i, piece.withPaths(all));
        return;
      }
    }
    result.add(
        new Piece(key.label(), closed, Optional.of(FillRule.EVEN_ODD), Optional.of(key.stroke())));
  }

  private List<Path> joined(List<Path> paths) {
    List<Path> open = paths.stream().filter(p -> !p.closed()).toList();
    List<Path> result = new ArrayList<>(paths.stream().filter(Path::closed).toList());
    int[] partner = EndPairs.of(open, gapMm);
    boolean[] used = new boolean[open.size()];
    for (int pass = 0; pass < 2; pass++) {
      for (int i = 0; i < open.size(); i++) {
        int first = firstEnd(i, partner, pass == 0);
        if (!used[i] && first != EndPairs.FREE) {
          result.add(chain(open, first, partner, used));
        }
      }
    }
    return result;
  }

  /** The end to start at: first those that nothing is joined to, then any that is left. */
  private static int firstEnd(int path, int[] partner, boolean freeOnly) {
    if (partner[2 * path] == EndPairs.FREE) {
      return 2 * path;
    }
    if (partner[2 * path + 1] == EndPairs.FREE) {
      return 2 * path + 1;
    }
    return freeOnly ? EndPairs.FREE : 2 * path;
  }

  /** Follows joints from an end until one is free or the start is reached again. */
  private Path chain(List<Path> open, int firstEnd, int[] partner, boolean[] used) {
    List<Segment> segments = new ArrayList<>();
    int end = firstEnd;
    while (end != EndPairs.FREE && !used[end / 2]) {
      used[end / 2] = true;
      Path path = open.get(end / 2);
      Path along = end % 2 == 0 ? path : path.reversed();
      if (!segments.isEmpty()) {
        joint(segments, along.start());
      }
      int from = segments.size();
      segments.addAll(along.segments());
      if (from > 0) {
        meet(segments, from - 1, from);
      }
      end = partner[end ^ 1];
    }
    boolean closed = end == firstEnd;
    if (closed) {
      joint(segments, segments.get(0).start());
      if (!meet(segments, segments.size() - 1, 0)) {
        segments.add(new Line(last(segments), segments.get(0).start()));
      }
    }
    return new Path(segments, closed);
  }

  private static Point last(List<Segment> segments) {
    return segments.get(segments.size() - 1).end();
  }

  private void joint(List<Segment> segments, Point next) {
    double gap = last(segments).distance(next);
    if (gap > 0) {
      mends.add(new Mend(Mend.Kind.JOINED, last(segments).towards(next, 0.5), gap));
    }
  }

  /** Makes one segment end where another starts, by moving both or by a line between them. */
  private static boolean meet(List<Segment> segments, int before, int after) {
    Point tip = segments.get(before).end();
    Point next = segments.get(after).start();
    if (tip.equals(next)) {
      return true;
    }
    Point middle = tip.towards(next, 0.5);
    Optional<Segment> first = Ends.endingAt(segments.get(before), middle);
    Optional<Segment> second =
        before == after ? Optional.empty() : Ends.startingAt(segments.get(after), middle);
    if (first.isPresent() && second.isPresent()) {
      segments.set(before, first.get());
      segments.set(after, second.get());
      return true;
    }
    if (after > before) {
      segments.add(after, new Line(tip, next));
    }
    return after > before;
  }
}
