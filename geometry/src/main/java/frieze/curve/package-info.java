/**
 * Plane curves, in millimetres and radians.
 *
 * <p>In: points. Out: {@link frieze.curve.Path}s of exact {@link frieze.curve.Segment}s, and their
 * polylines. Read {@link frieze.curve.Point}, {@link frieze.curve.Affine}, {@link
 * frieze.curve.Frame}, {@link frieze.curve.Segment}, {@link frieze.curve.Path}, {@link
 * frieze.curve.Tolerances}. A <i>Flattener</i> turns curves into polylines, early and once; an
 * <i>ArcFitter</i> turns polylines into lines and arcs, late.
 */
@NullMarked
package frieze.curve;

import org.jspecify.annotations.NullMarked;
