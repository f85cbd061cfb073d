/**
 * Grooves as deep as they are wide, cut by a pointed tool along the middle of a region.
 *
 * <p>In: regions and the real angle and tip of a bit. Out: strokes in space, floors for a flat
 * tool, and the cuts of both.
 *
 * <p>Read {@link frieze.plan.vgroove.VCutter}, {@link frieze.plan.vgroove.VNetwork}, {@link
 * frieze.plan.vgroove.VGrooveGeometry}, {@link frieze.plan.vgroove.VGrooveWork}.
 */
@NullMarked
package frieze.plan.vgroove;

import org.jspecify.annotations.NullMarked;
