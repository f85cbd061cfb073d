package frieze.plan.vgroove;

import frieze.curve.Affine;
import frieze.curve.Segment;
import frieze.motion.Position;
import java.util.List;

/**
 * A run of the tool in space without lifting.
 *
 * @param start where it begins, at the depth of its first piece
 * @param clearedZ how deep that place is cut already
 * @param pieces in order; none for a mere dot
 */
record Stroke(Position start, double clearedZ, List<Piece> pieces) {
  Stroke {
    pieces = List.copyOf(pieces);
  }

  /**
   * A line or an arc, along which the depth changes evenly.
   *
   * @param endZ the depth at its end
   */
  record Piece(Segment path, double endZ) {
    Piece placed(Affine map) {
      return new Piece(path.transformed(map), endZ);
    }
  }

  Stroke placed(Affine map) {
    return new Stroke(
        new Position(map.apply(start.xy()), start.z()),
        clearedZ,
        pieces.stream().map(p -> p.placed(map)).toList());
  }
}
