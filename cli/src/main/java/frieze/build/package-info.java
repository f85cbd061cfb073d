/**
 * How a job is made, in memory.
 *
 * <p>In: a {@link frieze.job.Job}. Out: for each panel its programs, read back and run dry, and the
 * facts for its sheet. Nothing here touches the disk: the caller decides whether to write.
 *
 * <p>Read {@link frieze.build.Build}, whose main method tells the whole story; {@code PlannedPanel}
 * and {@code BuiltPanel}, what there is after planning and after the dry run; then {@code Rescued}
 * and {@code AirPrograms}, the other programs that can be made of a plan.
 */
@NullMarked
package frieze.build;

import org.jspecify.annotations.NullMarked;
