/**
 * Plane areas with holes, in millimetres.
 *
 * <p>In: closed {@link frieze.curve.Path}s and a {@link frieze.region.FillRule}. Out: {@link
 * frieze.region.Region}s, their {@link frieze.region.Offset}s, {@link frieze.region.MedialAxis} and
 * {@link frieze.region.BoundaryDistance}. The polygon library stays inside this package.
 *
 * <p>Read {@link frieze.region.FillRule}, {@link frieze.region.Ring}, {@link frieze.region.Region}
 * (with FillRuleResolver, Weld and RingNesting), {@link frieze.region.BoundaryDistance}, {@link
 * frieze.region.Offset} (with OffsetCorrection), then {@link frieze.region.MedialAxis}:
 * AxisSamples, AxisTriangles, AxisNodes (with Retraction), AxisGraph, in the order of their use.
 */
@NullMarked
package frieze.region;

import org.jspecify.annotations.NullMarked;
