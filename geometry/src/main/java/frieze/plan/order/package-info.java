/**
 * Short ways through the air.
 *
 * <p>In: places to visit, each with its ways in and out, and which must come before which. Out: an
 * order. Knows nothing of cuts.
 *
 * <p>Read {@link frieze.plan.order.Tour} (the plain problem), {@link frieze.plan.order.CutOrder}.
 */
@NullMarked
package frieze.plan.order;

import org.jspecify.annotations.NullMarked;
