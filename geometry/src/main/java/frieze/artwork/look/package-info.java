/**
 * How fine a drawing is: what a maker looks at before choosing its size and a bit.
 *
 * <p>In: an {@link frieze.artwork.Artwork} at its real size. Out: its {@link
 * frieze.artwork.look.Fineness}: pieces, the narrowest web and gap as {@link
 * frieze.artwork.look.Narrow}s, sharp points; and for each diameter of a tool its {@link
 * frieze.artwork.look.ToolReach}. Nothing is changed here.
 */
@NullMarked
package frieze.artwork.look;

import org.jspecify.annotations.NullMarked;
