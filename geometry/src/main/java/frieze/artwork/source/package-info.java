/**
 * From a file to a drawing that can be placed.
 *
 * <p>In: the bytes of a file of any kind, and what a job asks of it. Out: an {@link
 * frieze.artwork.Artwork} of the wanted pieces at the wanted size, mended. Read {@link
 * frieze.artwork.source.DrawingFile}. A new kind of file is a new {@link
 * frieze.artwork.ArtworkReader} that is chosen there.
 */
@NullMarked
package frieze.artwork.source;

import org.jspecify.annotations.NullMarked;
