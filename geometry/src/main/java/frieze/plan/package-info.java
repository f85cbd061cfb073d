/**
 * How to cut a design: cuts in neutral millimetres, then one sequence of instructions.
 *
 * <p>In: a {@link frieze.design.Design} and a {@link frieze.shop.Setup}. Out: a {@link
 * frieze.plan.Plan} of {@link frieze.plan.cut.Cut}s in the panel frame, and the {@link
 * frieze.motion.Sequence} that makes them.
 *
 * <p>Read {@link frieze.plan.Planner}, which tells the order of work, and {@code WorkPlanner},
 * which asks each kind of work for its cuts; {@code BatchOrder}, which puts them in order; and
 * {@link frieze.plan.Sequencer}. {@link frieze.plan.cut} is what they all speak of.
 */
@NullMarked
package frieze.plan;

import org.jspecify.annotations.NullMarked;
