/**
 * Keeps together what should stay when sheet metal is cut through, and tells what a kerf cannot do.
 *
 * <p>In: the material that stays, as a {@link frieze.region.Region}, and the centre lines of veins.
 * Out: the same material with its islands tied by bridges, and the count of its pieces as a proof.
 *
 * <p>Read {@link frieze.bridge.BridgeRules}, {@link frieze.bridge.Bridge}, {@link
 * frieze.bridge.Bridged}, {@link frieze.bridge.Bridges} (with Islands, BridgeFinder, Stroke and
 * Holding), {@link frieze.bridge.RepeatedBridges}, {@link frieze.bridge.Pieces} (the proof), then
 * {@link frieze.bridge.KerfLimits} (with NarrowRuns): slots, webs and points finer than the kerf.
 */
@NullMarked
package frieze.bridge;

import org.jspecify.annotations.NullMarked;
