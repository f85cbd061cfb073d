/**
 * Drawings, as they are drawn.
 *
 * <p>In: the bytes of a file. Out: an {@link frieze.artwork.Artwork} in millimetres, Y up, lines
 * and circles exact, with a report of what was assumed and left out. Read {@link
 * frieze.artwork.Piece}, {@link frieze.artwork.Artwork}, {@link frieze.artwork.ArtworkReader},
 * {@link frieze.artwork.SvgReader}; then, for SVG, {@code SvgParser} (text to elements), {@code
 * Page} (size), {@code SvgWalker} (elements to pieces), {@code Cascade} and {@code Style} (what
 * shows), {@code Shapes}, {@code PathData} and {@code PathBuilder} (outlines).
 */
@NullMarked
package frieze.artwork;

import org.jspecify.annotations.NullMarked;
