package frieze.artwork.mend;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Removes lines that repeat another of the same piece, in either sense. The outlines of an area
 * that is painted by a fill rule are left alone, since each counts there.
 *
 * <p>Two paths are the same if they have as many segments and those meet within a nanometre, end by
 * end and in the middle. An outline drawn twice would enclose nothing, by the even-odd rule.
 */
final class Repeats {
  private static final double SAME_MM = 1e-6;

  private final List<Mend> mends;

  Repeats(List<Mend> mends) {
    this.mends = mends;
  }

  private record Size(int segments, long x, long y, long width, long height) {
    static Size of(Path path) {
      Bounds b = path.bounds();
      return new Size(
          path.segments().size(),
          rounded(b.centre().x()),
          rounded(b.centre().y()),
          rounded(b.width()),
          rounded(b.height()));
    }

    private static long rounded(double mm) {
      return Math.round(mm / (1000 * SAME_MM));
    }
  }

  Artwork apply(Artwork artwork) {
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : artwork.pieces()) {
      boolean safe = piece.fill().isEmpty() || JoinEnds.isBare(piece);
      pieces.add(safe ? piece.withPaths(once(piece.paths())) : piece);
    }
    return new Artwork(artwork.source(), pieces, artwork.sizeAssumed(), artwork.notes());
  }

  private List<Path> once(List<Path> paths) {
    if (paths.size() < 2) {
      return paths;
    }
    Map<Size, List<Path>> seen = new HashMap<>();
    List<Path> kept = new ArrayList<>();
    for (Path path : paths) {
      List<Path> alike = seen.computeIfAbsent(Size.of(path), s -> new ArrayList<>());
      if (alike.stream().anyMatch(other -> same(other, path))) {
        mends.add(new Mend(Mend.Kind.DUPLICATE, path.start(), 0));
      } else {
        alike.add(path);
        kept.add(path);
      }
    }
    return kept;
  }

  private static boolean same(Path a, Path b) {
    return a.closed() == b.closed() && (follows(a, b) || follows(a, b.reversed()));
  }

  private static boolean follows(Path a, Path b) {
    int n = a.segments().size();
    int shifts = a.closed() ? n : 1;
    for (int shift = 0; shift < shifts; shift++) {
      if (near(a.start(), b.segments().get(shift).start()) && alongside(a, b, shift)) {
        return true;
      }
    }
    return false;
  }

  private static boolean alongside(Path a, Path b, int shift) {
    int n = a.segments().size();
    for (int i = 0; i < n; i++) {
      var s = a.segments().get(i);
      var t = b.segments().get((i + shift) % n);
      if (!near(s.end(), t.end()) || !near(s.at(0.5), t.at(0.5))) {
        return false;
      }
    }
    return true;
  }

  private static boolean near(Point p, Point q) {
    return p.distance(q) <= SAME_MM;
  }
}
