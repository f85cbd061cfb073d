package frieze.artwork.mend;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Leaves out what is too small to cut: specks, and slivers of areas.
 *
 * <p>A speck is smaller than the smallest feature in both directions. A sliver is an outline of an
 * area whose mean width is less than ends of lines may be apart.
 */
final class Smallest {
  private final double smallestMm;
  private final double sliverMm;
  private final List<Mend> mends;

  Smallest(double smallestMm, double sliverMm, List<Mend> mends) {
    this.smallestMm = smallestMm;
    this.sliverMm = sliverMm;
    this.mends = mends;
  }

  Artwork apply(Artwork artwork) {
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : artwork.pieces()) {
      boolean area = piece.fill().isPresent() && piece.stroke().isEmpty();
      List<Path> kept = piece.paths().stream().filter(p -> keeps(p, area)).toList();
      if (!kept.isEmpty()) {
        pieces.add(piece.withPaths(kept));
      }
    }
    return new Artwork(artwork.source(), pieces, artwork.sizeAssumed(), artwork.notes());
  }

  private boolean keeps(Path path, boolean area) {
    Bounds b = path.bounds();
    double size = Math.max(b.width(), b.height());
    if (size < smallestMm) {
      mends.add(new Mend(Mend.Kind.SPECK, b.centre(), size));
      return false;
    }
    if (area) {
      double width = meanWidth(path);
      if (width < sliverMm) {
        mends.add(new Mend(Mend.Kind.SLIVER, b.centre(), width));
        return false;
      }
    }
    return true;
  }

  /** Twice the area over the way round: the width of what is long and thin. */
  private static double meanWidth(Path path) {
    List<Point> ring = Flattener.flatten(path, Tolerances.DEFAULT.flattenMm());
    double twice = 0;
    double length = 0;
    for (int i = 0; i < ring.size(); i++) {
      Point next = ring.get((i + 1) % ring.size());
      twice += ring.get(i).cross(next);
      length += ring.get(i).distance(next);
    }
    return length == 0 ? 0 : Math.abs(twice) / length;
  }
}
