package frieze.artwork.mend;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;

/** Leaves out outlines of areas that enclose nothing: a line there and back. */
final class Flat {
  /** Less area than this is none: what rounding leaves of a line there and back. */
  private static final double NOTHING_MM2 = 1e-6;

  private final List<Mend> mends;

  Flat(List<Mend> mends) {
    this.mends = mends;
  }

  Artwork apply(Artwork artwork) {
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : artwork.pieces()) {
      boolean area = piece.fill().isPresent() && piece.stroke().isEmpty();
      List<Path> kept = piece.paths().stream().filter(p -> !area || encloses(p)).toList();
      if (!kept.isEmpty()) {
        pieces.add(piece.withPaths(kept));
      }
    }
    return new Artwork(artwork.source(), pieces, artwork.sizeAssumed(), artwork.notes());
  }

  private boolean encloses(Path path) {
    List<Point> ring = Flattener.flatten(path, Tolerances.DEFAULT.flattenMm());
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    // The two halves of a bow tie cancel out, but each encloses something.
    if (Math.abs(twice) / 2 > NOTHING_MM2
        || Region.of(List.of(path), FillRule.EVEN_ODD, Tolerances.DEFAULT.flattenMm()).area()
            > NOTHING_MM2) {
      return true;
    }
    Bounds b = path.bounds();
    mends.add(new Mend(Mend.Kind.FLAT, b.centre(), Math.max(b.width(), b.height())));
    return false;
  }
}
