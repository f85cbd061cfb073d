/**
 * Facts of the shop: what there is to cut with and to cut.
 *
 * <p>In: what the owner wrote down or the built-in tables hold. Out: {@link frieze.shop.Tool}s,
 * {@link frieze.shop.Material}s, a {@link frieze.shop.Machine}, and the {@link frieze.shop.Setup}
 * that says how a {@link frieze.shop.Stock} lies on it and where zero is. Read them in that order.
 * For sheet steel: {@link frieze.shop.SheetGauge}, {@link frieze.shop.CutChart} and the {@link
 * frieze.shop.Torch} that a chart gives for a thickness.
 */
@NullMarked
package frieze.shop;

import org.jspecify.annotations.NullMarked;
