/**
 * What a user asks for.
 *
 * <p>In: the text of a job file and of the files that it names. Out: a {@link frieze.job.Job}, or a
 * list of diagnostics with line and column.
 *
 * <p>Read {@code JobKeys} (the table of all keys, in the terms of {@link frieze.keys}); then {@link
 * frieze.job.JobReader} and {@link frieze.job.Job}. {@link frieze.job.ShopReader} does the same for
 * machines, tools and materials. {@link frieze.job.KeyPage} and {@link frieze.job.KeySchema} write
 * the table for people and for editors.
 */
@NullMarked
package frieze.job;

import org.jspecify.annotations.NullMarked;
