/**
 * Areas cut to one depth: rings or lines, several tools, left-over corners, a last lap.
 *
 * <p>In: regions and depths. Out: cuts, and what no tool reaches.
 *
 * <p>Read {@link frieze.plan.recess.RecessGeometry} (where the axis runs), {@link
 * frieze.plan.recess.RecessPlanner} (the cuts), {@link frieze.plan.recess.RecessLayout} (several
 * tools, many placements).
 */
@NullMarked
package frieze.plan.recess;

import org.jspecify.annotations.NullMarked;
