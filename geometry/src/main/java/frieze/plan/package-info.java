/**
 * How to cut a design: cuts in neutral millimetres, then one sequence of instructions.
 *
 * <p>In: a {@link frieze.design.Design} and a {@link frieze.shop.Setup}. Out: a {@link
 * frieze.plan.Plan} of {@link frieze.plan.Cut}s in the panel frame, and the {@link
 * frieze.motion.Sequence} that makes them.
 *
 * <p>Read {@link frieze.plan.Planner}, which tells the order of work; {@link frieze.plan.Feeds};
 * {@code RecessGeometry}, {@code Outline} and {@code TabPlan}, which make tracks out of shapes;
 * {@code MoveBuilder}, which makes moves out of tracks; {@code BatchOrder}, which puts the cuts in
 * order; and {@link frieze.plan.Sequencer}.
 */
@NullMarked
package frieze.plan;

import org.jspecify.annotations.NullMarked;
