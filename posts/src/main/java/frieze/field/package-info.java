/**
 * The stock as a field of heights that moves of tools lower.
 *
 * <p>In: the stock, tool shapes and tip paths in the stock's frame. Out: heights, removed volume,
 * depth maps, and what a move met on its way. Surfaces that a move sweeps are exact; only the cells
 * are coarse. Knows nothing of programs, designs or findings.
 *
 * <p>Read {@link frieze.field.StockField}, {@code Sweep} with {@code StraightSweep} and {@code
 * ArcSweep}, {@link frieze.field.Profile}; then {@code Tile}, where the time goes, and {@link
 * frieze.field.Window} with {@link frieze.field.SweptMoves} for a closer look at a place.
 */
@NullMarked
package frieze.field;

import org.jspecify.annotations.NullMarked;
