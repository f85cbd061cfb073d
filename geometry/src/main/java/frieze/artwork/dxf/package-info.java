/**
 * Drawings in DXF, as text.
 *
 * <p>In: the bytes of a file. Out: an {@link frieze.artwork.Artwork} in millimetres, lines and
 * circles exact, with a list of what was not understood. Read {@link frieze.artwork.dxf.DxfReader};
 * then {@code DxfParser} (text to sections and entities), {@code DxfDrawer} (entities to pieces,
 * blocks and layers followed), {@code DxfShapes} and {@code DxfSpline} (outlines), {@code DxfFrame}
 * (the frame of an entity).
 */
@NullMarked
package frieze.artwork.dxf;

import org.jspecify.annotations.NullMarked;
