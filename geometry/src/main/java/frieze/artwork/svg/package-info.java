/**
 * SVG, as people and programs write it.
 *
 * <p>In: the bytes of a file. Out: an {@link frieze.artwork.Artwork}, lines and circular arcs
 * exact, with a report of what was assumed and left out. Files outside of it are never followed.
 *
 * <p>Read {@link frieze.artwork.svg.SvgReader}, then {@code SvgParser} (text to elements), {@code
 * Page} (size), {@code SvgWalker} (elements to pieces), {@code Cascade} and {@code Style} (what
 * shows), {@code Shapes}, {@code PathData} and {@code PathBuilder} (outlines), {@code TextSetter}
 * (letters).
 */
@NullMarked
package frieze.artwork.svg;

import org.jspecify.annotations.NullMarked;
