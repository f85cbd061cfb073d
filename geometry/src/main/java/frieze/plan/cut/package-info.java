/**
 * What a cut is, and what it costs: path, depth, feed, ways in, places where it may begin.
 *
 * <p>In: lines and arcs that an axis follows, and the shop's tables. Out: {@link
 * frieze.plan.cut.Cut}s in {@link frieze.plan.cut.Block}s and {@link frieze.plan.cut.Batch}es, with
 * feeds that spare the tool. Knows no kind of work.
 *
 * <p>Read {@link frieze.plan.cut.Track}, {@link frieze.plan.cut.Cut}, {@link
 * frieze.plan.cut.MoveBuilder}, {@link frieze.plan.cut.Feeds}, {@link frieze.plan.cut.Easing}.
 */
@NullMarked
package frieze.plan.cut;

import org.jspecify.annotations.NullMarked;
