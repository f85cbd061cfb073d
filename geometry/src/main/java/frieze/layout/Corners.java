package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.FrameMap;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A motif in each corner of a panel's bounds: as drawn in the lower left one, in the others
 * mirrored or turned.
 *
 * @param turned whether it is turned by quarter turns, else mirrored
 * @param cornerMm the square in which its middle lies; empty for its own size
 */
public record Corners(boolean turned, double insetMm, OptionalDouble cornerMm) implements Pattern {
  private static final int CORNERS = 4;

  public Corners {
    if (!(insetMm >= 0)) {
      throw new IllegalArgumentException("insetMm must be >= 0 but was " + insetMm + " mm");
    }
  }

  /** The placements counter-clockwise from the lower left corner. */
  @Override
  public List<Placement> place(String motif, Hull hull, Panel panel, long seed, SourceSpan where) {
    Bounds band = panel.outline().bounds().grown(-insetMm);
    Bounds size = hull.bounds();
    double half = cornerMm.orElse(Math.max(size.width(), size.height())) / 2;
    Point c = size.centre();
    List<Placement> placed =
        IntStream.range(0, CORNERS)
            .mapToObj(
                i -> {
                  boolean right = i == 1 || i == 2;
                  boolean above = i >= 2;
                  Affine shape =
                      turned
                          ? Affine.rotation(i * Math.PI / 2)
                          : Affine.scaling(right ? -1 : 1, above ? -1 : 1);
                  Affine map =
                      Affine.translation(-c.x(), -c.y())
                          .then(shape)
                          .then(
                              Affine.translation(
                                  right ? band.maxX() - half : band.minX() + half,
                                  above ? band.maxY() - half : band.minY() + half));
                  return new Placement(motif, i + 1, new FrameMap<>(map));
                })
            .toList();
    Band.of(panel, insetMm).requireHeld(placed, hull, where);
    return placed;
  }
}
