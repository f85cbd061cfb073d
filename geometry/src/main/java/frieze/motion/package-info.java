/**
 * What a machine is told and what it does: the vocabulary that planner, posts and dry run share.
 *
 * <p>In: nothing. Out: {@link frieze.motion.Instruction}s, which a planner asks for, {@link
 * frieze.motion.Executed} events, which a text brings about, and the {@link frieze.motion.Motion}s
 * in both. Read {@link frieze.motion.Position}, {@link frieze.motion.Motion}, {@link
 * frieze.motion.Instruction}, {@link frieze.motion.Step}, {@link frieze.motion.Sequence}, {@link
 * frieze.motion.Executed}; then {@link frieze.motion.Motions}, which takes paths apart.
 */
@NullMarked
package frieze.motion;

import org.jspecify.annotations.NullMarked;
