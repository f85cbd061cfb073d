/**
 * Turns what a planner asks for into what one controller has words for.
 *
 * <p>In: a {@link frieze.motion.Sequence} in the program frame, the {@link frieze.shop.Setup}, and
 * the {@link frieze.lower.Capabilities} of a controller. Out: {@link frieze.lower.Program}s of
 * {@link frieze.lower.Command}s whose numbers lie on the controller's own grid of digits; a post
 * only has to write them. Read {@link frieze.lower.Capabilities}, {@link frieze.lower.Lowering}
 * (the order of the passes), {@link frieze.lower.Run} (a pass in the air) and {@link
 * frieze.lower.Rescue} (what is left of a broken run), {@link frieze.lower.Command}, {@link
 * frieze.lower.Program}.
 */
@NullMarked
package frieze.lower;

import org.jspecify.annotations.NullMarked;
