/**
 * The area that a drawn line covers.
 *
 * <p>In: an {@link frieze.artwork.Artwork} whose pieces have lines with a {@link
 * frieze.artwork.Stroke}. Out: the same drawing with the area under the pen in place of each such
 * line. Read {@link frieze.artwork.pen.StrokeOutline}, then {@code Dashes} (which stretches are
 * drawn), {@code PenTrack} (the outline of one stretch: sides, joins, caps) and {@code ExactRings}
 * (one clean outline out of overlapping ones); last {@link frieze.artwork.pen.Clipping}, which cuts
 * lines and areas down to what shows.
 */
@NullMarked
package frieze.artwork.pen;

import org.jspecify.annotations.NullMarked;
