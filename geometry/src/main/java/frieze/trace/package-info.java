/**
 * Outlines from pictures: a scan, a photo, a silhouette.
 *
 * <p>In: a {@link frieze.trace.GreyImage} and {@link frieze.trace.TraceSettings} with a {@link
 * frieze.trace.RealSize}. Out: a {@link frieze.trace.Traced} with an {@link
 * frieze.artwork.Artwork}. No file is read here.
 *
 * <p>Read {@link frieze.trace.Tracer}, then in the order of their use: {@code SheetCrop}, {@code
 * Light} and {@code Paper} (share of ink), {@code Edges} (noise and blur), {@code Ruling} (printed
 * lines taken out), {@code Blur}, {@code Contours}, {@code PixelMap}, {@code Outline} with {@code
 * Corners}, {@code Smoothing} with {@code Stretch}, {@code Tip}, {@code TipFit} and {@code Wedge},
 * {@code Nesting}, and for the strokes of a pen {@code CentreLines} with {@code PenAxis}.
 */
@NullMarked
package frieze.trace;

import org.jspecify.annotations.NullMarked;
