package frieze.torch;

import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.region.Region;
import java.util.List;
import java.util.Optional;

/**
 * What the torch does from one lighting of the arc to its going out, in the panel frame.
 *
 * @param origin what a person would call it, such as {@code torchcut hole 3}
 * @param pierce where the arc is lit
 * @param pieces the way from the pierce, each piece starting where the one before it ends; empty
 *     for a pierce or a mark alone
 * @param frees what comes loose when it is done; empty for none
 */
public record TorchPath(
    String origin, Kind kind, Point pierce, List<Piece> pieces, Optional<Region> frees) {
  /** What a path is for. */
  public enum Kind {
    /** An opening in the part. */
    HOLE,
    /** The part cut out of the sheet. */
    OUTLINE,
    /** A small hole, pierced only. */
    PIERCE,
    /** A small hole, its middle marked. */
    MARK
  }

  /**
   * A line or an arc.
   *
   * @param feedPart the share of the chart's feed
   * @param frozen whether the torch keeps its height
   */
  public record Piece(Segment path, double feedPart, boolean frozen) {}

  public TorchPath {
    pieces = List.copyOf(pieces);
    Point at = pierce;
    for (Piece piece : pieces) {
      if (!piece.path().start().equals(at)) {
        throw new IllegalArgumentException(
            "pieces of " + origin + " must join but " + piece.path().start() + " follows " + at);
      }
      at = piece.path().end();
    }
  }

  /** Where the arc goes out. */
  public Point end() {
    return pieces.isEmpty() ? pierce : pieces.get(pieces.size() - 1).path().end();
  }
}
