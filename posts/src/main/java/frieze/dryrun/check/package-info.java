/**
 * One question a class about the moves of programs: travel, clamps, depth, feed, speed, and more.
 *
 * <p>In: {@link frieze.dryrun.scene.Passage}s in the order of running. Out: findings in a {@link
 * frieze.dryrun.scene.FindingLog}. A check knows no other check but for a limit that both hold to.
 *
 * <p>Read {@link frieze.dryrun.check.TravelCheck}, then any other; {@code frieze.dryrun.Checks}
 * lists them all.
 */
@NullMarked
package frieze.dryrun.check;

import org.jspecify.annotations.NullMarked;
