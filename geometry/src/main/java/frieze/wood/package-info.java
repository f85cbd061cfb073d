/**
 * Wood that swells and shrinks with the moisture of the air.
 *
 * <p>In: a {@link frieze.wood.Species}, how the board was {@link frieze.wood.Sawn}, the {@link
 * frieze.wood.Moisture} now and in use, and the opening's size. Out: {@link frieze.wood.SideFit},
 * the size to cut now and the gaps when driest and wettest. Read them in that order.
 */
@NullMarked
package frieze.wood;

import org.jspecify.annotations.NullMarked;
