package frieze.artwork.mend;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Segment;
import java.util.ArrayList;
import java.util.List;

/** Takes out lines of no length, which doubled points leave in a path. */
final class Doubled {
  private final List<Mend> mends;

  Doubled(List<Mend> mends) {
    this.mends = mends;
  }

  Artwork apply(Artwork artwork) {
    List<Piece> pieces =
        artwork.pieces().stream()
            .map(piece -> piece.withPaths(piece.paths().stream().map(this::without).toList()))
            .toList();
    return new Artwork(artwork.source(), pieces, artwork.sizeAssumed(), artwork.notes());
  }

  /** A path that is nothing but one point stays: a line's round end may show there. */
  private Path without(Path path) {
    List<Segment> kept = new ArrayList<>();
    List<Mend> found = new ArrayList<>();
    for (Segment segment : path.segments()) {
      if (segment instanceof Line line && line.start().equals(line.end())) {
        found.add(new Mend(Mend.Kind.DOUBLED, line.start(), 0));
      } else {
        kept.add(segment);
      }
    }
    if (kept.isEmpty() || found.isEmpty()) {
      return path;
    }
    mends.addAll(found);
    return new Path(kept, path.closed());
  }
}
