/**
 * Pictures as files.
 *
 * <p>In: the bytes of a PNG, JPEG, BMP, GIF or TIFF file. Out: a {@link frieze.trace.GreyImage},
 * upright. Read {@link frieze.image.ImageFile}, then {@code Orientation}.
 */
@NullMarked
package frieze.image;

import org.jspecify.annotations.NullMarked;
