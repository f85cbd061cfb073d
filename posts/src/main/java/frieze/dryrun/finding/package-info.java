/**
 * What a dry run has to say: kinds of findings, places, amounts, and what was not checked.
 *
 * <p>In: nothing but values. Out: {@link frieze.dryrun.finding.Finding}s that can be counted,
 * sorted and written. Knows neither stock nor machine.
 *
 * <p>Read {@link frieze.dryrun.finding.FindingCode}, {@link frieze.dryrun.finding.Finding}, {@link
 * frieze.dryrun.finding.NotChecked}.
 */
@NullMarked
package frieze.dryrun.finding;

import org.jspecify.annotations.NullMarked;
