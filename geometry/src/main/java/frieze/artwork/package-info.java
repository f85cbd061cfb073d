/**
 * Drawings, as they are drawn.
 *
 * <p>In: the bytes of a file. Out: an {@link frieze.artwork.Artwork} in millimetres, Y up, lines
 * and circles exact, with a report of what was assumed and left out. Read {@link
 * frieze.artwork.Piece}, {@link frieze.artwork.Artwork}, {@link frieze.artwork.ArtworkReader}; then
 * the readers, {@link frieze.artwork.svg} and {@link frieze.artwork.dxf}; {@link
 * frieze.artwork.mend}, which repairs what any of them read; and {@link frieze.artwork.look}.
 */
@NullMarked
package frieze.artwork;

import org.jspecify.annotations.NullMarked;
