/**
 * Says what programs would do, before a machine does it.
 *
 * <p>In: the texts of one setup's programs, in running order, and what is known of the place they
 * run in. Out: a {@link frieze.dryrun.DryRunResult}: findings, extents, lengths, depths, times, and
 * what was not checked. Knows nothing of how the programs were planned or written.
 *
 * <p>Read {@link frieze.dryrun.DryRun}, {@link frieze.dryrun.scene.Surroundings}, {@link
 * frieze.dryrun.DryRunResult}, {@link frieze.dryrun.finding.FindingCode}; then {@code Checks}, the
 * list of all checks. The stock is {@link frieze.field}, the time {@link frieze.clock}, the
 * comparison with the design {@link frieze.gouge}.
 */
@NullMarked
package frieze.dryrun;

import org.jspecify.annotations.NullMarked;
