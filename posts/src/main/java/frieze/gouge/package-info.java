/**
 * Holds what was cut against what was asked for.
 *
 * <p>In: the intents of the design, made from the artwork's exact boundary, the field that all
 * programs of a setup left, and their moves. Out: where too much was taken and where something was
 * left that the tool could have taken. Shares no code with what plans cuts.
 *
 * <p>Read {@link frieze.gouge.GougeCheck}, {@code Wish}, {@code CoarseCheck} for the whole panel,
 * {@code FineCheck} for windows along the outlines, {@code FreedCheck} for parts cut loose.
 */
@NullMarked
package frieze.gouge;

import org.jspecify.annotations.NullMarked;
