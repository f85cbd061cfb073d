/**
 * Mends drawings, the same for every source.
 *
 * <p>In: an {@link frieze.artwork.Artwork} at its real size. Out: the same drawing within a stated
 * tolerance, and a list of what was mended, with places. Read {@link frieze.artwork.mend.Repair},
 * which tells the order of the passes; then each pass.
 */
@NullMarked
package frieze.artwork.mend;

import org.jspecify.annotations.NullMarked;
