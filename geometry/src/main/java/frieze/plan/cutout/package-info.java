/**
 * Outlines cut through: leads, tabs, laps that creep up on the size, relieved corners.
 *
 * <p>In: outlines. Out: cuts that free a part or an opening.
 *
 * <p>Read {@link frieze.plan.cutout.TabPlan}, {@link frieze.plan.cutout.CutoutLayout}, {@link
 * frieze.plan.cutout.CutoutPlanner}.
 */
@NullMarked
package frieze.plan.cutout;

import org.jspecify.annotations.NullMarked;
