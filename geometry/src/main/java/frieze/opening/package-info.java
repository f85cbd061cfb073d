/**
 * The opening as it was welded.
 *
 * <p>In: {@link frieze.opening.Measured}, what a tape said. Out: {@link
 * frieze.opening.FittedOpening}, the outline that agrees best with it, how well, and how far it is
 * out of square. Read them in that order; {@link frieze.opening.OpeningFitter} does the work.
 * {@link frieze.opening.InsertFitter} goes on to the panel that follows the outline, {@link
 * frieze.opening.Sitting}.
 */
@NullMarked
package frieze.opening;

import org.jspecify.annotations.NullMarked;
