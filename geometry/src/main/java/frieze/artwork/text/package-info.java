/**
 * Fonts: the outlines of letters and how far apart they stand.
 *
 * <p>In: the name of a family, a weight, a slant. Out: a {@link frieze.artwork.text.FontFace},
 * whose glyphs are drawn with a pen in parts of the letter size. Read {@link
 * frieze.artwork.text.FontFamilies}, {@link frieze.artwork.text.FontFace}.
 */
@NullMarked
package frieze.artwork.text;

import org.jspecify.annotations.NullMarked;
