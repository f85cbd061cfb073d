/**
 * The layout at full size on paper, to lay into the frame, to drill through and to bend rod over.
 *
 * <p>In: panels as they were planned. Out: pages (PDF) and one large drawing (SVG), as bytes and
 * text.
 *
 * <p>Read {@link frieze.template.PaperTemplate} (what is drawn), {@link
 * frieze.template.TemplateMaker} (from a panel to that), {@link frieze.template.TemplatePdf} and
 * {@link frieze.template.TemplateSvg}.
 */
@NullMarked
package frieze.template;

import org.jspecify.annotations.NullMarked;
