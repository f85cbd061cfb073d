/**
 * Holes: pecked, milled on a helix, countersunk, or drawn out into slots.
 *
 * <p>In: places and diameters. Out: cuts.
 *
 * <p>Read {@link frieze.plan.bore.BoreLayout}, {@link frieze.plan.bore.BorePlanner}.
 */
@NullMarked
package frieze.plan.bore;

import org.jspecify.annotations.NullMarked;
