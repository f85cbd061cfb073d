/**
 * One tool along a drawn line: constant, fading out, or as deep as the line is wide.
 *
 * <p>In: lines. Out: cuts that leave no mark where they begin.
 *
 * <p>Read {@link frieze.plan.groove.GroovePlanner}, {@link frieze.plan.groove.FadingGroove}, {@link
 * frieze.plan.groove.VaryingGroove}.
 */
@NullMarked
package frieze.plan.groove;

import org.jspecify.annotations.NullMarked;
