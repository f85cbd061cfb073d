/**
 * How to cut a design: cuts in neutral millimetres, then one sequence of instructions.
 *
 * <p>In: a {@link frieze.design.Design} and a {@link frieze.shop.Setup}. Out: a {@link
 * frieze.plan.Plan} of {@link frieze.plan.Cut}s in the panel frame, and the {@link
 * frieze.motion.Sequence} that makes them.
 */
@NullMarked
package frieze.plan;

import org.jspecify.annotations.NullMarked;
