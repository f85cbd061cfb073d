/**
 * Drawings, as they are drawn.
 *
 * <p>In: the bytes of a file. Out: an {@link frieze.artwork.Artwork} in millimetres, Y up, lines
 * and circles exact, with a report of what was assumed. Read {@link frieze.artwork.Piece}, {@link
 * frieze.artwork.Artwork}, {@link frieze.artwork.ArtworkReader}.
 */
@NullMarked
package frieze.artwork;

import org.jspecify.annotations.NullMarked;
