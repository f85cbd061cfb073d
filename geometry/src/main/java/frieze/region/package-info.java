/**
 * Plane areas with holes, in millimetres.
 *
 * <p>In: closed {@link frieze.curve.Path}s and a {@link frieze.region.FillRule}. Out: {@link
 * frieze.region.Region}s, their {@link frieze.region.Offset}s, axes and distances. The polygon
 * library stays inside this package. Read {@link frieze.region.FillRule}, {@link
 * frieze.region.Ring}, {@link frieze.region.Region}, {@link frieze.region.Offset}.
 */
@NullMarked
package frieze.region;

import org.jspecify.annotations.NullMarked;
