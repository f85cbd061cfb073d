/**
 * Plane curves, in millimetres and radians.
 *
 * <p>In: points. Out: {@link frieze.curve.Path}s of exact {@link frieze.curve.Segment}s, and their
 * polylines. Read {@link frieze.curve.Point}, {@link frieze.curve.Affine}, {@link
 * frieze.curve.Frame}, {@link frieze.curve.Segment}, {@link frieze.curve.Path}, {@link
 * frieze.curve.Tolerances}. A {@link frieze.curve.Flattener} turns curves into polylines, early and
 * once; an {@link frieze.curve.ArcFitter} turns polylines into lines and arcs, late: Directions
 * estimates where the source goes, PieceFinder tries pieces, PieceSearch chooses among them.
 */
@NullMarked
package frieze.curve;

import org.jspecify.annotations.NullMarked;
