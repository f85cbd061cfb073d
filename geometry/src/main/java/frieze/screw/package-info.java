/**
 * Screws that hold a panel in its frame.
 *
 * <p>In: {@link frieze.screw.Screws}, one list of places, as the job writes it. Out: the holes in
 * the steel, {@link frieze.screw.SteelHole}, drawn out where the wood moves ({@link
 * frieze.screw.Movement}); the pilots in the wood; and whether they keep clear of what is carved,
 * {@link frieze.screw.ScrewCheck}. Read them in that order.
 */
@NullMarked
package frieze.screw;

import org.jspecify.annotations.NullMarked;
