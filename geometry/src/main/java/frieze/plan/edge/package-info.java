/**
 * The corner between a panel's face and its edge taken off: beside the panel in its waste, or in
 * the air beside a sawn blank.
 *
 * <p>In: an outline and the shape of its edge. Out: cuts along it, and what they do not reach.
 *
 * <p>Read {@link frieze.plan.edge.EdgePlanner}.
 */
@NullMarked
package frieze.plan.edge;

import org.jspecify.annotations.NullMarked;
