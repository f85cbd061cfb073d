package frieze.opening;

import frieze.curve.Path;
import frieze.curve.Point;
import java.util.Optional;

/**
 * An opening whose edge is drawn, in the frame of the panel.
 *
 * @param edge closed and counter-clockwise
 * @param beyond the opening larger all round by {@link #TRUSTED_MM}
 * @param largest what the opening must let pass: the panel in all seasons, with the frame's coating
 * @param tightest where on the panel, as it is now, the gap is the least in any season; empty if it
 *     is the same all round, to a twentieth of a millimetre
 * @param widestMm the widest gap anywhere on the panel's edge in any season
 */
public record DrawnHole(
    Path edge, Path beyond, Path largest, Optional<Point> tightest, double widestMm) {
  /** What a drawing of an opening is trusted to; common practice, as for a tape. */
  static final double TRUSTED_MM = 0.5;
}
