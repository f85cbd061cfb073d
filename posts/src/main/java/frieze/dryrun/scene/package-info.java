/**
 * What a check sees, and where it says what it found.
 *
 * <p>In: what is known of the place in which programs run, and one executed event at a time. Out:
 * {@link frieze.dryrun.scene.Passage}, a move with its tool, its place in the stock and the
 * material that it meets. Knows no single check.
 *
 * <p>Read {@link frieze.dryrun.scene.Surroundings}, {@link frieze.dryrun.scene.Passage}, {@link
 * frieze.dryrun.scene.Check}, {@link frieze.dryrun.scene.FindingLog}, {@link
 * frieze.dryrun.scene.StockCutter}; then the helpers for places on a grid.
 */
@NullMarked
package frieze.dryrun.scene;

import org.jspecify.annotations.NullMarked;
